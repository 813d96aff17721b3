import { type Basis, derive, type Figure, valueOf } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import type { WallId } from '../plan/types'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'

/**
 * An inside corner of the room seen from one of its two walls. Places are given from the corner: x along that wall, y
 * out from it. The other wall leaves the corner at the inside angle.
 */
export interface CornerSide {
  readonly own: WallId
  readonly other: WallId
  /** At which end of its own wall the corner is, and at which end of the other one. */
  readonly end: 'left' | 'right'
  readonly otherEnd: 'left' | 'right'
  readonly angle: Figure
  readonly ownLength: Figure
  readonly otherLength: Figure
}

/** Every corner twice: from the wall on its left and from the wall on its right. */
export function cornerSides(kitchen: Pick<Kitchen, 'closed'>, survey: Survey): readonly CornerSide[] {
  const { frames } = survey
  return frames.flatMap((frame, i): readonly CornerSide[] => {
    const isLast = i === frames.length - 1
    const next = frames[isLast ? 0 : i + 1]
    if (next === undefined || next === frame || (isLast && kitchen.closed !== true)) return []
    const left: CornerSide = {
      own: frame.wall,
      other: next.wall,
      end: 'right',
      otherEnd: 'left',
      angle: frame.cornerRight,
      ownLength: frame.length,
      otherLength: next.length,
    }
    const right: CornerSide = {
      own: next.wall,
      other: frame.wall,
      end: 'left',
      otherEnd: 'right',
      angle: frame.cornerRight,
      ownLength: next.length,
      otherLength: frame.length,
    }
    return [left, right]
  })
}

const fromTheCorner: Basis = { kind: 'geometry', why: 'from the corner of the room' }

/** A place along the own or the other wall, from the corner. */
export function fromCorner(side: CornerSide, of: 'own' | 'other', along: Figure): Figure {
  const end = of === 'own' ? side.end : side.otherEnd
  const length = of === 'own' ? side.ownLength : side.otherLength
  return end === 'left' ? along : sum('mm', fromTheCorner, [length], [along])
}

/** What stands along the other wall: from where to where, from the corner, and how far out of that wall it reaches. */
export interface Block {
  readonly from: Figure
  readonly to: Figure
  readonly reach: Figure
}

/** A straight piece of something that opens, in places from the corner. */
export type Piece = readonly [from: readonly [x: number, y: number], to: readonly [x: number, y: number]]

/**
 * How far a straight piece is from the face of a block of the other wall, least; less than nothing when it is in it.
 * Infinite where the piece is never before the block.
 *
 * A place (x, y) lies x·cos t + y·sin t along the other wall and x·sin t − y·cos t out from it, t the inside angle. For a
 * drawer of travel s at f from where the fronts meet this is the trade's f·sin t + s·sin(t − 90).
 */
export function pieceGap([a, b]: Piece, t: number, from: number, to: number, reach: number): number {
  const turn = (t * Math.PI) / 180
  const sine = Math.sin(turn)
  const cosine = Math.cos(turn)
  const start = a[0] * cosine + a[1] * sine
  const way = b[0] * cosine + b[1] * sine - start
  // Level with the other wall it is before the block all along or nowhere.
  const isLevel = Math.abs(way) < 1e-9
  if (isLevel && (start < from || start > to)) return Number.POSITIVE_INFINITY
  const enters = isLevel ? 0 : (from - start) / way
  const leaves = isLevel ? 1 : (to - start) / way
  const low = Math.max(0, Math.min(enters, leaves))
  const high = Math.min(1, Math.max(enters, leaves))
  if (low > high) return Number.POSITIVE_INFINITY
  const out = a[0] * sine - a[1] * cosine - reach
  const further = b[0] * sine - b[1] * cosine - reach - out
  return Math.min(out + further * low, out + further * high)
}

/**
 * The same as a figure, the piece made from figures; null where it is never before the block or something it needs is
 * not known.
 */
export function gapToBlock(
  side: CornerSide,
  block: Block,
  basis: Basis,
  figures: readonly Figure[],
  piece: (...values: number[]) => Piece,
): Figure | null {
  const fixed = [side.angle, block.from, block.to, block.reach]
  const [t, from, to, reach] = fixed.map(valueOf)
  const values = figures.map(valueOf)
  if (t === undefined || from === undefined || to === undefined || reach === undefined) return null
  if (values.some((value) => value === undefined) || t >= STRAIGHT) return null
  const now = pieceGap(piece(...(values as number[])), t, Math.min(from, to), Math.max(from, to), reach)
  if (!Number.isFinite(now)) return null
  return derive('mm', basis, [...fixed, ...figures], (angle, f, o, r, ...rest) => {
    const [low, high] = [Math.min(f as number, o as number), Math.max(f as number, o as number)]
    const gap = pieceGap(piece(...rest), angle as number, low, high, r as number)
    // Moved by its precision the piece may miss the block by a hair: then it is as near as it was.
    return Number.isFinite(gap) ? gap : now
  })
}

/** From this inside angle on, walls go round no corner that anything could bind in, degrees. */
const STRAIGHT = 175
