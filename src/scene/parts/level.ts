import { VIAL_DRAWN } from '../../core/levelling/level-on'
import { lieOf } from '../../core/levelling/lie'
import { heightsNow, type Trial } from '../../core/levelling/trial-heights'
import { type Axis, bubbleAt, VIALS } from '../../core/levelling/vial'
import type { UnitPlan } from '../../core/plan/types'
import { levelBox } from '../../core/views/level-box'
import { palette } from '../palette'
import { type Box, boxEdges, boxFaces, type Pen, type Place, polyline, type Sketch } from '../sketch'

const wood = {
  front: palette.timber,
  back: palette.timber,
  top: '#E5CBA3',
  under: '#B8945F',
  left: '#CFAC7A',
  right: '#CFAC7A',
}
const glass = {
  front: '#7FB394',
  back: '#7FB394',
  top: '#93C2A6',
  under: '#7FB394',
  left: '#6FA385',
  right: '#6FA385',
}
const air = {
  front: '#F2F8F3',
  back: '#F2F8F3',
  top: '#FFFFFF',
  under: '#DCE9DF',
  left: '#E4F0E7',
  right: '#E4F0E7',
}

/** Of a vial, mm, before it is drawn larger than it is: half its tube, half its bubble, and its two lines. */
const VIAL = { half: 12, bubble: 4.5, line: 5 }
/** How high the window of a vial is, and how far it stands out of the level so that it shows from every side. */
const WINDOW = { high: 36, proud: 1.5 }
/** How much of its window the bubble leaves above and below. */
const ROUND_BUBBLE = 7

/** A wooden spirit level with a green vial on the unit being levelled; its bubble stands where the trial puts it. */
export function sketchLevel(sketch: Sketch, unit: UnitPlan, place: Place, tried: Trial | null = null): void {
  const axis = tried?.axis ?? 'along'
  const body = levelBox(unit, axis)
  if (body === null) return
  const part = `level:${unit.unit}`
  boxFaces(sketch, part, wood, place, body)
  boxEdges(sketch, part, { weight: 'fine', colour: palette.timberEdge }, place, body)

  const isUpright = body.z1 - body.z0 > Math.max(body.x1 - body.x0, body.y1 - body.y0)
  const times = isUpright ? VIAL_DRAWN.upright : VIAL_DRAWN.lying
  const z0 = isUpright ? (body.z0 + body.z1 - WINDOW.high) / 2 : body.z1 - WINDOW.high
  const z1 = z0 + WINDOW.high + (isUpright ? 0 : WINDOW.proud)
  const window = (from: number, to: number, proud: number, shrink = 0): Box =>
    across(body, axis, { from: from * times, to: to * times, proud, z0: z0 + shrink, z1: z1 - shrink })

  const tube = window(-VIAL.half, VIAL.half, WINDOW.proud)
  boxFaces(sketch, part, glass, place, tube)
  boxEdges(sketch, part, { weight: 'hair', colour: palette.levelGreen }, place, tube)
  const offset = bubbleOffset(unit, tried)
  const bubble = window(offset - VIAL.bubble, offset + VIAL.bubble, 2 * WINDOW.proud, ROUND_BUBBLE)
  const seenFromAbove = { ...bubble, z1: z1 + (isUpright ? -ROUND_BUBBLE : WINDOW.proud) }
  boxFaces(sketch, part, air, place, seenFromAbove)
  for (const at of [-VIAL.line, VIAL.line]) {
    const line = window(at, at, 2.5 * WINDOW.proud)
    lineOver(sketch, part, place, { ...line, z1: line.z1 + WINDOW.proud }, axis)
  }
}

/** Where the bubble stands in its vial, mm; in the middle while nothing is tried. */
function bubbleOffset(unit: UnitPlan, tried: Trial | null): number {
  const lie = tried === null ? null : lieOf(unit, heightsNow(tried, unit))
  return tried === null || lie === null ? 0 : bubbleAt(lie[tried.axis], tried.axis, VIALS[tried.vial]).offset
}

interface Along {
  /** From the middle of the level, the way its vial runs. */
  readonly from: number
  readonly to: number
  readonly proud: number
  readonly z0: number
  readonly z1: number
}

/** A piece of a vial that runs along the unit, or out from its back. */
function across(body: Box, axis: Axis, { from, to, proud, z0, z1 }: Along): Box {
  const [x, y] = [(body.x0 + body.x1) / 2, (body.y0 + body.y1) / 2]
  return axis === 'along'
    ? { x0: x + from, x1: x + to, y0: body.y0 - proud, y1: body.y1 + proud, z0, z1 }
    : { x0: body.x0 - proud, x1: body.x1 + proud, y0: y + from, y1: y + to, z0, z1 }
}

const ink: Pen = { weight: 'hair', colour: palette.ink }

/** A line of the vial: up one face of it, over the top, down the other. */
function lineOver(sketch: Sketch, part: string, place: Place, b: Box, axis: Axis): void {
  const near = (z: number) => place(b.x0, b.y0, z)
  const far = (z: number) => (axis === 'along' ? place(b.x0, b.y1, z) : place(b.x1, b.y0, z))
  polyline(sketch, part, ink, [near(b.z0), near(b.z1), far(b.z1), far(b.z0)])
}
