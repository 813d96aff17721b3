import type { PlanPoint } from '../plan/types'
import { DIRECTION_GRAIN, SAME_POINT } from './tolerance'

export function add(a: PlanPoint, b: PlanPoint): PlanPoint {
  return { x: a.x + b.x, y: a.y + b.y }
}

export function subtract(a: PlanPoint, b: PlanPoint): PlanPoint {
  return { x: a.x - b.x, y: a.y - b.y }
}

export function scale(a: PlanPoint, by: number): PlanPoint {
  return { x: a.x * by, y: a.y * by }
}

export function dot(a: PlanPoint, b: PlanPoint): number {
  return a.x * b.x + a.y * b.y
}

/** Positive when b points to the left of a, seen from above. */
export function cross(a: PlanPoint, b: PlanPoint): number {
  return a.x * b.y - a.y * b.x
}

export function distance(a: PlanPoint, b: PlanPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

/** How far c lies to the left of the way from a to b; negative to the right. For a and b in one place: 0. */
export function leftOfLine(a: PlanPoint, b: PlanPoint, c: PlanPoint): number {
  const wayX = b.x - a.x
  const wayY = b.y - a.y
  const length = Math.hypot(wayX, wayY)
  return length === 0 ? 0 : (wayX * (c.y - a.y) - wayY * (c.x - a.x)) / length
}

/** The unit vector at `degrees` anticlockwise from +x. Rounded so that quarter turns are exact on every machine. */
export function direction(degrees: number): PlanPoint {
  const radians = (degrees * Math.PI) / 180
  return { x: clean(Math.cos(radians)), y: clean(Math.sin(radians)) }
}

function clean(part: number): number {
  return Math.round(part / DIRECTION_GRAIN) * DIRECTION_GRAIN + 0
}

/** Degrees anticlockwise from +x, in (−180, 180]. */
export function bearing(way: PlanPoint): number {
  return (Math.atan2(way.y, way.x) * 180) / Math.PI
}

/** Left to right, and upwards where that is the same but for rounding: points on an upright line stay in their order. */
export function byPlace(a: PlanPoint, b: PlanPoint): number {
  return Math.round(a.x / SAME_POINT) - Math.round(b.x / SAME_POINT) || a.y - b.y
}
