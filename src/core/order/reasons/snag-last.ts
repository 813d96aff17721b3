import type { Figure } from '../../figure'
import type { Job } from '../../operations/job'
import type { Operation } from '../../plan/types'
import { madeBy } from '../made-by'
import { because, practice, reason } from '../reason'
import { workedOn } from '../worked-on'
import type { OrderRule } from './rule'

/** Kinds of operation after which something is there to be looked at. */
const SEEN: readonly string[] = [
  'panel',
  'plinth',
  'finish',
  'worktop',
  'connect',
  'hang-fronts',
  'join',
  'prove',
  'set-out-heights',
  'set-out-widths',
  'trace',
  'find-studs',
  'mark-holes',
  'fit-nogging',
  'drill-rail',
  'fix-rail',
]

/** The last walk round comes after everything that is walked round. */
export const snagLast: OrderRule = (job, work) => {
  const secured = job.units.flatMap((unit) => work.secured(unit.id) ?? [])
  const seen = SEEN.flatMap((kind) => work.ofKind(kind))
  return [...secured, ...seen].flatMap((before) => {
    const what = workedOn(job, before)
    const figure = lookedAt(job, before)
    return reason({
      before,
      after: work.get('snag:room'),
      kind: 'finish',
      rule: 'snag-last',
      basis: practice('the last walk round looks at finished work'),
      because:
        figure === undefined
          ? because('snag-last.no-figure', { what })
          : because('snag-last', { what, figure }),
      facts: [...madeBy(job, before), ...onTheWallItself(job, before)],
    })
  })
}

/** Work on a wall rather than on a unit is made by the wall. */
function onTheWallItself(job: Job, { on, wall }: Operation): readonly string[] {
  return wall === null || on.some((id) => job.unit(id) !== undefined) ? [] : [`walls.${wall}`]
}

/** The figure by which it is looked at: where a unit stands, how big a part is. */
function lookedAt(job: Job, before: Operation): Figure | undefined {
  const { kitchen, context } = job
  const { kind, on } = before
  const [id = ''] = on
  switch (kind) {
    case 'prove':
      return context.heights.values.find((value) => value.of === 'base-top')?.height
    case 'worktop':
      return kitchen.worktops.find((top) => top.id === id)?.thickness
    case 'connect':
      return kitchen.appliances.find((appliance) => appliance.id === id)?.mass
    case 'panel':
      return kitchen.finishing.find((part) => part.id === id)?.width
    case 'plinth':
    case 'finish':
      return kitchen.finishing.find((part) => part.id === id)?.height
    default:
      return job.unit(id)?.plan.width ?? kitchen.walls.find((wall) => wall.id === before.wall)?.length
  }
}
