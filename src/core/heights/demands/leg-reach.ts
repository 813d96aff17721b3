import { factId } from '../../kitchen/fact-id'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { citing, sum } from '../../survey/sum'
import { footName } from '../../units/foot-name'
import type { StandingUnit } from '../context'
import { type Footing, footPlace } from '../footings'
import { type DemandRule, demand, geometry, notKnown } from './demand'

const reach = geometry('a leg reaches from its shortest to its longest, from the floor under its own foot')

/**
 * Every leg must reach: the underside stands no lower than the floor under its foot plus the shortest leg, and no
 * higher than that floor plus the longest. Worked at the feet, not at the corners of the unit or the readings, since
 * that is where the floor counts. A unit on legs whose feet are not known, or one not known to stand on legs at all,
 * asks for that.
 */
export const legReach: DemandRule = (context) => [
  ...context.standing.filter(({ on }) => on === 'legs').flatMap(legsOf(context.nameOf)),
  ...context.units
    .filter(({ group, position }) => group !== 'wall' && position.unit.stands === null)
    .map(({ id, underside }) => {
      const missing = notKnown([factId('units', id, 'stands')], reach)
      const because = message('heights.stands-not-known', { unit: context.nameOf(id) })
      return demand('leg-reach', {
        subject: id,
        of: underside,
        min: missing,
        because,
        basis: reach,
        about: [id],
      })
    }),
]

const legsOf =
  (nameOf: (unit: string) => string) =>
  (unit: StandingUnit): readonly Demand[] => {
    const { id, underside, footings } = unit
    if (footings.length > 0) return footings.map((foot) => reachOf(unit, foot, nameOf(id)))
    const missing = notKnown([factId('units', id, 'feet')], reach)
    const because = message('heights.feet-not-known', { unit: nameOf(id) })
    return [
      demand('leg-reach', { subject: id, of: underside, min: missing, because, basis: reach, about: [id] }),
    ]
  }

function reachOf({ id, position, underside }: StandingUnit, footing: Footing, name: string): Demand {
  const { id: foot, floor } = footing
  const { legs } = position.unit
  const standing = [factId('units', id, 'stands')]
  return demand('leg-reach', {
    subject: `${id}.${foot}`,
    of: underside,
    min: citing(sum('mm', reach, [floor, legs.min]), standing),
    max: citing(sum('mm', reach, [floor, legs.max]), standing),
    because: message('heights.leg-reach', {
      unit: name,
      foot: footName(foot, footPlace(position, footing)),
      floor,
      min: legs.min,
      max: legs.max,
    }),
    basis: reach,
    about: [id, `${id}.${foot}`],
  })
}
