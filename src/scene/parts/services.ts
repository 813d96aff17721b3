import type { Standing } from '../../core/plan/standing-at'
import type { WallFrame } from '../../core/plan/types'
import { rectangleOf } from '../../core/views/rectangle'
import type { RoomShape } from '../../core/views/room-shape'
import { onWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { palette, serviceColour } from '../palette'
import { type Sketch, stroke, wash } from '../sketch'

/** Pipes and cables known in the wall: a strip in the colour of what they carry, dashed because it is behind the face. */
export function sketchServices(sketch: Sketch, standing: Standing, room: RoomShape, wall: WallFrame): void {
  for (const { thing } of standing.wallThings) {
    if (thing.wall !== wall.wall || thing.kind !== 'service') continue
    const r = rectangleOf(thing, room, wall)
    if (r === null) continue
    const part = `service:${thing.id}`
    const at = onWall(wall)
    const colour = serviceColour[thing.carries ?? 'not-known'] ?? palette.pencil
    const corners = [
      at(r.left, LAYER.service, r.bottom),
      at(r.right, LAYER.service, r.bottom),
      at(r.right, LAYER.service, r.top),
      at(r.left, LAYER.service, r.top),
    ] as const
    wash(sketch, part, colour, 0.45, corners)
    const isUpright = r.top - r.bottom > r.right - r.left
    const pen = { weight: 'fine', colour, dashes: [40, 30] } as const
    const [a, b, c, d] = corners
    stroke(sketch, part, pen, a, isUpright ? d : b)
    stroke(sketch, part, pen, isUpright ? b : d, c)
  }
}
