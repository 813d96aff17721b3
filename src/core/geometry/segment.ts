import type { PlanPoint } from '../plan/types'
import { add, cross, distance, dot, scale, subtract } from './point'

/** Where along the way from a (0) to b (1) a point lies square to; outside 0..1 beyond the ends. */
export function shareAlong(a: PlanPoint, b: PlanPoint, p: PlanPoint): number {
  const way = subtract(b, a)
  const squared = dot(way, way)
  return squared === 0 ? 0 : dot(subtract(p, a), way) / squared
}

/** The nearest point of a segment, its ends included. */
export function nearestOnSegment(a: PlanPoint, b: PlanPoint, p: PlanPoint): PlanPoint {
  const share = Math.min(1, Math.max(0, shareAlong(a, b, p)))
  return add(a, scale(subtract(b, a), share))
}

export function distanceToSegment(a: PlanPoint, b: PlanPoint, p: PlanPoint): number {
  return distance(p, nearestOnSegment(a, b, p))
}

/** Where two segments cross, ends included; undefined where they do not, or run side by side. */
export function crossing(a: PlanPoint, b: PlanPoint, c: PlanPoint, d: PlanPoint): PlanPoint | undefined {
  const [along, across, off] = [subtract(b, a), subtract(d, c), subtract(c, a)]
  const turn = cross(along, across)
  if (turn === 0) return undefined
  const share = cross(off, across) / turn
  const other = cross(off, along) / turn
  return share < 0 || share > 1 || other < 0 || other > 1 ? undefined : add(a, scale(along, share))
}
