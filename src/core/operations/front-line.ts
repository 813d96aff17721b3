import { type Basis, derive, type Figure, hasValue, known } from '../figure'
import type { WallId } from '../plan/types'
import { sum } from '../survey/sum'
import type { FittedUnit, Job } from './job'
import { runOf } from './neighbours'

const front: Basis = {
  kind: 'geometry',
  why: 'the front of a carcass: its back out from the wall, and its depth',
}
const oneLine: Basis = {
  kind: 'geometry',
  why: 'the fronts stand on one straight line, as far out as the one that comes furthest',
}
const atTheWall: Figure = known(0, 0, 'mm', [], front)

/** The front edges of the bases of a wall: one straight line, with the units at its two ends. */
export interface FrontLine {
  readonly first: FittedUnit
  readonly last: FittedUnit
  /** Out from the finished face, the same at both ends. */
  readonly out: Figure
}

/** The line to which the fronts of a wall's bases are brought; null: no base stands there. */
export function frontLine(job: Job, wall: WallId): FrontLine | null {
  const run = runOf(job, wall, 'base')
  const [first] = run
  const last = run.at(-1)
  if (first === undefined || last === undefined) return null
  const fronts = run.map(({ unit, plan }) =>
    sum('mm', front, [hasValue(unit.standOff) ? unit.standOff : atTheWall, plan.depth]),
  )
  return { first, last, out: derive('mm', oneLine, fronts, (...outs) => Math.max(...outs)) }
}
