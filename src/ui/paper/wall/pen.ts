import { valueOf } from '../../../core/figure'
import type { Plan, UnitPlan, WallFrame } from '../../../core/plan/types'

/** What a wall drawing spans, mm: along the wall, and heights from the line. */
export interface Span {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** The sheet a wall is drawn on, in its own small steps; one step is `step` mm of wall. */
const SHEET = { width: 1320, height: 800 }
const MARGIN = { left: 30, right: 232, top: 96, bottom: 100 }

/** How a wall is put on its sheet: mm of wall to places on it, and the sizes of letters and lines. */
export interface Pen {
  readonly span: Span
  /** mm of wall for one step of the sheet: letters and line widths are given in steps. */
  readonly step: number
  readonly text: number
  /** Height from the line to a place down the sheet, mm. */
  readonly y: (z: number) => number
  readonly viewBox: string
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

/** The pen for one wall; null while its length is not known. */
export function penFor(plan: Plan, frame: WallFrame): Pen | null {
  const span = spanOf(plan, frame)
  if (span === null) return null
  const [w, h] = [span.right - span.left, span.top - span.bottom]
  const inner = {
    width: SHEET.width - MARGIN.left - MARGIN.right,
    height: SHEET.height - MARGIN.top - MARGIN.bottom,
  }
  const step = Math.max(w / inner.width, h / inner.height)
  const box = [
    -MARGIN.left * step,
    -MARGIN.top * step,
    w + (MARGIN.left + MARGIN.right) * step,
    h + (MARGIN.top + MARGIN.bottom) * step,
  ]
  return {
    span,
    step,
    text: 16 * step,
    y: (z) => span.top - z,
    viewBox: box.map((v) => Math.round(v)).join(' '),
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

function corners({ pose }: UnitPlan, box: UnitPlan['solid'][number]): readonly { x: number; y: number }[] {
  if (pose === null) return []
  const yaw = (pose.yaw * Math.PI) / 180
  return [box.x0, box.x1].flatMap((lx) =>
    [box.y0, box.y1].map((ly) => ({
      x: pose.x + lx * Math.cos(yaw) + ly * Math.sin(yaw),
      y: pose.y + lx * Math.sin(yaw) - ly * Math.cos(yaw),
    })),
  )
}

/** How wide a text of the figures' letter is. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.62
