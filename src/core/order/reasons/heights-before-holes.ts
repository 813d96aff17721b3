import type { Job } from '../../operations/job'
import type { Operation, OrderReason } from '../../plan/types'
import { madeBy } from '../made-by'
import { because, practice, reason } from '../reason'
import { holesOf, type Work } from '../work'
import type { OrderRule } from './rule'

const basis = practice('a hole is drilled where it was marked, and marked from lines')

/** Lines and widths before the marks of holes, and the marks before the holes. */
export const heightsBeforeHoles: OrderRule = (job, work) => [
  ...work.ofKind('mark-holes').flatMap((marking) => marks(job, work, marking)),
  ...work.drilling.flatMap((operation) => drilled(job, work, operation)),
]

function marks(job: Job, work: Work, marking: Operation): readonly OrderReason[] {
  const [wall = ''] = marking.on
  const holes = job.holesIn(wall)
  const [first] = holes
  if (first === undefined) return []
  const hole = first.number ?? first.id
  const name = job.wallName(wall)
  return [
    ...reason({
      before: work.get(`set-out-heights:${wall}`),
      after: marking,
      kind: 'datum',
      rule: 'heights-before-holes',
      basis,
      because: because('heights-before-holes.up', { wall: name, hole, height: first.height }),
      facts: [`walls.${wall}`],
      figures: holes.map((h) => h.height),
    }),
    ...reason({
      before: work.get(`set-out-widths:${wall}`),
      after: marking,
      kind: 'datum',
      rule: 'heights-before-holes',
      basis,
      because: because('heights-before-holes.along', { wall: name, hole, along: first.along }),
      facts: [`walls.${wall}`],
      figures: holes.map((h) => h.along),
    }),
  ]
}

function drilled(job: Job, work: Work, operation: Operation): readonly OrderReason[] {
  const holes = holesOf(work, operation)
  const [first] = holes
  if (first === undefined) return []
  return reason({
    before: work.get(`mark-holes:${operation.wall ?? ''}`),
    after: operation,
    kind: 'datum',
    rule: 'heights-before-holes',
    basis,
    because: because('heights-before-holes.drill', {
      count: holes.length,
      along: first.along,
      height: first.height,
    }),
    facts: madeBy(job, operation),
    figures: holes.flatMap((hole) => [hole.along, hole.height]),
  })
}
