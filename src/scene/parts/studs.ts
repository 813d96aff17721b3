import type { Standing } from '../../core/plan/standing-at'
import type { WallFrame } from '../../core/plan/types'
import { rectangleOf } from '../../core/views/rectangle'
import type { RoomShape } from '../../core/views/room-shape'
import { onWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { palette, roomShade } from '../palette'
import { face, type Pen, type Sketch, stroke } from '../sketch'
import type { WallTone } from '../wall-tone'

const dashedEdge: Pen = { weight: 'hair', colour: palette.timberEdge, dashes: [55, 45] }
const faintEdge: Pen = { ...dashedEdge, colour: roomShade.studFaintEdge }

/** Timber in the wall: studs upright, noggings and boards across, with dashed edges because they are behind the face. */
export function sketchStuds(
  sketch: Sketch,
  standing: Standing,
  room: RoomShape,
  wall: WallFrame,
  tone: WallTone,
): void {
  const quietFill = tone === 'faint' ? roomShade.studFaint : roomShade.studFill
  for (const { thing, isNow } of standing.wallThings) {
    if (thing.wall !== wall.wall) continue
    if (thing.kind !== 'stud' && thing.kind !== 'nogging' && thing.kind !== 'pattress') continue
    const r = rectangleOf(thing, room, wall)
    if (r === null) continue
    const part = `${thing.kind}:${thing.id}`
    const at = onWall(wall)
    // A nogging butts between studs, so it lies a hair nearer and its ends close it off.
    const out = LAYER.stud + (thing.kind === 'stud' ? 0 : 0.3)
    const corners = [
      at(r.left, out, r.bottom),
      at(r.right, out, r.bottom),
      at(r.right, out, r.top),
      at(r.left, out, r.top),
    ] as const
    face(sketch, part, isNow ? palette.timber : quietFill, corners)
    const pen: Pen = isNow
      ? { weight: 'bold', colour: palette.chalk }
      : tone === 'faint'
        ? faintEdge
        : dashedEdge
    const [a, b, c, d] = corners
    stroke(sketch, part, pen, a, d)
    stroke(sketch, part, pen, b, c)
    if (thing.kind === 'stud') continue
    stroke(sketch, part, pen, a, b)
    stroke(sketch, part, pen, d, c)
  }
}
