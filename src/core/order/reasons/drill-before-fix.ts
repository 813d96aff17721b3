import { largest } from '../../operations/make'
import { madeBy } from '../made-by'
import { because, geometry, reason } from '../reason'
import { holesOf } from '../work'
import type { OrderRule } from './rule'

/** Holes before the screws that go into them. */
export const drillBeforeFix: OrderRule = (job, work) =>
  [...work.ofKind('drill-plates'), ...work.ofKind('drill-rail')].flatMap((drill) => {
    const holes = holesOf(work, drill)
    const depth = largest(holes.map((hole) => hole.depth))
    return reason({
      before: drill,
      after: work.get(drill.id.replace('drill-', 'fix-')),
      kind: 'support',
      rule: 'drill-before-fix',
      basis: geometry('screws go into holes'),
      because:
        depth === null
          ? because('drill-before-fix.no-hole-yet', {})
          : because('drill-before-fix', { count: holes.length, depth }),
      facts: madeBy(job, drill),
      figures: holes.map((hole) => hole.depth),
    })
  })
