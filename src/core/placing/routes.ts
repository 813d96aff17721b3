import { quantise } from '../figure'
import type { LocalBox, PathSegment, PlacingPath, PlanPoint, Pose } from '../plan/types'
import { type PlacedUnit, standUpWayOf } from './placed'
import { footprint, inUnit, type Polygon, sweptHull } from './solid'
import type { Room, Surroundings } from './surroundings'
import { type Side, tiltFloor } from './sweep'

/** Away from a unit's place, in its own plan: to the right of it as seen from its front, and out from its back. */
export interface Offset {
  readonly right: number
  readonly out: number
}
const IN_PLACE: Offset = { right: 0, out: 0 }

/** A way in, before it is looked at: where it is set down first, the corners it takes, and how it is stood up there. */
export interface Route {
  readonly approach: PlacingPath['approach']
  /** From the place it is set down at to its place (0, 0), which is always the last. */
  readonly stops: readonly Offset[]
  readonly over: Side | null
  /** How far it is carried over the floor or, hung, over its place. */
  readonly lift: number
}

/** Set down clear of the finished front line by this, so that there is room to take hold of it. */
const CLEAR_OF_FRONT = 300
/** Lifted over the floor on the way in; the second is tried where something overhead leaves no room for the first. */
const CARRY_LIFTS = [30, 10] as const
/** A tall unit is walked in, hardly off the floor. */
const WALK_LIFTS = [10, 5] as const
/** A unit to be hung is lifted up from the floor clear of base units and worktop. */
const HUNG_OUT = 900

/**
 * Ways of bringing in a unit that is set down upright, the one to be preferred first: straight out at the front, along
 * the walls beside it, on the bisector (corner units), then along its wall from either side, then round a bend.
 * An island has four open sides. `hint` is where the user lets units be set down.
 *
 * Worked out one after the other, since the first is mostly the one that is taken.
 */
export function* routesTo(
  placed: PlacedUnit,
  bounds: LocalBox,
  around: Surroundings,
  hint: PlanPoint | null,
): Generator<Route, void> {
  for (const lift of liftsOf(placed)) {
    for (const ways of waysIn) {
      for (const { approach, stops } of ways(placed, bounds, around, hint)) {
        yield { approach, stops, over: null, lift }
      }
    }
  }
}

function liftsOf({ hung, hookLift, kind }: PlacedUnit): readonly number[] {
  if (hung) return [hookLift]
  return kind === 'tall' ? WALK_LIFTS : CARRY_LIFTS
}

type Way = Pick<Route, 'approach' | 'stops'>
type WaysIn = (
  placed: PlacedUnit,
  bounds: LocalBox,
  around: Surroundings,
  hint: PlanPoint | null,
) => readonly Way[]

const waysIn: readonly WaysIn[] = [
  (placed, bounds, _, hint) => (hint === null ? [] : fromHint(placed, bounds, hint)),
  (placed, bounds) => straightOut(placed, bounds).slice(0, 1),
  (placed, bounds, around) => slanted(placed, bounds, around),
  (placed, bounds) => straightOut(placed, bounds).slice(1),
  (_, bounds) => alongTheWall(bounds),
  (placed, bounds) => (placed.kind === 'island' ? fromBehind(bounds) : []),
  (placed, bounds) => roundABend(placed, bounds),
]

function way(approach: Way['approach'], ...stops: readonly Offset[]): Way {
  return { approach, stops: [...stops, IN_PLACE] }
}

function straightOut(placed: PlacedUnit, bounds: LocalBox): readonly Way[] {
  const outs = placed.hung
    ? [HUNG_OUT, HUNG_OUT + 300, HUNG_OUT + 600, bounds.y1 + 300, bounds.y1 + 50]
    : [300, 600, 900, 100, 20].map((clear) => bounds.y1 + clear)
  return outs.map((out) => way('front', { right: 0, out }))
}

/** The lengths it is drawn out by on a slant: clear of its own place, a hung one clear of the base units too. */
function slantLength(placed: PlacedUnit, bounds: LocalBox): number {
  return placed.hung ? HUNG_OUT : bounds.y1 + CLEAR_OF_FRONT
}

/**
 * Straight but not square: along walls beside it that are not square to its own, as one slides a unit past a leaning
 * return, and for a corner unit out along the bisector. Degrees off the front, + to the right.
 */
function slanted(placed: PlacedUnit, bounds: LocalBox, around: Surroundings): readonly Way[] {
  const beside = wallSlants(placed, bounds, around)
  const corner = placed.kind === 'corner-base' || placed.kind === 'corner-wall'
  const length = slantLength(placed, bounds)
  return [...new Set(corner ? [...beside, 45, -45] : beside)].map((slant) => {
    const radians = (slant * Math.PI) / 180
    return way('front', {
      right: quantise(length * Math.sin(radians)),
      out: quantise(length * Math.cos(radians)),
    })
  })
}

function wallSlants(placed: PlacedUnit, bounds: LocalBox, around: Surroundings): readonly number[] {
  const pieces = [
    ...around.edges.map((edge) => edge.points),
    ...around.blocks.flatMap((block) => block.sides.map((side) => side.points)),
  ]
  return pieces.flatMap(([a, b]) => {
    const [p, q] = [inUnit(placed.pose, a), inUnit(placed.pose, b)]
    const [near, far] = p.y < q.y ? [p, q] : [q, p]
    const slant = quantise((Math.atan2(far.x - near.x, far.y - near.y) * 180) / Math.PI)
    return slant !== 0 && Math.abs(slant) <= 45 && isBeside(near, far, bounds) ? [slant] : []
  })
}

function isBeside(p: PlanPoint, q: PlanPoint, bounds: LocalBox): boolean {
  const margin = 500
  const across = Math.min(p.x, q.x) < bounds.x1 + margin && Math.max(p.x, q.x) > bounds.x0 - margin
  return across && p.y < bounds.y1 && q.y > bounds.y0
}

function alongTheWall(bounds: LocalBox): readonly Way[] {
  const width = bounds.x1 - bounds.x0
  return [300, 900].flatMap((clear) => [
    way('left', { right: -(width + clear), out: 0 }),
    way('right', { right: width + clear, out: 0 }),
  ])
}

function fromBehind(bounds: LocalBox): readonly Way[] {
  return [300, 600, 100].map((clear) => way('back', { right: 0, out: -(bounds.y1 + clear) }))
}

/**
 * Set down to one side, moved across in front of its place, then in. A hung one goes up clear of the run; a standing one
 * passes by what juts from the wall beside it, not wholly out of its place: from further out it comes straight.
 */
function roundABend(placed: PlacedUnit, bounds: LocalBox): readonly Way[] {
  const aside = bounds.x1 - bounds.x0 + CLEAR_OF_FRONT
  const outs = placed.hung ? [HUNG_OUT, bounds.y1 + 50] : [50, 150, 300]
  return outs.flatMap((out) => [
    way('left', { right: -aside, out }, { right: 0, out }),
    way('right', { right: aside, out }, { right: 0, out }),
  ])
}

/** From where the user lets units be set down, across and in; nothing when that is not in front of its place. */
function fromHint(placed: PlacedUnit, bounds: LocalBox, hint: PlanPoint): readonly Way[] {
  const at = inUnit(placed.pose, hint)
  const right = quantise(at.x - (bounds.x0 + bounds.x1) / 2)
  const out = quantise(at.y - (bounds.y0 + bounds.y1) / 2)
  if (out < bounds.y1 - bounds.y0) return []
  return [right === 0 ? way('front', { right, out }) : way('front', { right, out }, { right: 0, out })]
}

// ------------------------------------------------------------------------------------------- a route as segments

/** Where a unit is at an offset from its place, at a height; exactly its place at none. */
export function poseAtOffset({ pose }: PlacedUnit, { right, out }: Offset, z: number): Pose {
  const at = right === 0 && out === 0 ? pose : offsetPoint(pose, right, out)
  return { x: at.x, y: at.y, z, yaw: pose.yaw }
}

function offsetPoint(pose: Pose, right: number, out: number): PlanPoint {
  const turn = (pose.yaw * Math.PI) / 180
  const cos = Math.cos(turn)
  const sin = Math.sin(turn)
  return {
    x: quantise(pose.x + right * cos + out * sin),
    y: quantise(pose.y + right * sin - out * cos),
  }
}

/**
 * A route as segments: (stood up), lifted, moved along the floor from stop to stop, let down. Standing units start at
 * the height they will have, or on the floor where it rises above that, and travel `lift` above the highest of both.
 * Hung ones are lifted from the floor to their hooking height. Where the floor is not known, a standing unit starts at
 * the height it will have (a tall one is stood up there), and a hung one at its hooking height: in the hands, with
 * nothing said about how it came there.
 */
export function segmentsOf(
  placed: PlacedUnit,
  bounds: LocalBox,
  route: Route,
  room: Room,
): readonly PathSegment[] {
  const first = route.stops[0] ?? IN_PLACE
  const travel = quantise(travelHeight(placed, bounds, route, room))
  const stops = route.stops.map((stop) => poseAtOffset(placed, stop, travel))
  const start = startHeight(placed, bounds, route, room)
  const set = poseAtOffset(placed, first, start === null ? travel : quantise(start))
  const way = standUpWayOf(placed)
  const stoodUp: readonly PathSegment[] =
    route.over === null || way === null
      ? []
      : [{ kind: 'stand-up', upright: set, over: route.over, blocks: way.blocks }]
  return [...stoodUp, ...moves([set, ...stops, placed.pose])]
}

function moves(poses: readonly Pose[]): readonly PathSegment[] {
  return poses.flatMap((to, i) => {
    const from = poses[i - 1]
    return from === undefined || samePlace(from, to) ? [] : [{ kind: 'move' as const, from, to }]
  })
}

function samePlace(a: Pose, b: Pose): boolean {
  return a.x === b.x && a.y === b.y && a.z === b.z
}

/** Height it is set down (or ends standing up) at; null when the floor there is not known. */
function startHeight(placed: PlacedUnit, bounds: LocalBox, route: Route, room: Room): number | null {
  const first = route.stops[0] ?? IN_PLACE
  const way = route.over === null ? null : standUpWayOf(placed)
  const at = poseAtOffset(placed, first, 0)
  const under =
    route.over === null || way === null
      ? footprint(at, bounds)
      : tiltFloor(
          placed.solid,
          { kind: 'stand-up', upright: at, over: route.over, blocks: way.blocks },
          way.reach,
        )
  const floor = room.floorHighUnder(under)
  if (floor === null) return placed.hung ? null : placed.pose.z
  if (way !== null) return floor + way.blocks - bounds.z0
  return placed.hung ? floor - bounds.z0 : Math.max(placed.pose.z, floor - bounds.z0)
}

function travelHeight(placed: PlacedUnit, bounds: LocalBox, route: Route, room: Room): number {
  if (placed.hung) return placed.pose.z + route.lift
  const floors = floorsCrossed(placed, bounds, route).map((polygon) => room.floorHighUnder(polygon))
  const highest = floors.reduce<number>(
    (high, floor) => Math.max(high, (floor ?? high) - bounds.z0),
    placed.pose.z,
  )
  return highest + route.lift
}

/** What it passes over from stop to stop, bounds of the whole unit. */
function floorsCrossed(placed: PlacedUnit, bounds: LocalBox, route: Route): readonly Polygon[] {
  return route.stops.flatMap((stop, i) => {
    const last = route.stops[i - 1]
    if (last === undefined) return []
    const from = poseAtOffset(placed, last, 0)
    const to = poseAtOffset(placed, stop, 0)
    return [sweptHull(footprint(from, bounds), to.x - from.x, to.y - from.y)]
  })
}
