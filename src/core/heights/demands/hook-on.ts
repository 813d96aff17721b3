import type { Basis, Figure } from '../../figure'
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

/** A unit that hooks on from above must be lifted over its place first: that room must be there under the ceiling. */
export const hookOn: DemandRule = (context) =>
  context.units
    .filter(({ group, position }) => group === 'wall' && isHookedOn(position.unit) !== false)
    .map((unit) => under(context, unit))

function under({ ceilings, nameOf }: HeightsContext, { id, group, position }: GroupedUnit): Demand {
  const { unit } = position
  const lowest = ceilings.get(id) as Figure
  const needed = roomToHookOn(unit)
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
