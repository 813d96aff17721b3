import { quantise } from '../figure'
import type { LocalBox, PathSegment, PlacingPath, PlanPoint, UnitId } from '../plan/types'
import { type Body, standUpWayOf } from './placed'
import { type Route, segmentsOf } from './routes'
import {
  CONTACT,
  extentsMeet,
  inUnit,
  type Polygon,
  type Prism,
  prismAt,
  prismOver,
  prismsAt,
  prismsMeet,
} from './solid'
import { diagonalOf, heightOnFeet, ROOM_FOR_HANDS } from './stand-up'
import {
  distanceToFixed,
  type FixedThing,
  fixedInTheWay,
  type Slack,
  type Surroundings,
} from './surroundings'
import { type Side, type StandUp, slicesOf, sweptMoving, tiltFloor } from './sweep'

/**
 * Looks at one way in: does anything fixed refuse it, which units would be in its way, how near does it come.
 *
 * **Clearance** of a path is the least distance, mm, over all of it, between what the unit passes through and anything
 * fixed: walls, obstacles, and the ceiling straight above. Left out are the floor (it is lifted off it or stands on it)
 * and, while it is moved, whatever lies wholly behind the plane of its back where it ends: that it comes to stand
 * against. Coming from behind (islands) and while it is being stood up nothing but the floor is left out. A side wall
 * counts throughout: a unit that slides in along one has clearance 0. Cut off at `FAR`: beyond, nobody needs to know.
 */
export const FAR = 5000

/** A unit about to be looked at among the others. */
export interface Mover {
  readonly body: Body
  /** But for those it overlaps where both end up: that is a finding of its own, and no order would help. */
  readonly others: readonly Body[]
  readonly slack: Slack
  /** False when it stands above the ceiling already, which is told elsewhere. */
  readonly underCeiling: boolean
  /** Its slices of standing up over each side, kept once worked out: the same wherever it is stood up. */
  readonly slices: Map<Side, readonly LocalBox[]>
}

export type Verdict =
  | { readonly ok: true; readonly path: PlacingPath }
  | { readonly ok: false; readonly inTheWay: FixedThing }

/** A path along a route, or the first fixed thing in its way. */
export function judgeRoute(mover: Mover, route: Route, around: Surroundings): Verdict {
  const { placed, bounds } = mover.body
  const segments = segmentsOf(placed, bounds, route, around.room)
  const parts = partsOf(mover, segments)
  const inTheWay = firstRefusal(mover, parts, around)
  if (inTheWay !== null) return { ok: false, inTheWay }
  const blockedBy = blockersIn(mover, parts)
  const clearance = clearanceOf(mover, route.approach, parts, around)
  return { ok: true, path: { unit: placed.unit, approach: route.approach, segments, blockedBy, clearance } }
}

/** The first fixed thing on the way along some segments: wall, obstacle, ceiling, or what is behind; null: none. */
export function refusalOf(
  mover: Mover,
  segments: readonly PathSegment[],
  around: Surroundings,
): FixedThing | null {
  return firstRefusal(mover, partsOf(mover, segments), around)
}

/** Ids of the units that, in their place, would be in the way of some segments; in code-unit order. */
export function blockersOf(mover: Mover, segments: readonly PathSegment[]): readonly UnitId[] {
  return blockersIn(mover, partsOf(mover, segments))
}

// -------------------------------------------------------------------------------------- what is passed through

/** What a level or upright move passes through; `highest`: no other part goes higher over the same floor. */
interface MovePart {
  readonly kind: 'move'
  readonly swept: readonly Prism[]
  readonly highest: boolean
}
/** Standing up as one prism: exact in plan, so for walls; for the rest a sieve before the slices. */
interface StandUpPart {
  readonly kind: 'stand-up'
  readonly segment: StandUp
  readonly whole: Prism
}
type Part = MovePart | StandUpPart
type Move = Extract<PathSegment, { kind: 'move' }>

function partsOf(mover: Mover, segments: readonly PathSegment[]): readonly Part[] {
  return segments.map((segment) =>
    segment.kind === 'move'
      ? {
          kind: 'move',
          swept: sweptMoving(mover.body.placed.solid, segment.from, segment.to),
          highest: !isUnderAnother(segment, segments),
        }
      : { kind: 'stand-up', segment, whole: wholeOf(mover, segment) },
  )
}

/** Lifting and lowering go no higher and no further than the move between them, which is looked at anyway. */
function isUnderAnother(segment: Move, segments: readonly PathSegment[]): boolean {
  if (isLevel(segment)) return false
  const top = Math.max(segment.from.z, segment.to.z)
  return segments.some((other) => other.kind === 'move' && isLevel(other) && other.from.z >= top)
}

function isLevel({ from, to }: Move): boolean {
  return from.z === to.z
}

function wholeOf({ body }: Mover, segment: StandUp): Prism {
  const { placed, bounds } = body
  const floor = segment.upright.z + bounds.z0 - segment.blocks
  const top = floor + heightOf(body, segment) + ROOM_FOR_HANDS
  return prismOver(tiltFloor(placed.solid, segment, reachOf(body)), floor, top)
}

/** How high over the floor its top corner swings: over the edge on its blocks, or over the feet it may swing on. */
function heightOf({ placed, bounds }: Body, { over, blocks }: StandUp): number {
  const side = over === 'back' || over === 'front' ? bounds.y1 - bounds.y0 : bounds.x1 - bounds.x0
  const height = bounds.z1 - bounds.z0
  const way = standUpWayOf(placed)
  if (way?.insets === undefined) return blocks + diagonalOf(height, side)
  return heightOnFeet(height, side, way.reach, way.insets[over])
}

function reachOf({ placed }: Body): number {
  return standUpWayOf(placed)?.reach ?? 0
}

/** What hangs down is met first by the highest slices, so these are asked first. */
function slicesHighestFirst({ body, slices }: Mover, segment: StandUp): readonly LocalBox[] {
  const kept = slices.get(segment.over)
  if (kept !== undefined) return kept
  // Slices turn about the edge as high as it ends; swung on its feet it is never as high as that makes it.
  const top = body.bounds.z0 - segment.blocks + heightOf(body, segment)
  const cut = slicesOf(body.placed.solid, segment, reachOf(body))
    .map((slice) => ({ ...slice, z1: Math.min(slice.z1, top) }))
    .sort((a, b) => b.z1 - a.z1)
  slices.set(segment.over, cut)
  return cut
}

// -------------------------------------------------------------------------------------------------- fixed things

const CEILING: FixedThing = { kind: 'ceiling', id: 'ceiling' }

function firstRefusal(mover: Mover, parts: readonly Part[], around: Surroundings): FixedThing | null {
  for (const part of parts) {
    const hit =
      part.kind === 'move' ? refusedMove(mover, part, around) : refusedStandingUp(mover, part, around)
    if (hit !== null) return hit
  }
  return null
}

function refusedMove(mover: Mover, { swept, highest }: MovePart, around: Surroundings): FixedThing | null {
  for (const prism of swept) {
    const hit = behind(mover, prism, around) ?? fixedInTheWay(around, prism, mover.slack)
    if (hit !== null) return hit
    if (highest && mover.underCeiling && roomOver(prism, around) < -CONTACT) return CEILING
  }
  return null
}

function refusedStandingUp(
  mover: Mover,
  { segment, whole }: StandUpPart,
  around: Surroundings,
): FixedThing | null {
  const wall = behind(mover, whole, around) ?? fixedInTheWay(wallsOnly(around), whole, mover.slack)
  if (wall !== null) return wall
  if (mover.underCeiling && roomOver(whole, around) < -CONTACT) return CEILING
  if (!around.blocks.some((block) => extentsMeet(block, whole))) return null
  for (const box of slicesHighestFirst(mover, segment)) {
    const prism = prismAt(box, segment.upright)
    const hit = fixedInTheWay(around, { ...prism, top: prism.top + ROOM_FOR_HANDS }, mover.slack)
    if (hit !== null) return hit
  }
  return null
}

function wallsOnly(around: Surroundings): Surroundings {
  return { ...around, blocks: [] }
}

/** Height between the top of a prism and the lowest ceiling over it; the cut-off when that is not known. */
function roomOver(prism: Prism, around: Surroundings): number {
  const ceiling = around.room.ceilingLowUnder(prism.polygon)
  return ceiling === null ? FAR : ceiling - prism.top
}

/** Without an outline nothing may go behind the plane of the unit's own back: there is its wall. */
function behind({ body }: Mover, prism: Prism, around: Surroundings): FixedThing | null {
  if (!hasUnplacedWall(body, around) || outOfBack(body, prism.polygon) >= -CONTACT) return null
  return { kind: 'behind', id: body.placed.wall }
}

function hasUnplacedWall({ placed }: Body, around: Surroundings): boolean {
  return around.walls !== 'outline' && placed.kind !== 'island'
}

/** How far out from the plane of its back, where it ends, a polygon keeps; − is behind it. */
function outOfBack({ placed, bounds }: Body, polygon: Polygon): number {
  let least = Number.POSITIVE_INFINITY
  for (const point of polygon) least = Math.min(least, inUnit(placed.pose, point).y)
  return least - bounds.y0
}

// --------------------------------------------------------------------------------------------------- other units

function blockersIn(mover: Mover, parts: readonly Part[]): readonly UnitId[] {
  const found = new Set<UnitId>()
  for (const part of parts) {
    for (const other of inTheWayOf(mover, part)) found.add(other.placed.unit)
  }
  return [...found].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0))
}

function inTheWayOf(mover: Mover, part: Part): readonly Body[] {
  if (part.kind === 'move') return meeting(mover.others, part.swept)
  const near = meeting(mover.others, [part.whole])
  if (near.length === 0) return near
  return meeting(near, prismsAt(slicesHighestFirst(mover, part.segment), part.segment.upright))
}

function meeting(others: readonly Body[], swept: readonly Prism[]): readonly Body[] {
  return others.filter((other) =>
    other.inPlace.some((prism) => swept.some((mine) => prismsMeet(prism, mine))),
  )
}

// ----------------------------------------------------------------------------------------------------- clearance

function clearanceOf(
  mover: Mover,
  approach: PlacingPath['approach'],
  parts: readonly Part[],
  around: Surroundings,
): number {
  const least = parts.reduce(
    (near, part) =>
      part.kind === 'move'
        ? nearestOnMove(mover, approach, part, around, near)
        : nearestStandingUp(mover, part, around, near),
    FAR,
  )
  return quantise(Math.max(0, least))
}

function nearestOnMove(
  { body, underCeiling }: Mover,
  approach: PlacingPath['approach'],
  { swept, highest }: MovePart,
  around: Surroundings,
  sofar: number,
): number {
  const standsAgainst = (points: readonly PlanPoint[]): boolean =>
    approach !== 'back' &&
    points.every((point) => inUnit(body.placed.pose, point).y <= body.bounds.y0 + CONTACT)
  let least = sofar
  for (const prism of swept) {
    least = distanceToFixed(around, prism, standsAgainst, least)
    if (highest && underCeiling) least = Math.min(least, roomOver(prism, around))
  }
  return least
}

function nearestStandingUp(
  mover: Mover,
  { segment, whole }: StandUpPart,
  around: Surroundings,
  sofar: number,
): number {
  const over = roomOver(whole, around) + ROOM_FOR_HANDS
  const own = hasUnplacedWall(mover.body, around) ? outOfBack(mover.body, whole.polygon) : FAR
  const walls = distanceToFixed(wallsOnly(around), whole, () => false, sofar)
  const least = Math.min(sofar, over, own, walls)
  if (around.blocks.length === 0) return least
  return prismsAt(slicesHighestFirst(mover, segment), segment.upright).reduce(
    (near, prism) => distanceToFixed(around, prism, () => false, near),
    least,
  )
}
