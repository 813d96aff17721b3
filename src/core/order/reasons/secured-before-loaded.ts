import { operationKindFor, sitsOnWorktop } from '../../operations/finishing'
import type { Job } from '../../operations/job'
import type { OrderReason } from '../../plan/types'
import { applianceSaid } from '../../units/part-name'
import { bayFacts } from '../appliance-place'
import { because, practice, reason } from '../reason'
import type { Work } from '../work'
import type { OrderRule } from './rule'

const basis = practice('nothing is loaded into or fixed to a unit that is not secured')

/** Nothing goes into a unit, or on it, before it is secured: no appliance, no cornice. */
export const securedBeforeLoaded: OrderRule = (job, work) => [
  ...job.kitchen.appliances.flatMap((appliance) => loaded(job, work, appliance)),
  ...job.kitchen.finishing.flatMap((part) => trimmed(job, work, part)),
]

function loaded(
  job: Job,
  work: Work,
  appliance: Job['kitchen']['appliances'][number],
): readonly OrderReason[] {
  const place = bayFacts(job, appliance)
  const unit = place === null ? undefined : job.unit(place.bay)
  if (unit === undefined || place === null) return []
  return reason({
    before: work.secured(unit.id),
    after: work.get(`connect:${appliance.id}`),
    kind: 'safety',
    rule: 'secured-before-loaded',
    basis,
    because: because('secured-before-loaded', {
      unit: unit.name,
      appliance: applianceSaid(appliance),
      mass: appliance.mass,
    }),
    facts: [`appliances.${appliance.id}`, ...place.facts],
  })
}

function trimmed(job: Job, work: Work, part: Job['kitchen']['finishing'][number]): readonly OrderReason[] {
  if (operationKindFor(part) !== 'finish' || sitsOnWorktop(part)) return []
  return part.of.flatMap((id) => {
    const unit = job.unit(id)
    if (unit === undefined) return []
    return reason({
      before: work.secured(id),
      after: work.get(`finish:${part.id}`),
      kind: 'support',
      rule: 'secured-before-loaded',
      basis,
      because: because('secured-before-loaded.part', {
        unit: unit.name,
        part: part.name ?? part.id,
        top: unit.plan.top,
      }),
      facts: [`units.${id}`, `finishing.${part.id}`, `finishing.${part.id}.of`],
    })
  })
}
