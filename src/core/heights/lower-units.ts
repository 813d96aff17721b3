import { derive, type Figure, hasValue } from '../figure'
import type { Demand } from '../plan/types'

/**
 * All demands, as demands on the heights of the kitchen: what a unit lower than the rest of its group asks of its own
 * underside is asked of the height it is level with along the top, its own height higher.
 */
export function demandsOnHeights(demands: readonly Demand[]): readonly Demand[] {
  return demands.map((demand): Demand => {
    if (demand.from !== 'line' || !demand.to.startsWith('unit:')) return demand
    const size = demands.find(
      (d) => d.from === demand.to && d.min !== null && d.min === d.max && hasValue(d.min),
    )
    if (size === undefined || size.min === null) return demand
    const own = size.min
    const higher = (limit: Figure | null) =>
      limit === null ? null : derive('mm', demand.basis, [limit, own], (a, b) => a + b)
    return { ...demand, to: size.to, min: higher(demand.min), max: higher(demand.max) }
  })
}
