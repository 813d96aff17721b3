import type { PlaceOutline, Standing } from '../../core/plan/standing-at'
import type { Plan } from '../../core/plan/types'
import { palette, roomShade } from '../palette'
import type { RoomShape } from '../room-shape'
import { type Pen, type Point, ring, type Sketch, wash } from '../sketch'
import { LAYER, onWall, placedWall } from '../wall-place'

/** The place a unit goes to: a chalk outline with a thin wash on the wall, and on the floor for one that stands. */
export function sketchPlaces(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  room: RoomShape,
  hidden: ReadonlySet<string>,
): void {
  for (const place of standing.places) {
    const pens = { hung: bold, floor: bold, other: fine }
    sketchPlace(sketch, `place:${place.unit.unit}`, plan, place, room, hidden, pens, 0.17)
  }
}

/** Where all that is to come will be, while nothing stands there yet: thin outlines, none of them bright. */
export function sketchPlanned(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  room: RoomShape,
  hidden: ReadonlySet<string>,
): void {
  for (const place of standing.planned) {
    const pens = { hung: quiet, floor: quiet, other: quiet }
    sketchPlace(sketch, `planned:${place.unit.unit}`, plan, place, room, hidden, pens, 0.1)
  }
}

const bold: Pen = { weight: 'bold', colour: palette.chalk }
const fine: Pen = { weight: 'fine', colour: palette.chalk }
const quiet: Pen = { weight: 'fine', colour: palette.chalkQuiet }

function sketchPlace(
  sketch: Sketch,
  part: string,
  plan: Plan,
  { wall, footprints, isHung }: PlaceOutline,
  room: RoomShape,
  hidden: ReadonlySet<string>,
  pens: { readonly hung: Pen; readonly floor: Pen; readonly other: Pen },
  opacity: number,
): void {
  const frame = placedWall(plan, wall?.wall ?? null)
  if (wall !== null && frame !== undefined && !hidden.has(frame.wall)) {
    const at = onWall(frame)
    const round = (out: number): readonly Point[] => [
      at(wall.left, out, wall.bottom),
      at(wall.right, out, wall.bottom),
      at(wall.right, out, wall.top),
      at(wall.left, out, wall.top),
    ]
    wash(sketch, part, roomShade.placeWash, opacity, round(LAYER.wash))
    ring(sketch, part, isHung ? pens.hung : pens.other, round(LAYER.line))
  }
  if (isHung) return
  for (const footprint of footprints) {
    const round = footprint.map((p): Point => [p.x, p.y, room.floorOr(p) + LAYER.line])
    wash(sketch, part, roomShade.placeWash, opacity, round)
    ring(sketch, part, pens.floor, round)
  }
}
