import { valueOf } from '../../../core/figure'
import type { UnitPlan } from '../../../core/plan/types'
import { COLORS, type Pen, type Reaching } from './pen'
import { type Box, overlaps, textWidth } from './spread'

/** A unit's name as it is lettered, in one line or two. */
export interface NameBox extends Box {
  readonly unit: string
  readonly size: number
  readonly lines: readonly string[]
}

/** Where up a front a name may stand, the middle first. */
const PLACES = [0.5, 0.68, 0.32, 0.82, 0.18]

/** The lettering of a unit's name: in the middle of its front, or higher, lower or to a side where other things on the wall want it so. */
export function nameBox(unit: UnitPlan, pen: Pen, taken: readonly Box[]): NameBox | null {
  const [left, right, bottom, top] = edges(unit)
  if (left === undefined || right === undefined || bottom === undefined || top === undefined) return null
  const room = right - left - 8 * pen.step
  const lines = textWidth(unit.name, pen.text) <= room ? [unit.name] : halves(unit.name)
  const widest = Math.max(...lines.map((line) => textWidth(line, 1)))
  const size = Math.min(pen.text, room / widest)
  const w = widest * size
  const h = lines.length * size * 1.25
  const middle = (left + right) / 2 - w / 2
  const aside = (right - left - w) / 2 - 4 * pen.step
  const boxes = [0, -aside, aside].flatMap((shift) =>
    PLACES.map((part) => ({
      unit: unit.unit,
      x: middle + shift,
      y: pen.y(bottom + part * (top - bottom)) - h / 2,
      w,
      h,
      size,
      lines,
    })),
  )
  return boxes.find((box) => !taken.some((other) => overlaps(box, other))) ?? boxes[0] ?? null
}

/** A name in two lines, broken at the space nearest its middle. */
function halves(name: string): readonly string[] {
  const spaces = [...name].flatMap((c, i) => (c === ' ' ? [i] : []))
  const [first] = spaces.sort((a, b) => Math.abs(a - name.length / 2) - Math.abs(b - name.length / 2))
  return first === undefined ? [name] : [name.slice(0, first), name.slice(first + 1)]
}

const edges = (unit: UnitPlan) => [unit.left, unit.right, unit.underside, unit.top].map(valueOf)

export function UnitFronts({ units, pen }: { readonly units: readonly UnitPlan[]; readonly pen: Pen }) {
  return units.map((unit) => <UnitFront key={unit.unit} unit={unit} pen={pen} />)
}

function UnitFront({ unit, pen }: { readonly unit: UnitPlan; readonly pen: Pen }) {
  const [left, right, bottom, top] = edges(unit)
  if (left === undefined || right === undefined || bottom === undefined || top === undefined) return null
  const isSpace = unit.kind === 'appliance-space'
  const { step, y } = pen
  return (
    <g>
      <rect
        x={left}
        y={y(top)}
        width={right - left}
        height={top - bottom}
        fill={COLORS.paper}
        fillOpacity={isSpace ? 0 : 0.5}
        stroke={isSpace ? COLORS.pencil : COLORS.ink}
        strokeWidth={1.8 * step}
        strokeDasharray={isSpace ? `${7 * step} ${5 * step}` : undefined}
      />
      <Legs unit={unit} left={left} bottom={bottom} pen={pen} />
      <Shims unit={unit} left={left} right={right} bottom={bottom} pen={pen} />
    </g>
  )
}

/** The back feet hide behind the front ones, as seen from in front. */
function Legs({
  unit,
  left,
  bottom,
  pen,
}: {
  readonly unit: UnitPlan
  readonly left: number
  readonly bottom: number
  readonly pen: Pen
}) {
  const front = Math.max(...unit.legs.map((leg) => leg.y))
  return unit.legs.map((leg) => {
    const floor = valueOf(leg.floor)
    if (floor === undefined || leg.y < front - 1) return null
    return (
      <path
        key={leg.foot}
        d={`M${left + leg.x} ${pen.y(bottom)}V${pen.y(floor)}M${left + leg.x - 18} ${pen.y(floor)}h36`}
        stroke={COLORS.ink}
        strokeWidth={3 * pen.step}
      />
    )
  })
}

/** A stack of shims is this wide on the drawing, mm. */
const STACK = 40

/** The stacks under the front corners of a box, floor to underside: those at the back hide behind them. */
function Shims({
  unit,
  left,
  right,
  bottom,
  pen,
}: {
  readonly unit: UnitPlan
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly pen: Pen
}) {
  if (unit.stands !== 'shims') return null
  const shims = unit.shims ?? []
  const front = Math.max(...shims.map(({ y }) => y))
  return shims.map(({ foot, x, y, floor }) => {
    const level = valueOf(floor)
    if (level === undefined || y < front - 1 || level >= bottom) return null
    const from = Math.max(left, Math.min(left + x - STACK / 2, right - STACK))
    return (
      <rect
        key={foot}
        x={from}
        y={pen.y(bottom)}
        width={STACK}
        height={bottom - level}
        fill={COLORS.ink}
        fillOpacity={0.75}
      />
    )
  })
}

/** Names over everything that is drawn on the fronts, with a rim of paper so that hatching does not cross them. */
export function UnitNames({ names, pen }: { readonly names: readonly NameBox[]; readonly pen: Pen }) {
  return names.map((box) => (
    <text
      key={box.unit}
      textAnchor="middle"
      fontSize={box.size}
      fontWeight="600"
      fill={COLORS.ink}
      stroke={COLORS.paper}
      strokeWidth={4 * pen.step}
      strokeLinejoin="round"
      paintOrder="stroke"
    >
      {box.lines.map((line, i) => (
        <tspan key={line} x={box.x + box.w / 2} y={box.y + (i + 0.8) * box.size * 1.25}>
          {line}
        </tspan>
      ))}
    </text>
  ))
}

/** Units of the next wall that stand in this one's corner: their outline only. */
export function ReachingUnits({
  reaching,
  pen,
}: {
  readonly reaching: readonly Reaching[]
  readonly pen: Pen
}) {
  return reaching.map(({ unit, left, right }) => {
    const [, , bottom, top] = edges(unit)
    if (bottom === undefined || top === undefined) return null
    return (
      <rect
        key={unit.unit}
        x={left}
        y={pen.y(top)}
        width={right - left}
        height={top - bottom}
        fill={COLORS.paper}
        fillOpacity={0.3}
        stroke={COLORS.pencil}
        strokeWidth={pen.step}
        strokeDasharray={`${2 * pen.step} ${4 * pen.step}`}
      />
    )
  })
}
