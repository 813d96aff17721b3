import { assumed, derive, type Figure } from '../figure'
import type { UnitPosition } from '../units/positions'

/** A plate or bracket of sheet steel lies against the wall. */
export const PLATE_THICKNESS: Figure = assumed(2, 1, 'mm', [], {
  kind: 'common-practice',
  why: 'wall plates and brackets are of steel about 2 mm thick',
})

/** What a screw through a lower or back rail of the unit goes through before the wall: the rail, and the packing behind it. */
export function throughRail(position: Pick<UnitPosition, 'unit' | 'out'>, rail: Figure): Figure {
  return derive(
    'mm',
    { kind: 'geometry', why: 'the rail, the void behind it that is packed, and the gap to the wall' },
    [rail, position.unit.void, position.out],
    (thick, packing, gap) => (thick as number) + (packing as number) + (gap as number),
  )
}
