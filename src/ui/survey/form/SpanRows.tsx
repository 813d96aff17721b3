import { useEffect, useId, useRef, useState } from 'react'
import type { Field, Span } from '../../../core/form/field'
import { type Across, across, edgeFromWidth, edgesFromMiddle } from '../../../core/form/span'
import { thingAt } from '../../../core/form/things'
import { type Entered, isUnread, lengthTyped, mmTyped, type Unread } from '../../../core/form/typed'
import type { Edit } from '../../../core/plan/types'
import { useActions, useApp, useNow } from '../../app-context'
import { Select } from './Choices'
import { ALONG_WAYS, HEIGHT_WAYS } from './Positions'
import { unitShown } from './TypedInput'
import { useLengthUnit } from './use-fact'

interface Props {
  /** The edge it is measured from. */
  readonly field: Field
  readonly span: Span
  readonly under: string
  readonly hasMiddle: boolean
}

/** What was typed here, as long as no edge is typed over it. */
interface Held {
  readonly width?: Entered
  readonly middle?: Entered
}

const isThere = (entered: Entered | undefined): entered is Entered => mmTyped(entered) !== undefined

/**
 * How far it is from one edge to the other, and the middle between them: beside the edges, which are what is kept. What is
 * typed here gives an edge; what is typed into the edges shows here.
 */
export function SpanRows({ field, span, under, hasMiddle }: Props) {
  const now = useNow()
  const actions = useActions()
  const known = JSON.parse(
    useApp(({ kitchen }) => JSON.stringify(across(kitchen, under, field, span))),
  ) as Across
  const edges = useApp(({ kitchen }) => edgesIn(kitchen, under, field, span))
  const [held, setHeld] = useState<Held>({})
  /** The edges as they were last seen, or written from here. */
  const seen = useRef(edges)

  const give = (next: Held, joins: string | undefined, way = known.way) => {
    setHeld(next)
    const edits = editsOf(now().kitchen, next, way)
    if (edits === undefined) return
    actions.edit(edits, joins)
    seen.current = edgesIn(now().kitchen, under, field, span)
  }
  const editsOf = (kitchen: unknown, { width, middle }: Held, way: string): readonly Edit[] | undefined => {
    if (!isThere(middle))
      return isThere(width) ? edgeFromWidth(kitchen, under, field, span, width) : undefined
    const about = isThere(width) ? width : typedBack(known.width)
    return edgesFromMiddle(kitchen, under, field, span, middle, about, way)
  }

  useEffect(() => {
    if (seen.current === edges) return
    const [, farBefore] = JSON.parse(seen.current) as readonly unknown[]
    const [, far] = JSON.parse(edges) as readonly unknown[]
    seen.current = edges
    const isNearAlone = JSON.stringify(farBefore) === JSON.stringify(far)
    // A width that was typed stays when the edge it is measured from is put right; it is the same edit.
    if (isNearAlone && isThere(held.width) && !isThere(held.middle)) give(held, now().joined ?? undefined)
    else setHeld({})
  })

  const hasNoPlace = known.width === ''
  const wants = (...labels: readonly string[]): string =>
    `Kept once it is joined by “${labels.join('” or “')}”.`
  const middleLabel = span.middle?.label ?? ''
  const acrossLabel = (hasMiddle ? span.middle?.across : undefined) ?? span.label
  return (
    <>
      {hasMiddle && (
        <SpanRow
          under={under}
          field={field}
          span={span}
          part="middle"
          label={middleLabel}
          how={span.middle?.how}
          shown={known.middle}
          waits={hasNoPlace && isThere(held.middle) ? wants(acrossLabel) : undefined}
          onTyped={(middle, joins) => give({ ...held, middle }, joins)}
          way={known.way}
          onWay={(way) => give({ ...held, middle: held.middle ?? typedBack(known.middle) }, undefined, way)}
        />
      )}
      <SpanRow
        under={under}
        field={field}
        span={span}
        part="width"
        label={acrossLabel}
        how={span.how}
        shown={known.width}
        waits={
          hasNoPlace && isThere(held.width) && !known.isNearKnown
            ? wants(...(hasMiddle ? [middleLabel] : []), field.label)
            : undefined
        }
        onTyped={(width, joins) => give({ ...held, width }, joins)}
      />
    </>
  )
}

/** What a field shows, as it was typed. */
function typedBack(shown: string): Entered {
  const read = lengthTyped(shown)
  return isUnread(read) ? null : read
}

function edgesIn(kitchen: unknown, under: string, field: Field, span: Span): string {
  return JSON.stringify([
    thingAt(kitchen, `${under}.${field.key}`) ?? null,
    thingAt(kitchen, `${under}.${span.to}`) ?? null,
  ])
}

interface RowProps {
  readonly under: string
  readonly field: Field
  readonly span: Span
  readonly part: 'width' | 'middle'
  readonly label: string
  readonly how: string | undefined
  /** Reckoned from the edges. */
  readonly shown: string
  /** What it waits for before it can be kept. */
  readonly waits: string | undefined
  readonly onTyped: (entered: Entered, joins: string) => void
  readonly way?: string
  readonly onWay?: (way: string) => void
}

function SpanRow({ under, field, span, part, label, how, shown, waits, onTyped, way, onWay }: RowProps) {
  const id = useId()
  const now = useNow()
  const actions = useActions()
  const unit = useLengthUnit()
  const [draft, setDraft] = useState<string | null>(null)
  const [isHere, setHere] = useState(false)
  const before = useRef<readonly Edit[]>([])
  const read = (text: string): Entered | Unread => {
    const entered = lengthTyped(text, unit)
    const mm = isUnread(entered) ? undefined : mmTyped(entered)
    return part === 'width' && mm !== undefined && mm <= 0
      ? { unread: true, why: `${label}: more than 0.` }
      : entered
  }
  const entered = draft === null ? null : read(draft)
  const why = isUnread(entered) && !isHere ? entered.why : undefined
  const isWaiting = waits !== undefined
  const text = isHere || isWaiting || isUnread(entered) ? (draft ?? shown) : shown
  const joins = `${under}.${field.key}:${part}`
  const says = [how !== undefined && `${id}-how`, (why !== undefined || isWaiting) && `${id}-says`]
  return (
    <div className="field" data-kind="span">
      <label htmlFor={id}>{label}</label>
      <span className="position">
        <span className="typed" data-sort="length">
          <input
            id={id}
            data-span={`${under}.${field.key}`}
            data-part={part}
            type="text"
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            value={text}
            placeholder="not known yet"
            aria-invalid={why === undefined ? undefined : true}
            aria-describedby={says.filter(Boolean).join(' ') || undefined}
            onFocus={() => {
              before.current = [field.key, span.to].map((key) => {
                const path = `${under}.${key}`
                return { set: path, to: thingAt(now().kitchen, path) }
              })
              setHere(true)
              if (!isWaiting && !isUnread(entered)) setDraft(null)
            }}
            onBlur={() => {
              // What stood there before stands there again, and not the letters on the way to what was meant.
              if (isUnread(entered)) actions.edit(before.current, joins)
              actions.settle()
              setHere(false)
            }}
            onKeyDown={({ key }) => key === 'Escape' && setDraft(null)}
            onChange={({ target }) => {
              setDraft(target.value)
              const next = read(target.value)
              if (!isUnread(next)) onTyped(next, joins)
            }}
          />
          {unitShown('length', undefined, text, unit)}
        </span>
        {onWay !== undefined && (
          <Select
            id={`${id}-way`}
            label={`${label}: measured`}
            options={field.kind === 'along' ? ALONG_WAYS : HEIGHT_WAYS}
            value={way ?? ''}
            onChoose={onWay}
          />
        )}
        {(why !== undefined || isWaiting) && (
          <span className={why === undefined ? 'waits' : 'wrong'} id={`${id}-says`}>
            {why ?? waits}
          </span>
        )}
      </span>
      {how !== undefined && (
        <p className="how" id={`${id}-how`}>
          {how}
        </p>
      )}
    </div>
  )
}
