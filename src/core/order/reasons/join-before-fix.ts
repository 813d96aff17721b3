import { joints } from '../../operations/neighbours'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 10

/** Base units are joined to each other, and to a tall, before they are fixed to the wall: it cannot pull them apart. */
export const joinBeforeFix: OrderRule = (job, work) =>
  joints(job)
    .filter((joint) => joint.of === 'base')
    .flatMap(({ left, right }) =>
      [left, right].flatMap((unit) =>
        reason({
          before: work.ofKind('join').find((join) => join.on.includes(left.id) && join.on.includes(right.id)),
          after: work.get(`fix:${unit.id}`),
          kind: 'practice',
          rule: 'join-before-fix',
          basis: practice('adjoining base units are joined before they are fixed to the wall'),
          because: because('join-before-fix', {
            left: left.name,
            right: right.name,
            unit: unit.name,
            at: right.plan.left,
          }),
          facts: [`units.${left.id}`, `units.${right.id}`],
          figures: [left.plan.right],
          cost: COST,
        }),
      ),
    )
