import type { Standing } from '../../core/plan/standing-at'
import type { WallFrame } from '../../core/plan/types'
import { rectangleOf } from '../../core/views/rectangle'
import type { RoomShape } from '../../core/views/room-shape'
import { onWall } from '../../core/views/wall-place'
import { palette } from '../palette'
import { boxEdges, boxFaces, type Sketch } from '../sketch'

/** Sockets, switches and outlets: the plate on the wall. */
export function sketchAccessories(
  sketch: Sketch,
  standing: Standing,
  room: RoomShape,
  wall: WallFrame,
): void {
  const shades = {
    front: palette.paper,
    top: palette.paper,
    left: palette.plaster,
    right: palette.plaster,
    back: palette.plaster,
    under: palette.plasterShade,
  }
  for (const { thing } of standing.wallThings) {
    if (thing.wall !== wall.wall || thing.kind !== 'accessory') continue
    const r = rectangleOf(thing, room, wall)
    if (r === null) continue
    const box = { x0: r.left, x1: r.right, y0: 0, y1: 12, z0: r.bottom, z1: r.top }
    boxFaces(sketch, `accessory:${thing.id}`, shades, onWall(wall), box)
    boxEdges(sketch, `accessory:${thing.id}`, { weight: 'fine', colour: palette.pencil }, onWall(wall), box)
  }
}
