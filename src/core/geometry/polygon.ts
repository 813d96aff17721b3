import type { PlanPoint } from '../plan/types'
import { leftOfLine } from './point'
import { distanceToSegment } from './segment'
import { ON_EDGE } from './tolerance'

/** The edges of a closed polygon, from each corner to the next. */
export function edgesOf(polygon: readonly PlanPoint[]): readonly (readonly [PlanPoint, PlanPoint])[] {
  return polygon.map((a, i) => [a, polygon[(i + 1) % polygon.length] as PlanPoint])
}

/** Area, positive when the corners run anticlockwise seen from above. */
export function signedArea(polygon: readonly PlanPoint[]): number {
  return edgesOf(polygon).reduce((sum, [a, b]) => sum + (a.x * b.y - b.x * a.y) / 2, 0)
}

/** Distance to the nearest edge; 0 on it. Of one point: to that point. */
export function distanceToEdges(polygon: readonly PlanPoint[], p: PlanPoint): number {
  return edgesOf(polygon).reduce((least, [a, b]) => Math.min(least, distanceToSegment(a, b, p)), Infinity)
}

/** Whether a point lies inside a polygon of any shape, or on an edge of it. */
export function pointInPolygon(polygon: readonly PlanPoint[], p: PlanPoint): boolean {
  if (distanceToEdges(polygon, p) <= ON_EDGE) return true
  let inside = false
  for (const [a, b] of edgesOf(polygon)) {
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside
  }
  return inside
}

/** How far outside a polygon a point lies; 0 inside and on its edges. No polygon: infinitely far. */
export function distanceOutside(polygon: readonly PlanPoint[], p: PlanPoint): number {
  return pointInPolygon(polygon, p) ? 0 : distanceToEdges(polygon, p)
}

/** Whether some edge of `a` has all of `b` strictly on its outer side. Both run anticlockwise. */
function partedByAnEdge(a: readonly PlanPoint[], b: readonly PlanPoint[]): boolean {
  return edgesOf(a).some(([from, to]) => b.every((p) => leftOfLine(from, to, p) < -ON_EDGE))
}

/** Whether two convex polygons, both anticlockwise, share at least a point. */
export function convexTouch(a: readonly PlanPoint[], b: readonly PlanPoint[]): boolean {
  return !partedByAnEdge(a, b) && !partedByAnEdge(b, a)
}
