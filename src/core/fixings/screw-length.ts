import { assumed, derive, type Figure, hasValue } from '../figure'

/**
 * Length a screw needs: what it holds and stands off the face (plate, rail, packing), all that lies in front of what
 * holds, and its least length in that. Tiles and finishes to come count; the void behind dabs counts.
 *
 * Arithmetic; failure modes F24, F25, F28, F29.
 */
export function lengthNeeded(standOff: Figure, inFront: Figure, embedment: Figure): Figure {
  return derive(
    'mm',
    { kind: 'geometry', why: 'stand-off, the layers in front, and the length the screw needs in what holds' },
    [standOff, inFront, embedment],
    (...lengths) => lengths.reduce((sum, length) => sum + length, 0),
  )
}

/**
 * Depth of the hole from the finished face to its deepest point: of the hole its maker asks for in the base, and of the
 * tip of the screw. How much of the screw must hold decides whether it is long enough, not how deep it goes.
 */
export function depthOfHole(parts: {
  readonly standOff: Figure
  readonly inFront: Figure
  readonly holeDepth: Figure
  readonly length: Figure
}): Figure {
  const { standOff, inFront, holeDepth, length } = parts
  return derive(
    'mm',
    {
      kind: 'geometry',
      why: 'the deeper of the drilled hole and the tip of the screw, from the finished face',
    },
    [standOff, inFront, holeDepth, length],
    (off = 0, front = 0, bit = 0, long = 0) => Math.max(front + bit, long - off),
  )
}

/** Straight into timber a screw needs no more of a hole than a pilot, which is no deeper than the screw. */
export function pilotDepth(holeDepth: Figure): Figure {
  if (hasValue(holeDepth)) return holeDepth
  const why = 'the pilot of a screw into timber is drilled no deeper than the screw goes'
  return assumed(0, 0, 'mm', holeDepth.from, { kind: 'common-practice', why })
}
