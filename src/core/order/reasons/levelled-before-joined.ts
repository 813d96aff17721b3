import { joints } from '../../operations/neighbours'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

/** Neighbours are level before they are screwed side to side: the clamp holds them as they are. */
export const levelledBeforeJoined: OrderRule = (job, work) =>
  joints(job).flatMap(({ left, right }) =>
    [left, right].flatMap((unit) => {
      const hung = unit.way === 'hung'
      return reason({
        before: hung || unit.way === 'tall' ? work.secured(unit.id) : work.get(`level:${unit.id}`),
        after: work.ofKind('join').find((join) => join.on.includes(left.id) && join.on.includes(right.id)),
        kind: 'datum',
        rule: 'levelled-before-fixed',
        basis: practice('screws lock the error in'),
        because: because(`levelled-before-fixed.join.${hung ? 'underside' : 'top'}`, {
          unit: unit.name,
          other: unit === left ? right.name : left.name,
          height: hung ? unit.plan.underside : unit.plan.top,
        }),
        facts: [`units.${left.id}`, `units.${right.id}`],
        figures: [left.plan.right, right.plan.left],
      })
    }),
  )
