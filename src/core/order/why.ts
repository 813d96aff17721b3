import type { OperationId, OrderReason, Plan } from '../plan/types'
import { compareReasons } from './kinds'
import { reachOf } from './reach'

type Ordered = Pick<Plan, 'operations' | 'reasons'>

/** Why an operation comes now. */
export interface Why {
  readonly operation: OperationId
  /** The one reason told at the step: what was done last of all that it had to wait for. Null: nothing holds it. */
  readonly because: OrderReason | null
  /** Why its stage comes after another, where the operation itself shows it: talls before wall units, those before bases. */
  readonly stage: OrderReason | null
  /** Every reason into it, those told first in front. */
  readonly into: readonly OrderReason[]
  /** From the first thing of all to this, one reason after another. */
  readonly chain: readonly OrderReason[]
}

const placesIn = ({ operations }: Ordered) => new Map(operations.map((operation, i) => [operation.id, i]))

/** Of the reasons into an operation that the plan keeps, the one whose other side was done last; hard ones first. */
function latestInto(into: readonly OrderReason[], at: ReadonlyMap<OperationId, number>): OrderReason | null {
  const place = (id: OperationId) => at.get(id) ?? -1
  const kept = into.filter((reason) => place(reason.before) < place(reason.after))
  const hard = kept.filter((reason) => reason.hard)
  const [latest] = [...(hard.length > 0 ? hard : kept)].sort(
    (a, b) => place(b.before) - place(a.before) || compareReasons(a, b),
  )
  return latest ?? null
}

/** Of what is preferred and kept, the reason whose other side belongs to another stage, done last. */
function stageReason(
  { operations }: Ordered,
  into: readonly OrderReason[],
  at: ReadonlyMap<OperationId, number>,
): OrderReason | null {
  const stageOf = (id: OperationId) => operations[at.get(id) ?? -1]?.stage
  return latestInto(
    into.filter((reason) => !reason.hard && stageOf(reason.before) !== stageOf(reason.after)),
    at,
  )
}

/** "Why now?" Undefined for an operation the plan does not have. */
export function why(plan: Ordered, id: OperationId): Why | undefined {
  const at = placesIn(plan)
  if (!at.has(id)) return undefined
  const intoOf = (of: OperationId) => plan.reasons.filter((reason) => reason.after === of)
  const chain: OrderReason[] = []
  for (let last = latestInto(intoOf(id), at); last !== null; last = latestInto(intoOf(last.before), at)) {
    chain.unshift(last)
  }
  return {
    operation: id,
    because: chain.at(-1) ?? null,
    stage: stageReason(plan, intoOf(id), at),
    into: intoOf(id).sort(compareReasons),
    chain,
  }
}

/** Why one operation comes before another, or why it does not have to. */
export type WhyBefore =
  /** It must: by these, one after another. */
  | { readonly kind: 'must'; readonly reasons: readonly OrderReason[] }
  /** The other way round is what must be: by these. */
  | { readonly kind: 'must-not'; readonly reasons: readonly OrderReason[] }
  /** It need not, but is preferred. */
  | { readonly kind: 'preferred'; readonly reasons: readonly OrderReason[] }
  /** Either order is fine: nothing is between them. */
  | { readonly kind: 'free' }

/** "Why is a before b?" The shortest chain; of equally short ones that told first: safety, geometry, … */
export function whyBefore(plan: Ordered, a: OperationId, b: OperationId): WhyBefore {
  const reach = reachOf(
    plan.operations.map((operation) => operation.id),
    plan.reasons,
  )
  const must = reach.chain(a, b)
  if (must !== null) return { kind: 'must', reasons: must }
  const mustNot = reach.chain(b, a)
  if (mustNot !== null) return { kind: 'must-not', reasons: mustNot }
  const preferred = plan.reasons
    .filter((reason) => reason.before === a && reason.after === b)
    .sort(compareReasons)
  return preferred.length > 0 ? { kind: 'preferred', reasons: preferred } : { kind: 'free' }
}

/** Why an operation cannot be done first of all. */
export interface WhyNotFirst {
  readonly operation: OperationId
  /** Everything that must come before it, in the plan's order. */
  readonly first: readonly OperationId[]
  /**
   * Of what is not done yet, the fewest reasons that hold it back: one for each operation it waits for directly and not
   * by way of another. All of them would have to go; none of them is there twice.
   */
  readonly blocking: readonly OrderReason[]
}

/** "Why not first?" Undefined for an operation the plan does not have. */
export function whyNotFirst(plan: Ordered, id: OperationId): WhyNotFirst | undefined {
  if (!plan.operations.some((operation) => operation.id === id)) return undefined
  const ids = plan.operations.map((operation) => operation.id)
  const reach = reachOf(ids, plan.reasons)
  const before = reach.before(id)
  const done = new Set(plan.operations.filter((o) => o.done).map((o) => o.id))
  const direct = plan.reasons
    .filter((reason) => reason.hard && reason.after === id && !done.has(reason.before))
    .sort(compareReasons)
  const waitedFor = [...new Set(direct.map((reason) => reason.before))]
  const behind = new Set(waitedFor.flatMap((other) => [...reach.before(other)]))
  return {
    operation: id,
    first: ids.filter((other) => before.has(other)),
    blocking: waitedFor
      .filter((other) => !behind.has(other))
      .flatMap((other) => direct.find((reason) => reason.before === other) ?? []),
  }
}
