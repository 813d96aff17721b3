import { largest } from '../../operations/make'
import { madeBy } from '../made-by'
import { because, practice, reason } from '../reason'
import { holesOf } from '../work'
import type { OrderRule } from './rule'

/** The wall is traced at every hole before the first of them: it is never drilled to find out what is in it. */
export const traceBeforeHole: OrderRule = (job, work) =>
  work.drilling.flatMap((operation) => {
    const holes = holesOf(work, operation)
    const [first] = holes
    const wall = operation.wall ?? ''
    const name = job.wallName(wall)
    const depth = largest(holes.map((hole) => hole.depth))
    return reason({
      before: work.get(`trace:${wall}`),
      after: operation,
      kind: 'safety',
      rule: 'trace-before-hole',
      basis: practice('a wall is traced before it is drilled, never drilled to find out'),
      because:
        first === undefined || depth === null
          ? because('trace-before-hole.no-hole-yet', { wall: name })
          : because('trace-before-hole', { wall: name, depth, along: first.along, height: first.height }),
      facts: madeBy(job, operation),
      figures: holes.flatMap((hole) => [hole.along, hole.height, hole.depth]),
    })
  })
