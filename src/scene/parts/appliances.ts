import type { Standing } from '../../core/plan/standing-at'
import { extentOf, roomPoint } from '../../core/plan/travel-path'
import type { LocalBox, Operation, Plan, UnitPlan } from '../../core/plan/types'
import type { RoomShape } from '../../core/views/room-shape'
import { handBoard, palette } from '../palette'
import { type BoxShades, boxEdges, boxFaces, type Pen, type Place, ring, type Sketch, wash } from '../sketch'

const shades: BoxShades = {
  front: '#E3E1DC',
  top: '#E8E6E1',
  left: '#D5D2CB',
  right: '#DCD9D3',
  back: '#D5D2CB',
  under: '#C6C3BC',
}
const pen: Pen = { weight: 'hair', colour: palette.pencil, dashes: [50, 50] }
/** The one that is set in now. */
const inHand: Pen = { weight: 'bold', colour: palette.chalkDeep, dashes: [50, 50] }
const shadesInHand: BoxShades = {
  front: handBoard.outerLit,
  top: handBoard.top,
  left: handBoard.outer,
  right: handBoard.outerLit,
  back: handBoard.outer,
  under: handBoard.under,
}

/** Room left round what goes into a space or into a worktop, mm: only so that it is not taken for the bay itself. */
const LEFT = { beside: 6, over: 10, before: 60 } as const
/** How much of the width of its unit what is set into a worktop is drawn over, and how high it stands out, mm. */
const SET_IN = { from: 0.15, to: 0.85, high: 8 } as const

/**
 * Appliances, as far as their place is known: in a space of their own as wide as it, or in the worktop over the unit they
 * are for. Their sizes are in no plan, so they are faint and dashed; before they come the space, and the cut-out, is.
 */
export function sketchAppliances(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  room: RoomShape,
  hidden: ReadonlySet<string>,
): void {
  const now = plan.operations.findIndex((o) => o.id === standing.operation?.id)
  const isThere = (at: number) => now < 0 || at <= now
  for (const unit of plan.units) {
    if (unit.pose === null || unit.solid.length === 0 || hidden.has(unit.wall)) continue
    const place = placeOf(unit)
    const { width, depth, height } = extentOf(unit.solid)
    const isSpace = unit.kind === 'appliance-space'
    const begun = standing.units.some((u) => u.unit.wall === unit.wall && u.unit.stands === 'legs')
    if (isSpace && begun) {
      const floor = room.floorOr(unit.pose) - unit.pose.z
      const box = { x0: 0, x1: width, y0: 0, y1: depth, z0: floor, z1: height }
      boxEdges(sketch, `appliance:${unit.unit}`, pen, place, box)
    }
    const top = isSpace ? null : topOver(standing, unit)
    // Of two that share a unit one is in the worktop, and no plan says which: it is drawn once.
    const at = plan.operations.findIndex((o) => o.kind === 'connect' && o.from.includes(`units.${unit.unit}`))
    const operation = plan.operations[at]
    if (operation !== undefined) {
      const part = `appliance:${operation.on[0]}`
      if (isSpace && begun && isThere(at)) {
        const { beside, over } = LEFT
        body(sketch, part, place, at === now, {
          x0: beside,
          x1: width - beside,
          y0: beside,
          y1: depth,
          // Its foot stands back, as a plinth does that runs on before it.
          z0: 0,
          z1: height - over,
        })
      }
      if (top === null) continue
      const box: LocalBox = {
        x0: SET_IN.from * width,
        x1: SET_IN.to * width,
        y0: LEFT.before,
        y1: depth - LEFT.before,
        z0: top,
        z1: top + SET_IN.high,
      }
      if (isThere(at)) body(sketch, part, place, at === now, box)
      else if (hasCutOut(plan, standing, unit)) cutOut(sketch, part, place, box)
    }
  }
}

const placeOf =
  ({ pose, solid }: UnitPlan): Place =>
  (x, y, z) => {
    const p = roomPoint({ pose: pose ?? { x: 0, y: 0, z: 0, yaw: 0 }, tilt: null }, extentOf(solid), {
      x,
      y,
      z,
    })
    return [p.x, p.y, p.z]
  }

function body(sketch: Sketch, part: string, place: Place, isNow: boolean, box: LocalBox): void {
  boxFaces(sketch, part, isNow ? shadesInHand : shades, place, box)
  boxEdges(sketch, part, isNow ? inHand : pen, place, box)
}

function cutOut(sketch: Sketch, part: string, place: Place, { x0, x1, y0, y1, z0 }: LocalBox): void {
  const round = [place(x0, y0, z0 + 2), place(x1, y0, z0 + 2), place(x1, y1, z0 + 2), place(x0, y1, z0 + 2)]
  wash(sketch, part, palette.ink, 0.3, round)
  ring(sketch, part, { ...pen, weight: 'fine' }, round)
}

const worktopOver = (standing: Standing, unit: UnitPlan) =>
  standing.parts.find(({ part }) => part.kind === 'worktop' && part.of.includes(unit.unit))?.part

/** The top of the worktop over a base unit, in the unit's own frame; null where there is none yet. */
function topOver(standing: Standing, unit: UnitPlan): number | null {
  const over = unit.kind === 'base' || unit.kind === 'corner-base' ? worktopOver(standing, unit) : undefined
  if (over === undefined || over.pose === null || unit.pose === null) return null
  return over.pose.z + extentOf(over.solid).height - unit.pose.z
}

/** Whether the worktop over a unit is cut out for as many as are set into it. */
function hasCutOut(plan: Plan, standing: Standing, unit: UnitPlan): boolean {
  const over = worktopOver(standing, unit)
  if (over === undefined) return false
  const isSetIn = (o: Operation) =>
    o.kind === 'connect' && over.of.some((u) => o.from.includes(`units.${u}`) && !isSpaceOf(plan, u))
  const laid = plan.operations.find((o) => o.kind === 'worktop' && o.on.includes(over.part))
  const cuts = new Set(laid?.from.filter((f) => /^worktops\.[^.]+\.cutouts\.[^.]+$/.test(f)))
  return cuts.size > 0 && cuts.size >= plan.operations.filter(isSetIn).length
}

const isSpaceOf = (plan: Plan, id: string) =>
  plan.units.find((u) => u.unit === id)?.kind === 'appliance-space'
