import type { Standing } from '../../core/plan/standing-at'
import type { Plan, WallFrame, WallMark } from '../../core/plan/types'
import { palette } from '../palette'
import { type Pen, type Sketch, stroke } from '../sketch'
import { LAYER, onWall } from '../wall-place'

const TICK = 45

/**
 * Marks set out along a wall: an edge ticks the two lines its unit hangs or stands between, a stud is ticked at the
 * line.
 */
export function sketchMarks(sketch: Sketch, plan: Plan, standing: Standing, wall: WallFrame): void {
  const at = onWall(wall)
  for (const { mark, isNow } of standing.marks) {
    if (mark.wall !== wall.wall || mark.along.state === 'unknown') continue
    const isStud = mark.kind === 'stud'
    const pen: Pen = { weight: isNow ? 'bold' : 'fine', colour: isStud ? palette.timberEdge : palette.chalk }
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
