import type { Standing } from '../../core/plan/standing-at'
import type { Plan, WallFrame, WallMark } from '../../core/plan/types'
import { onWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { palette } from '../palette'
import { type Pen, type Sketch, stroke } from '../sketch'
import type { WallTone } from '../wall-tone'

const TICK = 45

/**
 * Marks set out along a wall: an edge ticks the two lines its unit hangs or stands between, a stud is ticked at the
 * line.
 */
export function sketchMarks(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  wall: WallFrame,
  tone: WallTone,
): void {
  const at = onWall(wall)
  const inHand = new Set(standing.units.filter((u) => u.isInHand).map((u) => u.unit.unit))
  for (const { mark, isNow } of standing.marks) {
    if (mark.wall !== wall.wall || mark.along.state === 'unknown') continue
    const isStud = mark.kind === 'stud'
    const isQuiet = tone === 'faint' && !inHand.has(mark.about)
    const chalk = isQuiet ? palette.chalkQuiet : palette.chalk
    const pen: Pen = {
      weight: isNow ? 'bold' : isQuiet ? 'hair' : 'fine',
      colour: isStud ? palette.timberEdge : chalk,
    }
    const x = mark.along.value
    for (const z of heightsOf(plan, mark)) {
      stroke(sketch, `mark:${mark.id}`, pen, at(x, LAYER.line, z - TICK), at(x, LAYER.line, z + TICK))
    }
  }
}

function heightsOf(plan: Plan, mark: WallMark): readonly number[] {
  const unit = plan.units.find((u) => u.unit === mark.about)
  if (unit === undefined) return [0]
  return [unit.underside, unit.top].flatMap((f) => (f.state === 'unknown' ? [] : [f.value]))
}
