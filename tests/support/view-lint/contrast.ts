import { idOf, type Pixels } from './passes'

/** How the part in hand stands out: along its outline, and beside the units that nobody works on. */
export interface StandsOut {
  /** Share of its outline at which its edge and what is beside it differ by 3 : 1 or more in lightness. */
  readonly clear: number
  /** The contrast that half of its outline has at least. */
  readonly median: number
  /**
   * Ink of its outline where nothing runs over it, in px of black, and of the outlines of what nobody works on; null: none
   * of it in the picture.
   */
  readonly line: number
  readonly others: number | null
}

/** Pictures of one size: ids of all, ids of the part in hand alone, and what the user sees. Rows from the bottom up. */
export interface Pictures {
  readonly full: Pixels
  readonly own: Pixels
  readonly seen: Pixels
}

const ENOUGH = 3
/** Half the side of the square in which the way across an edge is found, px; how far across it is looked at most; in what steps. */
const ROUND = 4
const ACROSS = 8
const STEP = 0.25
/** Fewer points of an outline than this say nothing of its width. */
const FEW = 40

/** WCAG 2.2 relative luminance of a pixel, which is all that is left of it in greys. */
function luminance(data: Uint8Array, at: number): number {
  return (
    0.2126 * (linear[data[at] ?? 0] ?? 0) +
    0.7152 * (linear[data[at + 1] ?? 0] ?? 0) +
    0.0722 * (linear[data[at + 2] ?? 0] ?? 0)
  )
}
const linear = Array.from({ length: 256 }, (_, c) => {
  const v = c / 255
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
})

const contrast = (a: number, b: number) => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)

export function standsOut(
  { full, own, seen }: Pictures,
  active: ReadonlySet<number>,
  quiet: ReadonlySet<number>,
  ground: ReadonlySet<number>,
): StandsOut | null {
  const isOwn = inside(own, active)
  const isSeen = inside(full, active)
  const edge = edgeOf(full, isOwn).filter(([x, y]) => isSeen(x, y))
  const found = edge.flatMap(([x, y]) => across(seen, isOwn, x, y) ?? [])
  if (found.length === 0) return null
  // An outline before the bare room is all its own; before another unit it may be that unit's.
  const isQuiet = inside(full, quiet)
  const isGround = inside(full, ground)
  const others = edgeOf(full, isQuiet)
    .filter(([x, y]) => AROUND.some(([dx, dy]) => isGround(x + dx, y + dy)))
    .flatMap(([x, y]) => across(seen, isQuiet, x, y) ?? [])
  const contrasts = found.map((f) => f.contrast)
  return {
    clear: contrasts.filter((v) => v >= ENOUGH).length / contrasts.length,
    median: medianOf(contrasts),
    line: upperOf(found.map((f) => f.width)),
    others: others.length < FEW ? null : medianOf(others.map((f) => f.width)),
  }
}

const AROUND = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const

function medianOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
}

/** What a quarter of the values reach: an outline where nothing runs over it. */
function upperOf(values: readonly number[]): number {
  return [...values].sort((a, b) => b - a)[Math.floor(values.length / 4)] ?? 0
}

type IsIn = (x: number, y: number) => boolean

function inside({ data, width }: Pixels, of: ReadonlySet<number>): IsIn {
  return (x, y) => {
    const at = (y * width + x) * 4
    return of.has(idOf(data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0))
  }
}

/** Every second point of an outline, from its inside. */
function edgeOf({ width, height }: Pixels, isIn: IsIn): readonly (readonly [number, number])[] {
  const points: (readonly [number, number])[] = []
  let count = 0
  const margin = ROUND + ACROSS
  for (let y = margin; y < height - margin; y += 1) {
    for (let x = margin; x < width - margin; x += 1) {
      if (!isIn(x, y) || AROUND.every(([dx, dy]) => isIn(x + dx, y + dy))) continue
      count += 1
      if (count % 2 === 0) points.push([x, y])
    }
  }
  return points
}

/** Straight across an outline: how much its darkest differs from what is beside it, and how wide it is drawn. */
function across(
  seen: Pixels,
  isIn: IsIn,
  x: number,
  y: number,
): readonly [{ readonly contrast: number; readonly width: number }] | null {
  let [nx, ny] = [0, 0]
  for (let dy = -ROUND; dy <= ROUND; dy += 1) {
    for (let dx = -ROUND; dx <= ROUND; dx += 1) {
      const s = isIn(x + dx, y + dy) ? -1 : 1
      nx += s * dx
      ny += s * dy
    }
  }
  const length = Math.hypot(nx, ny)
  if (length < ROUND * ROUND) return null
  ;[nx, ny] = [nx / length, ny / length]
  const at = (d: number) => between(seen, x + nx * d, y + ny * d)
  // Beside it may run the edge of its neighbour: what most of the next few pixels show is what it stands before.
  const beside = medianOf(OUT.map(at))
  // A thin part is narrower than that: its own side is the lightest of the next few.
  const within = Math.max(...OUT.slice(0, 4).map((d) => at(-d)))
  let [best, where] = [0, 0]
  for (let d = -2.5; d <= 2; d += STEP) {
    const c = contrast(at(d), beside)
    if (c > best) [best, where] = [c, d]
  }
  // How much darker than both its sides a line is, over all its width: soft edges change nothing of that.
  let ink = 0
  for (let d = where - LINE; d <= where + LINE; d += STEP) {
    ink += Math.max(0, Math.min(1, Math.min(beside, within) - at(d))) * STEP
  }
  return [{ contrast: best, width: ink / Math.max(0.1, Math.min(beside, within)) }]
}
/** Where beside an outline its surroundings are read, and half of the widest line, px. */
const OUT = [3, 3.5, 4, 5, 6, 7]
const LINE = 1.6

/** Lightness between pixels. */
function between({ data, width, height }: Pixels, x: number, y: number): number {
  const [cx, cy] = [Math.max(0, Math.min(width - 2, x)), Math.max(0, Math.min(height - 2, y))]
  const [ix, iy] = [Math.floor(cx), Math.floor(cy)]
  const [fx, fy] = [cx - ix, cy - iy]
  const at = (k: number, l: number) => luminance(data, ((iy + l) * width + ix + k) * 4)
  return (at(0, 0) * (1 - fx) + at(1, 0) * fx) * (1 - fy) + (at(0, 1) * (1 - fx) + at(1, 1) * fx) * fy
}
