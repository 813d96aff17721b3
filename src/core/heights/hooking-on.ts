import { type Basis, type Figure, hasValue } from '../figure'
import type { Unit } from '../kitchen/schema'
import { type BoxOnWall, boxesOnWalls } from '../placing/boxes-on-walls'
import { lapOf, meeting } from '../placing/laps'
import type { UnitId, UnitPlan } from '../plan/types'
import { lowestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import type { UnitPosition } from '../units/positions'
import type { HeightsContext } from './context'
import { isHookedOn, leastRoomToHookOn, roomToHookOn, windingDown } from './demands/hook-on'
import type { GroupedUnit } from './groups'

export type HookOn = NonNullable<UnitPlan['hookOn']>

const overTheTop: Basis = {
  kind: 'geometry',
  why: 'from the top of the unit to the lowest of the ceiling and the boxings over it',
}

/**
 * For every unit that hooks on from above, the room it needs over its top and the room there is, under the ceiling and
 * under any boxing or beam over a part of it. It fits with its height screws wound down, too: then there is less than it
 * needs with them in mid travel.
 */
export function hookingOn(
  context: HeightsContext,
  undersides: ReadonlyMap<UnitId, Figure>,
): ReadonlyMap<UnitId, HookOn> {
  const boxes = boxesOnWalls(context.kitchen, context.survey)
  return new Map(
    context.units
      .filter(({ group, position }) => group === 'wall' && isHookedOn(position.unit) === true)
      .map((unit): [UnitId, HookOn] => {
        const { id, position } = unit
        const needed = roomToHookOn(position.unit)
        const top = topOf(unit, undersides)
        const under = [roomUnderCeiling(context, undersides, unit), ...roomUnderBoxes(position, top, boxes)]
        const there = lowestOf('mm', overTheTop, under)
        return [id, { needed, there, fits: fitsIn(leastRoomToHookOn(position.unit), there) }]
      }),
  )
}

function topOf({ id, position }: GroupedUnit, undersides: ReadonlyMap<UnitId, Figure>): Figure {
  return sum('mm', overTheTop, [undersides.get(id) as Figure, position.height])
}

/** Room between the top of a unit and the ceiling over it alone. */
export function roomUnderCeiling(
  { ceilings }: HeightsContext,
  undersides: ReadonlyMap<UnitId, Figure>,
  unit: GroupedUnit,
): Figure {
  return sum('mm', overTheTop, [ceilings.get(unit.id) as Figure], [topOf(unit, undersides)])
}

/** The same to each box on its wall that lies over some part of it, by the readings or perhaps; what it stands in is another matter. */
function roomUnderBoxes(
  { unit, left, right, out, depth }: UnitPosition,
  top: Figure,
  boxes: readonly BoxOnWall[],
): readonly Figure[] {
  const front = sum('mm', overTheTop, [out, depth])
  return boxes.flatMap((box) => {
    const along = lapOf({ from: left, to: right }, { from: box.left, to: box.right })
    const deep = lapOf({ from: out, to: front }, { from: box.near, to: box.out })
    const room = sum('mm', overTheTop, [box.bottom], [top])
    const isOver = box.wall === unit.wall && !['no', 'not-known'].includes(meeting([along, deep]))
    return isOver && hasValue(room) && room.value >= 0 ? [room] : []
  })
}

/** How far a unit's height screws have to be wound down first, all the way; null where it goes on as it is. */
export function woundDownToHookOn(
  unit: Pick<Unit, 'stands' | 'hanging'>,
  hookOn: UnitPlan['hookOn'],
): Figure | null {
  if (hookOn === null || hookOn.fits !== 'yes') return null
  const { needed, there } = hookOn
  return hasValue(needed) && hasValue(there) && there.value < needed.value ? windingDown(unit) : null
}

export function fitsIn(needed: Figure, there: Figure): HookOn['fits'] {
  if (!hasValue(needed) || !hasValue(there)) return 'not-known'
  return there.value >= needed.value ? 'yes' : 'no'
}
