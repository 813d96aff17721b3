import { derive, type Figure, hasValue, known, restingOn, valueOf } from '../figure'
import type { Wall } from '../kitchen/schema'
import type { Band, WallFrame } from '../plan/types'
import type { CableBands } from '../region/region'
import type { Survey } from '../survey/survey'
import { band } from './band'

/** The ceiling is looked up piece by piece, so that a sloping one takes the strip with it. */
const PIECE = 1000
const ON_FACE = known(0, 0, 'mm', [])

interface Piece {
  readonly from: number
  readonly to: number
  readonly ceiling: Figure
}

/**
 * The strip at the top of the wall, under the ceiling at that place, where cables may run hidden in any direction. Tall
 * wall units reach it. Where the ceiling has not been read the strip cannot be placed.
 *
 * Source: BS 7671 regulation 522.6.202(i); NHBC Standards 8.1.7.
 */
export function ceilingStrip(
  wall: Wall,
  frame: WallFrame,
  survey: Pick<Survey, 'ceilingOver'>,
  bands: CableBands,
): readonly Band[] {
  if (bands.ceilingStrip === 0) return []
  const pieces = merged(piecesOf(wall.id, frame.length, survey))
  return pieces.map((piece) =>
    band({
      id: pieces.length === 1 ? `ceiling.${wall.id}` : `ceiling.${wall.id}.${piece.from}`,
      wall: wall.id,
      kind: 'ceiling',
      about: [wall.id],
      left: pieces.length === 1 ? null : { at: known(piece.from, 0, 'mm', []), off: 0 },
      right: pieces.length === 1 ? null : { at: known(piece.to, 0, 'mm', []), off: 0 },
      bottom: { at: piece.ceiling, off: -bands.ceilingStrip },
      top: null,
      basis: bands.basis,
    }),
  )
}

function piecesOf(wall: string, length: Figure, survey: Pick<Survey, 'ceilingOver'>): readonly Piece[] {
  const whole = valueOf(length)
  if (whole === undefined) {
    return [{ from: 0, to: 0, ceiling: survey.ceilingOver(wall, known(0, 0, 'mm', []), length, ON_FACE) }]
  }
  const count = Math.max(1, Math.ceil(whole / PIECE))
  return Array.from({ length: count }, (_, i) => {
    const from = known(i * PIECE, 0, 'mm', [])
    const to =
      i === count - 1 ? length : derive('mm', from.basis, [from], (start) => (start as number) + PIECE)
    const end = valueOf(to) as number
    return { from: i * PIECE, to: end, ceiling: survey.ceilingOver(wall, from, to, ON_FACE) }
  })
}

/** Neighbouring pieces under the same ceiling are one strip, resting on all that each of them rests on. */
function merged(pieces: readonly Piece[]): readonly Piece[] {
  const out: Piece[] = []
  for (const piece of pieces) {
    const last = out[out.length - 1]
    if (last === undefined || !isSameCeiling(last.ceiling, piece.ceiling)) out.push(piece)
    else out[out.length - 1] = { ...last, to: piece.to, ceiling: restingOn(last.ceiling, piece.ceiling.from) }
  }
  return out
}

function isSameCeiling(a: Figure, b: Figure): boolean {
  if (!hasValue(a) || !hasValue(b)) return !hasValue(a) && !hasValue(b)
  return a.value === b.value && a.pm === b.pm && a.state === b.state
}
