import type { Standing } from '../../core/plan/standing-at'
import type { Plan } from '../../core/plan/types'
import { palette, roomShade } from '../palette'
import type { RoomShape } from '../room-shape'
import { type Point, ring, type Sketch, wash } from '../sketch'
import { LAYER, onWall, placedWall } from '../wall-place'

/** The place a unit goes to: a chalk outline with a thin wash on the wall, and on the floor for one that stands. */
export function sketchPlaces(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  room: RoomShape,
  hidden: ReadonlySet<string>,
): void {
  for (const { unit, wall, footprints, isHung } of standing.places) {
    const part = `place:${unit.unit}`
    const frame = placedWall(plan, wall?.wall ?? null)
    if (wall !== null && frame !== undefined && !hidden.has(frame.wall)) {
      const at = onWall(frame)
      const round = (out: number): readonly Point[] => [
        at(wall.left, out, wall.bottom),
        at(wall.right, out, wall.bottom),
        at(wall.right, out, wall.top),
        at(wall.left, out, wall.top),
      ]
      wash(sketch, part, roomShade.placeWash, 0.17, round(LAYER.wash))
      ring(sketch, part, { weight: isHung ? 'bold' : 'fine', colour: palette.chalk }, round(LAYER.line))
    }
    if (isHung) continue
    for (const footprint of footprints) {
      const round = footprint.map((p): Point => [p.x, p.y, room.floorOr(p) + LAYER.line])
      wash(sketch, part, roomShade.placeWash, 0.17, round)
      ring(sketch, part, { weight: 'bold', colour: palette.chalk }, round)
    }
  }
}
