import { valueOf } from '../../../core/figure'
import type { Plan, UnitPlan, WallFrame } from '../../../core/plan/types'
import { wallName } from '../../../core/words/plan-names'
import { Chain, ScaleBar, Whole } from './Dimensions'
import { HeightLines } from './HeightLines'
import { Holes, markBoxes, placeHoles } from './Holes'
import { Bands, OnWall, Services, Timber, thingBoxes } from './InWall'
import { COLORS, floorOn, type Pen, penFor, reachingInto, unitsOn } from './pen'
import { nameBox, ReachingUnits, UnitFronts, UnitNames } from './UnitFronts'

interface Props {
  readonly plan: Plan
  readonly frame: WallFrame
  /** Told apart from the same wall drawn elsewhere on the page. */
  readonly id: string
}

/** One wall seen from inside the room. Lengths from the left corner, heights from the line. */
export function WallDrawing({ plan, frame, id }: Props) {
  const pen = penFor(plan, frame)
  if (pen === null) return <p className="stop">Its length is not known yet, so it cannot be drawn.</p>
  const { span, step, y } = pen
  const [w, h] = [span.right - span.left, span.top - span.bottom]
  const units = unitsOn(plan, frame.wall)
  const things = plan.wallThings?.filter((t) => t.wall === frame.wall) ?? []
  const holes = plan.holes.filter((hole) => hole.wall === frame.wall)
  const taken = [...thingBoxes(things, pen), ...markBoxes(holes, pen)]
  const names = units.flatMap((u) => nameBox(u, pen, taken) ?? [])
  const placed = placeHoles(holes, pen, names)
  return (
    <svg
      className="wall-drawing"
      viewBox={pen.viewBox}
      role="img"
      aria-label={`${wallName(frame.wall, plan)}, seen from inside the room. All its figures are in the tables below.`}
      fontFamily="'Atkinson Hyperlegible Mono Variable', monospace"
    >
      <rect x={0} y={0} width={w} height={h} fill={COLORS.paper} />
      <Timber things={things} pen={pen} />
      <Bands bands={plan.bands.filter((b) => b.wall === frame.wall)} pen={pen} id={id} />
      <OnWall things={things} pen={pen} />
      <ReachingUnits reaching={reachingInto(plan, frame)} pen={pen} />
      <UnitFronts units={units} pen={pen} />
      <Services things={things} pen={pen} />
      <Rails plan={plan} wall={frame.wall} pen={pen} />
      <HeightLines lines={plan.lines.filter((l) => l.wall === frame.wall)} pen={pen} />
      <path
        d={`M0 ${y(span.bottom)}V0H${w}V${y(span.bottom)}`}
        fill="none"
        stroke={COLORS.ink}
        strokeWidth={2 * step}
      />
      <Floor plan={plan} frame={frame} pen={pen} />
      <UnitNames names={names} pen={pen} />
      <Holes placed={placed} pen={pen} />
      <Chain units={units.filter(hangs)} length={w} y={-58 * step} pen={pen} />
      <Chain units={units.filter((u) => !hangs(u))} length={w} y={h + 44 * step} pen={pen} />
      <Whole length={frame.length} y={h + 86 * step} pen={pen} />
      <ScaleBar y={h + 90 * step} pen={pen} />
    </svg>
  )
}

const hangs = (u: UnitPlan) => u.kind === 'wall' || u.kind === 'corner-wall' || u.kind === 'bridging'

function Rails({ plan, wall, pen }: { readonly plan: Plan; readonly wall: string; readonly pen: Pen }) {
  return plan.rails.map((rail) => {
    const [from, to, edge] = [valueOf(rail.from), valueOf(rail.to), valueOf(rail.edge)]
    if (rail.wall !== wall || from === undefined || to === undefined || edge === undefined) return null
    return (
      <rect
        key={rail.rail}
        x={from}
        y={pen.y(edge)}
        width={to - from}
        height={40}
        fill="#cfc6b6"
        stroke={COLORS.ink}
        strokeWidth={pen.step}
      />
    )
  })
}

/** The floor at the foot of the wall as it falls, by the plane through the readings. */
function Floor({ plan, frame, pen }: { readonly plan: Plan; readonly frame: WallFrame; readonly pen: Pen }) {
  const { span, y, step } = pen
  const ends = floorOn(plan, frame, span.right) ?? [span.bottom + 20, span.bottom + 20]
  return (
    <path d={`M0 ${y(ends[0])}L${span.right} ${y(ends[1])}`} stroke={COLORS.ink} strokeWidth={3 * step} />
  )
}
