import { valueOf } from '../../core/figure'
import { type Operation, type Plan, STAGES, type UnitPlan, type WallFrame } from '../../core/plan/types'

/** Width and height of a small picture, px. */
const WIDE = 112
const HIGH = 56

interface Props {
  readonly plan: Plan
  readonly operation: Operation
}

/**
 * A step as small as a stamp: its wall from the front with what it works on in chalk; a step that is about no wall, by its
 * place on the tape. To the ear it is silent: the words stand beside it.
 */
export function SmallPicture({ plan, operation }: Props) {
  const unit = plan.units.find((u) => operation.on.includes(u.unit))
  const frame = plan.walls.find((w) => w.wall === (operation.wall ?? unit?.wall))
  const length = frame === undefined ? undefined : valueOf(frame.length)
  if (frame === undefined || length === undefined) return <OnTape plan={plan} operation={operation} />
  return <OnWall plan={plan} operation={operation} frame={frame} length={length} />
}

function OnTape({ plan, operation }: Props) {
  const at = plan.operations.indexOf(operation)
  const x = (i: number) => 4 + (i / Math.max(1, plan.operations.length - 1)) * (WIDE - 8)
  const starts = STAGES.flatMap((stage) => {
    const first = plan.operations.findIndex((o) => o.stage === stage)
    return first < 0 ? [] : [first]
  })
  return (
    <svg className="small-picture" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true" focusable="false">
      <path className="tape-edge" d={`M2 22h${WIDE - 4}M2 42h${WIDE - 4}`} />
      <path className="tape-edge" d={starts.map((i) => `M${x(i)} 22v10`).join('')} />
      <path className="tape-hook" d={`M${x(at)} 42v-26m-5 -8h10v6l-5 5l-5 -5z`} />
    </svg>
  )
}

interface WallProps extends Props {
  readonly frame: WallFrame
  readonly length: number
}

function OnWall({ plan, operation, frame, length }: WallProps) {
  const here = plan.units.flatMap((u) => (u.wall === frame.wall ? (boxOf(u) ?? []) : []))
  const floor = valueOf(plan.floor.highPoint.z) ?? -1000
  const top = Math.max(valueOf(frame.ceiling) ?? 0, ...here.map((b) => b.top), floor + 2000)
  const scale = Math.min(WIDE / length, HIGH / (top - floor))
  const left = (WIDE - length * scale) / 2
  const x = (along: number) => left + along * scale
  const y = (height: number) => HIGH - 1 - (height - floor) * scale * 0.97
  const acted = new Set(operation.on)
  const holes = plan.holes.filter((h) => operation.holes.includes(h.id) && h.wall === frame.wall)
  const rails = plan.rails.filter((r) => operation.rails.includes(r.rail) && r.wall === frame.wall)
  const struck = plan.lines.filter((l) => operation.lines.includes(l.id) && l.wall === frame.wall)
  const box = (b: Box) => ({
    x: x(b.left),
    y: y(b.top),
    width: (b.right - b.left) * scale,
    height: y(b.bottom) - y(b.top),
  })
  return (
    <svg className="small-picture" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true" focusable="false">
      <rect className="wall" {...box({ left: 0, right: length, bottom: floor, top })} />
      {here.map((b) => (
        <rect key={b.unit} className="unit" {...box(b)} />
      ))}
      <path className="line" d={`M${x(0)} ${y(0)}H${x(length)}`} />
      {struck.map((l) => {
        const height = valueOf(l.height)
        if (height === undefined) return null
        return <path key={l.id} className="now" d={`M${x(l.from ?? 0)} ${y(height)}H${x(l.to ?? length)}`} />
      })}
      {here.map((b) => acted.has(b.unit) && <rect key={b.unit} className="unit now" {...box(b)} />)}
      {rails.map((r) => {
        const [edge, start, end] = [valueOf(r.edge), valueOf(r.from), valueOf(r.to)]
        if (edge === undefined || start === undefined || end === undefined) return null
        return <path key={r.rail} className="now" d={`M${x(start)} ${y(edge)}H${x(end)}`} />
      })}
      {holes.map((h) => {
        const [along, height] = [valueOf(h.along), valueOf(h.height)]
        if (along === undefined || height === undefined) return null
        return <circle key={h.id} className="hole" cx={x(along)} cy={y(height)} r={1.8} />
      })}
    </svg>
  )
}

interface Box {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** The front of a unit on its wall; none where a figure of it is not known. */
function boxOf({
  unit,
  left,
  right,
  underside,
  top,
}: UnitPlan): (Box & { readonly unit: string }) | undefined {
  const [l, r, b, t] = [valueOf(left), valueOf(right), valueOf(underside), valueOf(top)]
  if (l === undefined || r === undefined || b === undefined || t === undefined) return undefined
  return { unit, left: l, right: r, bottom: b, top: t }
}
