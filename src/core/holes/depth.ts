import { derive, type Figure, hasValue, quantise } from '../figure'
import type { Wall } from '../kitchen/schema'
import type { CableBands, StudSetback } from '../region/region'

/**
 * Has the wall been traced deep enough for this hole, and proved dead? Only a detector that has been over the whole
 * wall, that looks at least as deep, and circuits proved dead by someone competent settle a deep hole.
 */
export function isTracedThrough(wall: Wall, depth: Figure): boolean {
  const { tracedDepth } = wall
  if (!hasValue(depth) || !hasValue(tracedDepth)) return false
  return (
    wall.traced === 'whole' &&
    wall.provedDead === true &&
    tracedDepth.value >= quantise(depth.value + depth.pm)
  )
}

/**
 * Does bit or tip come deeper than cables may lie unprotected outside the bands? Deeper than that a cable may run
 * anywhere. The precision counts against the hole: 50 ± 1 is past 50.
 *
 * Source: BS 7671 regulation 522.6.202(i), 50 mm.
 */
export function isPastDepth(depth: Figure, bands: CableBands): boolean {
  return hasValue(depth) && quantise(depth.value + depth.pm) > bands.depth
}

/** What is left of the wall behind the deepest point of a hole, finishes to come included. Unknown with its thickness. */
export function leftBehind(depth: Figure, wall: Wall): Figure {
  const toCome = wall.layersToCome.map((layer) => layer.thickness)
  return derive(
    'mm',
    { kind: 'geometry', why: 'thickness of the wall less the depth of the hole' },
    [depth, wall.thickness, ...toCome],
    (deep, thick, ...coats) => (thick as number) + coats.reduce((a, b) => a + b, 0) - (deep as number),
  )
}

/** Does the tip come so near the other face that what is fixed there counts too? */
export function isNearOtherFace(depth: Figure, wall: Wall, bands: CableBands): boolean {
  const left = leftBehind(depth, wall)
  return hasValue(left) && quantise(left.value - left.pm) < bands.depth
}

/**
 * Does the tip come deeper into the stud than cables through its middle are kept back from its face? The precision
 * counts against it.
 *
 * Source: the region pack (NEC 300.4, 1 1/4 in, or a steel plate).
 */
export function isPastSetback(depth: Figure, inFront: Figure, setback: StudSetback): boolean {
  if (!hasValue(depth) || !hasValue(inFront)) return false
  return quantise(depth.value - inFront.value + depth.pm + inFront.pm) > setback.depth
}
