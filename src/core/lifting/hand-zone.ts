import type { UnitKind } from '../kitchen/kinds'
import type { HandZone } from '../region/region'

/** Where the hands of whoever lifts a unit are at the worst moment, and where they would be with a prop under it. */
export interface Zones {
  readonly worst: HandZone
  /** With a batten, prop or blocks taking the weight while hands are moved; null: none helps. */
  readonly propped: HandZone | null
}

/**
 * The worst zone the hands pass through. Offering up a wall unit puts them at or above the shoulder; a bench or prop
 * under it keeps them just below. A base unit is lifted between knuckle and lower leg. The end of a tall unit starts at
 * the floor, below the middle of the lower leg; blocks under it bring the hands up one zone.
 *
 * Source: HSE INDG143 for the zones; which lift falls in which is common practice.
 */
export function zonesOf(kind: UnitKind, isHung: boolean): Zones {
  if (kind === 'tall') return { worst: 'below-lower-leg', propped: 'knuckle-lower-leg' }
  if (isHung || kind === 'wall' || kind === 'corner-wall' || kind === 'bridging') {
    return { worst: 'above-shoulder', propped: 'shoulder-elbow' }
  }
  return { worst: 'knuckle-lower-leg', propped: null }
}
