import { type Basis, type Figure, hasValue } from '../figure'
import type { Unit } from '../kitchen/schema'
import type { UnitId, UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import type { HeightsContext } from './context'
import { isHookedOn, leastRoomToHookOn, roomToHookOn, windingDown } from './demands/hook-on'

export type HookOn = NonNullable<UnitPlan['hookOn']>

const overTheTop: Basis = { kind: 'geometry', why: 'from the top of the unit to the lowest ceiling over it' }

/**
 * For every unit that hooks on from above, the room it needs over its top and the room there is. It fits with its height
 * screws wound down, too: then there is less than it needs with them in mid travel.
 */
export function hookingOn(
  context: HeightsContext,
  undersides: ReadonlyMap<UnitId, Figure>,
): ReadonlyMap<UnitId, HookOn> {
  return new Map(
    context.units
      .filter(({ group, position }) => group === 'wall' && isHookedOn(position.unit) === true)
      .map(({ id, position }): [UnitId, HookOn] => {
        const needed = roomToHookOn(position.unit)
        const top = sum('mm', overTheTop, [undersides.get(id) as Figure, position.height])
        const there = sum('mm', overTheTop, [context.ceilings.get(id) as Figure], [top])
        return [id, { needed, there, fits: fitsIn(leastRoomToHookOn(position.unit), there) }]
      }),
  )
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

function fitsIn(needed: Figure, there: Figure): HookOn['fits'] {
  if (!hasValue(needed) || !hasValue(there)) return 'not-known'
  return there.value >= needed.value ? 'yes' : 'no'
}
