import { footprint, planOverlap } from '../../placing/solid'
import { tiltFloor as sweptFloor } from '../../placing/sweep'
import type { PathSegment, UnitPlan } from '../../plan/types'
import { because, geometry, reason } from '../reason'
import type { OrderRule } from './rule'

type StandUp = Extract<PathSegment, { kind: 'stand-up' }>
/** Less than this is touching, mm. */
const CONTACT = 0.1

function standsIn(floor: ReturnType<typeof sweptFloor>, { pose, solid }: UnitPlan): boolean {
  return pose !== null && solid.some((box) => planOverlap(footprint(pose, box), floor) > CONTACT)
}

/** A tall is stood up while the floor it needs for lying down is still free. */
export const tiltFloor: OrderRule = (job, work) =>
  job.context.paths.flatMap((path) => {
    const tall = job.unit(path.unit)
    const raising = path.segments.find((segment): segment is StandUp => segment.kind === 'stand-up')
    if (tall === undefined || raising === undefined) return []
    const floor = sweptFloor(tall.plan.solid, raising)
    return path.blockedBy.flatMap((id) => {
      const other = job.unit(id)
      if (other === undefined || other.way === 'hung' || !standsIn(floor, other.plan)) return []
      return reason({
        before: work.get(`stand-up:${tall.id}`),
        after: work.move(id),
        kind: 'geometry',
        rule: 'tilt-floor',
        basis: geometry('it lies where the other will stand'),
        because: because('tilt-floor', {
          unit: tall.name,
          other: other.name,
          length: tall.plan.height,
          left: other.plan.left,
          right: other.plan.right,
        }),
        facts: [`units.${tall.id}`, `units.${tall.id}.kind`, `units.${id}`],
        figures: [tall.plan.left, tall.plan.width, tall.plan.depth, other.plan.depth],
      })
    })
  })
