import { outwardPairs } from '../../operations/runs'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 40

/** The corner unit has no freedom: both runs grow from it. */
export const cornerBeforeNeighbours: OrderRule = (job, work) =>
  outwardPairs(job)
    .filter((pair) => pair.corner)
    .flatMap(({ from, to, by }) => {
      const proved = job.context.paths.some((p) => p.unit === from.id && p.blockedBy.includes(to.id))
      return reason({
        before: work.move(from.id),
        after: work.move(to.id),
        kind: 'practice',
        rule: 'corner-before-neighbours',
        basis: practice('the corner unit before its neighbours'),
        because: because(proved ? 'corner-before-neighbours.proved' : 'corner-before-neighbours', {
          corner: from.name,
          unit: to.name,
          right: from.plan.right,
          left: to.plan.left,
        }),
        facts: [`units.${from.id}`, `units.${from.id}.kind`, `units.${to.id}`],
        figures: by,
        cost: COST,
      })
    })
