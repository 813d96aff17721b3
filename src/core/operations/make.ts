import { derive, type Figure, hasValue, type InputId, known } from '../figure'
import { type Message, type MessageValue, message } from '../message'
import type { Caution, NamedFigure, Operation, OperationCheck, Stage, StateChange } from '../plan/types'
import { helperWindows } from './helper-windows'
import type { Job } from './job'
import type { Minutes } from './minutes'
import { restsOn } from './rests-on'
import type { Sign } from './signs'
import type { Tool } from './tools'

/** What a maker says of an operation; everything left out is none. */
export interface Draft {
  readonly kind: string
  readonly on: readonly string[]
  readonly stage: Stage
  readonly title: Message
  readonly does: readonly Message[]
  readonly minutes: Minutes
  /** Facts that make it exist or set it, beside those its figures came from. */
  readonly facts: readonly InputId[]
  readonly figures?: readonly NamedFigure[]
  readonly checks?: readonly OperationCheck[]
  readonly cautions?: readonly Caution[]
  readonly tools?: readonly Tool[]
  readonly people?: number
  readonly trade?: Operation['trade']
  readonly holdPoint?: boolean
  readonly changes?: readonly StateChange[]
  readonly path?: number | null
  readonly holding?: readonly string[]
  readonly lines?: readonly string[]
  readonly marks?: readonly string[]
  readonly holes?: readonly string[]
  readonly rails?: readonly string[]
  readonly wall?: string | null
}

/** An operation, whole. Its id is its kind and what it acts on, so it stays the same when the list round it changes. */
export function operation(job: Job, draft: Draft): Operation {
  const id = `${draft.kind}:${draft.on.join('+')}`
  const figures = draft.figures ?? []
  const said = draft.does.flatMap((m) => Object.values(m.values)).filter(isFigure)
  return {
    id,
    kind: draft.kind,
    on: draft.on,
    stage: draft.stage,
    title: draft.title,
    does: draft.does,
    figures,
    checks: draft.checks ?? [],
    cautions: [...(draft.cautions ?? []), ...helperWindows(job.kitchen, draft.people ?? 1)],
    tools: draft.tools ?? [],
    people: draft.people ?? 1,
    trade: draft.trade ?? null,
    minutes: draft.minutes,
    holdPoint: draft.holdPoint ?? false,
    stops: [],
    changes: draft.changes ?? [],
    path: draft.path ?? null,
    holding: draft.holding ?? [],
    lines: draft.lines ?? [],
    marks: draft.marks ?? [],
    holes: draft.holes ?? [],
    rails: draft.rails ?? [],
    wall: draft.wall ?? null,
    from: restsOn(draft.facts, [...figures.map((f) => f.figure), ...said]),
    done: job.context.achieved.done.has(id),
  }
}

export function isFigure(value: MessageValue): value is Figure {
  return typeof value === 'object'
}

/** A figure shown at the step. `label` says what it is and what it is measured from. */
export function shown(
  name: string,
  figure: Figure,
  label: string,
  values: Readonly<Record<string, MessageValue>> = {},
): NamedFigure {
  return { name, figure, label: message(`label.${label}`, values) }
}

export function check(
  id: string,
  ask: string,
  values: Readonly<Record<string, MessageValue>> = {},
  target: Figure | null = null,
  tolerance: Figure | null = null,
): OperationCheck {
  return { id, ask: message(`check.${ask}`, values), target, tolerance }
}

/** A caution under its sign; `what` is the sentence that goes with it. */
export function caution(
  sign: Sign,
  what: string,
  values: Readonly<Record<string, MessageValue>> = {},
): Caution {
  return { sign, say: message(`caution.${what}`, values) }
}

/** How many there are of something, and the facts that make them. */
export function counted(count: number, from: readonly InputId[]): Figure {
  return known(count, 0, 'count', from, { kind: 'geometry', why: 'counted' })
}

/** The largest of the known figures; unknown when any of them is, for the one not known may be the largest. */
export function largest(figures: readonly Figure[]): Figure | null {
  const [first] = figures
  if (first === undefined) return null
  return derive(first.unit, { kind: 'geometry', why: 'the largest of them' }, figures, (...v) =>
    Math.max(...v),
  )
}

/** The figures of one kind on which people depend, without repeats of the same value. */
export function distinct(figures: readonly Figure[]): readonly Figure[] {
  const seen = new Set<string>()
  return figures.filter((f) => {
    const key = hasValue(f) ? String(f.value) : `unknown ${f.missing.join()}`
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

type Values = Readonly<Record<string, MessageValue>>

/** A sentence of one kind of operation: `operation.<kind>.<part>`. */
export const told = (kind: string, part: string, values: Values = {}): Message =>
  message(`operation.${kind}.${part}`, values)

/** One sentence if it applies. */
export const when = <T>(applies: boolean, ...what: readonly T[]): readonly T[] => (applies ? what : [])

/**
 * A sentence that says a figure, or, while one of its figures is not known, the sentence that says what to do about
 * that: `operation.<kind>.<part>.unknown`.
 */
export function toldFigure(kind: string, part: string, values: Values): Message {
  const open = Object.values(values).some((v) => isFigure(v) && v.state === 'unknown')
  return told(kind, open ? `${part}.unknown` : part, values)
}
