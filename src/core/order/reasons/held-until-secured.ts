import { unitItself } from '../made-by'
import { because, practice, reason } from '../reason'
import { heldSteps } from '../work'
import type { OrderRule } from './rule'

/**
 * From the moment a unit is hooked on or stood up until it is secured somebody holds it, so nothing of another unit
 * comes between. Hooked is not secured; a tall tips.
 */
export const heldUntilSecured: OrderRule = (job, work) =>
  job.units.flatMap((unit) => {
    const steps = heldSteps(work, unit)
    return steps.slice(1).flatMap((after, i) =>
      reason({
        before: steps[i],
        after,
        kind: 'safety',
        rule: 'held-until-secured',
        basis: practice('nobody lets go of a unit before it is secured'),
        because: because(`held-until-secured.${unit.way === 'tall' ? 'tall' : 'hung'}`, {
          unit: unit.name,
          mass: unit.plan.lift.massStripped,
        }),
        facts: unitItself(unit),
        maxLag: 0,
      }),
    )
  })
