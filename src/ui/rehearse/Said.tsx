import { type ReactNode, useEffect, useRef, useState } from 'react'
import type { Operation } from '../../core/plan/types'
import { meaningOf, type Piece, piecesInTurn, wordsIn } from '../../core/words/trade-words'
import { upperFirst } from '../../core/words/upper-first'
import { openInSight } from '../bring-into-view'
import { useIsRead } from '../reading'
import { stepInWords, toDoAndMind } from './step-text'

interface Marked {
  readonly text: string
  readonly pieces: readonly Piece[]
}

const marked = new WeakMap<Operation, ReadonlyMap<string, readonly Marked[]>>()

/** The sentences of a step by their place, each word of the trade taken out where the step uses it first. */
function markedOf(operation: Operation): ReadonlyMap<string, readonly Marked[]> {
  const known = marked.get(operation)
  if (known !== undefined) return known
  const all = toDoAndMind(operation)
  const pieces = piecesInTurn(all)
  const fresh = new Map<string, Marked[]>()
  all.forEach(({ at, text }, i) => {
    fresh.set(at, [...(fresh.get(at) ?? []), { text, pieces: pieces[i] ?? [] }])
  })
  marked.set(operation, fresh)
  return fresh
}

interface Props {
  readonly operation: Operation
  /** Which line of the step: `does.0`, `cautions.1`. */
  readonly at: string
  /** The line as it stands plainly. */
  readonly children: ReactNode
}

/** A line of a step, its words of the trade explained at a tap. */
export function Said({ operation, at, children }: Props) {
  const [open, setOpen] = useState<string | null>(null)
  const asked = useRef<HTMLButtonElement>(null)
  const close = () => {
    setOpen(null)
    asked.current?.focus()
  }
  useEffect(() => {
    if (open === null) return
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return
      setOpen(null)
      asked.current?.focus()
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [open])
  const sentences = markedOf(operation).get(at)
  if (sentences === undefined) return children
  return (
    <>
      {sentences.map(({ text, pieces }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the sentences of a line never change their places
        <SentenceOf key={i} at={at} text={text} isFirst={i === 0}>
          {pieces.map((piece) =>
            piece.word === null ? (
              piece.text
            ) : (
              <button
                key={piece.word}
                type="button"
                className="trade-word"
                aria-expanded={open === piece.word}
                ref={open === piece.word ? asked : undefined}
                onClick={() => setOpen(open === piece.word ? null : piece.word)}
              >
                {piece.text}
              </button>
            ),
          )}
        </SentenceOf>
      ))}
      <span aria-live="polite">
        {open !== null && (
          <span className="meaning" role="note" key={open} ref={openInSight}>
            <strong>{upperFirst(open)}</strong> {meaningOf(open)}{' '}
            <button type="button" className="link" onClick={close}>
              Close
            </button>
          </span>
        )}
      </span>
    </>
  )
}

interface SentenceProps {
  readonly at: string
  readonly text: string
  readonly isFirst: boolean
  readonly children: ReactNode
}

function SentenceOf({ at, text, isFirst, children }: SentenceProps) {
  return (
    <>
      {isFirst ? '' : ' '}
      <span data-read={useIsRead(at, text)}>{children}</span>
    </>
  )
}

/** All words of the trade in a step, with what they mean. */
export function WordsUsed({ operation }: { readonly operation: Operation }) {
  const [isOpen, setOpen] = useState(false)
  const used = wordsIn(stepInWords(operation))
  if (used.length === 0) return null
  return (
    <section className="words-used">
      <button type="button" className="link" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        Words used here ({used.length})
      </button>
      {isOpen && (
        <dl ref={openInSight}>
          {used.map((word) => (
            <div key={word}>
              <dt>{upperFirst(word)}</dt>
              <dd>{meaningOf(word)}</dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  )
}
