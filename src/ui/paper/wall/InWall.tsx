import { valueOf } from '../../../core/figure'
import type { Band, WallThing } from '../../../core/plan/types'
import { COLORS, type Pen, textWidth } from './pen'
import { type Box, stagger } from './spread'

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
export function Timber({ things, pen }: { readonly things: readonly WallThing[]; readonly pen: Pen }) {
  const drawn = things.flatMap((thing) => {
    const rect = IN_WALL.has(thing.kind) ? rectOf(thing, pen) : null
    return rect === null ? [] : [{ thing, rect }]
  })
  const studs = drawn.filter(({ thing }) => thing.kind === 'stud')
  const size = pen.text * 0.88
  const names = studs.map(({ rect }) => `${Math.round(rect.x + rect.width / 2)}`)
  const rows = stagger(
    studs.map(({ rect }) => rect.x + rect.width / 2),
    names.map((name) => textWidth(name, size)),
    6 * pen.step,
  )
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
      {studs.map(({ thing, rect }, i) => (
        <text
          key={thing.id}
          x={rect.x + rect.width / 2}
          y={-(8 + 15 * (rows[i] as number)) * pen.step}
          textAnchor="middle"
          fill={COLORS.timberEdge}
          fontSize={size}
        >
          {names[i]}
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
