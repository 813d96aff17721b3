import { valueOf } from '../../../core/figure'
import type { Band, WallThing } from '../../../core/plan/types'
import { STUD_LETTERS, type StudEdges, studLabels } from './chain'
import { COLORS, type Pen } from './pen'
import type { Box } from './spread'

const IN_WALL = new Set<WallThing['kind']>(['stud', 'nogging', 'pattress'])

interface Rect {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

function rectOf(thing: WallThing, { span, y }: Pen): Rect | null {
  const [left, right] = [valueOf(thing.left), valueOf(thing.right)]
  const top = thing.top === null ? span.top : valueOf(thing.top)
  const bottom = thing.bottom === null ? span.bottom : valueOf(thing.bottom)
  if (left === undefined || right === undefined || top === undefined || bottom === undefined) return null
  return { x: left, y: y(top), width: right - left, height: top - bottom }
}

/** What sockets, doors and windows take up on the wall. */
export function thingBoxes(things: readonly WallThing[], pen: Pen): readonly Box[] {
  return things.flatMap((thing) => {
    const rect = isOnWall(thing) ? rectOf(thing, pen) : null
    return rect === null ? [] : [{ x: rect.x, y: rect.y, w: rect.width, h: rect.height }]
  })
}

const isOnWall = ({ kind }: WallThing): boolean => !IN_WALL.has(kind) && kind !== 'service'

/** Studs, with how far along their middles are, and timber let in between them. */
export function Timber({
  things,
  studs,
  pen,
}: {
  readonly things: readonly WallThing[]
  /** Studs to letter; none on a drawing that is too small for it. */
  readonly studs: readonly StudEdges[]
  readonly pen: Pen
}) {
  const drawn = things.flatMap((thing) => {
    const rect = IN_WALL.has(thing.kind) ? rectOf(thing, pen) : null
    return rect === null ? [] : [{ thing, rect }]
  })
  return (
    <g>
      {drawn.map(({ thing, rect }) => (
        <g key={thing.id}>
          <rect {...rect} fill={COLORS.timber} opacity={thing.kind === 'stud' ? 0.4 : 0.7} />
          <rect
            {...rect}
            fill="none"
            stroke={COLORS.timberEdge}
            strokeWidth={pen.step}
            strokeDasharray={thing.kind === 'stud' ? `${6 * pen.step} ${4 * pen.step}` : undefined}
          />
        </g>
      ))}
      {studLabels(studs, pen.text).map((label) => (
        <text
          key={label.id}
          x={label.x}
          y={label.y + 12 * pen.step}
          fill={COLORS.timberEdge}
          fontSize={pen.text * STUD_LETTERS}
        >
          {label.text}
        </text>
      ))}
    </g>
  )
}

/** Where cables and pipes should be, hatched. A band with an unknown side is not drawn; it is said in words below. */
export function Bands({
  bands,
  pen,
  id,
}: {
  readonly bands: readonly Band[]
  readonly pen: Pen
  readonly id: string
}) {
  const { span, step } = pen
  return (
    <g>
      <defs>
        <pattern
          id={id}
          width={9 * step}
          height={9 * step}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line x1="0" x2="0" y1="0" y2={9 * step} stroke={COLORS.band} strokeWidth={2 * step} />
        </pattern>
      </defs>
      {bands.map((band) => {
        const left = Math.max(span.left, band.left ?? span.left)
        const right = Math.min(span.right, band.right ?? span.right)
        const top = Math.min(span.top, band.top ?? span.top)
        const bottom = Math.max(span.bottom, band.bottom ?? span.bottom)
        if (right <= left || top <= bottom || band.unknownBecause.length > 0) return null
        return (
          <rect
            key={band.id}
            x={left}
            y={pen.y(top)}
            width={right - left}
            height={top - bottom}
            fill={`url(#${id})`}
            opacity="0.6"
          />
        )
      })}
    </g>
  )
}

/** Sockets, doors and windows. */
export function OnWall({ things, pen }: { readonly things: readonly WallThing[]; readonly pen: Pen }) {
  return things.map((thing) => {
    const rect = isOnWall(thing) ? rectOf(thing, pen) : null
    if (rect === null) return null
    return (
      <rect
        key={thing.id}
        {...rect}
        fill={thing.kind === 'accessory' ? '#ffffff' : '#efe9dc'}
        stroke={COLORS.ink}
        strokeWidth={1.5 * pen.step}
      />
    )
  })
}

/** Pipes and cables whose way is known, as they run. */
export function Services({ things, pen }: { readonly things: readonly WallThing[]; readonly pen: Pen }) {
  return things.map((thing) => {
    const rect = thing.kind === 'service' ? rectOf(thing, pen) : null
    return rect === null ? null : <rect key={thing.id} {...rect} fill={COLORS.band} opacity="0.75" />
  })
}
