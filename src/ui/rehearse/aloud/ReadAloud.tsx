import { useEffect, useRef, useState } from 'react'
import type { Operation } from '../../../core/plan/types'
import { spoken } from '../../../core/words/spoken'
import { useApp } from '../../app-context'
import type { ReadingAt } from '../../reading'
import { stepInWords } from '../step-text'
import { makeReader, type Reader, speechHere, type Voice, voiceHere } from './speech'

interface Props {
  readonly operation: Operation
  /** Told which sentence is being read, so that the slip can mark it. */
  readonly onReading: (at: ReadingAt | null) => void
}

/** What was found out and chosen while this page is open; none of it is kept. */
let voice: Voice | null = null
let eachStep = false

const NO_SPEECH = 'This browser cannot read aloud.'
const NO_VOICE =
  'This device has no English voice of its own. None is used over the network: nothing of your kitchen is sent away.'

/** Reads the step out with a voice of this device; stops when another step comes. */
export function ReadAloud({ operation, onReading }: Props) {
  const isShown = useApp((s) => s.place === 'rehearse')
  const [state, setState] = useState<'quiet' | 'reading' | 'read'>('quiet')
  const [isEach, setEach] = useState(eachStep)
  const [trouble, setTrouble] = useState<string | null>(null)
  const reader = useRef<Reader | null>(null)
  const asked = useRef(0)
  const button = useRef<HTMLButtonElement>(null)

  const start = async () => {
    const turn = ++asked.current
    const parts = speechHere()
    if (parts === null) return setTrouble(NO_SPEECH)
    voice ??= await voiceHere(parts.speech)
    // Another step may have come while the voices were listed.
    if (turn !== asked.current) return
    setTrouble(voice === null ? NO_VOICE : null)
    if (voice === null) return
    const sentences = stepInWords(operation)
    reader.current?.stop()
    reader.current = makeReader(parts, (at) => {
      setState(at === null ? 'read' : 'reading')
      onReading(at === null ? null : (sentences[at] ?? null))
      // When it is marked.
      setTimeout(() => keepInSight(button.current?.closest('.slip') ?? null))
    })
    reader.current.read(
      sentences.map(({ text }) => spoken(text)),
      voice,
    )
  }
  const startNow = useRef(start)
  startNow.current = start
  useEffect(() => {
    setState('quiet')
    if (isShown && eachStep && operation.id !== '') void startNow.current()
    return () => {
      asked.current++
      reader.current?.stop()
      reader.current = null
    }
  }, [operation.id, isShown])

  const chooseEach = (chosen: boolean) => {
    eachStep = chosen
    setEach(chosen)
  }
  return (
    <div className="aloud">
      <button
        type="button"
        className="link"
        ref={button}
        onClick={() => (state === 'reading' ? reader.current?.stop() : void start())}
      >
        {state === 'reading' ? 'Stop reading' : state === 'read' ? 'Read it again' : 'Read aloud'}
      </button>
      <p role="status">{trouble}</p>
      {(state !== 'quiet' || isEach) && (
        <label>
          <input type="checkbox" checked={isEach} onChange={(e) => chooseEach(e.currentTarget.checked)} />
          Read each step as it comes
        </label>
      )}
    </div>
  )
}

/** The slip goes along with what is read; nothing else on the page moves. */
function keepInSight(slip: Element | null): void {
  const read = slip?.querySelector('[data-read]')
  if (slip == null || read == null) return
  const [frame, at] = [slip.getBoundingClientRect(), read.getBoundingClientRect()]
  if (at.top < frame.top) slip.scrollTop += at.top - frame.top - 8
  else if (at.bottom > frame.bottom) slip.scrollTop += at.bottom - frame.bottom + 8
}
