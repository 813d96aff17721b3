import { type Figure, valueOf } from '../../../core/figure'
import type { UnitPlan } from '../../../core/plan/types'
import { numberText } from '../../../core/words/format'
import { chainGaps, chainLabels, SLASH } from './chain'
import { COLORS, type Pen } from './pen'

/** A chain of dimensions along one row of units, with the gaps between them. `y` is its place down the sheet, in mm of wall. */
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
  const gaps = chainGaps(units, length)
  const labels = chainLabels(gaps, length, pen.text)
  const [first] = gaps
  const last = gaps.at(-1)
  if (first === undefined || last === undefined) return null
  return (
    <g>
      <line x1={0} x2={length} y1={y} y2={y} stroke={COLORS.ink} strokeWidth={pen.step} />
      {[first.from, ...gaps.map((g) => g.to)].map((x) => (
        <Slash key={x} x={x} y={y} pen={pen} />
      ))}
      {labels.map((label) => {
        const middle = (label.gap.from + label.gap.to) / 2
        return (
          <g key={label.gap.from}>
            {label.row > 0 && (
              <line
                x1={middle}
                x2={middle}
                y1={y}
                y2={y + label.y + label.h + 2 * pen.step}
                stroke={COLORS.pencil}
                strokeWidth={pen.step}
              />
            )}
            <text x={label.x} y={y + label.y + 13 * pen.step} fill={COLORS.ink} fontSize={pen.text}>
              {label.text}
            </text>
          </g>
        )
      })}
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
  const r = SLASH * pen.step
  return <path d={`M${x - r} ${y + r}L${x + r} ${y - r}`} stroke={COLORS.ink} strokeWidth={1.8 * pen.step} />
}

const BAR = 500

/** A bar against which a print can be measured: so much of the wall, and so long on the sheet if it came out at full size. */
export function ScaleBar({ y, pen }: { readonly y: number; readonly pen: Pen }) {
  const { print, step, span } = pen
  const right = span.right + (pen.margin.right - 6) * step
  const letters = { x: right, textAnchor: 'end', fill: COLORS.pencil, fontSize: pen.text * 0.88 } as const
  return (
    <g>
      <rect x={right - BAR} y={y} width={BAR} height={4 * step} fill={COLORS.ink} />
      <text {...letters} y={y - 6 * step}>
        {BAR} mm of wall
      </text>
      {print !== null && (
        <text {...letters} y={y + 20 * step} className="scale-on-paper">
          {scaleText(print.scale)}: {(BAR / print.scale).toFixed(1)} mm on A3
        </text>
      )}
    </g>
  )
}

export const scaleText = (scale: number): string => `1 : ${scale}`
