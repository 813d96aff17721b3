import type { Operation, OperationId, OrderReason, Plan, Stage } from '../plan/types'
import { compareReasons } from './kinds'
import { reachOf } from './reach'

/** The parts of the fitting between which people ask why the one comes before the other. */
export type FittingPart = 'talls' | 'wall-units' | 'bases' | 'worktops' | 'fronts'

interface Part {
  readonly part: FittingPart
  readonly stages: readonly Stage[]
  /** Kinds of work that bring to its place what the part is named for: what must come before those, comes before it. */
  readonly brings: readonly string[]
  /** Only those belong to it: other work shares its stage. */
  readonly alone?: boolean
}

const PARTS: readonly Part[] = [
  { part: 'talls', stages: ['talls'], brings: ['stand-up', 'place'] },
  { part: 'wall-units', stages: ['wall-units'], brings: ['hang'] },
  { part: 'bases', stages: ['corner-base', 'base-units'], brings: ['place'] },
  { part: 'worktops', stages: ['worktops'], brings: ['worktop'] },
  { part: 'fronts', stages: ['fronts-and-plinths'], brings: ['hang-fronts'], alone: true },
]

/** Why a part of the fitting begins at an operation: the one that comes first is told against the one that comes next. */
export interface WhyStage {
  readonly part: FittingPart
  /** It comes after the other, which began last of all before it; the first of all comes before the next. */
  readonly way: 'before' | 'after'
  readonly other: FittingPart
  /**
   * `must`: some of it cannot be brought in before. `preferred`: either could come first. `against`: so could either, and
   * what is preferred is set aside. `free`: nothing in this kitchen asks for the one or the other.
   */
  readonly kind: 'must' | 'preferred' | 'against' | 'free'
  /** The reason told; null where there is none. */
  readonly reason: OrderReason | null
  /** How many more reasons of good practice say the same. */
  readonly more: number
}

interface Begun extends Part {
  readonly members: readonly Operation[]
  readonly brought: readonly Operation[]
}

/** The parts this plan has, in the order in which they begin. */
function begun(operations: readonly Operation[]): readonly Begun[] {
  const place = new Map(operations.map((operation, i) => [operation.id, i]))
  const first = ({ members }: Begun) => place.get(members[0]?.id ?? '') ?? -1
  return PARTS.map((part): Begun => {
    const inStage = operations.filter(({ stage }) => part.stages.includes(stage))
    const brought = inStage.filter(({ kind }) => part.brings.includes(kind))
    return { ...part, members: part.alone === true ? brought : inStage, brought }
  })
    .filter(({ brought }) => brought.length > 0)
    .sort((a, b) => first(a) - first(b))
}

/**
 * Why a part of the fitting begins here: with the first work of its stage, and with the first of what it is named for.
 * Null where none does, or where it is the only one.
 */
export function whyStage(plan: Pick<Plan, 'operations' | 'reasons'>, id: OperationId): WhyStage | null {
  const parts = begun(plan.operations)
  const at = parts.findIndex(({ members, brought }) => members[0]?.id === id || brought[0]?.id === id)
  const own = parts[at]
  const other = parts[at === 0 ? 1 : at - 1]
  if (own === undefined || other === undefined) return null
  const [first, then] = at === 0 ? [own, other] : [other, own]
  const told = toldBetween(plan, first, then)
  return { part: own.part, way: at === 0 ? 'before' : 'after', other: other.part, ...told }
}

type Told = Pick<WhyStage, 'kind' | 'reason' | 'more'>

function toldBetween(plan: Pick<Plan, 'operations' | 'reasons'>, first: Begun, then: Begun): Told {
  const must = hardReason(plan, first, then)
  if (must !== null) return { kind: 'must', reason: must, more: 0 }
  const place = new Map(plan.operations.map((operation, i) => [operation.id, i]))
  const isKept = (r: OrderReason) => (place.get(r.before) ?? -1) < (place.get(r.after) ?? -1)
  const kept = softReasons(plan.reasons, first, then).filter(isKept)
  const against = softReasons(plan.reasons, then, first).filter((r) => !isKept(r))
  const [kind, reasons] = kept.length > 0 ? (['preferred', kept] as const) : (['against', against] as const)
  const [reason] = reasons
  return reason === undefined
    ? { kind: 'free', reason: null, more: 0 }
    : { kind, reason, more: reasons.length - 1 }
}

/** Preferred reasons from one part into what brings in the other, the dearest first. */
function softReasons(reasons: readonly OrderReason[], from: Begun, into: Begun): readonly OrderReason[] {
  const before = new Set(from.members.map((o) => o.id))
  const after = new Set(into.brought.map((o) => o.id))
  return reasons
    .filter((r) => !r.hard && r.cost > 0 && before.has(r.before) && after.has(r.after))
    .sort((a, b) => b.cost - a.cost || compareReasons(a, b))
}

/** Of the chains of hard reasons from one part to what brings in the other, the last link of the shortest. */
function hardReason(
  plan: Pick<Plan, 'operations' | 'reasons'>,
  first: Begun,
  then: Begun,
): OrderReason | null {
  const reach = reachOf(
    plan.operations.map((o) => o.id),
    plan.reasons,
  )
  const chains = then.brought.flatMap(({ id }) => {
    const before = reach.before(id)
    return first.members.flatMap((o) => (before.has(o.id) ? [reach.chain(o.id, id) ?? []] : []))
  })
  const [shortest] = chains
    .flatMap((chain) => {
      const last = chain.at(-1)
      return last === undefined ? [] : [{ length: chain.length, last }]
    })
    .sort((a, b) => a.length - b.length || compareReasons(a.last, b.last))
  return shortest?.last ?? null
}
