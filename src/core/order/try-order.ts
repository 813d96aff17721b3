import { withEdits } from '../kitchen/edit'
import { workThrough } from '../plan/entry'
import type { NoPlan, OrderReason, Plan } from '../plan/types'
import { err, ok } from '../result'
import { orderWishEdits } from './order-wish'
import { type Forced, whatIf } from './what-if'

/** What came of planning the whole work again with one operation put before another. */
export type Tried =
  /** It cannot be: these speak against it, and each of them is needed for that. */
  | { readonly kind: 'impossible'; readonly reasons: readonly OrderReason[] }
  | {
      readonly kind: 'possible'
      /** Minutes more, as reckoned; below 0: fewer. */
      readonly costs: number
      /** What of it for what: walking, tools, … */
      readonly parts: Readonly<Record<string, number>>
      /** Preferred reasons it sets aside that the plan keeps. */
      readonly setAside: readonly OrderReason[]
      /** How many operations change their places. */
      readonly moved: number
    }
  /** The kitchen file does not go together as it is. */
  | { readonly kind: 'refused' }

/**
 * What it would come to if one operation were done before another: found by planning the whole work again with that wish.
 *
 * @param kitchen the kitchen file the plan was made from, as parsed JSON
 * @param log its day log, or null
 */
export function tryOrder(kitchen: unknown, log: unknown, plan: Plan, forced: Forced): Tried {
  const outcome = workThrough(withEdits(kitchen, orderWishEdits(kitchen, forced)), log)
  if (outcome.kind === 'refused') return { kind: 'refused' }
  const again = outcome.kind === 'plan' ? ok(outcome.plan) : err(outcome.noPlan)
  const answer = whatIf(() => again, plan, forced.before, forced.after)
  if (answer.kind === 'impossible') {
    const { reasons, noPlan } = answer
    return {
      kind: 'impossible',
      reasons: reasons.length > 0 || noPlan === null ? reasons : clashing(noPlan, forced),
    }
  }
  const { moved } = answer
  if (answer.kind === 'equal') return { kind: 'possible', costs: 0, parts: {}, setAside: [], moved }
  const { costs, parts, setAside } = answer
  return { kind: 'possible', costs, parts, setAside, moved }
}

/** The reasons of the smallest clash, without the wish that was only tried. */
function clashing({ conflicts, loops, reasons }: NoPlan, { before, after }: Forced): readonly OrderReason[] {
  const [first] = conflicts
  const named = new Set(first === undefined ? [] : [...first.wishes, ...first.reasons])
  const all =
    first === undefined
      ? (loops[0] ?? [])
      : reasons.filter(({ id, kind, rule }) => named.has(id) || (kind === 'wish' && named.has(rule)))
  return all.filter((r) => !(r.kind === 'wish' && r.before === before && r.after === after))
}
