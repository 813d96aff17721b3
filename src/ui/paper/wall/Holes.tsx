import { valueOf } from '../../../core/figure'
import type { Hole } from '../../../core/plan/types'
import { COLORS, type Pen } from './pen'
import { type Box, distance, placeLabels, textWidth } from './spread'

const RADIUS = 6.5
/** A number further from its mark than this, in steps, has a line to it. */
const FAR = 10

/** The place every mark of a hole takes up on the wall. */
export function markBoxes(holes: readonly Hole[], pen: Pen): readonly Box[] {
  const r = (RADIUS + 2) * pen.step
  return holes.flatMap((hole) => {
    const [along, z] = [valueOf(hole.along), valueOf(hole.height)]
    return along === undefined || z === undefined
      ? []
      : [{ x: along - r, y: pen.y(z) - r, w: 2 * r, h: 2 * r }]
  })
}

export interface PlacedHole {
  readonly hole: Hole
  readonly x: number
  readonly y: number
  readonly text: string
  readonly label: Box
}

/** Every hole of a wall whose place is known, with a place for its number that touches no other mark, number or name. */
export function placeHoles(holes: readonly Hole[], pen: Pen, taken: readonly Box[]): readonly PlacedHole[] {
  const size = pen.text * 0.94
  const known = holes.flatMap((hole) => {
    const [along, z] = [valueOf(hole.along), valueOf(hole.height)]
    if (along === undefined || z === undefined) return []
    const text = hole.verdict === 'refused' ? 'no' : `${hole.number ?? '?'}`
    return [{ hole, x: along, y: pen.y(z), text }]
  })
  const labels = placeLabels(
    // With the air of half a letter, or two numbers beside each other read as one.
    known.map(({ x, y, text }) => ({ x, y, w: textWidth(`${text} `, size), h: size * 0.86 })),
    (RADIUS + 2) * pen.step,
    taken,
  )
  return known.map((place, i) => ({ ...place, label: labels[i] as Box }))
}

export function Holes({ placed, pen }: { readonly placed: readonly PlacedHole[]; readonly pen: Pen }) {
  return placed.map(({ hole, x, y, text, label }) => {
    const isRefused = hole.verdict === 'refused'
    const color = isRefused ? COLORS.refused : COLORS.brass
    return (
      <g key={hole.id}>
        {distance(label, { x, y }) > FAR * pen.step && (
          <path
            d={`M${x} ${y}L${label.x + label.w / 2} ${label.y + label.h / 2}`}
            stroke={color}
            strokeWidth={pen.step}
          />
        )}
        <g transform={`translate(${x} ${y}) scale(${pen.step})`}>
          <HoleMark purpose={hole.purpose} isRefused={isRefused} />
        </g>
        <text
          x={label.x + label.w / 2}
          y={label.y + label.h * 0.9}
          textAnchor="middle"
          fill={color}
          fontWeight="600"
          fontSize={pen.text * 0.94}
          stroke={COLORS.paper}
          strokeWidth={3 * pen.step}
          strokeLinejoin="round"
          paintOrder="stroke"
        >
          {text}
        </text>
      </g>
    )
  })
}

/** Marks only, for a drawing too small for their numbers. */
export function HoleMarks({ holes, pen }: { readonly holes: readonly Hole[]; readonly pen: Pen }) {
  return holes.map((hole) => {
    const [along, z] = [valueOf(hole.along), valueOf(hole.height)]
    if (along === undefined || z === undefined) return null
    return (
      <g key={hole.id} transform={`translate(${along} ${pen.y(z)}) scale(${pen.step * 0.5})`}>
        <HoleMark purpose={hole.purpose} isRefused={hole.verdict === 'refused'} />
      </g>
    )
  })
}

/** The mark of a hole by what it is for; a refused one is barred. Drawn about its own middle. */
export function HoleMark({
  purpose,
  isRefused,
}: {
  readonly purpose: Hole['purpose']
  readonly isRefused: boolean
}) {
  const color = isRefused ? COLORS.refused : COLORS.brass
  return (
    <g stroke={color} strokeWidth="1.8" fill={COLORS.paper}>
      <Shape purpose={purpose} />
      {isRefused ? (
        <path d="M-9 -9 9 9" strokeWidth="2.6" />
      ) : (
        <path d="M-6.5 0h13M0 -6.5v13" strokeWidth="1" fill="none" />
      )}
    </g>
  )
}

function Shape({ purpose }: { readonly purpose: Hole['purpose'] }) {
  if (purpose === 'rail' || purpose === 'plate' || purpose === 'back-rail' || purpose === 'cleat')
    return <circle r={RADIUS} />
  if (purpose === 'base-bracket') return <path d="M0 -7.5 7.5 5.5H-7.5Z" />
  return <path d="M0 -8 8 0 0 8 -8 0Z" />
}
