import type { CSSProperties } from 'react'
import { valueOf } from '../../../core/figure'
import type { Plan, WallFrame } from '../../../core/plan/types'
import { wallName } from '../../../core/words/plan-names'
import { Chain, ScaleBar, Whole } from './Dimensions'
import { Flags } from './Flags'
import { type Found, flagsFor } from './found'
import { HeightLines } from './HeightLines'
import { HoleMarks, Holes } from './Holes'
import { Bands, OnWall, Services, Timber, thingBoxes } from './InWall'
import { letteringOf } from './lettering'
import { COLORS, floorOn, hangs, overviewPen, type Pen, penFor, reachingInto, studsOf, unitsOn } from './pen'
import { nameBox, ReachingUnits, UnitFronts, UnitNames } from './UnitFronts'

interface Props {
  readonly plan: Plan
  readonly frame: WallFrame
  /** Told apart from the same wall drawn elsewhere on the page. */
  readonly id: string
  /** Findings to flag at their places, each a way to its words. */
  readonly found?: readonly Found[]
  readonly onFlag?: (finding: string) => void
}

const MONO = "'Atkinson Hyperlegible Mono Variable', monospace"

/** One wall seen from inside the room. Lengths from the left corner, heights from the line. */
export function WallDrawing({ plan, frame, id, found = [], onFlag }: Props) {
  const pen = penFor(plan, frame)
  if (pen === null) return <p className="stop">Its length is not known yet, so it cannot be drawn.</p>
  const { span } = pen
  const [w, h] = [span.right - span.left, span.top - span.bottom]
  const set = letteringOf(plan, frame, found, pen)
  const { units, names, placed } = set
  const size = { '--steps': pen.steps, '--paper-width': `${pen.print?.width ?? 0}mm` } as CSSProperties
  const lines = plan.lines.filter((l) => l.wall === frame.wall)
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group within SVG has no element of its own
    <svg
      className="wall-drawing"
      viewBox={pen.viewBox}
      style={size}
      role="group"
      aria-label={`${wallName(frame.wall, plan)}, seen from inside the room. All its figures are in the tables below.`}
      fontFamily={MONO}
    >
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of lines takes no focus */}
      <g aria-hidden="true">
        <rect x={0} y={0} width={w} height={h} fill={COLORS.paper} />
        <Wall plan={plan} frame={frame} pen={pen} id={id} studs={studsOf(plan, frame.wall, span)} />
        <HeightLines lines={lines} pen={pen} />
        <Outline pen={pen} />
        <Floor plan={plan} frame={frame} pen={pen} />
        <UnitNames names={names} pen={pen} />
        <Holes placed={placed} pen={pen} />
        <Chain units={units.filter(hangs)} length={w} y={set.above} pen={pen} />
        <Chain units={units.filter((u) => !hangs(u))} length={w} y={set.below} pen={pen} />
        <Whole length={frame.length} y={set.whole} pen={pen} />
        <ScaleBar y={set.bar} pen={pen} />
      </g>
      <Flags flags={set.flags} pen={pen} wall={frame.wall} onFlag={onFlag} />
    </svg>
  )
}

/** A name smaller than this, in steps, is left to the enlarged drawing. */
const LEAST_NAME = 7

/** The whole of a wall for a small screen: what stands where and what was found, without the figures. */
export function WallOverview({ plan, frame, id, found = [] }: Props) {
  const pen = overviewPen(plan, frame)
  if (pen === null) return null
  const units = unitsOn(plan, frame.wall)
  const things = plan.wallThings?.filter((t) => t.wall === frame.wall) ?? []
  const names = units
    .flatMap((u) => nameBox(u, pen, thingBoxes(things, pen)) ?? [])
    .filter(({ size }) => size >= LEAST_NAME * pen.step)
  const flags = flagsFor(
    found,
    pen,
    [...names, ...thingBoxes(things, pen).filter((b) => b.w < 80 * pen.step)],
    8,
  )
  return (
    <svg
      className="wall-overview"
      viewBox={pen.viewBox}
      aria-hidden="true"
      focusable="false"
      fontFamily={MONO}
    >
      <rect
        x={0}
        y={0}
        width={pen.span.right - pen.span.left}
        height={pen.span.top - pen.span.bottom}
        fill={COLORS.paper}
      />
      <Wall plan={plan} frame={frame} pen={pen} id={id} studs={[]} />
      <Outline pen={pen} />
      <Floor plan={plan} frame={frame} pen={pen} />
      <UnitNames names={names} pen={pen} />
      <HoleMarks holes={plan.holes.filter((hole) => hole.wall === frame.wall)} pen={pen} />
      <Flags flags={flags} pen={pen} wall={null} />
    </svg>
  )
}

/** What is in the wall, on it and before it. */
function Wall({
  plan,
  frame,
  pen,
  id,
  studs,
}: {
  readonly plan: Plan
  readonly frame: WallFrame
  readonly pen: Pen
  readonly id: string
  readonly studs: ReturnType<typeof studsOf>
}) {
  const things = plan.wallThings?.filter((t) => t.wall === frame.wall) ?? []
  return (
    <>
      <Timber things={things} studs={studs} pen={pen} />
      <Bands bands={plan.bands.filter((b) => b.wall === frame.wall)} pen={pen} id={id} />
      <OnWall things={things} pen={pen} />
      <ReachingUnits reaching={reachingInto(plan, frame)} pen={pen} />
      <UnitFronts units={unitsOn(plan, frame.wall)} pen={pen} />
      <Services things={things} pen={pen} />
      <Rails plan={plan} wall={frame.wall} pen={pen} />
    </>
  )
}

function Outline({ pen: { span, step, y } }: { readonly pen: Pen }) {
  return (
    <path
      d={`M0 ${y(span.bottom)}V0H${span.right - span.left}V${y(span.bottom)}`}
      fill="none"
      stroke={COLORS.ink}
      strokeWidth={2 * step}
    />
  )
}

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
