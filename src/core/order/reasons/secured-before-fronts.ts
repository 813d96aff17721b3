import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

/** Doors pull on a unit and drawers tip it: none before it is secured. */
export const securedBeforeFronts: OrderRule = (job, work) =>
  job.units.flatMap((unit) =>
    reason({
      before: work.secured(unit.id),
      after: work.get(`hang-fronts:${unit.id}`),
      kind: 'safety',
      rule: 'secured-before-fronts',
      basis: practice('no doors on a unit that is not secured'),
      because: because('secured-before-fronts', {
        unit: unit.name,
        stripped: unit.plan.lift.massStripped,
        full: unit.plan.lift.massFull,
      }),
      facts: [
        `units.${unit.id}`,
        ...unit.unit.doors.map((door) => `units.${unit.id}.doors.${door.id}`),
        ...unit.unit.drawers.map((drawer) => `units.${unit.id}.drawers.${drawer.id}`),
      ],
    }),
  )
