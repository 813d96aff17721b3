import { valueOf } from '../../../core/figure'
import type { Hole, Plan, UnitPlan, WallFrame, WallThing } from '../../../core/plan/types'
import { CHAIN_BELOW, type ChainLabel, chainAbove, chainGaps, chainLabels, studLabels } from './chain'
import { type Flag, type Found, flagsFor } from './found'
import { levelLabels, levelsOf } from './HeightLines'
import { markBoxes, type PlacedHole, placeHoles } from './Holes'
import { thingBoxes } from './InWall'
import { hangs, type Pen, studsOf, unitsOn } from './pen'
import { type Box, textWidth } from './spread'
import { type NameBox, nameBox } from './UnitFronts'

/** Everything that is lettered on the drawing of one wall, with its place, worked out before anything is drawn. */
export interface Lettering {
  readonly units: readonly UnitPlan[]
  readonly things: readonly WallThing[]
  readonly holes: readonly Hole[]
  readonly names: readonly NameBox[]
  readonly placed: readonly PlacedHole[]
  readonly flags: readonly Flag[]
  /** Where the chains' lines stand, mm down from the top of the wall. */
  readonly above: number
  readonly below: number
  readonly whole: number
  readonly bar: number
  /** Every piece of lettering as a box, with what it says. */
  readonly boxes: readonly (Box & { readonly text: string })[]
}

export function letteringOf(plan: Plan, frame: WallFrame, found: readonly Found[], pen: Pen): Lettering {
  const { span, step } = pen
  const height = span.top - span.bottom
  const length = span.right - span.left
  const units = unitsOn(plan, frame.wall)
  const things = plan.wallThings?.filter((t) => t.wall === frame.wall) ?? []
  const holes = plan.holes.filter((hole) => hole.wall === frame.wall)
  const marks = markBoxes(holes, pen)
  const solid = [...thingBoxes(things, pen).filter(isSmall(pen)), ...marks]
  const names = units.flatMap((u) => nameBox(u, pen, [...thingBoxes(things, pen), ...marks]) ?? [])
  const placed = placeHoles(holes, pen, names)
  const flags = flagsFor(found, pen, [...solid, ...names, ...placed.map((p) => p.label)])
  const studs = studLabels(studsOf(plan, frame.wall, span), pen.text)
  const above = -chainAbove(studs) * step
  const upper = chainLabels(chainGaps(units.filter(hangs), length), length, pen.text)
  const lower = chainLabels(
    chainGaps(
      units.filter((u) => !hangs(u)),
      length,
    ),
    length,
    pen.text,
  )
  const below = height + (CHAIN_BELOW + 16 * Math.max(0, ...lower.map((l) => l.row))) * step
  const levels = levelsOf(
    plan.lines.filter((l) => l.wall === frame.wall),
    pen,
  )
  const on = (y: number) => (l: ChainLabel) => ({ x: l.x, y: y + l.y, w: l.w, h: l.h, text: l.text })
  const whole = below + 42 * step
  const wholeText = `${valueOf(frame.length) ?? ''} corner to corner`
  const wholeWidth = textWidth(wholeText, pen.text)
  return {
    units,
    things,
    holes,
    names,
    placed,
    flags,
    above,
    below,
    whole,
    bar: below + 20 * step,
    boxes: [
      ...names.map((box) => ({ ...box, text: box.lines.join(' ') })),
      ...placed.map(({ label, text }) => ({ ...label, text })),
      ...flags.map((flag) => ({ ...flag, text: flag.letter })),
      ...studs,
      ...upper.map(on(above)),
      ...lower.map(on(below)),
      ...levelLabels(levels, pen).map((box, i) => ({ ...box, text: levels[i]?.text ?? '' })),
      { x: (length - wholeWidth) / 2, y: whole - 19 * step, w: wholeWidth, h: 14 * step, text: wholeText },
    ],
  }
}

/** A door or a window is large enough for a flag to stand on. */
const isSmall =
  ({ step }: Pen) =>
  (box: Box) =>
    box.w < 80 * step
