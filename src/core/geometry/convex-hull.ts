import type { PlanPoint } from '../plan/types'
import { byPlace, leftOfLine } from './point'
import { ON_EDGE } from './tolerance'

/** One side of the hull, left to right: points that would make it bend the wrong way, or not at all, are left out. */
function side(points: readonly PlanPoint[]): PlanPoint[] {
  const kept: PlanPoint[] = []
  for (const point of points) {
    while (kept.length > 1) {
      const [before, last] = kept.slice(-2) as [PlanPoint, PlanPoint]
      if (leftOfLine(before, last, point) > ON_EDGE) break
      kept.pop()
    }
    kept.push(point)
  }
  return kept
}

/**
 * The corners of the tightest convex outline round some points, anticlockwise seen from above. Points on its edges are
 * left out. Points all on one line give its two ends, one point itself, none nothing.
 */
export function convexHull(points: readonly PlanPoint[]): readonly PlanPoint[] {
  const sorted = [...points].sort(byPlace)
  if (sorted.length < 2) return sorted
  const below = side(sorted)
  const above = side(sorted.reverse())
  return [...below.slice(0, -1), ...above.slice(0, -1)]
}
