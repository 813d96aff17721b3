import { hasValue } from '../../figure'
import type { Job } from '../../operations/job'
import { timbers } from '../../operations/noggings'
import type { Hole, HolePurpose, Operation } from '../../plan/types'
import { because, practice, reason } from '../reason'
import { holesOf } from '../work'
import type { OrderRule } from './rule'

type Timber = ReturnType<typeof timbers>[number]

/** Which operation drills the holes of a purpose. */
const DRILLED_BY: Readonly<Partial<Record<HolePurpose, readonly string[]>>> = {
  plate: ['drill-plates'],
  cleat: ['drill-plates'],
  rail: ['drill-rail'],
  'second-fixing': ['second-fix'],
  'back-rail': ['second-fix', 'screw-back', 'fix'],
  'base-bracket': ['fix'],
  'tall-restraint': ['restrain'],
}

/** Timber is in the wall before anything is screwed to it. */
export const timberBeforeHole: OrderRule = (job, work) =>
  timbers(job).flatMap((timber) =>
    work.drilling
      .filter((operation) => operation.kind !== 'fit-nogging' && operation.wall === timber.wall)
      .filter((operation) => uses(job, timber, operation, holesOf(work, operation)))
      .flatMap((operation) =>
        reason({
          before: work.get(`fit-nogging:${timber.wall}.${timber.id}`),
          after: operation,
          kind: 'support',
          rule: 'timber-before-hole',
          basis: practice('plasterboard alone never carries a unit'),
          because: because('timber-before-hole', {
            unit: operation.on.map((id) => job.name(id)).join(', '),
            height: timber.height,
            from: timber.from,
            to: timber.to,
          }),
          facts: [...timber.facts, ...operation.on.filter((id) => job.unit(id)).map((id) => `units.${id}`)],
          figures: holesOf(work, operation)
            .filter((hole) => inTimber(job, timber, hole))
            .flatMap((hole) => [hole.along, hole.height]),
        }),
      ),
  )

/** The wall is closed over new timber before holes are marked on it: marks are not drawn on board that is cut away. */
export const timberBeforeMarks: OrderRule = (job, work) =>
  timbers(job).flatMap((timber) =>
    reason({
      before: work.get(`fit-nogging:${timber.wall}.${timber.id}`),
      after: work.get(`mark-holes:${timber.wall}`),
      kind: 'support',
      rule: 'timber-before-marks',
      basis: practice('holes are marked on the closed wall, not on board that is still to be cut away'),
      because: because('timber-before-marks', {
        wall: job.wallName(timber.wall),
        from: timber.from,
        to: timber.to,
      }),
      facts: timber.facts,
    }),
  )

/** Whether an operation screws into this timber: it was asked for it, or one of its holes lies in it. */
function uses(job: Job, timber: Timber, operation: Operation, holes: readonly Hole[]): boolean {
  if (timber.neededFor !== null) {
    const { unit, purpose } = timber.neededFor
    return operation.on.includes(unit) && (DRILLED_BY[purpose] ?? []).includes(operation.kind)
  }
  return holes.some((hole) => inTimber(job, timber, hole))
}

function inTimber(job: Job, timber: Timber, hole: Hole): boolean {
  if (hole.stud !== null || hole.wall !== timber.wall) return false
  const depth = job.wall(timber.wall)?.noggings.find((n) => n.id === timber.id)?.depth
  const { along, height } = hole
  if (depth === undefined || ![depth, along, height, timber.from, timber.to, timber.height].every(hasValue)) {
    return false
  }
  const value = (figure: typeof along) => (hasValue(figure) ? figure.value : 0)
  return (
    value(along) >= value(timber.from) &&
    value(along) <= value(timber.to) &&
    Math.abs(value(height) - value(timber.height)) <= value(depth) / 2
  )
}
