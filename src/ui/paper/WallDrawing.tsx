import { type Figure, valueOf } from '../../core/figure'
import type { Band, HeightLine, Hole, Plan, UnitPlan, WallFrame, WallThing } from '../../core/plan/types'
import { numberText } from '../../core/words/format'
import { type Span, spanOf, spread, unitsOn } from './wall-drawing'

const INK = '#262522'
const PENCIL = '#5c574e'
const CHALK = '#1f5fa8'
const BRASS = '#7c5413'
const TIMBER = '#d9b98a'
const TIMBER_EDGE = '#8a6433'
const REFUSED = '#9b2423'
const BAND = '#b5562c'

/** Drawn at 1 mm of paper to `SCALE` mm of wall, with room for dimensions round it. */
const MARGIN = { left: 150, right: 560, top: 420, bottom: 430 }
const TEXT = 46

/** One wall seen from inside the room: units, lines, studs, bands, holes. Lengths from the left corner, heights from the line. */
export function WallDrawing({ plan, frame }: { readonly plan: Plan; readonly frame: WallFrame }) {
  const span = spanOf(plan, frame)
  if (span === null) return <p className="stop">Its length is not known yet, so it cannot be drawn.</p>
  const w = span.right - span.left
  const h = span.top - span.bottom
  const y = (z: number) => span.top - z
  const units = unitsOn(plan, frame.wall)
  const wall = frame.wall
  const id = `hatch-${wall}`
  return (
    <svg
      className="wall-drawing"
      viewBox={`${-MARGIN.left} ${-MARGIN.top} ${w + MARGIN.left + MARGIN.right} ${h + MARGIN.top + MARGIN.bottom}`}
      role="img"
      aria-label={`Wall ${frame.name}, seen from inside the room. Its lines, holes and legs are in the tables below.`}
      fontFamily="'Atkinson Hyperlegible Mono Variable', monospace"
      fontSize={TEXT}
    >
      <defs>
        <pattern id={id} width="34" height="34" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" x2="0" y1="0" y2="34" stroke={BAND} strokeWidth="6" />
        </pattern>
      </defs>
      <rect x={0} y={0} width={w} height={h} fill="#fdfbf6" />
      {plan.wallThings
        ?.filter((t) => t.wall === wall && (t.kind === 'stud' || t.kind === 'nogging' || t.kind === 'pattress'))
        .map((t) => (
          <Timber key={t.id} thing={t} span={span} y={y} />
        ))}
      {plan.bands
        .filter((b) => b.wall === wall)
        .map((b) => (
          <BandHatch key={b.id} band={b} span={span} y={y} pattern={id} />
        ))}
      <rect x={0} y={0} width={w} height={h} fill="none" stroke={INK} strokeWidth="6" />
      {plan.wallThings
        ?.filter((t) => t.wall === wall && t.kind !== 'stud' && t.kind !== 'nogging' && t.kind !== 'pattress')
        .map((t) => (
          <OnWall key={t.id} thing={t} span={span} y={y} />
        ))}
      {units.map((u) => (
        <UnitFront key={u.unit} unit={u} y={y} />
      ))}
      {plan.rails
        .filter((r) => r.wall === wall)
        .map((r) => {
          const [from, to, edge] = [valueOf(r.from), valueOf(r.to), valueOf(r.edge)]
          if (from === undefined || to === undefined || edge === undefined) return null
          return (
            <rect key={r.rail} x={from} y={y(edge)} width={to - from} height={40} fill="#cfc6b6" stroke={INK} strokeWidth="4" />
          )
        })}
      <HeightLines lines={plan.lines.filter((l) => l.wall === wall)} span={span} y={y} />
      {plan.holes
        .filter((hole) => hole.wall === wall)
        .map((hole) => (
          <HoleMark key={hole.id} hole={hole} y={y} />
        ))}
      <Chain units={units.filter((u) => hangs(u))} length={w} y={-120} />
      <Chain units={units.filter((u) => !hangs(u))} length={w} y={h + 130} />
      <Whole length={frame.length} y={h + 260} />
      <CheckBar y={h + 370} />
    </svg>
  )
}

const hangs = (u: UnitPlan) => u.kind === 'wall' || u.kind === 'corner-wall' || u.kind === 'bridging'

interface Scale {
  readonly y: (z: number) => number
}

function Timber({ thing, span, y }: Scale & { readonly thing: WallThing; readonly span: Span }) {
  const [left, right] = [valueOf(thing.left), valueOf(thing.right)]
  if (left === undefined || right === undefined) return null
  const top = (thing.top && valueOf(thing.top)) ?? span.top
  const bottom = (thing.bottom && valueOf(thing.bottom)) ?? span.bottom
  const middle = (left + right) / 2
  const isStud = thing.kind === 'stud'
  return (
    <g>
      <rect x={left} y={y(top)} width={right - left} height={top - bottom} fill={TIMBER} opacity={isStud ? 0.42 : 0.7} />
      <rect
        x={left}
        y={y(top)}
        width={right - left}
        height={top - bottom}
        fill="none"
        stroke={TIMBER_EDGE}
        strokeWidth="3"
        strokeDasharray={isStud ? '18 14' : undefined}
      />
      {isStud && (
        <text x={middle} y={-24} textAnchor="middle" fill={TIMBER_EDGE} fontSize={TEXT * 0.86}>
          {Math.round(middle)}
        </text>
      )}
    </g>
  )
}

function BandHatch({ band, span, y, pattern }: Scale & { readonly band: Band; readonly span: Span; readonly pattern: string }) {
  const left = Math.max(span.left, band.left ?? span.left)
  const right = Math.min(span.right, band.right ?? span.right)
  const top = Math.min(span.top, band.top ?? span.top)
  const bottom = Math.max(span.bottom, band.bottom ?? span.bottom)
  if (right <= left || top <= bottom || band.unknownBecause.length > 0) return null
  return <rect x={left} y={y(top)} width={right - left} height={top - bottom} fill={`url(#${pattern})`} opacity="0.55" />
}

function OnWall({ thing, span, y }: Scale & { readonly thing: WallThing; readonly span: Span }) {
  const [left, right] = [valueOf(thing.left), valueOf(thing.right)]
  const top = thing.top ? valueOf(thing.top) : span.top
  const bottom = thing.bottom ? valueOf(thing.bottom) : span.bottom
  if (left === undefined || right === undefined || top === undefined || bottom === undefined) return null
  return (
    <rect
      x={left}
      y={y(top)}
      width={right - left}
      height={top - bottom}
      fill={thing.kind === 'accessory' ? '#fff' : '#f1ede3'}
      stroke={INK}
      strokeWidth="5"
    />
  )
}

function UnitFront({ unit, y }: Scale & { readonly unit: UnitPlan }) {
  const [left, right, bottom, top] = [unit.left, unit.right, unit.underside, unit.top].map(valueOf)
  if (left === undefined || right === undefined || bottom === undefined || top === undefined) return null
  const isSpace = unit.kind === 'appliance-space'
  const size = Math.min(TEXT, (right - left) / (unit.name.length * 0.62))
  return (
    <g>
      <rect
        x={left}
        y={y(top)}
        width={right - left}
        height={top - bottom}
        fill="#fffefa"
        fillOpacity={isSpace ? 0 : 0.55}
        stroke={isSpace ? PENCIL : INK}
        strokeWidth="6"
        strokeDasharray={isSpace ? '26 18' : undefined}
      />
      {unit.legs.map((leg) => {
        const floor = valueOf(leg.floor)
        if (floor === undefined || leg.y > 400) return null
        return (
          <rect key={leg.foot} x={left + leg.x - 12} y={y(bottom)} width={24} height={bottom - floor} fill="none" stroke={INK} strokeWidth="4" />
        )
      })}
      <text x={(left + right) / 2} y={y((top + bottom) / 2)} textAnchor="middle" fontSize={size} fontWeight="600" fill={INK}>
        {unit.name}
      </text>
    </g>
  )
}

const LINE_NAMES: Readonly<Record<string, string>> = {
  line: 'THE LINE',
  'base-underside': 'base underside',
  'base-top': 'base top',
  'worktop-top': 'worktop top',
  'wall-underside': 'underside',
  'wall-top': 'top',
  'tall-underside': 'tall underside',
  'tall-top': 'tall top',
  plate: 'plate',
  rail: 'rail edge',
  bracket: 'brackets',
}

function HeightLines({ lines, span, y }: Scale & { readonly lines: readonly HeightLine[]; readonly span: Span }) {
  const drawn = lines.flatMap((line) => {
    const z = valueOf(line.height)
    return z === undefined ? [] : [{ line, z }]
  })
  const labels = spread(
    drawn.map(({ z }) => y(z) + TEXT * 0.35),
    TEXT * 1.15,
  )
  return drawn.map(({ line, z }, i) => {
    const isDatum = line.of === 'line'
    const color = isDatum ? INK : CHALK
    const labelY = labels[i] as number
    return (
      <g key={line.id}>
        <line
          x1={isDatum ? -60 : (line.from ?? span.left)}
          x2={isDatum ? span.right + 60 : (line.to ?? span.right)}
          y1={y(z)}
          y2={y(z)}
          stroke={color}
          strokeWidth={isDatum ? 5 : 6}
          strokeDasharray={isDatum ? '60 16 10 16' : undefined}
        />
        <path
          d={`M${Math.min(span.right, line.to ?? span.right)} ${y(z)}H${span.right + 30}L${span.right + 60} ${labelY - TEXT * 0.35}`}
          fill="none"
          stroke={color}
          strokeWidth="2"
          strokeDasharray={isDatum ? undefined : '8 10'}
        />
        <text x={span.right + 70} y={labelY} fill={color} fontWeight="600">
          {LINE_NAMES[line.of] ?? line.of} {isDatum ? '0' : numberText(line.height, { signed: true })}
        </text>
      </g>
    )
  })
}

function HoleMark({ hole, y }: Scale & { readonly hole: Hole }) {
  const [along, z] = [valueOf(hole.along), valueOf(hole.height)]
  if (along === undefined || z === undefined) return null
  const refused = hole.verdict === 'refused'
  const color = refused ? REFUSED : BRASS
  return (
    <g transform={`translate(${along} ${y(z)})`} stroke={color} strokeWidth="6" fill="#fdfbf6">
      <Shape purpose={hole.purpose} />
      {refused ? (
        <path d="M-30 -30 30 30" strokeWidth="8" />
      ) : (
        <path d="M-22 0H22M0 -22V22" strokeWidth="3" fill="none" />
      )}
      <text x={30} y={TEXT * 0.9} stroke="none" fill={color} fontWeight="600" fontSize={TEXT * 0.9}>
        {refused ? 'no' : hole.number}
      </text>
    </g>
  )
}

function Shape({ purpose }: { readonly purpose: Hole['purpose'] }) {
  if (purpose === 'rail' || purpose === 'plate' || purpose === 'back-rail' || purpose === 'cleat') return <circle r="22" />
  if (purpose === 'base-bracket') return <path d="M0 -24 24 18H-24Z" />
  return <path d="M0 -26 26 0 0 26 -26 0Z" />
}

/** A chain of dimensions along one row of units, with the gaps between them. */
function Chain({ units, length, y }: { readonly units: readonly UnitPlan[]; readonly length: number; readonly y: number }) {
  const edges = units
    .flatMap((u) => [valueOf(u.left), valueOf(u.right)])
    .filter((v) => v !== undefined)
    .concat([0, length])
    .sort((a, b) => a - b)
    .filter((v, i, all) => i === 0 || v - (all[i - 1] as number) > 0.5)
  if (units.length === 0) return null
  return (
    <g stroke={INK} strokeWidth="3" fill={INK}>
      <line x1={0} x2={length} y1={y} y2={y} />
      {edges.map((x, i) => {
        const next = edges[i + 1]
        return (
          <g key={x}>
            <path d={`M${x - 18} ${y + 18}L${x + 18} ${y - 18}`} strokeWidth="5" />
            {next !== undefined && (
              <text x={(x + next) / 2} y={y - 18 - (next - x < 110 && i % 2 === 1 ? TEXT : 0)} textAnchor="middle" stroke="none" fontSize={TEXT * 0.95}>
                {Math.round(next - x)}
              </text>
            )}
          </g>
        )
      })}
    </g>
  )
}

function Whole({ length, y }: { readonly length: Figure; readonly y: number }) {
  const w = valueOf(length)
  if (w === undefined) return null
  return (
    <g stroke={INK} strokeWidth="3">
      <line x1={0} x2={w} y1={y} y2={y} />
      {[0, w].map((x) => (
        <path key={x} d={`M${x - 18} ${y + 18}L${x + 18} ${y - 18}`} strokeWidth="5" />
      ))}
      <text x={w / 2} y={y - 20} textAnchor="middle" stroke="none" fill={INK}>
        {numberText(length)} corner to corner
      </text>
    </g>
  )
}

/** A bar to measure before the sheet is trusted for scale. */
function CheckBar({ y }: { readonly y: number }) {
  return (
    <g>
      <rect x={0} y={y} width={500} height={14} fill={INK} />
      <text x={520} y={y + 26} fill={PENCIL} fontSize={TEXT * 0.85}>
        500 mm of wall. The figures rule, not the scale.
      </text>
    </g>
  )
}
