import { because, practice, reason } from '../reason'
import { stepsOf } from '../work'
import type { OrderRule } from './rule'

/** A unit is seen and counted before anything is done with it: what is short can still be sent. */
export const deliveryBeforeAssembly: OrderRule = (job, work) =>
  job.units.flatMap((unit) => {
    const [first] = stepsOf(work, unit)
    const built = unit.unit.assembled === 'built'
    return reason({
      before: work.get('check-delivery:room'),
      after: first,
      kind: 'support',
      rule: 'delivery-before-assembly',
      basis: practice('every box is counted before the first is opened'),
      because: because('delivery-before-assembly', { unit: unit.name, width: unit.plan.width }),
      facts: [`units.${unit.id}`, ...(built ? [`units.${unit.id}.assembled`] : [])],
    })
  })
