import { valueOf } from '../../../core/figure'
import type { UnitPlan } from '../../../core/plan/types'
import { type Box, stagger, textWidth } from './spread'

/** A row of letters takes this many steps of the sheet. */
export const ROW = 16
/** The chain below stands this far under the wall, steps. */
export const CHAIN_BELOW = 44
/** Half a slash of a chain, steps, and the air letters keep from it. */
export const SLASH = 5.5
const AIR = 3

/** Gaps narrower than this are rounding, not something to cut a filler for. */
const LEAST_GAP = 0.5

export interface Gap {
  readonly from: number
  readonly to: number
}

/** Widths of a row of units and of the gaps beside them, corner to corner. */
export function chainGaps(units: readonly UnitPlan[], length: number): readonly Gap[] {
  if (units.length === 0) return []
  const edges = units
    .flatMap((u) => [valueOf(u.left), valueOf(u.right)])
    .filter((v) => v !== undefined)
    .concat([0, length])
    .sort((a, b) => a - b)
    .filter((v, i, all) => i === 0 || v - (all[i - 1] as number) > LEAST_GAP)
  return edges.slice(1).map((x, i) => ({ from: edges[i] as number, to: x }))
}

/** The figure of one gap: its place on the line of the chain, y upwards from it. `row` 0 stands on the line. */
export interface ChainLabel extends Box {
  readonly gap: Gap
  readonly text: string
  readonly row: number
  /** It stands away from its gap, and a leader leads to it. */
  readonly isAway: boolean
}

/**
 * The figures of a chain, none touching another or a slash. One too wide for its gap goes outside where the gap is at an
 * end, and above its gap where it is not. Boxes are from the line of the chain, in mm of wall, y growing downwards.
 */
export function chainLabels(gaps: readonly Gap[], length: number, size: number): readonly ChainLabel[] {
  const step = size / 16
  const clear = (SLASH + AIR) * step
  const fitsIn = ({ from, to }: Gap, w: number) => w + 2 * clear <= to - from
  const placed: ChainLabel[] = []
  const onLine = (
    gap: Gap,
    text: string,
    x: number,
    w: number,
    row: number,
    isAway: boolean,
  ): ChainLabel => ({
    gap,
    text,
    row,
    isAway,
    x,
    y: -(6 + 13 + ROW * row) * step,
    w,
    h: 14 * step,
  })
  const wide: Gap[] = []
  gaps.forEach((gap, i) => {
    const text = `${Math.round(gap.to - gap.from)}`
    const w = textWidth(text, size)
    if (fitsIn(gap, w)) placed.push(onLine(gap, text, (gap.from + gap.to - w) / 2, w, 0, false))
    else if (i === 0) placed.push(onLine(gap, text, gap.from - clear - w, w, 0, true))
    else if (i === gaps.length - 1) placed.push(onLine(gap, text, length + clear, w, 0, true))
    else wide.push(gap)
  })
  const rows = stagger(
    wide.map(({ from, to }) => (from + to) / 2),
    wide.map(({ from, to }) => textWidth(`${Math.round(to - from)}`, size)),
    5 * step,
  )
  wide.forEach((gap, i) => {
    const text = `${Math.round(gap.to - gap.from)}`
    const w = textWidth(text, size)
    placed.push(onLine(gap, text, (gap.from + gap.to - w) / 2, w, 1 + (rows[i] as number), true))
  })
  return placed
}

/** The highest row any figure of a chain stands in. */
export const topRow = (labels: readonly { readonly row: number }[]): number =>
  Math.max(0, ...labels.map((l) => l.row))

export interface StudEdges {
  readonly id: string
  readonly left: number
  readonly right: number
}

export interface StudLabel extends Box {
  readonly id: string
  readonly text: string
  readonly row: number
}

/** How far along each stud's middle is, over it, in as many rows as are needed. Boxes are from the top of the wall. */
export function studLabels(studs: readonly StudEdges[], text: number): readonly StudLabel[] {
  const step = text / 16
  const size = text * STUD_LETTERS
  const names = studs.map(({ left, right }) => `${Math.round((left + right) / 2)}`)
  const rows = stagger(
    studs.map(({ left, right }) => (left + right) / 2),
    names.map((name) => textWidth(name, size)),
    6 * step,
  )
  return studs.map(({ id, left, right }, i) => {
    const w = textWidth(names[i] as string, size)
    const row = rows[i] as number
    return {
      id,
      text: names[i] as string,
      row,
      x: (left + right - w) / 2,
      y: -(8 + 12 + ROW * row) * step,
      w,
      h: 13 * step,
    }
  })
}

export const STUD_LETTERS = 0.88

/** How far over the wall its upper chain stands, steps: over the figures of the studs. */
export const chainAbove = (studs: readonly StudLabel[]): number =>
  studs.length === 0 ? 30 : 30 + ROW * (topRow(studs) + 1)
