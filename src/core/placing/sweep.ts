import type { LocalBox, PathSegment, PlanPoint, Pose } from '../plan/types'
import { boundsOf, footprint, type Prism, prismOver, prismsAt, rectangleInRoom, sweptHull } from './solid'

/**
 * What a unit passes through on its way: upright prisms that together hold every place it is ever in.
 *
 * Moves are exact. Standing up is cut into slices of the turn, each with the exact bounds of the unit in that slice, so
 * the union is never smaller than the truth and its greatest height is exactly the diagonal.
 */

export type Side = 'back' | 'front' | 'left' | 'right'
export type StandUp = Extract<PathSegment, { kind: 'stand-up' }>

/** Slices of the quarter turn of standing up: 3.75° each, which overstates a 2 m unit by a few centimetres at most. */
export const SLICES = 24

/** What one segment of a path passes through. `reach` is for a unit that swings on its feet, see `sweptStandingUp`. */
export function sweepOf(solid: readonly LocalBox[], segment: PathSegment, reach = 0): readonly Prism[] {
  return segment.kind === 'move'
    ? sweptMoving(solid, segment.from, segment.to)
    : sweptStandingUp(solid, segment, reach)
}

/**
 * A straight move: along the floor the hull of both footprints, up or down the same footprint between both heights.
 * (Both at once, which no path here does, gives the hull over both heights: never too small.)
 */
export function sweptMoving(solid: readonly LocalBox[], from: Pose, to: Pose): readonly Prism[] {
  if (from.yaw !== to.yaw) throw new RangeError('a unit is never turned while it is moved')
  const low = Math.min(from.z, to.z)
  const high = Math.max(from.z, to.z)
  return solid.map((box) =>
    prismOver(sweptHull(footprint(from, box), to.x - from.x, to.y - from.y), low + box.z0, high + box.z1),
  )
}

/** Where the tilting happens: the bottom edge it turns about, which way the head lies, and how far across. */
interface TiltPlane {
  /** Local place of the turning edge along the tilt, and +1 or −1: the local direction away from the lying head. */
  readonly edge: number
  readonly away: 1 | -1
  readonly alongY: boolean
}

function tiltPlane(bounds: LocalBox, over: Side): TiltPlane {
  if (over === 'back') return { edge: bounds.y0, away: 1, alongY: true }
  if (over === 'front') return { edge: bounds.y1, away: -1, alongY: true }
  if (over === 'left') return { edge: bounds.x0, away: 1, alongY: false }
  return { edge: bounds.x1, away: -1, alongY: false }
}

/**
 * A unit turned up about a bottom edge of its carcass. Over the back: it lies on its back, head towards where its back
 * will face, and ends at `upright`; likewise over the other sides. The edge stands on blocks: `upright.z` is the
 * underside of the carcass on the blocks, so the floor is `blocks` below it, and lying it takes up the room down to it.
 *
 * `reach` widens the sweep on the head's side and is the leg length when a maker lets the unit swing on its feet: until
 * the feet touch, it turns about the carcass edge lying up to that much further back.
 *
 * A corner h up and s away from the edge is at height h·sin θ + s·cos θ, θ from 0 lying to 90° upright; that is
 * greatest, √(h² + s²), at tan θ = h/s.
 */
export function sweptStandingUp(solid: readonly LocalBox[], segment: StandUp, reach = 0): readonly Prism[] {
  return prismsAt(slicesOf(solid, segment, reach), segment.upright)
}

/** The same slices as boxes in the unit's upright frame: they go with it wherever it is stood up. */
export function slicesOf(
  solid: readonly LocalBox[],
  { over, blocks }: Pick<StandUp, 'over' | 'blocks'>,
  reach = 0,
): readonly LocalBox[] {
  const bounds = boundsOf(solid)
  if (bounds === null) return []
  const plane = tiltPlane(bounds, over)
  return solid.flatMap((box) =>
    Array.from({ length: SLICES }, (_, slice) => {
      const cut = sliceOf(box, bounds.z0, plane, slice, reach)
      return slice === 0 ? { ...cut, z0: bounds.z0 - blocks } : cut
    }),
  )
}

function sliceOf(box: LocalBox, foot: number, plane: TiltPlane, slice: number, reach: number): LocalBox {
  const from = (slice * Math.PI) / 2 / SLICES
  const to = ((slice + 1) * Math.PI) / 2 / SLICES
  const up = { low: box.z0 - foot, high: box.z1 - foot }
  const out = awayFromEdge(box, plane)
  const height = turned(up, out, from, to)
  // Along the floor the corner is at s·sin θ − h·cos θ, which is the same turn with the two changed over.
  const along = turned(out, { low: -up.high, high: -up.low }, from, to)
  return {
    ...acrossTilt(box, plane, along.low - reach, along.high),
    z0: foot + height.low,
    z1: foot + height.high,
  }
}

interface Range {
  readonly low: number
  readonly high: number
}

function awayFromEdge(box: LocalBox, { edge, away, alongY }: TiltPlane): Range {
  const [near, far] = alongY ? [box.y0, box.y1] : [box.x0, box.x1]
  return away === 1 ? { low: near - edge, high: far - edge } : { low: edge - far, high: edge - near }
}

/** Least and greatest of a·sin θ + b·cos θ over a part of the quarter turn, a and b anywhere in their ranges. */
function turned(a: Range, b: Range, from: number, to: number): Range {
  // Sine and cosine are not negative in the quarter turn, so the greatest has both greatest and the least both least.
  return { low: -peak(-a.low, -b.low, from, to), high: peak(a.high, b.high, from, to) }
}

/** Greatest of a·sin θ + b·cos θ between two angles: at an end, or √(a² + b²) where tan θ = a/b in between. */
function peak(a: number, b: number, from: number, to: number): number {
  const at = Math.atan2(a, b)
  if (at >= from && at <= to) return Math.sqrt(a * a + b * b)
  return Math.max(a * sine(from) + b * cosine(from), a * sine(to) + b * cosine(to))
}

/** Exact at the two ends of the turn, where rounding would leave a hair of a unit below its floor. */
function sine(angle: number): number {
  return angle === Math.PI / 2 ? 1 : Math.sin(angle)
}
function cosine(angle: number): number {
  return angle === Math.PI / 2 ? 0 : Math.cos(angle)
}

/** A strip across the tilt, `from`..`to` away from the turning edge (− is under the lying head), in the local plan. */
function acrossTilt(
  box: LocalBox,
  { edge, away, alongY }: TiltPlane,
  from: number,
  to: number,
): Pick<LocalBox, 'x0' | 'x1' | 'y0' | 'y1'> {
  const low = Math.min(edge + away * from, edge + away * to)
  const high = Math.max(edge + away * from, edge + away * to)
  return alongY
    ? { x0: box.x0, x1: box.x1, y0: low, y1: high }
    : { x0: low, x1: high, y0: box.y0, y1: box.y1 }
}

/**
 * The floor swept while a unit is stood up, for keeping it clear and for what must not stand there yet: from under the
 * lying head to under the upright foot, the unit's full extent across. A plan rectangle; empty for a unit that is only
 * a space.
 *
 * The turning edge stays put, so the head's side needs the height h and the other the side s: h + s of floor. (At any
 * one moment the unit spans less, at most √(h² + s²); a crew that lets the foot slide needs no more than that, but a
 * foot that slides is how a unit gets away.)
 */
export function tiltFloor(
  solid: readonly LocalBox[],
  { upright, over }: StandUp,
  reach = 0,
): readonly PlanPoint[] {
  const bounds = boundsOf(solid)
  if (bounds === null) return []
  const plane = tiltPlane(bounds, over)
  const out = awayFromEdge(bounds, plane)
  const floor = acrossTilt(bounds, plane, bounds.z0 - bounds.z1 - reach, out.high)
  return rectangleInRoom(upright, floor.x0, floor.x1, floor.y0, floor.y1)
}
