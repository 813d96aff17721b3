import { largest } from '../../operations/make'
import { because, practice, reason } from '../reason'
import type { OrderRule } from './rule'

const COST = 5

/** Walls are traced while the circuits are still live: a detector finds a live cable better than a dead one. */
export const traceWhileLive: OrderRule = (job, work) =>
  work.ofKind('trace').flatMap((trace) => {
    const [wall = ''] = trace.on
    const depth = largest(job.holesIn(wall).map((hole) => hole.depth))
    return reason({
      before: trace,
      after: work.get('isolate:room'),
      kind: 'practice',
      rule: 'trace-while-live',
      basis: practice('a detector finds a live cable better than a dead one'),
      because:
        depth === null
          ? because('trace-while-live.no-hole-yet', { wall: job.wallName(wall) })
          : because('trace-while-live', { wall: job.wallName(wall), depth }),
      facts: [`walls.${wall}`],
      cost: COST,
    })
  })
