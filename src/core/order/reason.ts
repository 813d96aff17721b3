import type { Basis, Figure, InputId } from '../figure'
import { type Message, type MessageValue, message } from '../message'
import { isFigure } from '../operations/make'
import { restsOn } from '../operations/rests-on'
import type { ArcKind, Operation, OrderReason } from '../plan/types'

/** Why one operation comes before another, as its rule says it. */
export interface ReasonDraft {
  readonly before: Operation | undefined
  readonly after: Operation | undefined
  readonly kind: ArcKind
  readonly rule: string
  readonly basis: Basis
  readonly because: Message
  /** Facts that make it exist, beside those its figures came from. */
  readonly facts: readonly InputId[]
  /** Further figures it rests on; those said in `because` are counted by themselves. */
  readonly figures?: readonly Figure[]
  /** Preferred, at this cost in minutes; left out: hard. */
  readonly cost?: number
  /** Longest wait between the two; 0: nothing comes between. */
  readonly maxLag?: number
}

/** The reason, where both its operations exist. */
export function reason(draft: ReasonDraft): readonly OrderReason[] {
  const { before, after, kind, rule, because } = draft
  if (before === undefined || after === undefined || before.id === after.id) return []
  const figures = [...Object.values(because.values).filter(isFigure), ...(draft.figures ?? [])]
  return [
    {
      id: `${before.id} < ${after.id}: ${kind}.${rule}`,
      before: before.id,
      after: after.id,
      kind,
      rule,
      hard: draft.cost === undefined,
      cost: draft.cost ?? 0,
      basis: draft.basis,
      from: restsOn(draft.facts, figures),
      figures,
      because,
      minLag: 0,
      maxLag: draft.maxLag ?? null,
    },
  ]
}

type Values = Readonly<Record<string, MessageValue>>

/** `because.<rule>`; while one of its figures is not known yet, `because.<rule>.unknown`. */
export function because(rule: string, values: Values): Message {
  const open = Object.values(values).some((value) => isFigure(value) && value.state === 'unknown')
  return message(`because.${rule}${open ? '.unknown' : ''}`, values)
}

export const practice = (why: string): Basis => ({ kind: 'common-practice', why: `common practice: ${why}` })
export const geometry = (why: string): Basis => ({ kind: 'geometry', why })
