import { type Figure, hasValue, type InputId, known } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import type { Band, WallFrame } from '../plan/types'
import type { CableBands } from '../region/region'
import { band } from './band'

/** What decides whether a strip is there at all, and where along the wall that matters. */
export interface Doubt {
  readonly wall: string
  /** Null: anywhere on the wall. */
  readonly left: number | null
  readonly right: number | null
  readonly from: readonly InputId[]
  readonly missing: readonly InputId[]
}

type End = 'left' | 'right'
const START = known(0, 0, 'mm', [])

/**
 * The inside angle at one end of a wall, as the frames have it. Null where no wall joins on: an end nobody has joined
 * to anything.
 */
function angleAt(kitchen: Kitchen, frames: readonly WallFrame[], index: number, end: End): Figure | null {
  const before = end === 'left' ? index - 1 : index
  const loose = end === 'left' ? index === 0 : index === frames.length - 1
  if (!loose) return frames[before]?.cornerRight ?? null
  return kitchen.closed === true ? (frames[frames.length - 1]?.cornerRight ?? null) : null
}

/**
 * Strips beside the corners, where cables may run up and down hidden: from the corner a set width along each of the two
 * walls. An angle of 180° or more is no inside corner. A corner whose angle is not known, or an end that nothing has
 * been joined to, is taken for one.
 *
 * Source: BS 7671 regulation 522.6.202(i); NHBC Standards 8.1.7.
 */
export function cornerStrips(
  kitchen: Kitchen,
  frames: readonly WallFrame[],
  bands: CableBands,
): { readonly bands: readonly Band[]; readonly doubts: readonly Doubt[] } {
  if (bands.cornerStrip === 0) return { bands: [], doubts: [] }
  const strips = frames.flatMap((frame, index) =>
    (['left', 'right'] as const).map((end) => strip(frame, end, angleAt(kitchen, frames, index, end), bands)),
  )
  return { bands: strips.flatMap((s) => s.bands), doubts: strips.map((s) => s.doubt) }
}

function strip(
  frame: WallFrame,
  end: End,
  angle: Figure | null,
  bands: CableBands,
): { readonly bands: readonly Band[]; readonly doubt: Doubt } {
  const at = end === 'left' ? START : frame.length
  const width = bands.cornerStrip
  const corner = angle === null ? ['closed'] : angle.from
  const made = band({
    id: `corner.${frame.wall}.${end}`,
    wall: frame.wall,
    kind: 'corner',
    about: [frame.wall, end],
    left: { at, off: end === 'left' ? 0 : -width },
    right: { at, off: end === 'left' ? width : 0 },
    bottom: null,
    top: null,
    from: corner,
    basis: bands.basis,
  })
  const doubt: Doubt = {
    wall: frame.wall,
    left: made.left,
    right: made.right,
    from: [...corner, ...frame.length.from],
    missing: angle?.state === 'unknown' ? angle.missing : [],
  }
  return { bands: angle !== null && isOutside(angle) ? [] : [made], doubt }
}

function isOutside(angle: Figure): boolean {
  return hasValue(angle) && angle.value - angle.pm >= 180
}
