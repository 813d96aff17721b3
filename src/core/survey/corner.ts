import { type Basis, derive, type Figure, hasValue, unknown } from '../figure'
import type { Wall } from '../kitchen/schema'

type Corner = Wall['cornerRight']

const byThreeLengths: Basis = {
  kind: 'geometry',
  why: 'cos of the angle = (a² + b² − c²) ÷ 2ab, for a and b along the walls and c straight across',
}

/** The angle opposite c in a triangle of sides a, b, c, in degrees. Lengths that make no triangle give 0 or 180. */
export function angleOpposite(a: number, b: number, c: number): number {
  const cosine = (a * a + b * b - c * c) / (2 * a * b)
  return (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI
}

/**
 * The inside angle of a corner: as typed, else from the three lengths (900, 1200 and 1500 make it square). Three
 * lengths alone are read as an inner corner; one past 180° has to be typed. With nothing measured, the angle is missing.
 */
export function insideAngle({ angle, thisLeg, nextLeg, across }: Corner): Figure {
  const lengths = [thisLeg, nextLeg, across]
  if (hasValue(angle) || !lengths.some(hasValue)) return angle
  if (lengths.some((length) => hasValue(length) && length.value <= 0)) return noTriangle(lengths)
  return derive('deg', byThreeLengths, lengths, (a = 0, b = 0, c = 0) => angleOpposite(a, b, c))
}

function noTriangle(lengths: readonly Figure[]): Figure {
  const ids = lengths.flatMap((length) => length.from)
  return unknown('deg', ids, ids, byThreeLengths)
}
