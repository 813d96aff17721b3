import type { NoPlan, OperationId, OrderReason, Plan } from '../plan/types'
import type { Result } from '../result'
import { loopsIn } from './graph'
import { movedFrom } from './keep'
import { compareReasons } from './kinds'
import { quickXplain } from './quick-xplain'
import { reachOf } from './reach'

/** Two operations forced to be done one before the other, whatever speaks against it. */
export interface Forced {
  readonly before: OperationId
  readonly after: OperationId
}

/** Plans the same kitchen again with one pair forced: as a wish that must hold. */
export type Replan = (forced: Forced) => Result<Plan, NoPlan>

/** What comes of doing it the other way. */
export type WhatIf =
  /** It cannot be done: these facts speak against it, and each of them is needed for that. */
  | { readonly kind: 'impossible'; readonly reasons: readonly OrderReason[]; readonly noPlan: NoPlan | null }
  /** It can be done, at this many minutes more. */
  | {
      readonly kind: 'possible'
      readonly costs: number
      readonly parts: Readonly<Record<string, number>>
      /** Preferred reasons it sets aside that the plan keeps. */
      readonly setAside: readonly OrderReason[]
      /** How many operations are not in their old order. */
      readonly moved: number
      readonly plan: Plan
    }
  /** Either order is fine. */
  | { readonly kind: 'equal'; readonly moved: number; readonly plan: Plan }

/** Less than this is no difference, in minutes as reckoned. */
const SAME = 0.5

/** "What if I did it the other way?" Answered by really planning it. */
export function whatIf(replan: Replan, plan: Plan, before: OperationId, after: OperationId): WhatIf {
  const again = replan({ before, after })
  if (!again.ok) {
    return { kind: 'impossible', reasons: against(plan, before, after), noPlan: again.error }
  }
  const other = again.value
  const moved = movedBetween(plan, other)
  const costs = other.order.cost - plan.order.cost
  if (Math.abs(costs) < SAME) return { kind: 'equal', moved, plan: other }
  const was = new Set(plan.order.setAside)
  const names = new Set([...Object.keys(plan.order.parts), ...Object.keys(other.order.parts)])
  return {
    kind: 'possible',
    costs,
    parts: Object.fromEntries(
      [...names].map((name) => [name, (other.order.parts[name] ?? 0) - (plan.order.parts[name] ?? 0)]),
    ),
    setAside: other.order.setAside
      .filter((id) => !was.has(id))
      .flatMap((id) => plan.reasons.find((reason) => reason.id === id) ?? []),
    moved,
    plan: other,
  }
}

/** The fewest hard reasons that make a come after b, so that it cannot come before it. None: nothing in the order does. */
export function against(
  plan: Pick<Plan, 'operations' | 'reasons'>,
  before: OperationId,
  after: OperationId,
): readonly OrderReason[] {
  const ids = plan.operations.map((operation) => operation.id)
  const chain = reachOf(ids, plan.reasons).chain(after, before)
  if (chain === null) return []
  const facts = [...chain].sort(compareReasons)
  const forced = forcedReason(before, after)
  return quickXplain(facts, (some) => loopsIn(ids, [...some, forced]).length === 0) ?? chain
}

function forcedReason(before: OperationId, after: OperationId): OrderReason {
  return {
    id: `${before} < ${after}: wish.forced`,
    before,
    after,
    kind: 'wish',
    rule: 'forced',
    hard: true,
    cost: 0,
    basis: { kind: 'wish' },
    from: [],
    figures: [],
    because: { key: 'because.wish', values: { wish: 'forced' } },
    minLag: 0,
    maxLag: null,
  }
}

function movedBetween(plan: Plan, other: Plan): number {
  const numbers = new Map(other.operations.map((operation, i) => [operation.id, i]))
  const place = new Int32Array(other.operations.length).fill(-1)
  plan.operations.forEach((operation, i) => {
    const number = numbers.get(operation.id)
    if (number !== undefined) place[number] = i
  })
  return movedFrom(place, Int32Array.from(other.operations.keys()))
}
