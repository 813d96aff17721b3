import { valueOf } from '../../../core/figure'
import type { LocalBox, Plan, PlanPoint, UnitPlan, WallFrame } from '../../../core/plan/types'
import {
  CHAIN_BELOW,
  chainAbove,
  chainGaps,
  chainLabels,
  ROW,
  type StudEdges,
  studLabels,
  topRow,
} from './chain'
import { lineText } from './line-names'
import { SCALE_BAR_LETTERS, textWidth } from './spread'

/** What a wall drawing spans, mm: along the wall, and heights from the line. */
export interface Span {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** Scales of drawings, 1 : this; the largest that goes on the sheet is taken, so that a print can be measured off. */
const SCALES = [2.5, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 75, 100]
/** What a drawing may take up of an A3 sheet laid across, under its head and over what is said below it, mm. */
const ROOM_ON_PAPER = { width: 396, height: 214 }
/** One step of the sheet on paper, mm: letters of 16 steps are 3.8 mm, 11 points. */
const STEP_ON_PAPER = 0.24
/** The whole of a wall in the hand: about one step for one point of the narrowest telephone's screen. */
const OVERVIEW_STEPS = 334

export interface Margin {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

/** How a wall is put on its sheet: mm of wall to places on it, and the sizes of letters and lines. */
export interface Pen {
  readonly span: Span
  /** mm of wall for one step of the sheet: letters and line widths are given in steps. */
  readonly step: number
  readonly text: number
  /** Height from the line to a place down the sheet, mm. */
  readonly y: (z: number) => number
  readonly viewBox: string
  /** What is drawn round the wall, in steps. */
  readonly margin: Margin
  /** 1 : scale when printed, and the width of the drawing then, mm; null for an overview, which is not printed. */
  readonly print: { readonly scale: number; readonly width: number; readonly height: number } | null
  /** Width of the drawing in steps. */
  readonly steps: number
}

const INK = '#262522'
export const COLORS = {
  ink: INK,
  pencil: '#5c574e',
  chalk: '#1f5fa8',
  brass: '#7c5413',
  timber: '#d9b98a',
  timberEdge: '#8a6433',
  refused: '#9b2423',
  band: '#b5562c',
  paper: '#fffefa',
} as const

/** The pen for one wall, its figures to be read; null while its length is not known. */
export function penFor(plan: Plan, frame: WallFrame): Pen | null {
  const span = spanOf(plan, frame)
  if (span === null) return null
  const pens = SCALES.map((scale) => {
    const step = scale * STEP_ON_PAPER
    const margin = marginFor(plan, frame, span, step)
    const pen = penAt(span, step, margin)
    const [width, height] = sizeOf(span, step, margin).map((v) => v / scale) as [number, number]
    return { ...pen, print: { scale, width, height } }
  })
  const fits = ({ print: { width, height } }: (typeof pens)[number]) =>
    width <= ROOM_ON_PAPER.width && height <= ROOM_ON_PAPER.height
  return pens.find(fits) ?? pens.at(-1) ?? null
}

/** The pen for the whole of a wall on a small screen: what stands where, without the figures. */
export function overviewPen(plan: Plan, frame: WallFrame): Pen | null {
  const span = spanOf(plan, frame)
  if (span === null) return null
  const margin = { left: 4, right: 4, top: 6, bottom: 6 }
  const step = (span.right - span.left) / (OVERVIEW_STEPS - margin.left - margin.right)
  return { ...penAt(span, step, margin), text: 13 * step }
}

function penAt(span: Span, step: number, margin: Margin): Pen {
  const [width, height] = sizeOf(span, step, margin) as [number, number]
  const box = [-margin.left * step, -margin.top * step, width, height]
  return {
    span,
    step,
    text: 16 * step,
    y: (z) => span.top - z,
    viewBox: box.map((v) => Math.round(v * 10) / 10).join(' '),
    margin,
    print: null,
    steps: width / step,
  }
}

const sizeOf = (span: Span, step: number, margin: Margin): readonly number[] => [
  span.right - span.left + (margin.left + margin.right) * step,
  span.top - span.bottom + (margin.top + margin.bottom) * step,
]

/** Room round the wall for what is lettered there: chains above and below, the names of lines at the right. */
function marginFor(plan: Plan, frame: WallFrame, span: Span, step: number): Margin {
  const text = 16 * step
  const units = unitsOn(plan, frame.wall)
  const names = plan.lines.filter((l) => l.wall === frame.wall).map(lineText)
  const longest = Math.max(SCALE_BAR_LETTERS, ...names.map((name) => name.length))
  const length = span.right - span.left
  const above = chainLabels(chainGaps(units.filter(hangs), length), length, text)
  const below = chainLabels(
    chainGaps(
      units.filter((u) => !hangs(u)),
      length,
    ),
    length,
    text,
  )
  const outside = [...above, ...below].map(({ x, w }) => Math.max(-x, x + w - length))
  const studs = studLabels(studsOf(plan, frame.wall, span), text)
  return {
    left: Math.max(30, ...outside.map((by) => by / step + 6)),
    right: 38 + (textWidth('0', text) / step) * longest,
    top: chainAbove(studs) + 28 + ROW * topRow(above),
    bottom: CHAIN_BELOW + ROW * topRow(below) + 56,
  }
}

function spanOf(plan: Plan, frame: WallFrame): Span | null {
  const length = valueOf(frame.length)
  if (length === undefined) return null
  const tops = unitsOn(plan, frame.wall).map((u) => valueOf(u.top) ?? 0)
  const floor = floorOn(plan, frame, length)
  const lowest = floor === null ? -1000 : Math.min(floor[0], floor[1])
  return {
    left: 0,
    right: length,
    bottom: lowest - 20,
    top: valueOf(frame.ceiling) ?? Math.max(1200, ...tops) + 120,
  }
}

export function unitsOn(plan: Plan, wall: string): readonly UnitPlan[] {
  return plan.units.filter((u) => u.wall === wall)
}

/** Height of the floor at both ends of a wall, by the plane through the readings; null while it is not known. */
export function floorOn(plan: Plan, frame: WallFrame, length: number): readonly [number, number] | null {
  const { plane } = plan.floor
  if (plane === null || !frame.placed) return null
  const at = (along: number) => {
    const x = frame.origin.x + along * frame.alongDir.x
    const y = frame.origin.y + along * frame.alongDir.y
    return plane.a + plane.b * x + plane.c * y
  }
  return [at(0), at(length)]
}

/** A unit of another wall that reaches along this one, as it is seen from in front of it. */
export interface Reaching {
  readonly unit: UnitPlan
  readonly left: number
  readonly right: number
}

const TOUCHING = 120

/** Units of other walls that stand in this wall's corners. */
export function reachingInto(plan: Plan, frame: WallFrame): readonly Reaching[] {
  const length = valueOf(frame.length)
  if (length === undefined || !frame.placed) return []
  return plan.units.flatMap((unit) => {
    if (unit.wall === frame.wall || unit.pose === null) return []
    const seen = unit.solid
      .flatMap((box) => corners(unit, box))
      .map((p) => ({
        along: (p.x - frame.origin.x) * frame.alongDir.x + (p.y - frame.origin.y) * frame.alongDir.y,
        out: (p.x - frame.origin.x) * frame.outDir.x + (p.y - frame.origin.y) * frame.outDir.y,
      }))
    const left = Math.max(0, Math.min(...seen.map((p) => p.along)))
    const right = Math.min(length, Math.max(...seen.map((p) => p.along)))
    const isNear = seen.some(
      (p) => Math.abs(p.out) < TOUCHING && p.along > -TOUCHING && p.along < length + TOUCHING,
    )
    return isNear && right - left > 20 ? [{ unit, left, right }] : []
  })
}

/** The corners of one box of a unit, seen from above, where it stands in the room. */
export function corners({ pose }: UnitPlan, box: LocalBox): readonly PlanPoint[] {
  if (pose === null) return []
  const yaw = (pose.yaw * Math.PI) / 180
  return [box.x0, box.x1].flatMap((lx) =>
    [box.y0, box.y1].map((ly) => ({
      x: pose.x + lx * Math.cos(yaw) + ly * Math.sin(yaw),
      y: pose.y + lx * Math.sin(yaw) - ly * Math.cos(yaw),
    })),
  )
}

/** Units that hang: the chain of their widths stands above the wall, that of all others below it. */
export const hangs = (u: UnitPlan): boolean =>
  u.kind === 'wall' || u.kind === 'corner-wall' || u.kind === 'bridging'

/** The studs of a wall whose place is known: edges from the left corner. */
export function studsOf(plan: Plan, wall: string, span: Span): readonly StudEdges[] {
  const things = plan.wallThings?.filter((t) => t.wall === wall && t.kind === 'stud') ?? []
  return things.flatMap((t) => {
    const [left, right] = [valueOf(t.left), valueOf(t.right)]
    if (left === undefined || right === undefined || right < span.left || left > span.right) return []
    return [{ id: t.id, left, right }]
  })
}
