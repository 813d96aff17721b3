import type { PlanPoint, Pose } from '../plan/types'
import { inUnit, type Prism } from './solid'

/** A strip straight out from the front of something: between two places of its width, from a depth on. Its own frame. */
export interface Strip {
  readonly pose: Pose
  readonly x0: number
  readonly x1: number
  readonly y0: number
}

/** Least of y on the part of a straight piece that lies between x0 and x1; infinite where none does. */
function leastOut(a: PlanPoint, b: PlanPoint, x0: number, x1: number): number {
  if (Math.max(a.x, b.x) <= x0 || Math.min(a.x, b.x) >= x1) return Number.POSITIVE_INFINITY
  const at = (x: number) => (a.x === b.x ? a.y : a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x))
  const low = Math.max(x0, Math.min(a.x, b.x))
  const high = Math.min(x1, Math.max(a.x, b.x))
  return a.x === b.x ? Math.min(a.y, b.y) : Math.min(at(low), at(high))
}

/**
 * How far out from `y0` a polygon or a wall begins within the strip, at its nearest; infinite where it is not in front.
 * Nought when it already reaches past y0 there. Exact: the nearest place is a corner, or on an edge of the strip.
 */
export function aheadTo({ pose, x0, x1, y0 }: Strip, corners: readonly PlanPoint[], isClosed = true): number {
  const local = corners.map((corner) => inUnit(pose, corner))
  let least = Number.POSITIVE_INFINITY
  let furthest = Number.NEGATIVE_INFINITY
  local.forEach((a, i) => {
    const b = local[i + 1] ?? (isClosed ? local[0] : undefined)
    if (b === undefined) return
    const out = leastOut(a, b, x0, x1)
    if (Number.isFinite(out)) {
      least = Math.min(least, out)
      furthest = Math.max(furthest, a.y, b.y)
    }
  })
  if (!Number.isFinite(least) || furthest <= y0) return Number.POSITIVE_INFINITY
  return Math.max(0, least - y0)
}

/** A wall in front of the strip: only what lies ahead of it, never the wall behind its own back. */
export function wallAhead(strip: Strip, from: PlanPoint, to: PlanPoint): number {
  const [a, b] = [inUnit(strip.pose, from), inUnit(strip.pose, to)]
  const out = leastOut(a, b, strip.x0, strip.x1)
  return out > strip.y0 ? out - strip.y0 : Number.POSITIVE_INFINITY
}

export const upTo = (prism: Prism, bottom: number, top: number): boolean =>
  prism.top > bottom && prism.bottom < top
