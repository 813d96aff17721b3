import type { LocalBox, PlanPoint, Pose } from '../plan/types'

/**
 * Solids of the placing: every box of a unit is an upright prism, a convex plan polygon between two heights. Units keep
 * upright while they travel, so a prism with a yaw is exact for walls at any angle.
 *
 * Room frame, mm, z up from the line. Polygons may run either way round; nothing here depends on it.
 */

/** Overlaps up to this, mm, are contact: readings and sheets are no better, and neighbours do touch. */
export const CONTACT = 0.1

/** Convex; two points make a straight piece of wall. */
export type Polygon = readonly PlanPoint[]

/** Plan extents, kept beside what they bound so that far things are dismissed without looking. */
export interface Extents {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}
export interface Prism extends Extents {
  readonly polygon: Polygon
  readonly bottom: number
  readonly top: number
}

/** The plan extents of some points; empty and inside out when there are none. */
export function extentsOf(points: Polygon): Extents {
  let x0 = Number.POSITIVE_INFINITY
  let x1 = Number.NEGATIVE_INFINITY
  let y0 = Number.POSITIVE_INFINITY
  let y1 = Number.NEGATIVE_INFINITY
  for (const { x, y } of points) {
    if (x < x0) x0 = x
    if (x > x1) x1 = x
    if (y < y0) y0 = y
    if (y > y1) y1 = y
  }
  return { x0, x1, y0, y1 }
}

/** True when the extents overlap by more than `tolerance` both ways: nothing nearer need be asked otherwise. */
export function extentsMeet(a: Extents, b: Extents, tolerance = CONTACT): boolean {
  return (
    a.x1 - b.x0 > tolerance && b.x1 - a.x0 > tolerance && a.y1 - b.y0 > tolerance && b.y1 - a.y0 > tolerance
  )
}

export function prismOver(polygon: Polygon, bottom: number, top: number): Prism {
  const { x0, x1, y0, y1 } = extentsOf(polygon)
  return { polygon, bottom, top, x0, x1, y0, y1 }
}

/** Cosine and sine of a yaw in degrees, exact for the quarter turns that most kitchens are made of. */
export function direction(yaw: number): { readonly cos: number; readonly sin: number } {
  const turn = ((yaw % 360) + 360) % 360
  if (turn === 0) return { cos: 1, sin: 0 }
  if (turn === 90) return { cos: 0, sin: 1 }
  if (turn === 180) return { cos: -1, sin: 0 }
  if (turn === 270) return { cos: 0, sin: -1 }
  const radians = (turn * Math.PI) / 180
  return { cos: Math.cos(radians), sin: Math.sin(radians) }
}

/** A point of a unit's local plan (x along its width, y out from its back) in the room. */
export function inRoom(pose: Pose, x: number, y: number): PlanPoint {
  const { cos, sin } = direction(pose.yaw)
  return { x: pose.x + x * cos + y * sin, y: pose.y + x * sin - y * cos }
}

/** A point of the room in the local plan of a unit at that pose: the other way round of `inRoom`. */
export function inUnit(pose: Pose, point: PlanPoint): PlanPoint {
  const { cos, sin } = direction(pose.yaw)
  const dx = point.x - pose.x
  const dy = point.y - pose.y
  return { x: dx * cos + dy * sin, y: dx * sin - dy * cos }
}

/** A rectangle of the local plan, in the room. */
export function rectangleInRoom(pose: Pose, x0: number, x1: number, y0: number, y1: number): Polygon {
  return [inRoom(pose, x0, y0), inRoom(pose, x1, y0), inRoom(pose, x1, y1), inRoom(pose, x0, y1)]
}

/** The floor under one box of a unit at a pose. */
export function footprint(pose: Pose, box: LocalBox): Polygon {
  return rectangleInRoom(pose, box.x0, box.x1, box.y0, box.y1)
}

/** A unit standing at a pose, one prism a box. */
export function prismsAt(solid: readonly LocalBox[], pose: Pose): readonly Prism[] {
  return solid.map((box) => prismAt(box, pose))
}

/** One box of a unit at a pose. */
export function prismAt(box: LocalBox, pose: Pose): Prism {
  return prismOver(footprint(pose, box), pose.z + box.z0, pose.z + box.z1)
}

/** The box round a whole solid, in its local frame; null for a unit that is only a space. */
export function boundsOf(solid: readonly LocalBox[]): LocalBox | null {
  if (solid.length === 0) return null
  return solid.reduce((all, box) => ({
    x0: Math.min(all.x0, box.x0),
    x1: Math.max(all.x1, box.x1),
    y0: Math.min(all.y0, box.y0),
    y1: Math.max(all.y1, box.y1),
    z0: Math.min(all.z0, box.z0),
    z1: Math.max(all.z1, box.z1),
  }))
}

/**
 * How far one convex polygon has gone into another: the least push that would part them. Nought or less: they touch or
 * are apart (then it is not their distance, see `planDistance`).
 *
 * By separating axes: the sides of both give the only directions in which the least push can lie. A straight piece of
 * wall counts, thin as it is, so a wall end standing inside a unit is seen.
 */
export function planOverlap(a: Polygon, b: Polygon): number {
  const along = leastPush(a, a, b, Number.POSITIVE_INFINITY)
  return along <= 0 ? along : leastPush(b, a, b, along)
}

function leastPush(sides: Polygon, a: Polygon, b: Polygon, sofar: number): number {
  let least = sofar
  let from = sides[sides.length - 1]
  if (from === undefined) return Number.NEGATIVE_INFINITY
  for (const to of sides) {
    const dx = to.x - from.x
    const dy = to.y - from.y
    const length = Math.sqrt(dx * dx + dy * dy)
    from = to
    if (length < 1e-9) continue
    const push = pushAlong(dy / length, -dx / length, a, b)
    if (push < least) least = push
    if (least <= 0) return least
  }
  return least
}

function pushAlong(nx: number, ny: number, a: Polygon, b: Polygon): number {
  let aLow = Number.POSITIVE_INFINITY
  let aHigh = Number.NEGATIVE_INFINITY
  let bLow = Number.POSITIVE_INFINITY
  let bHigh = Number.NEGATIVE_INFINITY
  for (const { x, y } of a) {
    const at = x * nx + y * ny
    if (at < aLow) aLow = at
    if (at > aHigh) aHigh = at
  }
  for (const { x, y } of b) {
    const at = x * nx + y * ny
    if (at < bLow) bLow = at
    if (at > bHigh) bHigh = at
  }
  return Math.min(aHigh - bLow, bHigh - aLow)
}

/** How far two prisms have gone into one another, by the least push; nought or less when they do not meet. */
export function overlapOf(a: Prism, b: Prism): number {
  const upright = Math.min(a.top - b.bottom, b.top - a.bottom)
  return upright <= 0 ? upright : Math.min(upright, planOverlap(a.polygon, b.polygon))
}

/** True when they are in each other by more than contact, both in plan and in height. */
export function prismsMeet(a: Prism, b: Prism, tolerance = CONTACT): boolean {
  if (a.top - b.bottom <= tolerance || b.top - a.bottom <= tolerance) return false
  return extentsMeet(a, b, tolerance) && planOverlap(a.polygon, b.polygon) > tolerance
}

/** Distance in plan between two convex polygons; nought when they meet. */
export function planDistance(a: Polygon, b: Polygon): number {
  if (planOverlap(a, b) > 0) return 0
  return Math.min(cornersToSides(a, b), cornersToSides(b, a))
}

function cornersToSides(corners: Polygon, sides: Polygon): number {
  let least = Number.POSITIVE_INFINITY
  let from = sides[sides.length - 1]
  if (from === undefined) return least
  for (const to of sides) {
    for (const corner of corners) least = Math.min(least, pointToSide(corner, from, to))
    from = to
  }
  return least
}

function pointToSide(point: PlanPoint, from: PlanPoint, to: PlanPoint): number {
  const dx = to.x - from.x
  const dy = to.y - from.y
  const square = dx * dx + dy * dy
  const along = square === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square
  const t = Math.max(0, Math.min(1, along))
  const ex = point.x - from.x - t * dx
  const ey = point.y - from.y - t * dy
  return Math.sqrt(ex * ex + ey * ey)
}

/** Distance between two prisms in space; nought when they meet. */
export function prismDistance(a: Prism, b: Prism): number {
  const plan = planDistance(a.polygon, b.polygon)
  const upright = Math.max(0, a.bottom - b.top, b.bottom - a.top)
  return Math.sqrt(plan * plan + upright * upright)
}

/**
 * What a convex polygon passes over while it is pushed straight by (dx, dy): the hull of where it starts and where it
 * ends, which for a push without a turn is exact.
 */
export function sweptHull(polygon: Polygon, dx: number, dy: number): Polygon {
  if (dx === 0 && dy === 0) return polygon
  return convexHull([...polygon, ...polygon.map(({ x, y }) => ({ x: x + dx, y: y + dy }))])
}

/** The convex hull of some points, without the points that lie along its sides. */
export function convexHull(points: Polygon): Polygon {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y)
  const under = halfHull(sorted)
  const over = halfHull(sorted.reverse())
  return [...under.slice(0, -1), ...over.slice(0, -1)]
}

function halfHull(points: Polygon): PlanPoint[] {
  const hull: PlanPoint[] = []
  for (const point of points) {
    while (hull.length > 1 && !turnsLeft(hull[hull.length - 2], hull[hull.length - 1], point)) hull.pop()
    hull.push(point)
  }
  return hull
}

function turnsLeft(a: PlanPoint | undefined, b: PlanPoint | undefined, c: PlanPoint): boolean {
  if (a === undefined || b === undefined) return true
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 1e-9
}

/** A point surely inside a convex polygon: the mean of its corners. */
export function middleOf(polygon: Polygon): PlanPoint {
  let x = 0
  let y = 0
  for (const point of polygon) {
    x += point.x
    y += point.y
  }
  return { x: x / polygon.length, y: y / polygon.length }
}

/** Whether a point lies inside a polygon of any shape, convex or not. On its very edge: either. */
export function pointInside(point: PlanPoint, outline: Polygon): boolean {
  let inside = false
  let from = outline[outline.length - 1]
  if (from === undefined) return false
  for (const to of outline) {
    const crosses = from.y > point.y !== to.y > point.y
    if (crosses && point.x < ((to.x - from.x) * (point.y - from.y)) / (to.y - from.y) + from.x)
      inside = !inside
    from = to
  }
  return inside
}
