import type { Standing } from '../core/plan/standing-at'
import type { WallFrame } from '../core/plan/types'

/** How much a wall says for itself: all it may hide, what is needed to set out on it, or hardly anything. */
export type WallTone = 'loud' | 'plain' | 'faint'

/**
 * One thing is bright: where a wall is traced, marked or drilled, what may lie in it is; where somebody strikes lines,
 * makes marks or lets timber in, it can be read; while a unit is placed, levelled or joined it keeps quiet.
 */
export function wallTone(standing: Standing, wall: WallFrame): WallTone {
  if (standing.bands.boldOn.includes(wall.wall)) return 'loud'
  const isSetOut =
    standing.lines.some(({ line, isNow }) => isNow && line.wall === wall.wall) ||
    standing.marks.some(({ mark, isNow }) => isNow && mark.wall === wall.wall) ||
    standing.wallThings.some(({ thing, isNow }) => isNow && thing.wall === wall.wall)
  return isSetOut ? 'plain' : 'faint'
}

/** Nearer than this, mm, a line is the line of an edge. */
const SAME = 2

/** Heights at which what is in hand begins and ends, where it stands or is going to. */
function heightsInHand(standing: Standing): readonly number[] {
  const units = [
    ...standing.units.filter((u) => u.isInHand).map((u) => u.unit),
    ...standing.places.map((p) => p.unit),
  ].flatMap(({ underside, top }) => [underside, top])
  const parts = standing.parts.flatMap(({ part, isNow }) => {
    const { pose } = part
    return isNow && pose !== null ? part.solid.flatMap((b) => [pose.z + b.z0, pose.z + b.z1]) : []
  })
  return [...units.flatMap((f) => (f.state === 'unknown' ? [] : [f.value])), ...parts]
}

/** Whether a line that has been struck still matters: the part in hand goes by it, or somebody works on its wall. */
export function isLineInUse(
  standing: Standing,
  { line, isNow }: Standing['lines'][number],
  tone: WallTone,
): boolean {
  const { height } = line
  if (isNow || line.of === 'line' || tone === 'plain') return true
  if (height.state === 'unknown') return false
  const heights = heightsInHand(standing)
  // Holes in a wall are measured from the lines; holes through a unit that hangs already, in the unit.
  if (heights.length === 0) return tone === 'loud'
  return heights.some((z) => Math.abs(z - height.value) < SAME)
}
