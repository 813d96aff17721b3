import { quantise } from '../figure'
import type { PathSegment, PlacingPath, PlanPoint, UnitId } from '../plan/types'
import { type Body, standUpWayOf } from './placed'
import { type Route, segmentsOf } from './routes'
import { CONTACT, extentsMeet, inUnit, type Polygon, type Prism, prismOver, prismsMeet } from './solid'
import { diagonalOf } from './stand-up'
import { distanceToFixed, type FixedThing, fixedInTheWay, type Slack, type Surroundings } from './surroundings'
import { type StandUp, sweepOf, sweptMoving, sweptStandingUp, tiltFloor } from './sweep'

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

/** Room over the corner of a unit being stood up, for the hands: the same 10 mm as in the reckoning of its height. */
const OVER_THE_CORNER = 10

/** A unit about to be looked at among the others. */
export interface Mover {
  readonly body: Body
  readonly others: readonly Body[]
  /** Units it overlaps where both end up: that is a finding of its own, and no order would help. */
  readonly notCounted: ReadonlySet<UnitId>
  readonly slack: Slack
  /** False when it stands above the ceiling already, which is told elsewhere. */
  readonly underCeiling: boolean
}

export type Verdict =
  | { readonly ok: true; readonly path: PlacingPath }
  | { readonly ok: false; readonly inTheWay: FixedThing }

/** A path along a route, or the first fixed thing in its way. */
export function judgeRoute(mover: Mover, route: Route, around: Surroundings): Verdict {
  const { placed, bounds } = mover.body
  const segments = segmentsOf(placed, bounds, route, around.room)
  const inTheWay = refusal(mover, segments, around)
  if (inTheWay !== null) return { ok: false, inTheWay }
  const blockedBy = blockersOf(mover, segments)
  const clearance = clearanceOf(mover, route.approach, segments, around)
  return {
    ok: true,
    path: { unit: placed.unit, approach: route.approach, segments, blockedBy, clearance },
  }
}

/** The first fixed thing on the way along some segments: wall, obstacle, ceiling, or what is behind; null: none. */
export function refusal(
  mover: Mover,
  segments: readonly PathSegment[],
  around: Surroundings,
): FixedThing | null {
  for (const segment of segments) {
    const hit =
      segment.kind === 'move'
        ? refusedMove(mover, segment, segments, around)
        : refusedStandingUp(mover, segment, around)
    if (hit !== null) return hit
  }
  return null
}

type Move = Extract<PathSegment, { kind: 'move' }>

function refusedMove(
  mover: Mover,
  segment: Move,
  segments: readonly PathSegment[],
  around: Surroundings,
): FixedThing | null {
  for (const prism of sweptMoving(mover.body.placed.solid, segment.from, segment.to)) {
    const hit = behind(mover, prism, around) ?? fixedInTheWay(around, prism, mover.slack)
    if (hit !== null) return hit
    if (isUnderAnother(segment, segments) || !mover.underCeiling) continue
    if (roomOver(prism, around) < -CONTACT) return CEILING
  }
  return null
}

const CEILING: FixedThing = { kind: 'ceiling', id: 'ceiling' }

/** Lifting and lowering go no higher and no further than the move between them, which is looked at anyway. */
function isUnderAnother(segment: Move, segments: readonly PathSegment[]): boolean {
  const level = (s: PathSegment): s is Move => s.kind === 'move' && s.from.z === s.to.z
  if (level(segment)) return false
  return segments.some((other) => level(other) && other.from.z >= Math.max(segment.from.z, segment.to.z))
}

/** Height between the top of a prism and the lowest ceiling over it; the cut-off when that is not known. */
function roomOver(prism: Prism, around: Surroundings): number {
  const ceiling = around.room.ceilingLowUnder(prism.polygon)
  return ceiling === null ? FAR : ceiling - prism.top
}

/** Without an outline nothing may go behind the plane of the unit's own back: there is its wall. */
function behind({ body }: Mover, prism: Prism, around: Surroundings): FixedThing | null {
  if (!hasUnplacedWall(body, around)) return null
  return leastOut(body, prism.polygon) < body.bounds.y0 - CONTACT ? { kind: 'behind', id: body.placed.wall } : null
}

function hasUnplacedWall({ placed }: Body, around: Surroundings): boolean {
  return around.walls !== 'outline' && placed.kind !== 'island'
}

function leastOut({ placed }: Body, polygon: Polygon): number {
  return polygon.reduce((least, point) => Math.min(least, inUnit(placed.pose, point).y), Number.POSITIVE_INFINITY)
}

// ------------------------------------------------------------------------------------------------- standing up

/** The whole of standing up as one prism: exact in plan, so for walls; for the rest a first sieve. */
function roundStandingUp({ body }: Mover, segment: StandUp): Prism {
  const { placed, bounds } = body
  const floor = segment.upright.z + bounds.z0 - segment.blocks
  const side = segment.over === 'back' || segment.over === 'front' ? bounds.y1 - bounds.y0 : bounds.x1 - bounds.x0
  const top = segment.upright.z + bounds.z0 + diagonalOf(bounds.z1 - bounds.z0, side)
  return prismOver(tiltFloor(placed.solid, segment, reachOf(body)), floor, top + OVER_THE_CORNER)
}

function reachOf({ placed }: Body): number {
  return standUpWayOf(placed)?.reach ?? 0
}

function refusedStandingUp(mover: Mover, segment: StandUp, around: Surroundings): FixedThing | null {
  const whole = roundStandingUp(mover, segment)
  const wall = behind(mover, whole, around) ?? fixedInTheWay({ ...around, blocks: [] }, whole, mover.slack)
  if (wall !== null) return wall
  if (mover.underCeiling && roomOver(whole, around) < -CONTACT) return CEILING
  if (!around.blocks.some((block) => extentsMeet(block, whole))) return null
  for (const prism of sweptStandingUp(mover.body.placed.solid, segment, reachOf(mover.body))) {
    const hit = fixedInTheWay(around, { ...prism, top: prism.top + OVER_THE_CORNER }, mover.slack)
    if (hit !== null) return hit
  }
  return null
}

// --------------------------------------------------------------------------------------------------- other units

/** Ids of the units that, in their place, would be in the way of some segments; in code-unit order. */
export function blockersOf(mover: Mover, segments: readonly PathSegment[]): readonly UnitId[] {
  const found = new Set<UnitId>()
  for (const segment of segments) for (const unit of blockersOn(mover, segment)) found.add(unit)
  return [...found].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0))
}

/** The units in the way of one segment. */
export function blockersOn(mover: Mover, segment: PathSegment): readonly UnitId[] {
  const { placed } = mover.body
  const others = mover.others.filter((other) => !mover.notCounted.has(other.placed.unit))
  const near = segment.kind === 'move' ? others : meeting(others, [roundStandingUp(mover, segment)])
  if (near.length === 0) return []
  return meeting(near, sweepOf(placed.solid, segment, reachOf(mover.body))).map((other) => other.placed.unit)
}

function meeting(others: readonly Body[], swept: readonly Prism[]): readonly Body[] {
  return others.filter((other) => other.inPlace.some((prism) => swept.some((mine) => prismsMeet(prism, mine))))
}

// ----------------------------------------------------------------------------------------------------- clearance

function clearanceOf(
  mover: Mover,
  approach: PlacingPath['approach'],
  segments: readonly PathSegment[],
  around: Surroundings,
): number {
  let least = FAR
  for (const segment of segments) {
    if (segment.kind === 'move') {
      for (const prism of sweptMoving(mover.body.placed.solid, segment.from, segment.to))
        least = nearestOnMove(mover, approach, prism, around, least)
    } else {
      least = nearestStandingUp(mover, segment, around, least)
    }
  }
  return quantise(Math.max(0, least))
}

function nearestOnMove(
  { body }: Mover,
  approach: PlacingPath['approach'],
  prism: Prism,
  around: Surroundings,
  sofar: number,
): number {
  const standsAgainst = (points: readonly PlanPoint[]): boolean =>
    approach !== 'back' && points.every((point) => inUnit(body.placed.pose, point).y <= body.bounds.y0 + CONTACT)
  const least = distanceToFixed(around, prism, standsAgainst, sofar)
  return Math.min(least, roomOver(prism, around))
}

function nearestStandingUp(mover: Mover, segment: StandUp, around: Surroundings, sofar: number): number {
  const whole = roundStandingUp(mover, segment)
  const over = roomOver(whole, around) + OVER_THE_CORNER
  const own = hasUnplacedWall(mover.body, around)
    ? leastOut(mover.body, whole.polygon) - mover.body.bounds.y0
    : Number.POSITIVE_INFINITY
  const walls = distanceToFixed({ ...around, blocks: [] }, whole, () => false, sofar)
  const least = Math.min(sofar, over, own, walls)
  if (around.blocks.length === 0) return least
  return sweptStandingUp(mover.body.placed.solid, segment, reachOf(mover.body)).reduce(
    (near, prism) => distanceToFixed(around, prism, () => false, near),
    least,
  )
}
