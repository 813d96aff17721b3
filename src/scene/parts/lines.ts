import type { Standing } from '../../core/plan/standing-at'
import type { WallFrame } from '../../core/plan/types'
import { endsOf } from '../../core/views/line-ends'
import { onWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { palette } from '../palette'
import { type Pen, type Sketch, stroke } from '../sketch'
import { isLineInUse, type WallTone } from '../wall-tone'

const theLine: Pen = { weight: 'fine', colour: palette.ink, dashes: [130, 45, 22, 45] }

/** Lines struck so far: the line itself dash-dot in ink, the others in chalk, bold as they are struck, thin once used. */
export function sketchLines(sketch: Sketch, standing: Standing, wall: WallFrame, tone: WallTone): void {
  for (const struck of standing.lines) {
    const { line, isNow } = struck
    if (line.wall !== wall.wall || line.height.state === 'unknown') continue
    const [from, to] = endsOf(line, wall)
    const at = onWall(wall)
    const chalk: Pen = isLineInUse(standing, struck, tone)
      ? { weight: isNow ? 'bold' : 'fine', colour: palette.chalk }
      : { weight: 'hair', colour: palette.chalkQuiet }
    const pen: Pen = line.of === 'line' ? { ...theLine, weight: isNow ? 'bold' : 'fine' } : chalk
    const z = line.height.value
    stroke(sketch, `line:${line.id}`, pen, at(from, LAYER.line, z), at(to, LAYER.line, z))
  }
}
