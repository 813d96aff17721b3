import { legName } from '../../operations/leg-name'
import { legsWoundIn } from '../../operations/legs-and-hangers'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

/** Legs are on, and wound to their figures, before a unit stands on them: under a unit they are hard to reach. */
export const legsBeforePlaced: OrderRule = (job, work) =>
  job.units.flatMap((unit) => {
    const [first] = unit.plan.legs
    if (first === undefined) return []
    const woundIn = legsWoundIn(unit)
    return reason({
      before: work.get(`set-legs:${unit.id}`),
      after: work.bringIn(unit.id),
      kind: 'datum',
      rule: 'legs-before-placed',
      basis: practice('legs are set to their figures before the unit stands on them'),
      because: because(woundIn ? 'legs-before-placed.wound-in' : 'legs-before-placed', {
        unit: unit.name,
        foot: legName(unit, first),
        extension: woundIn ? first.min : first.extension,
      }),
      facts: [`units.${unit.id}`],
      figures: unit.plan.legs.map((leg) => (woundIn ? leg.min : leg.extension)),
    })
  })
