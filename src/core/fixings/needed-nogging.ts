import type { Figure } from '../figure'
import type { UnitId, WallId } from '../plan/types'
import type { UnitPosition } from '../units/positions'
import type { FixingPurpose } from './choose-fixing'

/** Timber or board to be let in behind a unit before it can be fixed: the work that would mend a lack of studs. */
export interface NeededNogging {
  readonly id: string
  readonly wall: WallId
  readonly unit: UnitId
  readonly purpose: FixingPurpose
  readonly from: Figure
  readonly to: Figure
  readonly height: Figure
}

/** Behind the whole width of the unit, at the height of the fixings that want it. */
export function neededNogging(position: UnitPosition, purpose: FixingPurpose, height: Figure): NeededNogging {
  return {
    id: `nogging-${position.unit.id}-${purpose}`,
    wall: position.unit.wall,
    unit: position.unit.id,
    purpose,
    from: position.left,
    to: position.right,
    height,
  }
}
