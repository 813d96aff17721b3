import { outwardPairs } from '../../operations/runs'
import { because, practice, reason } from '../reason'
import { meetsAt } from './outward-along-run'
import type { OrderRule } from './rule'

/** Taking a unit out again to come at one that was left out of level behind it. */
const COST = 25

/** Of a base run each unit is levelled where it stands before the next is set against it: that one takes its line from it. */
export const levelledBeforeNext: OrderRule = (job, work) =>
  outwardPairs(job).flatMap((pair) => {
    const { from, to, by } = pair
    if (from.way !== 'base') return []
    return reason({
      before: work.get(`level:${from.id}`),
      after: work.move(to.id),
      kind: 'practice',
      rule: 'levelled-before-next',
      basis: practice('each unit is levelled before the next is set against it'),
      because: because('levelled-before-next', {
        unit: to.name,
        other: from.name,
        top: from.plan.top,
        at: meetsAt(job, pair),
      }),
      facts: [`units.${from.id}`, `units.${to.id}`],
      figures: by,
      cost: COST,
    })
  })
