/** A piece of the scale that is drawn, mm from the line; between two of them what says nothing is left out. */
export interface Stretch {
  readonly bottom: number
  readonly top: number
  /** Where its upper end is drawn, down from the top of the picture. */
  readonly y: number
}

/** One vertical scale of heights from the line: everywhere the same, with pieces left out. */
export interface Scale {
  readonly stretches: readonly Stretch[]
  /** Of drawing to one mm, within a stretch. */
  readonly perMm: number
  readonly height: number
  /** Down from the top of the picture to a height, and back. */
  readonly y: (mm: number) => number
  readonly mm: (y: number) => number
}

/** A height that must be on the scale, with some air round it, mm. */
export interface Wanted {
  readonly at: number
  readonly air: number
}

/** Over each stretch: what stands in it is named there. */
export const HEADER = 34
/** Where a piece is left out. */
export const BREAK = 30
/** All stretches together, about so long where the room is wide enough for it. */
const LENGTH = 620
const LEAST = 1
const MOST = 3
/** A piece this short is drawn rather than left out, mm. */
const WORTH_LEAVING_OUT = 60

/** Makes the scale on which all that is wanted has its place. */
export function scaleOf(wanted: readonly Wanted[]): Scale {
  const pieces = piecesOf(wanted)
  const total = pieces.reduce((sum, { bottom, top }) => sum + top - bottom, 0)
  const perMm = Math.max(LEAST, Math.min(MOST, LENGTH / Math.max(1, total)))
  let y = 0
  const stretches = [...pieces].reverse().map((piece, i): Stretch => {
    y += (i === 0 ? 0 : BREAK) + HEADER
    const stretch = { ...piece, y }
    y += (piece.top - piece.bottom) * perMm
    return stretch
  })
  const knots = stretches.flatMap((s): readonly Knot[] => [
    { mm: s.top, y: s.y },
    { mm: s.bottom, y: s.y + (s.top - s.bottom) * perMm },
  ])
  return {
    stretches,
    perMm,
    height: y,
    y: (mm) => along(knots, mm, perMm, 'mm', 'y'),
    mm: (at) => along(knots, at, 1 / perMm, 'y', 'mm'),
  }
}

interface Knot {
  readonly mm: number
  readonly y: number
}

/** From one measure to the other along the knots; past the ends it goes on as it does within. */
function along(knots: readonly Knot[], at: number, slope: number, from: 'mm' | 'y', to: 'mm' | 'y'): number {
  const isPast = (a: Knot, b: Knot) => (at - a[from]) * (at - b[from]) <= 0
  const [first, last] = [knots[0], knots.at(-1)]
  if (first === undefined || last === undefined) return 0
  for (let i = 1; i < knots.length; i++) {
    const [a, b] = [knots[i - 1] as Knot, knots[i] as Knot]
    if (isPast(a, b) && a[from] !== b[from])
      return a[to] + ((at - a[from]) / (b[from] - a[from])) * (b[to] - a[to])
  }
  const end = Math.abs(at - first[from]) < Math.abs(at - last[from]) ? first : last
  return end[to] - (at - end[from]) * slope
}

const TENS = 10

/** What is wanted, run together where little would be left out; lowest first, from ten to ten. */
function piecesOf(wanted: readonly Wanted[]): readonly { readonly bottom: number; readonly top: number }[] {
  const windows = wanted
    .map(({ at, air }) => ({
      bottom: Math.floor((at - air) / TENS) * TENS,
      top: Math.ceil((at + air) / TENS) * TENS,
    }))
    .sort((a, b) => a.bottom - b.bottom)
  const pieces: { bottom: number; top: number }[] = []
  for (const { bottom, top } of windows) {
    const last = pieces.at(-1)
    if (last !== undefined && bottom - last.top < WORTH_LEAVING_OUT) last.top = Math.max(last.top, top)
    else pieces.push({ bottom, top })
  }
  return pieces
}

/** The heights lettered beside a stretch: round ones, far enough apart to be read. */
export function ticksOf({ bottom, top }: Stretch, perMm: number): readonly number[] {
  const step = [10, 20, 50, 100].find((s) => s * perMm >= 30) ?? 100
  const first = Math.ceil(bottom / step) * step
  return Array.from({ length: Math.floor((top - first) / step) + 1 }, (_, i) => first + i * step + 0)
}
