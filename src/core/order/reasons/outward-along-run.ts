import type { FittedUnit } from '../../operations/job'
import type { Operation, OrderReason } from '../../plan/types'
import { because, practice, reason } from '../reason'
import { outwardPairs } from '../runs'
import type { OrderRule } from './rule'

const COST = 15

/** Along a run one unit comes after the other, outward, and each is levelled to the one before it. */
export const outwardAlongRun: OrderRule = (job, work) =>
  outwardPairs(job).flatMap(({ from, to, corner }) => [
    // The corner unit before its neighbours is a rule of its own.
    ...(corner ? [] : outward(work.move(from.id), work.move(to.id), from, to)),
    ...outward(work.get(`level:${from.id}`), work.get(`level:${to.id}`), from, to),
  ])

function outward(
  before: Operation | undefined,
  after: Operation | undefined,
  from: FittedUnit,
  to: FittedUnit,
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
    cost: COST,
  })
}
