import { type Basis, derive, type Figure, hasValue, restingOn, unknown } from '../figure'
import type { Wall } from '../kitchen/schema'

type Corner = Wall['cornerRight']

const byThreeLengths: Basis = {
  kind: 'geometry',
  why: 'cos of the angle = (a² + b² − c²) ÷ 2ab, for a and b along the walls and c straight across',
}

const apart: Basis = { kind: 'geometry', why: 'the typed angle, and what the three lengths make it' }

/** The angle opposite c in a triangle of sides a, b, c, in degrees. Lengths that make no triangle give 0 or 180. */
export function angleOpposite(a: number, b: number, c: number): number {
  const cosine = (a * a + b * b - c * c) / (2 * a * b)
  return (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI
}

/** What the three lengths of a corner make it; null where they are not all there. */
export function angleByLengths({ angle, thisLeg, nextLeg, across }: Corner): Figure | null {
  const lengths = [thisLeg, nextLeg, across]
  if (!lengths.every((length) => hasValue(length) && length.value > 0)) return null
  const isOuter = hasValue(angle) && angle.value > 180
  return derive('deg', byThreeLengths, lengths, (a = 0, b = 0, c = 0) => {
    const inner = angleOpposite(a, b, c)
    return isOuter ? 360 - inner : inner
  })
}

/** By how much a typed angle and the three lengths differ; null where not both are there. */
export function anglesApart(corner: Corner): Figure | null {
  const taped = angleByLengths(corner)
  if (taped === null || !hasValue(corner.angle)) return null
  return derive('deg', apart, [corner.angle, taped], (typed = 0, lengths = 0) => Math.abs(typed - lengths))
}

/**
 * The inside angle of a corner: as typed, else from the three lengths (900, 1200 and 1500 make it square). Where both are
 * there and differ by more than they are known to, the lengths: they were read in this room, and an angle may be one that
 * was meant. Three lengths alone are read as an inner corner; one past 180° has to be typed. With nothing measured, the
 * angle is missing.
 */
export function insideAngle(corner: Corner): Figure {
  const { angle, thisLeg, nextLeg, across } = corner
  const lengths = [thisLeg, nextLeg, across]
  const taped = angleByLengths(corner)
  if (hasValue(angle)) {
    const off = anglesApart(corner)
    const isOther = taped !== null && off !== null && hasValue(off) && off.value > off.pm
    return isOther ? restingOn(taped, angle.from) : angle
  }
  if (taped !== null) return taped
  if (!lengths.some(hasValue)) return angle
  if (lengths.some((length) => hasValue(length) && length.value <= 0)) return noTriangle(lengths)
  return derive('deg', byThreeLengths, lengths, angleOpposite)
}

function noTriangle(lengths: readonly Figure[]): Figure {
  const ids = lengths.flatMap((length) => length.from)
  return unknown('deg', ids, ids, byThreeLengths)
}
