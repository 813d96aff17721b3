import { isHungByHoles } from '../../operations/connect'
import type { Job } from '../../operations/job'
import { isElectrical } from '../../operations/make-safe'
import type { OrderReason } from '../../plan/types'
import { applianceSaid } from '../../units/part-name'
import { madeBy } from '../made-by'
import { because, practice, reason } from '../reason'
import { holesOf, type Work } from '../work'
import { workedOn } from '../worked-on'
import type { OrderRule } from './rule'

const offUntilTheLast = practice('nothing is switched on while there is still a hole to drill in these walls')

/** The supply comes back after the last hole, those of a hood among them, and before whatever is tried as it is connected. */
export const supplyRestored: OrderRule = (job, work) => [
  ...afterDrilling(job, work),
  ...afterHoods(job, work),
  ...betweenOffAndHandOver(job, work),
  ...beforeAppliances(job, work),
]

function afterDrilling(job: Job, work: Work): readonly OrderReason[] {
  return work.drilling.flatMap((operation) => {
    const holes = holesOf(work, operation)
    return reason({
      before: operation,
      after: work.get('restore-supply:room'),
      kind: 'safety',
      rule: 'supply-after-holes',
      basis: offUntilTheLast,
      because:
        holes.length === 0
          ? because('supply-after-holes.no-hole-yet', { what: workedOn(job, operation) })
          : because('supply-after-holes', { what: workedOn(job, operation), count: holes.length }),
      facts: madeBy(job, operation),
      figures: holes.map((hole) => hole.depth),
    })
  })
}

/** A hood is hung, and its wires joined, by holes marked from its own sheet: while everything is still off. */
function afterHoods(job: Job, work: Work): readonly OrderReason[] {
  return job.kitchen.appliances.filter(isHungByHoles).flatMap((appliance) =>
    reason({
      before: work.get(`connect:${appliance.id}`),
      after: work.get('restore-supply:room'),
      kind: 'safety',
      rule: 'supply-after-holes',
      basis: offUntilTheLast,
      because: because('supply-after-holes.no-hole-yet', { what: applianceSaid(appliance) }),
      facts: [`appliances.${appliance.id}`, `appliances.${appliance.id}.kind`],
    }),
  )
}

/** Off before on again; and the room is handed over with its supply on. What it was made off for makes both. */
function betweenOffAndHandOver(job: Job, work: Work): readonly OrderReason[] {
  const restored = work.get('restore-supply:room')
  const drilled = work.drilling
  const facts =
    drilled.length > 0 ? drilled.flatMap((o) => madeBy(job, o)) : job.units.map((u) => `units.${u.id}`)
  const count = drilled.length
  return [
    ...reason({
      before: work.get('isolate:room'),
      after: restored,
      kind: 'safety',
      rule: 'supply-after-holes',
      basis: offUntilTheLast,
      because: because('supply-after-holes.off-first', { count }),
      facts,
    }),
    ...reason({
      before: restored,
      after: work.get('snag:room'),
      kind: 'finish',
      rule: 'snag-last',
      basis: practice('a kitchen is handed over with its supply on'),
      because: because('snag-last.supply', { count }),
      facts,
    }),
  ]
}

function beforeAppliances(job: Job, work: Work): readonly OrderReason[] {
  const tried = job.kitchen.appliances.filter((a) => isElectrical(a) && !isHungByHoles(a))
  return tried.flatMap((appliance) =>
    reason({
      before: work.get('restore-supply:room'),
      after: work.get(`connect:${appliance.id}`),
      kind: 'service',
      rule: 'supply-before-connect',
      basis: practice('an appliance is tried as soon as it is connected, which wants the supply'),
      because: because('supply-before-connect', { appliance: applianceSaid(appliance) }),
      facts: [`appliances.${appliance.id}`, `appliances.${appliance.id}.fuel`],
    }),
  )
}
