import type { Standing } from '../../core/plan/standing-at'
import type { Hole, Plan } from '../../core/plan/types'
import { holePlace } from '../../core/views/hole-place'
import { placedWall } from '../../core/views/wall-place'
import { palette } from '../palette'
import { dot, type Point, type Sketch, stroke } from '../sketch'

const CROSS = { alone: 16, twin: 9 }
/** Holes nearer each other than this, mm, as in one wall plate, get smaller marks so that none covers the other. */
const TWIN = 60
const BAR = 22

/**
 * Fixing points: drilled ones brass, those of this operation ringed in chalk, marked ones a pencil cross; a refused
 * place is ringed red with a bar across it, so that it doesn't rest on colour alone.
 */
export function sketchHoles(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  hidden: ReadonlySet<string>,
): void {
  for (const { hole, state, isNow } of standing.holes) {
    const wall = placedWall(plan, hole.wall)
    const place = holePlace(plan, standing, hole)
    if (wall === undefined || place === null || hidden.has(hole.wall)) continue
    if (place.behind !== null || (place.inside !== null && !isNow)) continue
    const part = `hole:${hole.id}`
    const { x, y, z } = place.at
    const at: Point = [x, y, z]
    const along = (da: number, dz: number): Point => [
      x + wall.alongDir.x * da,
      y + wall.alongDir.y * da,
      z + dz,
    ]
    const isTwin = standing.holes.some((other) => other.hole !== hole && isNear(other.hole, hole))
    if (hole.verdict === 'refused') {
      // A refused place speaks while somebody marks or drills on its wall, and is quiet after.
      if (!isNow && !standing.bands.boldOn.includes(hole.wall)) continue
      dot(sketch, part, 'ring', palette.refused, at)
      dot(sketch, part, 'dot', palette.paper, at)
      stroke(sketch, part, { weight: 'bar', colour: palette.refused }, along(-BAR, -BAR), along(BAR, BAR))
    } else if (state === 'drilled') {
      if (!isTwin) dot(sketch, part, 'ring', isNow ? palette.chalk : palette.paper, at)
      dot(sketch, part, 'dot', palette.brass, at)
    } else {
      // The cross being made lies over the lines it is made on.
      const pen = { weight: isNow ? 'bar' : 'fine', colour: isNow ? palette.chalk : palette.pencil } as const
      const arm = isTwin ? CROSS.twin : CROSS.alone
      stroke(sketch, part, pen, along(-arm, 0), along(arm, 0))
      stroke(sketch, part, pen, along(0, -arm), along(0, arm))
    }
  }
}

function isNear(a: Hole, b: Hole): boolean {
  if (a.wall !== b.wall || a.along.state === 'unknown' || b.along.state === 'unknown') return false
  if (a.height.state === 'unknown' || b.height.state === 'unknown') return false
  return Math.hypot(a.along.value - b.along.value, a.height.value - b.height.value) < TWIN
}
