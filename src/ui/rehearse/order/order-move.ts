import type { Forced } from '../../../core/order/what-if'
import type { Operation, Plan } from '../../../core/plan/types'

/** The steps of one stage that are still to be done, in the plan's order: what can be put in another order by hand. */
export const stageSteps = (plan: Plan, { stage }: Operation): readonly Operation[] =>
  plan.operations.filter((o) => o.stage === stage && !o.done)

/** The list with one of it at another place. */
export function withMoved<T>(list: readonly T[], from: number, to: number): readonly T[] {
  const rest = list.filter((_, i) => i !== from)
  const moved = list[from]
  return moved === undefined ? list : [...rest.slice(0, to), moved, ...rest.slice(to)]
}

/** What the move asks for: that it comes before what stood there, or after it. Null: it stays where it is. */
export function forcedBy(list: readonly Operation[], from: number, to: number): Forced | null {
  const [moved, there] = [list[from], list[to]]
  if (moved === undefined || there === undefined || from === to) return null
  return to < from ? { before: moved.id, after: there.id } : { before: there.id, after: moved.id }
}

/** The place at which something is let go of: as many of the others as lie above it, by their middles on the screen. */
export const placeAt = (y: number, middles: readonly number[]): number => middles.filter((m) => m < y).length
