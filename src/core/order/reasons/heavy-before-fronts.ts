import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 10

/** Heavy things are carried through the room before fronts hang in it: talls, and worktops for other units. */
export const heavyBeforeFronts: OrderRule = (job, work) => {
  const talls = job.units.filter((unit) => unit.way === 'tall')
  return work.ofKind('hang-fronts').flatMap((fronts) => {
    const [id = ''] = fronts.on
    const unit = job.unit(id)
    if (unit === undefined) return []
    const tops = job.kitchen.worktops.filter((top) => !top.over.includes(id))
    return [
      ...talls
        .filter((tall) => tall.id !== id)
        .flatMap((tall) =>
          reason({
            before: work.bringIn(tall.id),
            after: fronts,
            kind: 'practice',
            rule: 'heavy-before-fronts',
            basis: practice('heavy work first, fronts last'),
            because: because('heavy-before-fronts', {
              what: tall.name,
              unit: unit.name,
              mass: tall.plan.lift.massStripped,
            }),
            facts: [`units.${tall.id}`, `units.${tall.id}.kind`, `units.${id}`],
            cost: COST,
          }),
        ),
      ...tops.flatMap((top) =>
        reason({
          before: work.get(`worktop:${top.id}`),
          after: fronts,
          kind: 'practice',
          rule: 'heavy-before-fronts',
          basis: practice('heavy work first, fronts last'),
          because: because('heavy-before-fronts', {
            what: top.name ?? top.id,
            unit: unit.name,
            mass: top.mass,
          }),
          facts: [`worktops.${top.id}`, `worktops.${top.id}.over`, `units.${id}`],
          cost: COST,
        }),
      ),
    ]
  })
}
