import { applianceSaid } from '../../units/part-name'
import { underWorktop } from '../appliance-place'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

/** A sink or hob sits in the worktop; an appliance in a bay is held by its underside. */
export const worktopBeforeAppliance: OrderRule = (job, work) =>
  job.kitchen.worktops.flatMap((top) =>
    job.kitchen.appliances.flatMap((appliance) => {
      const facts = underWorktop(job, top, appliance)
      if (facts === null) return []
      return reason({
        before: work.get(`worktop:${top.id}`),
        after: work.get(`connect:${appliance.id}`),
        kind: 'support',
        rule: 'worktop-before-appliance',
        basis: practice('the worktop carries it, or holds it in its bay'),
        because: because('worktop-before-appliance', {
          appliance: applianceSaid(appliance),
          worktop: top.name ?? top.id,
          thickness: top.thickness,
        }),
        facts: [`worktops.${top.id}`, `appliances.${appliance.id}`, ...facts],
      })
    }),
  )
