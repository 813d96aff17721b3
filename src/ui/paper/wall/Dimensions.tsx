import { type Figure, valueOf } from '../../../core/figure'
import type { UnitPlan } from '../../../core/plan/types'
import { numberText } from '../../../core/words/format'
import { COLORS, type Pen, textWidth } from './pen'
import { stagger } from './spread'

/** Gaps narrower than this are rounding, not something to cut a filler for. */
const LEAST_GAP = 0.5

/** A chain of dimensions along one row of units, with the gaps between them. `y` is its place down the sheet, in steps from the wall's edge. */
export function Chain({
  units,
  length,
  y,
  pen,
}: {
  readonly units: readonly UnitPlan[]
  readonly length: number
  readonly y: number
  readonly pen: Pen
}) {
  const edges = units
    .flatMap((u) => [valueOf(u.left), valueOf(u.right)])
    .filter((v) => v !== undefined)
    .concat([0, length])
    .sort((a, b) => a - b)
    .filter((v, i, all) => i === 0 || v - (all[i - 1] as number) > LEAST_GAP)
  if (units.length === 0) return null
  const gaps = edges.slice(1).map((x, i) => ({ from: edges[i] as number, to: x }))
  const names = gaps.map(({ from, to }) => `${Math.round(to - from)}`)
  const rows = stagger(
    gaps.map(({ from, to }) => (from + to) / 2),
    names.map((name) => textWidth(name, pen.text)),
    5 * pen.step,
  )
  return (
    <g>
      <line x1={0} x2={length} y1={y} y2={y} stroke={COLORS.ink} strokeWidth={pen.step} />
      {edges.map((x) => (
        <Slash key={x} x={x} y={y} pen={pen} />
      ))}
      {gaps.map(({ from, to }, i) => (
        <text
          key={from}
          x={(from + to) / 2}
          y={y - (6 + 15 * (rows[i] as number)) * pen.step}
          textAnchor="middle"
          fill={COLORS.ink}
          fontSize={pen.text}
        >
          {names[i]}
        </text>
      ))}
    </g>
  )
}

/** The whole wall, corner to corner. */
export function Whole({
  length,
  y,
  pen,
}: {
  readonly length: Figure
  readonly y: number
  readonly pen: Pen
}) {
  const w = valueOf(length)
  if (w === undefined) return null
  return (
    <g>
      <line x1={0} x2={w} y1={y} y2={y} stroke={COLORS.ink} strokeWidth={pen.step} />
      <Slash x={0} y={y} pen={pen} />
      <Slash x={w} y={y} pen={pen} />
      <text x={w / 2} y={y - 6 * pen.step} textAnchor="middle" fill={COLORS.ink} fontSize={pen.text}>
        {numberText(length)} corner to corner
      </text>
    </g>
  )
}

function Slash({ x, y, pen }: { readonly x: number; readonly y: number; readonly pen: Pen }) {
  const r = 5.5 * pen.step
  return <path d={`M${x - r} ${y + r}L${x + r} ${y - r}`} stroke={COLORS.ink} strokeWidth={1.8 * pen.step} />
}

/** A bar against which a print can be measured; whatever it measures, the figures rule. */
export function ScaleBar({ y, pen }: { readonly y: number; readonly pen: Pen }) {
  const right = pen.span.right + 222 * pen.step
  return (
    <g>
      <rect x={right - 500} y={y - 4 * pen.step} width={500} height={4 * pen.step} fill={COLORS.ink} />
      <text x={right} y={y - 10 * pen.step} textAnchor="end" fill={COLORS.pencil} fontSize={pen.text * 0.8}>
        500 mm of wall
      </text>
    </g>
  )
}
