import type { FittedUnit, Job } from '../operations/job'
import type { Hole, Operation, OperationId, UnitId } from '../plan/types'

/** The operations of a kitchen, looked up by id, by kind and by unit. */
export interface Work {
  readonly operations: readonly Operation[]
  readonly get: (id: OperationId) => Operation | undefined
  readonly ofKind: (kind: string) => readonly Operation[]
  /** The operation after which nobody need hold a unit any more. */
  readonly secured: (unit: UnitId) => Operation | undefined
  /** The operation that brings a unit to its place. */
  readonly move: (unit: UnitId) => Operation | undefined
  /** The first operation at its place: standing up, placing or hanging. */
  readonly bringIn: (unit: UnitId) => Operation | undefined
  /** Operations that make holes in walls or floor, whether their holes are known yet or not. */
  readonly drilling: readonly Operation[]
  readonly holes: ReadonlyMap<string, Hole>
}

/** Kinds of operation that drill into a wall, or into the floor. */
const DRILLING: ReadonlySet<string> = new Set([
  'drill-plates',
  'drill-rail',
  'second-fix',
  'screw-back',
  'restrain',
  'fix',
  'fit-nogging',
])

export function readWork(job: Job, operations: readonly Operation[]): Work {
  const byId = new Map(operations.map((operation) => [operation.id, operation]))
  const kinds = new Map<string, Operation[]>()
  const secured = new Map<UnitId, Operation>()
  for (const operation of operations) {
    const same = kinds.get(operation.kind)
    if (same === undefined) kinds.set(operation.kind, [operation])
    else same.push(operation)
    for (const change of operation.changes) {
      if (change.to === 'secured') secured.set(change.unit, operation)
    }
  }
  const move = (unit: UnitId) => byId.get(`place:${unit}`) ?? byId.get(`hang:${unit}`)
  return {
    operations,
    get: (id) => byId.get(id),
    ofKind: (kind) => kinds.get(kind) ?? [],
    secured: (unit) => secured.get(unit),
    move,
    bringIn: (unit) => byId.get(`stand-up:${unit}`) ?? move(unit),
    drilling: operations.filter((operation) => DRILLING.has(operation.kind)),
    holes: new Map(job.context.holes.map((hole) => [hole.id, hole])),
  }
}

/** The holes an operation drills. */
export function holesOf(work: Work, operation: Operation): readonly Hole[] {
  return operation.holes.flatMap((id) => work.holes.get(id) ?? [])
}

/** One unit's own operations that exist, in the order they must have. */
export function stepsOf(work: Work, unit: FittedUnit): readonly Operation[] {
  return ['assemble', 'set-legs', 'fit-hangers', 'stand-up', 'place', 'hang'].flatMap(
    (kind) => work.get(`${kind}:${unit.id}`) ?? [],
  )
}

/** Operations of one held unit that follow each other with nothing between: nobody lets go of it in the meantime. */
export function heldSteps(work: Work, unit: FittedUnit): readonly Operation[] {
  const kinds =
    unit.way === 'tall'
      ? ['stand-up', 'place', 'level', 'restrain']
      : unit.way === 'hung'
        ? ['hang', 'level', 'lock', 'second-fix', 'screw-back']
        : []
  return kinds.flatMap((kind) => work.get(`${kind}:${unit.id}`) ?? [])
}
