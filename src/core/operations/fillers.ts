import { type Basis, derive, type Figure, hasValue } from '../figure'
import type { FinishingPart } from '../kitchen/schema'
import { sum } from '../survey/sum'
import type { PartPosition } from '../units/positions'
import type { FittedUnit, Job } from './job'
import { cornerEnd, group, neighbourRound } from './neighbours'
import { cornerBy, type Outward, outwardPairs } from './runs'

/** Sides no further apart than this touch, mm. */
const TOUCHING = 1

/**
 * A filler that sets the place of the unit after it: in a corner, where doors and drawers of the two runs must clear
 * each other, or between two units. It goes in before that unit is pushed home. All other fillers are scribed to their
 * wall when the run stands fast.
 */
export interface FillerPlace {
  readonly at: 'corner' | 'between'
  /** Level before the filler goes on. */
  readonly first: FittedUnit
  /** Pushed home against it. */
  readonly next: FittedUnit
  /** The unit it is screwed to. */
  readonly onto: FittedUnit
  /** By what it is known that it stands there. */
  readonly by: readonly Figure[]
}

export function fillerPlace(job: Job, part: FinishingPart): FillerPlace | null {
  if (part.kind !== 'filler') return null
  const place = job.context.parts.find((p) => p.part.id === part.id)
  if (place !== undefined && isAtWallEnd(job, place)) return null
  return inCorner(job, part, place) ?? between(job, part, place)
}

function isAtWallEnd(job: Job, { wall, left, right }: PartPosition): boolean {
  const length = job.context.survey.frames.find((frame) => frame.wall === wall)?.length
  if (hasValue(left) && left.value <= TOUCHING) return true
  if (length === undefined || !hasValue(length) || !hasValue(right)) return false
  return right.value >= length.value - TOUCHING
}

const isCorner = (unit: FittedUnit) => unit.unit.kind === 'corner-base' || unit.unit.kind === 'corner-wall'

function meets(a: Figure, b: Figure): boolean {
  return hasValue(a) && hasValue(b) && Math.abs(a.value - b.value) <= TOUCHING
}

function inCorner(job: Job, part: FinishingPart, place: PartPosition | undefined): FillerPlace | null {
  for (const corner of job.units.filter(isCorner)) {
    const end = cornerEnd(job, corner)
    const next = neighbourRound(job, corner)
    if (end === null || next === undefined) continue
    const sides = place === undefined ? [] : [place.left, place.right]
    const by = [...cornerBy(job, corner), next.plan.left, next.plan.right, ...sides]
    const isOwn = part.of.includes(corner.id) && !isAway(corner, place, end)
    if (isOwn) return { at: 'corner', first: corner, next, onto: corner, by }
    if (!part.of.includes(next.id) || place?.wall !== next.wall) continue
    const towards = end === 'right' ? meets(place.right, next.plan.left) : meets(place.left, next.plan.right)
    if (towards) return { at: 'corner', first: corner, next, onto: next, by }
  }
  return null
}

/** On the side of a corner unit that looks away from its corner. */
function isAway(corner: FittedUnit, place: PartPosition | undefined, end: 'left' | 'right'): boolean {
  if (place === undefined || place.wall !== corner.wall) return false
  return end === 'right' ? meets(place.right, corner.plan.left) : meets(place.left, corner.plan.right)
}

function between(job: Job, part: FinishingPart, place: PartPosition | undefined): FillerPlace | null {
  if (place === undefined) return null
  const groups = new Set(part.of.flatMap((id) => job.unit(id) ?? []).map((u) => group(u) ?? 'tall'))
  const here = job.units.filter((u) => u.wall === place.wall && groups.has(group(u) ?? 'tall'))
  const near = job.units.filter((u) => u.wall === place.wall && (here.includes(u) || u.way === 'tall'))
  const left = near.find((u) => meets(u.plan.right, place.left))
  const right = near.find((u) => meets(u.plan.left, place.right))
  if (left === undefined || right === undefined) return null
  const sides = [left.plan.right, place.left, place.right, right.plan.left]
  const at = (first: FittedUnit, next: FittedUnit, by: readonly Figure[] = []): FillerPlace => ({
    at: 'between',
    first,
    next,
    onto: first,
    by: [...sides, ...by],
  })
  if (left.way === 'tall') return at(left, right)
  if (right.way === 'tall') return at(right, left)
  const isPair = ({ from, to }: Outward) =>
    [from.id, to.id].sort().join() === [left.id, right.id].sort().join()
  const pair = outwardPairs(job).find(isPair)
  return pair?.from.id === right.id ? at(right, left, pair.by) : at(left, right, pair?.by)
}

const overTheDepth: Basis = { kind: 'geometry', why: 'how far the corner leaves the square over that depth' }

/**
 * By how much a gap beside a wall or another run is wider at the front of a unit than at its back, mm: the corner is
 * wider than a right angle. Less than nothing: narrower. Null where no corner is at that end.
 */
export function cornerTaper(job: Job, wall: string, end: 'left' | 'right', depth: Figure): Figure | null {
  const angle = cornerAngle(job, wall, end)
  if (angle === null) return null
  const outOfSquare = (degrees: number) => Math.tan(((degrees - 90) * Math.PI) / 180)
  return derive('mm', overTheDepth, [depth, angle], (deep, degrees) => deep * outOfSquare(degrees))
}

/** The inside angle of the corner at one end of a wall. */
export function cornerAngle(job: Job, wall: string, end: 'left' | 'right'): Figure | null {
  const frames = job.context.survey.frames
  const at = frames.findIndex((frame) => frame.wall === wall)
  if (at < 0) return null
  const isOpen = job.kitchen.closed !== true
  if (end === 'right') {
    return isOpen && at === frames.length - 1 ? null : (frames[at]?.cornerRight ?? null)
  }
  if (at === 0) return isOpen ? null : (frames.at(-1)?.cornerRight ?? null)
  return frames[at - 1]?.cornerRight ?? null
}

/** By what it is known that a filler stands at that end of its wall. */
export function endBy(job: Job, place: PartPosition, end: 'left' | 'right'): readonly Figure[] {
  if (end === 'left') return [place.left]
  const length = job.context.survey.frames.find((frame) => frame.wall === place.wall)?.length
  return length === undefined ? [place.right] : [place.right, length]
}

/** The end of its wall that a filler closes; null where it stands at neither. */
export function endOf(job: Job, place: PartPosition | undefined): 'left' | 'right' | null {
  if (place === undefined || !isAtWallEnd(job, place)) return null
  return hasValue(place.left) && place.left.value <= TOUCHING ? 'left' : 'right'
}

const front: Basis = {
  kind: 'geometry',
  why: 'its width at the back, and the corner over the depth of the unit',
}

/** How wide a filler at the end of a wall comes out at the face of its unit. */
export function widthAtFront(width: Figure, taper: Figure): Figure {
  return sum('mm', front, [width, taper])
}
