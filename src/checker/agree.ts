import type { Figure } from '../core/figure'
import type { Measure } from './measure'
import type { Refuse } from './report'

/** Two reckonings of one length agree within this, mm. */
export const NEAR = 0.05

/** Lists of the file that hold products: their sizes may be stood in for by a stated default, surveyed facts never. */
const PRODUCTS = /^(units|rails|appliances|finishing|worktops|fixings)\./

/**
 * Lays a figure of the plan beside the checker's own reckoning. A value must agree; unknown must be unknown on both
 * sides; where the file does not hold a product's size, the plan may go on with a figure it marks as assumed.
 */
export function agree(refuse: Refuse, rule: string, what: string, plan: Figure, own: Measure): void {
  const fault = disagreement(plan, own)
  if (fault !== null) refuse(rule, what, fault)
}

export function disagreement(plan: Figure, own: Measure, tolerance: number = NEAR): string | null {
  if (own.value === null) {
    if (plan.state === 'unknown') return null
    if (plan.state === 'assumed' && own.missing.every((id) => PRODUCTS.test(id))) return null
    return `the plan says ${plan.value}, yet ${own.missing.join(', ')} is not known`
  }
  if (plan.state === 'unknown') return `the plan calls it unknown, yet it works out as ${round(own.value)}`
  if (Math.abs(plan.value - own.value) > tolerance) {
    return `the plan says ${plan.value}, worked out again it is ${round(own.value)}`
  }
  return own.assumed && plan.state !== 'assumed'
    ? 'it rests on an assumed size and is not marked as assumed'
    : null
}

export function round(value: number): number {
  return Math.round(value * 1000) / 1000
}
