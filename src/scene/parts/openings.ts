import type { Plan, WallFrame, WallThing } from '../../core/plan/types'
import { rectangleOf } from '../../core/views/rectangle'
import type { RoomShape } from '../../core/views/room-shape'
import { onWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { palette, roomShade } from '../palette'
import { face, type Pen, ring, type Sketch } from '../sketch'

const KINDS: readonly WallThing['kind'][] = ['door', 'window', 'arch', 'hatch']
const pen: Pen = { weight: 'fine', colour: palette.pencil }
const FRAME = 45

/** Doors and windows: a lighter sheet in the wall with a frame round it. */
export function sketchOpenings(sketch: Sketch, plan: Plan, room: RoomShape, wall: WallFrame): void {
  for (const thing of plan.wallThings ?? []) {
    if (thing.wall !== wall.wall || !KINDS.includes(thing.kind)) continue
    const r = rectangleOf(thing, room, wall)
    if (r === null) continue
    const part = `opening:${thing.id}`
    const at = onWall(wall)
    const round = (by: number, out: number) =>
      [
        at(r.left + by, out, r.bottom + (thing.kind === 'door' ? 0 : by)),
        at(r.right - by, out, r.bottom + (thing.kind === 'door' ? 0 : by)),
        at(r.right - by, out, r.top - by),
        at(r.left + by, out, r.top - by),
      ] as const
    face(sketch, part, roomShade.opening, round(0, LAYER.opening))
    ring(sketch, part, pen, round(0, LAYER.opening + 2))
    ring(sketch, part, { ...pen, weight: 'hair' }, round(FRAME, LAYER.opening + 2))
  }
}
