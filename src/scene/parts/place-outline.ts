import type { PlaceOutline, Standing } from '../../core/plan/standing-at'
import type { Plan } from '../../core/plan/types'
import type { RoomShape } from '../../core/views/room-shape'
import { onWall, placedWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { palette, roomShade } from '../palette'
import { type Pen, type Point, ring, type Sketch, wash } from '../sketch'

/**
 * The places units go to: of those in hand a chalk outline with a thin wash on the wall, and on the floor for one that
 * stands; where all that is to come will be, while nothing stands there yet, thin outlines, none of them bright.
 */
export function sketchPlaces(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  room: RoomShape,
  hidden: ReadonlySet<string>,
): void {
  for (const place of standing.planned) sketchPlace(sketch, 'planned', plan, place, room, hidden)
  for (const place of standing.places) sketchPlace(sketch, 'place', plan, place, room, hidden)
}

const bold: Pen = { weight: 'bold', colour: palette.chalk }
const fine: Pen = { weight: 'fine', colour: palette.chalk }
const quiet: Pen = { weight: 'fine', colour: palette.chalkQuiet }
const LOOKS = {
  place: { hung: bold, floor: bold, other: fine, opacity: 0.17 },
  planned: { hung: quiet, floor: quiet, other: quiet, opacity: 0.1 },
} as const

function sketchPlace(
  sketch: Sketch,
  kind: keyof typeof LOOKS,
  plan: Plan,
  { unit, wall, footprints, isHung }: PlaceOutline,
  room: RoomShape,
  hidden: ReadonlySet<string>,
): void {
  const part = `${kind}:${unit.unit}`
  const { opacity, ...pens } = LOOKS[kind]
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
