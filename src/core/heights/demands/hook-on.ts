import { type Basis, type Figure, hasValue } from '../../figure'
import { factId } from '../../kitchen/fact-id'
import type { Unit } from '../../kitchen/schema'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { citing, sum } from '../../survey/sum'
import type { HeightsContext } from '../context'
import { type GroupedUnit, TOP } from '../groups'
import { type DemandRule, demand, exactly, notKnown } from './demand'

const room: Basis = {
  kind: 'common-practice',
  why: 'to hook on, a unit is lifted over its place by its hook lift, and 10 mm are kept for fingers and a ceiling that is not flat',
}
/** mm over the lifted unit. */
const FINGERS = exactly(10, room)

const HOOKED_ON = new Set<Unit['stands']>(['plates', 'rail', 'cleat'])

/** Whether a unit is hooked on from above; undefined when it is not known how it hangs. */
export function isHookedOn({ stands }: Pick<Unit, 'stands'>): boolean | undefined {
  return stands === null ? undefined : HOOKED_ON.has(stands)
}

/** Room a unit needs over its own top while it is hooked on. */
export function roomToHookOn({ id, hanging }: Pick<Unit, 'id' | 'hanging'>): Figure {
  return citing(sum('mm', room, [hanging.hookLift, FINGERS]), [factId('units', id, 'stands')])
}

/** Hangers whose height screw lets the unit hang lower while it is hooked on. */
const WITH_SCREWS = new Set<Unit['stands']>(['plates', 'rail'])

/**
 * How far the height screws of a unit can be wound down before it is hooked on: it goes on that much lower, and is wound
 * up again once it hangs. Nothing where there are none, or where their travel is not known.
 */
export function windingDown({ stands, hanging }: Pick<Unit, 'stands' | 'hanging'>): Figure {
  const { down } = hanging
  const canBeWound = WITH_SCREWS.has(stands) && hasValue(down)
  return canBeWound ? down : exactly(0, room, down.from)
}

/** The same room with its height screws wound right down first. */
export function leastRoomToHookOn(unit: Pick<Unit, 'id' | 'stands' | 'hanging'>): Figure {
  return sum('mm', room, [roomToHookOn(unit)], [windingDown(unit)])
}

/** A unit that hooks on from above must be lifted over its place first: that room must be there under the ceiling. */
export const hookOn: DemandRule = (context) =>
  context.units
    .filter(({ group, position }) => group === 'wall' && isHookedOn(position.unit) !== false)
    .map((unit) => under(context, unit))

/**
 * The room to hook on with the screws where they will stay. Preferred: winding them down and up again costs minutes. What
 * is not known of it is asked for by the other demand.
 */
export const hookOnMid: DemandRule = ({ units, ceilings, nameOf }) =>
  units
    .filter(({ group, position }) => {
      const down = windingDown(position.unit)
      return group === 'wall' && hasValue(down) && down.value > 0
    })
    .flatMap(({ id, group, position }) => {
      const [lowest, needed] = [ceilings.get(id) as Figure, roomToHookOn(position.unit)]
      const max = sum('mm', room, [lowest], [needed])
      if (!hasValue(max)) return []
      return demand('hook-on-mid', {
        subject: id,
        of: TOP[group],
        max,
        because: message('heights.hook-on-mid', { unit: nameOf(id), ceiling: lowest, needed }),
        basis: room,
        about: [id],
        hard: false,
      })
    })

function under({ ceilings, nameOf }: HeightsContext, { id, group, position }: GroupedUnit): Demand {
  const { unit } = position
  const lowest = ceilings.get(id) as Figure
  const needed = leastRoomToHookOn(unit)
  const hangs = isHookedOn(unit) !== undefined
  return demand('hook-on', {
    subject: id,
    of: TOP[group],
    max: hangs ? sum('mm', room, [lowest], [needed]) : notKnown([factId('units', id, 'stands')], room),
    because: hangs
      ? message('heights.hook-on', { unit: nameOf(id), ceiling: lowest, needed })
      : message('heights.stands-not-known', { unit: nameOf(id) }),
    basis: room,
    about: [id],
  })
}
