import { joints } from '../../operations/neighbours'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const basis = practice('the bases are fixed before anything is measured or laid on them')

/** Everything that stands or hangs is secured, and joined, before the hold point proves the room. */
export const securedBeforeHoldPoint: OrderRule = (job, work) => [
  ...job.units.flatMap((unit) => {
    const height = unit.way === 'hung' ? unit.plan.underside : unit.plan.top
    return reason({
      before: work.secured(unit.id),
      after: work.get('prove:room'),
      kind: 'support',
      rule: 'all-secured-before-hold-point',
      basis,
      because: because(`all-secured-before-hold-point.${unit.way === 'hung' ? 'underside' : 'top'}`, {
        unit: unit.name,
        height,
      }),
      facts: [`units.${unit.id}`],
    })
  }),
  ...joints(job).flatMap(({ left, right }) =>
    reason({
      before: work.ofKind('join').find((join) => join.on.includes(left.id) && join.on.includes(right.id)),
      after: work.get('prove:room'),
      kind: 'support',
      rule: 'all-secured-before-hold-point',
      basis,
      because: because('all-secured-before-hold-point.joined', {
        left: left.name,
        right: right.name,
        at: right.plan.left,
      }),
      facts: [`units.${left.id}`, `units.${right.id}`],
      figures: [left.plan.right],
    }),
  ),
]
