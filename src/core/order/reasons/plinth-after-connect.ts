import type { InputId } from '../../figure'
import type { Job } from '../../operations/job'
import { applianceSaid } from '../../units/part-name'
import { bayFacts } from '../appliance-place'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 10

type Appliance = Job['kitchen']['appliances'][number]

/** Pipes are tested before the plinth hides them. Preferred: it can be unclipped again. */
export const plinthAfterConnect: OrderRule = (job, work) =>
  job.kitchen.finishing
    .filter((part) => part.kind === 'plinth')
    .flatMap((part) =>
      job.kitchen.appliances.flatMap((appliance) => {
        const facts = behindPlinth(job, part.of, appliance)
        if (facts === null) return []
        return reason({
          before: work.get(`connect:${appliance.id}`),
          after: work.get(`plinth:${part.id}`),
          kind: 'service',
          rule: 'plinth-after-connect',
          basis: practice('leaks are looked for before the plinth goes on'),
          because: because('plinth-after-connect', {
            plinth: part.name ?? part.id,
            appliance: applianceSaid(appliance),
            height: part.height,
          }),
          facts: [`finishing.${part.id}`, `finishing.${part.id}.of`, `appliances.${appliance.id}`, ...facts],
          cost: COST,
        })
      }),
    )

/** The facts by which an appliance stands behind a plinth of these units, or over it in a worktop; null: it does not. */
function behindPlinth(job: Job, of: readonly string[], appliance: Appliance): readonly InputId[] | null {
  const place = bayFacts(job, appliance)
  if (place !== null) return of.includes(place.bay) ? place.facts : null
  const top = job.kitchen.worktops.find((worktop) => worktop.id === appliance.over)
  if (top === undefined || !top.over.some((id) => of.includes(id))) return null
  return [`appliances.${appliance.id}.over`, `worktops.${top.id}.over`]
}
