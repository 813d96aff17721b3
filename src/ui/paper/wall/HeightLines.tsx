import { valueOf } from '../../../core/figure'
import type { HeightLine } from '../../../core/plan/types'
import { lineText } from './line-names'
import { COLORS, type Pen } from './pen'
import { type Box, spread, textWidth } from './spread'

export interface Level {
  readonly key: string
  readonly text: string
  readonly isDatum: boolean
  readonly z: number
  readonly stretches: readonly (readonly [number, number])[]
}

/** The lines of one kind at one height are one level with one label, from the top down. */
export function levelsOf(lines: readonly HeightLine[], pen: Pen): readonly Level[] {
  const levels = new Map<string, Level>()
  for (const line of lines) {
    const z = valueOf(line.height)
    if (z === undefined) continue
    const text = lineText(line)
    const stretch = [line.from ?? pen.span.left, line.to ?? pen.span.right] as const
    const stretches = [...(levels.get(text)?.stretches ?? []), stretch]
    levels.set(text, { key: text, text, z, isDatum: line.of === 'line', stretches })
  }
  return [...levels.values()].sort((a, b) => b.z - a.z)
}

/** How far down the sheet each level's label stands, none touching the next. */
export function levelLabels(levels: readonly Level[], pen: Pen): readonly (Box & { readonly at: number })[] {
  const { text, span, step, y } = pen
  const at = spread(
    levels.map(({ z }) => y(z)),
    text * 1.2,
  )
  return levels.map((level, i) => ({
    at: at[i] as number,
    x: span.right + 30 * step,
    y: (at[i] as number) - text * 0.5,
    w: textWidth(level.text, text),
    h: text,
  }))
}

/** Heights to strike, each with its name and figure at the right, leaders bent where labels had to make room. */
export function HeightLines({ lines, pen }: { readonly lines: readonly HeightLine[]; readonly pen: Pen }) {
  const { span, step, text, y } = pen
  const levels = levelsOf(lines, pen)
  const labels = levelLabels(levels, pen)
  return levels.map(({ key, text: label, isDatum, z, stretches }, i) => {
    const color = isDatum ? COLORS.ink : COLORS.chalk
    const { at, x } = labels[i] as (typeof labels)[number]
    const dash = `${16 * step} ${4 * step} ${3 * step} ${4 * step}`
    return (
      <g key={key}>
        {isDatum ? (
          <line
            x1={-24 * step}
            x2={span.right}
            y1={y(z)}
            y2={y(z)}
            stroke={color}
            strokeWidth={1.5 * step}
            strokeDasharray={dash}
          />
        ) : (
          stretches.map(([from, to]) => (
            <line
              key={`${from} ${to}`}
              x1={from}
              x2={to}
              y1={y(z)}
              y2={y(z)}
              stroke={color}
              strokeWidth={2 * step}
            />
          ))
        )}
        <path
          d={`M${span.right} ${y(z)}h${6 * step}L${span.right + 22 * step} ${at}h${4 * step}`}
          fill="none"
          stroke={color}
          strokeWidth={step}
        />
        <text x={x} y={at + text * 0.34} fill={color} fontWeight="600" fontSize={text}>
          {label}
        </text>
      </g>
    )
  })
}
