import { because, practice, reason } from '../reason'
import { outwardPairs } from '../runs'
import type { OrderRule } from './rule'

const COST = 15

/** Along a run one unit after the other, outward, each levelled to the one before it. */
export const outwardAlongRun: OrderRule = (job, work) =>
  outwardPairs(job)
    .filter((pair) => !pair.corner)
    .flatMap(({ from, to }) =>
      reason({
        before: work.move(from.id),
        after: work.move(to.id),
        kind: 'practice',
        rule: 'outward-along-run',
        basis: practice('a run grows outwards, each unit levelled to the one before'),
        because: because('outward-along-run', {
          unit: to.name,
          other: from.name,
          right: from.plan.right,
          left: to.plan.left,
        }),
        facts: [`units.${from.id}`, `units.${to.id}`],
        cost: COST,
      }),
    )
