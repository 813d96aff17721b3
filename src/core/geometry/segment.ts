import type { PlanPoint } from '../plan/types'
import { add, distance, dot, scale, subtract } from './point'

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
