import { because, geometry, reason } from '../reason'
import { stepsOf } from '../work'
import type { OrderRule } from './rule'

/** A carcass is whole and square before legs or hangers go on it and before it goes anywhere. */
export const assembledBeforePlaced: OrderRule = (job, work) =>
  job.units.flatMap((unit) => {
    const [first, next] = stepsOf(work, unit)
    if (first?.kind !== 'assemble') return []
    return reason({
      before: first,
      after: next,
      kind: 'support',
      rule: 'assembled-before-placed',
      basis: geometry('a flat pack has nothing to stand, hang or fix by'),
      because: because('assembled-before-placed', {
        unit: unit.name,
        width: unit.plan.width,
        height: unit.plan.height,
      }),
      facts: [`units.${unit.id}`],
    })
  })
