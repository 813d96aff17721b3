import { derive, type Figure, hasValue } from '../figure'
import type { Unit } from '../kitchen/schema'

/**
 * The top of the highest drawer box, below the top of the carcass: the least of those stated, for the file lists drawers as
 * a set. Unknown while none is stated; null when the unit has no drawers.
 */
export function highestBox(unit: Unit): Figure | null {
  const tops = unit.drawers.map(({ boxTop }) => boxTop)
  if (tops.length === 0) return null
  const stated = tops.filter(hasValue)
  const basis = { kind: 'geometry', why: 'the highest of the drawer boxes' } as const
  return derive('mm', basis, stated.length > 0 ? stated : tops, (...values) => Math.min(...values))
}
