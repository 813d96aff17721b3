import type { ArcKind, OrderReason } from '../plan/types'

/** Which kind of reason is told first when several would do: what can hurt, then what can be proved, and so on. */
const TOLD_FIRST: readonly ArcKind[] = [
  'safety',
  'geometry',
  'support',
  'datum',
  'access',
  'service',
  'cure',
  'finish',
  'practice',
  'wish',
]

export function kindRank(kind: ArcKind): number {
  return TOLD_FIRST.indexOf(kind)
}

/** Better told first: hard before preferred, then by kind, then by id. */
export function compareReasons(a: OrderReason, b: OrderReason): number {
  if (a.hard !== b.hard) return a.hard ? -1 : 1
  return kindRank(a.kind) - kindRank(b.kind) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
}

/** Whether nothing may come between the two: the unit is held from one to the other. */
export function holds(reason: Pick<OrderReason, 'hard' | 'maxLag'>): boolean {
  return reason.hard && reason.maxLag === 0
}
