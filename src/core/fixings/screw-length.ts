import { derive, type Figure } from '../figure'

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
 * tip of the screw. The hole is never less deep than the screw's least length in the base.
 *
 * `holeDepth` is null for screws that go straight into timber: their pilot is no deeper than they are.
 */
export function depthOfHole(parts: {
  readonly standOff: Figure
  readonly inFront: Figure
  readonly embedment: Figure
  readonly holeDepth: Figure | null
  readonly length: Figure
}): Figure {
  const { standOff, inFront, embedment, holeDepth, length } = parts
  return derive(
    'mm',
    {
      kind: 'geometry',
      why: 'the deeper of the drilled hole and the tip of the screw, from the finished face',
    },
    [standOff, inFront, embedment, length, ...(holeDepth === null ? [] : [holeDepth])],
    (off, front, hold, long, drilled = 0) =>
      Math.max((front as number) + Math.max(hold as number, drilled), (long as number) - (off as number)),
  )
}
