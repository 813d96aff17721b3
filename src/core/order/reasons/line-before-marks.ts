import { type FittedUnit, type Job, unitsAlong } from '../../operations/job'
import type { Operation, OrderReason } from '../../plan/types'
import { unitItself } from '../made-by'
import { because, practice, reason } from '../reason'
import type { Work } from '../work'
import type { OrderRule } from './rule'

const basis = practice('everything is measured from one level line')

/** The line comes before every mark and every reading, and before what is levelled to it without one. */
export const lineBeforeMarks: OrderRule = (job, work) => [
  ...reason({
    before: work.get('strike:line'),
    after: work.get('read-floor:room'),
    kind: 'datum',
    rule: 'line-before-marks',
    basis,
    because: because('line-before-marks.floor', { high: job.context.floor.highPoint.z }),
    facts: [],
  }),
  ...work.ofKind('set-out-heights').flatMap((operation) => heights(job, work, operation)),
  ...work.ofKind('set-out-widths').flatMap((operation) => widths(job, work, operation)),
  ...job.units.flatMap((unit) => island(work, unit)),
]

/** No wall carries the height of an island: its top is brought to the line itself. */
function island(work: Work, unit: FittedUnit): readonly OrderReason[] {
  if (unit.way !== 'island') return []
  return reason({
    before: work.get('strike:line'),
    after: work.get(`level:${unit.id}`),
    kind: 'datum',
    rule: 'line-before-marks',
    basis,
    because: because('line-before-marks.island', { unit: unit.name, height: unit.plan.top }),
    facts: unitItself(unit),
  })
}

function heights(job: Job, work: Work, operation: Operation): readonly OrderReason[] {
  const [wall = ''] = operation.on
  const lines = job.context.lines.filter((line) => line.wall === wall && line.of !== 'line')
  const [first] = lines
  if (first === undefined) return []
  return reason({
    before: work.get('strike:line'),
    after: operation,
    kind: 'datum',
    rule: 'line-before-marks',
    basis,
    because: because('line-before-marks.heights', {
      wall: job.wallName(wall),
      height: first.height,
    }),
    facts: [`walls.${wall}`],
    figures: lines.map((line) => line.height),
  })
}

/** Widths are measured along the line itself, so that they are all taken at one height. */
function widths(job: Job, work: Work, operation: Operation): readonly OrderReason[] {
  const [wall = ''] = operation.on
  const [first] = unitsAlong(job, wall)
  if (first === undefined) return []
  return reason({
    before: work.get('strike:line'),
    after: operation,
    kind: 'datum',
    rule: 'line-before-marks',
    basis,
    because: because('line-before-marks.widths', { unit: first.name, left: first.left }),
    facts: [`walls.${wall}`, `units.${first.unit}`],
  })
}
