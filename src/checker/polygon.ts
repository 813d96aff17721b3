import type { PlanPoint } from '../core/plan/types'

/** Plane geometry by clipping: areas, overlaps and gaps of convex polygons given anticlockwise, in mm. */
export type Polygon = readonly PlanPoint[]

export function cross(o: PlanPoint, a: PlanPoint, b: PlanPoint): number {
  return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x)
}

/** Twice the signed area is summed edge by edge; anticlockwise is positive. */
export function area(polygon: Polygon): number {
  const o = polygon[0]
  if (o === undefined) return 0
  return edgesOf(polygon).reduce((total, [a, b]) => total + cross(o, a, b), 0) / 2
}

export function edgesOf(polygon: Polygon): readonly (readonly [PlanPoint, PlanPoint])[] {
  return polygon.map((a, i) => [a, polygon[(i + 1) % polygon.length] ?? a] as const)
}

/** What of one convex polygon lies in another: cut by each of its edges in turn (Sutherland and Hodgman, 1974). */
export function overlap(subject: Polygon, window: Polygon): Polygon {
  if (apart(subject, window)) return []
  return edgesOf(window).reduce<Polygon>((left, [a, b]) => keepLeftOf(left, a, b), subject)
}

/** Their upright bounding rectangles do not meet: nothing to cut. */
function apart(one: Polygon, other: Polygon): boolean {
  return (['x', 'y'] as const).some((axis) => {
    const [a, b] = [one, other].map((polygon) => polygon.map((p) => p[axis]))
    if (a === undefined || b === undefined) return true
    return Math.max(...a) < Math.min(...b) || Math.max(...b) < Math.min(...a)
  })
}

function keepLeftOf(polygon: Polygon, a: PlanPoint, b: PlanPoint): Polygon {
  return edgesOf(polygon).flatMap(([p, q]): readonly PlanPoint[] => {
    const sp = cross(a, b, p)
    const sq = cross(a, b, q)
    const kept = sp >= 0 ? [p] : []
    return sp >= 0 === sq >= 0 ? kept : [...kept, between(p, q, sp / (sp - sq))]
  })
}

function between(p: PlanPoint, q: PlanPoint, share: number): PlanPoint {
  return { x: p.x + (q.x - p.x) * share, y: p.y + (q.y - p.y) * share }
}

/** Least width of a convex polygon over all directions: reached across one of its edges. 0 when it has no area. */
export function thinness(polygon: Polygon): number {
  if (polygon.length < 3 || Math.abs(area(polygon)) < 1e-9) return 0
  const widths = edgesOf(polygon).flatMap(([a, b]) => {
    const long = Math.hypot(b.x - a.x, b.y - a.y)
    return long < 1e-6 ? [] : [Math.max(...polygon.map((p) => Math.abs(cross(a, b, p)) / long))]
  })
  return widths.length === 0 ? 0 : Math.min(...widths)
}

/** The smallest convex polygon round some points, anticlockwise. */
export function hull(points: readonly PlanPoint[]): Polygon {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y)
  return [...chain(sorted), ...chain([...sorted].reverse())]
}

function chain(points: readonly PlanPoint[]): readonly PlanPoint[] {
  const out: PlanPoint[] = []
  for (const p of points) {
    for (;;) {
      const a = out.at(-2)
      const b = out.at(-1)
      if (a === undefined || b === undefined || cross(a, b, p) > 1e-9) break
      out.pop()
    }
    out.push(p)
  }
  return out.slice(0, -1)
}

/** How far inside a convex polygon a point lies: the distance to its nearest side, negative outside. */
export function depthInside(polygon: Polygon, p: PlanPoint): number {
  let least = Number.POSITIVE_INFINITY
  for (const [a, b] of edgesOf(polygon)) {
    const long = Math.hypot(b.x - a.x, b.y - a.y)
    if (long >= 1e-9) least = Math.min(least, cross(a, b, p) / long)
  }
  return least
}

/** Least distance between two convex polygons; 0 when they touch or overlap. */
export function gapBetween(one: Polygon, other: Polygon): number {
  if (thinness(overlap(one, other)) > 0) return 0
  const distances = [...pairs(one, other), ...pairs(other, one)]
  return distances.length === 0 ? Number.POSITIVE_INFINITY : Math.min(...distances)
}

function pairs(points: Polygon, sides: Polygon): readonly number[] {
  return points.flatMap((p) => edgesOf(sides).map(([a, b]) => distanceTo(p, a, b)))
}

export function distanceTo(p: PlanPoint, a: PlanPoint, b: PlanPoint): number {
  const dx = b.x - a.x
  const dy = b.y - a.y
  const long2 = dx * dx + dy * dy
  const share = long2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / long2))
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy)
}

/** Whether a point lies in any simple polygon, convex or not: a ray from it leaves through an odd number of sides. */
export function holdsPoint(polygon: Polygon, p: PlanPoint): boolean {
  const crossings = edgesOf(polygon).filter(
    ([a, b]) => a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x),
  )
  return crossings.length % 2 === 1
}
