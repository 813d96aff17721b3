import { type KeyboardEvent, useRef, useState } from 'react'
import { type StandsIn, saidSo, standsInWords } from '../../../core/form/stands-in'
import {
  assumedBecause,
  type Entered,
  isUnread,
  lengthTyped,
  numberTyped,
  shownTyped,
} from '../../../core/form/typed'
import type { Display } from '../../../core/words/format'
import { useActions } from '../../app-context'
import { mendTyped } from '../../ProblemList'
import { StandInNote } from './StandInNote'
import { useFact, useLengthUnit, useStandIn } from './use-fact'

interface Props {
  readonly id: string
  /** The fact it is, by keys and ids. */
  readonly path: string
  readonly sort: 'length' | 'number' | 'text'
  readonly unit?: string
  readonly describedBy?: string
  readonly label?: string
  /** What an open field says instead of that nobody knows it yet. */
  readonly open?: string
}

/**
 * Types one fact. What can be kept is in the kitchen at the next letter; half a figure waits without complaint until
 * the field is left, and is then told what is missing; what stood there before stands there again, and not the letters on
 * the way to what was meant.
 */
export function TypedInput({ id, path, sort, unit, describedBy, label, open }: Props) {
  const { value, set, problems } = useFact(path)
  const actions = useActions()
  const lengthUnit = useLengthUnit()
  const [draft, setDraft] = useState<string | null>(null)
  const [isLeft, setLeft] = useState(false)
  const read = (text: string) =>
    sort === 'text' ? textTyped(text) : sort === 'length' ? lengthTyped(text, lengthUnit) : numberTyped(text)
  const entered = draft === null ? null : read(draft)
  const why = isUnread(entered) && isLeft ? entered.why : undefined
  const because = assumedBecause(value)
  const standIn = useStandIn(path, value)
  const before = useRef<unknown>(undefined)
  const leave = () => {
    if (isUnread(entered) && value !== before.current) set(before.current, true)
    actions.settle()
    setLeft(true)
    // What was kept is shown as it was kept; what could not be stays to be mended.
    if (!isUnread(entered)) setDraft(null)
  }
  const shown = draft ?? shownTyped(value)
  const isWrong = why !== undefined || problems.length > 0
  const isAssumed = because !== undefined || (standIn !== undefined && shown === '')
  const says = [describedBy, isWrong && `${id}-wrong`, isAssumed && `${id}-assumed`]
  return (
    <span className="typed" data-sort={sort}>
      <input
        id={id}
        data-fact={path}
        type="text"
        inputMode={sort === 'number' ? 'decimal' : 'text'}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        value={shown}
        aria-label={label}
        aria-invalid={isWrong ? true : undefined}
        aria-describedby={says.filter(Boolean).join(' ') || undefined}
        data-assumed={because === undefined ? undefined : ''}
        placeholder={sort === 'text' ? undefined : (open ?? placeholder(standIn, lengthUnit))}
        data-stands-in={standIn === undefined ? undefined : ''}
        onFocus={() => {
          before.current = value
          setLeft(false)
        }}
        onBlur={leave}
        onKeyDown={(event) => undoTyping(event, () => setDraft(null))}
        onChange={({ target }) => {
          setDraft(target.value)
          const next = read(target.value)
          if (!isUnread(next)) set(next, true)
        }}
      />
      {unitShown(sort, unit, shown, lengthUnit)}
      {because !== undefined && (
        <span className="assumed" id={`${id}-assumed`}>
          assumed: {because}
          <button type="button" className="link" onClick={() => set(kept(shown, sort, lengthUnit))}>
            That is so
          </button>
        </span>
      )}
      {standIn !== undefined && shown === '' && (
        <StandInNote
          id={`${id}-assumed`}
          standIn={standIn}
          unit={lengthUnit}
          onSaid={() => {
            setDraft(null)
            set(saidSo(standIn, lengthUnit))
          }}
        />
      )}
      {isWrong && (
        <span className="wrong" id={`${id}-wrong`}>
          {why ?? problems.map((p) => `${p.message} ${mendTyped(p)}`).join(' ')}
        </span>
      )}
    </span>
  )
}

const textTyped = (text: string): Entered => (text === '' ? null : text)

function kept(shown: string, sort: 'length' | 'number' | 'text', unit: 'mm' | 'inch'): unknown {
  const read = sort === 'length' ? lengthTyped(shown, unit) : numberTyped(shown)
  return isUnread(read) ? null : read
}

/** An empty field that the planner takes a usual figure for says so in the same faint letters as an empty one; its unit stands beside it. */
const placeholder = (standIn: StandsIn | undefined, unit: Display): string =>
  standIn === undefined
    ? 'not known yet'
    : `assumed ${standsInWords({ ...standIn, pm: 0 }, unit).replace(unit === 'mm' ? / mm$/ : / in$/, '')}`

/** Escape gives the field back what is kept. */
function undoTyping(event: KeyboardEvent<HTMLInputElement>, forget: () => void): void {
  if (event.key === 'Escape') forget()
}

/** The unit behind the figure, unless it was typed with one. */
export function unitShown(sort: string, unit: string | undefined, shown: string, lengths: 'mm' | 'inch') {
  const word = sort === 'length' ? (lengths === 'inch' ? 'in' : 'mm') : unit
  if (word === undefined || word === '' || (sort === 'length' && /[a-z"']/i.test(shown))) return null
  return <span className="unit">{word}</span>
}
