import { applianceSaid } from '../../units/part-name'
import { bayFacts } from '../appliance-place'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 15

/** Doors and drawer fronts go on a unit when the worktop is on it and what goes into it is in. */
export const frontsLast: OrderRule = (job, work) => [
  ...job.kitchen.worktops.flatMap((top) =>
    top.over.flatMap((id) => {
      const unit = job.unit(id)
      if (unit === undefined) return []
      return reason({
        before: work.get(`worktop:${top.id}`),
        after: work.get(`hang-fronts:${id}`),
        kind: 'finish',
        rule: 'fronts-last',
        basis: practice('fronts are marked by what is carried past them'),
        because: because('fronts-last.worktop', {
          worktop: top.name ?? top.id,
          unit: unit.name,
          thickness: top.thickness,
        }),
        facts: [`worktops.${top.id}`, `worktops.${top.id}.over`, `units.${id}`],
        cost: COST,
      })
    }),
  ),
  ...job.kitchen.appliances.flatMap((appliance) => {
    const place = bayFacts(job, appliance)
    const unit = place === null ? undefined : job.unit(place.bay)
    if (place === null || unit === undefined) return []
    return reason({
      before: work.get(`connect:${appliance.id}`),
      after: work.get(`hang-fronts:${unit.id}`),
      kind: 'finish',
      rule: 'fronts-last',
      basis: practice('fronts are in the way of what goes in behind them'),
      because: because('fronts-last.appliance', {
        appliance: applianceSaid(appliance),
        unit: unit.name,
        width: unit.plan.width,
      }),
      facts: [`appliances.${appliance.id}`, ...place.facts],
      cost: COST,
    })
  }),
]
