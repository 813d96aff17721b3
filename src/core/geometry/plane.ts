import type { PlanPoint } from '../plan/types'
import { ON_EDGE } from './tolerance'

/** z = a + b·x + c·y. */
export interface Plane {
  readonly a: number
  readonly b: number
  readonly c: number
}

interface Sample {
  readonly at: PlanPoint
  readonly z: number
}

/**
 * The least-squares plane through heights at places: the one from which the squares of the heights' distances, measured
 * upright, add up to the least. Null for fewer than three places, or places on one line.
 *
 * Worked about the middle of the places, which keeps the sums small.
 */
export function fitPlane(samples: readonly Sample[]): Plane | null {
  const n = samples.length
  if (n < 3) return null
  let [mx, my, mz] = [0, 0, 0]
  for (const { at, z } of samples) {
    mx += at.x / n
    my += at.y / n
    mz += z / n
  }
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0]
  for (const { at, z } of samples) {
    const dx = at.x - mx
    const dy = at.y - my
    xx += dx * dx
    xy += dx * dy
    yy += dy * dy
    xz += dx * (z - mz)
    yz += dy * (z - mz)
  }
  const determinant = xx * yy - xy * xy
  // The determinant over the larger spread is the squared spread across the line: on one line it is nothing.
  if (determinant <= ON_EDGE * ON_EDGE * (xx + yy)) return null
  const b = (xz * yy - yz * xy) / determinant
  const c = (yz * xx - xz * xy) / determinant
  return { a: mz - b * mx - c * my, b, c }
}

export function heightOn({ a, b, c }: Plane, { x, y }: PlanPoint): number {
  return a + b * x + c * y
}

/** How far the worst of the heights lies above or below a plane. */
export function worstOff(plane: Plane, samples: readonly Sample[]): number {
  return samples.reduce((worst, { at, z }) => Math.max(worst, Math.abs(z - heightOn(plane, at))), 0)
}
