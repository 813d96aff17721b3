import { hasValue } from '../figure'
import type { UnitId } from '../plan/types'
import { remembered } from '../remember'
import type { FittedUnit, Job } from './job'

/** Sides no further apart than this touch, mm: below what a tape can tell. */
const TOUCHING = 1

/** Hung with hung, standing with standing: only these are clamped together or grow one from the other. */
export function group(unit: FittedUnit): 'hung' | 'base' | null {
  if (unit.way === 'hung') return 'hung'
  return unit.way === 'base' ? 'base' : null
}

/** The units of one group on one wall, from left to right; those whose place is not known last, by id. */
export function runOf(job: Job, wall: string, of: 'hung' | 'base'): readonly FittedUnit[] {
  const at = (unit: FittedUnit) =>
    hasValue(unit.plan.left) ? unit.plan.left.value : Number.POSITIVE_INFINITY
  return job.units
    .filter((unit) => unit.wall === wall && group(unit) === of)
    .map((unit, i) => ({ unit, i }))
    .sort((a, b) => (at(a.unit) === at(b.unit) ? a.i - b.i : at(a.unit) - at(b.unit)))
    .map(({ unit }) => unit)
}

const isCorner = (unit: FittedUnit) => unit.unit.kind === 'corner-base' || unit.unit.kind === 'corner-wall'

/** The wall round the corner at one end of a wall; undefined where the walls do not go on. */
export function wallRound(job: Job, wall: string, end: 'left' | 'right'): string | undefined {
  const at = job.walls.findIndex((w) => w.id === wall)
  const next = end === 'right' ? at + 1 : at - 1
  if (next >= 0 && next < job.walls.length) return job.walls[next]?.id
  if (job.kitchen.closed !== true || job.walls.length < 2) return undefined
  return job.walls[(next + job.walls.length) % job.walls.length]?.id
}

/** At which end of its wall a corner unit stands: by its arm, else by the nearer end. Null: not known. */
export function cornerEnd(job: Job, unit: FittedUnit): 'left' | 'right' | null {
  if (!isCorner(unit)) return null
  if (hasValue(unit.unit.returnLeft)) return 'left'
  if (hasValue(unit.unit.returnRight)) return 'right'
  const length = job.context.survey.frames.find((f) => f.wall === unit.wall)?.length
  const { left, right } = unit.plan
  if (length === undefined || !hasValue(length) || !hasValue(left) || !hasValue(right)) return null
  return left.value <= length.value - right.value ? 'left' : 'right'
}

/** The unit that comes next to a corner unit round the corner, and which of its ends is towards it. */
export function neighbourRound(job: Job, corner: FittedUnit): FittedUnit | undefined {
  const end = cornerEnd(job, corner)
  const of = group(corner)
  if (end === null || of === null) return undefined
  const wall = wallRound(job, corner.wall, end)
  if (wall === undefined) return undefined
  const run = runOf(job, wall, of)
  return end === 'left' ? run.at(-1) : run[0]
}

/** Side against side along one wall, `a` on the left. */
export function touchAlong(a: FittedUnit, b: FittedUnit): boolean {
  if (!hasValue(a.plan.right) || !hasValue(b.plan.left)) return false
  return Math.abs(a.plan.right.value - b.plan.left.value) <= TOUCHING
}

/** Whether the arm of a corner unit reaches its neighbour round the corner. */
function armTouches(job: Job, corner: FittedUnit, other: FittedUnit): boolean {
  const { returnLeft, returnRight } = corner.unit
  if (hasValue(returnRight)) {
    return hasValue(other.plan.left) && Math.abs(other.plan.left.value - returnRight.value) <= TOUCHING
  }
  const length = job.context.survey.frames.find((f) => f.wall === other.wall)?.length
  if (length === undefined || !hasValue(length) || !hasValue(returnLeft) || !hasValue(other.plan.right)) {
    return false
  }
  return Math.abs(length.value - returnLeft.value - other.plan.right.value) <= TOUCHING
}

/** Hung units side by side overlap in height; standing ones always do. */
function sideBySide(a: FittedUnit, b: FittedUnit): boolean {
  const [au, at, bu, bt] = [a.plan.underside, a.plan.top, b.plan.underside, b.plan.top]
  if (!hasValue(au) || !hasValue(at) || !hasValue(bu) || !hasValue(bt)) return true
  return Math.min(at.value, bt.value) > Math.max(au.value, bu.value)
}

export interface Joint {
  readonly left: FittedUnit
  readonly right: FittedUnit
  readonly of: 'hung' | 'base' | 'tall'
}

/** Along one wall, the talls and what stands or hangs against their sides: a side is screwed to a side there too. */
function againstTalls(job: Job, wall: string): readonly Joint[] {
  const here = job.units.filter((unit) => unit.wall === wall && unit.way !== 'island')
  return here.flatMap((left) =>
    here.flatMap((right): readonly Joint[] => {
      if (left.way !== 'tall' && right.way !== 'tall') return []
      if (left.id === right.id || !touchAlong(left, right) || !sideBySide(left, right)) return []
      const other = left.way === 'tall' ? right : left
      return [{ left, right, of: group(other) ?? 'tall' }]
    }),
  )
}

/** The one of the two that is not a tall, and the tall it is screwed to; null where both or neither are talls. */
export function ontoTall({
  left,
  right,
}: Joint): { readonly unit: FittedUnit; readonly tall: FittedUnit } | null {
  if (left.way === 'tall' && right.way !== 'tall') return { unit: right, tall: left }
  if (right.way === 'tall' && left.way !== 'tall') return { unit: left, tall: right }
  return null
}

/** Neighbours that touch and are to be joined: along a wall, to the side of a tall, and round a corner by an arm. */
export const joints: (job: Job) => readonly Joint[] = remembered((job: Job) => {
  const found = new Map<string, Joint>()
  const add = (left: FittedUnit, right: FittedUnit, of: Joint['of']) => {
    const key = jointId(left.id, right.id)
    if (!found.has(key)) found.set(key, { left, right, of })
  }
  for (const of of ['hung', 'base'] as const) {
    for (const wall of job.walls) {
      const run = runOf(job, wall.id, of)
      // Any two: where units were typed into each other's place, what touches need not come next in the run.
      for (const right of run) {
        for (const left of run) {
          if (left !== right && touchAlong(left, right) && sideBySide(left, right)) add(left, right, of)
        }
      }
    }
    for (const corner of job.units.filter((u) => isCorner(u) && group(u) === of)) {
      const other = neighbourRound(job, corner)
      if (other === undefined || !armTouches(job, corner, other) || !sideBySide(corner, other)) continue
      if (cornerEnd(job, corner) === 'left') add(other, corner, of)
      else add(corner, other, of)
    }
  }
  for (const wall of job.walls) {
    for (const { left, right, of } of againstTalls(job, wall.id)) add(left, right, of)
  }
  return [...found.values()]
})

/** Both ids, in their own order: the same joint whichever unit stands left. */
export function jointOn(a: UnitId, b: UnitId): readonly [UnitId, UnitId] {
  return a < b ? [a, b] : [b, a]
}

export function jointId(a: UnitId, b: UnitId): string {
  return jointOn(a, b).join('+')
}
