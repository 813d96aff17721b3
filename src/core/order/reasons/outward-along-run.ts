import type { Operation, OrderReason } from '../../plan/types'
import { because, practice, reason } from '../reason'
import { type Outward, outwardPairs } from '../runs'
import type { OrderRule } from './rule'

const COST = 15

/** Along a run one unit comes after the other, outward, and each is levelled to the one before it. */
export const outwardAlongRun: OrderRule = (job, work) =>
  outwardPairs(job).flatMap((pair) => [
    // The corner unit before its neighbours is a rule of its own.
    ...(pair.corner ? [] : outward(work.move(pair.from.id), work.move(pair.to.id), pair)),
    ...outward(work.get(`level:${pair.from.id}`), work.get(`level:${pair.to.id}`), pair),
  ])

function outward(
  before: Operation | undefined,
  after: Operation | undefined,
  { from, to, by }: Outward,
): readonly OrderReason[] {
  return reason({
    before,
    after,
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
    figures: by,
    cost: COST,
  })
}
