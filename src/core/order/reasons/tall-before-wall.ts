import type { FittedUnit, Job } from '../../operations/job'
import { unitItself } from '../made-by'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 30

/** Talls first: wall-unit tops are lined up with them, and they need the free floor. Where geometry proves it, it says so. */
export const tallBeforeWall: OrderRule = (job, work) => {
  const talls = job.units.filter((unit) => unit.way === 'tall')
  const hung = job.units.filter((unit) => unit.way === 'hung')
  return talls.flatMap((tall) =>
    hung.flatMap((unit) => {
      const proved = inTheWay(job, tall, unit)
      return reason({
        before: work.get(`level:${tall.id}`),
        after: work.get(`hang:${unit.id}`),
        kind: 'practice',
        rule: 'tall-before-wall',
        basis: practice('tall units first, so that wall-unit tops line up with them'),
        because: because(proved ? 'tall-before-wall.proved' : 'tall-before-wall', {
          tall: tall.name,
          unit: unit.name,
          tallTop: tall.plan.top,
          top: unit.plan.top,
        }),
        facts: [...unitItself(tall), `units.${unit.id}`],
        cost: COST,
      })
    }),
  )
}

function inTheWay(job: Job, mover: FittedUnit, blocker: FittedUnit): boolean {
  return job.context.paths.some((path) => path.unit === mover.id && path.blockedBy.includes(blocker.id))
}
