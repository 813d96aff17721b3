import type { Figure } from '../../figure'
import type { FittedUnit } from '../../operations/job'
import { because, geometry, reason } from '../reason'
import type { OrderRule } from './rule'

/** What sets a unit's body and its place. */
function bodyFigures({ plan }: FittedUnit): readonly Figure[] {
  return [plan.left, plan.width, plan.depth, plan.height, plan.underside]
}

/** A unit comes in before those that would stand in the way of the path it takes. This is proved, not a habit. */
export const pathBlocked: OrderRule = (job, work) =>
  job.context.paths.flatMap((path) => {
    const mover = job.unit(path.unit)
    if (mover === undefined) return []
    return path.blockedBy.flatMap((id) => {
      const blocker = job.unit(id)
      if (blocker === undefined) return []
      return reason({
        before: work.move(mover.id),
        after: work.move(blocker.id),
        kind: 'geometry',
        rule: 'path-blocked',
        basis: geometry('its path passes through where the other will be'),
        because: because(`path-blocked.${path.approach}`, {
          unit: mover.name,
          other: blocker.name,
          left: blocker.plan.left,
          right: blocker.plan.right,
        }),
        facts: [`units.${mover.id}`, `units.${blocker.id}`],
        figures: [...bodyFigures(mover), ...bodyFigures(blocker)],
      })
    })
  })
