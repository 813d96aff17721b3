import { type Basis, derive, type Figure, hasValue } from '../figure'
import type { Wall } from '../kitchen/schema'
import type { Survey } from '../survey/survey'

const overItsHeight: Basis = {
  kind: 'geometry',
  why: 'the lean that was read, over the height that matters here',
}

/**
 * How far a wall leans over a height at a place along it, by the plumb reading nearest to there: out into the room at
 * the top: +. Null where nobody has held a plumb line to that wall.
 */
export function leanOver(
  survey: Pick<Survey, 'along'>,
  wall: Wall,
  along: Figure,
  height: Figure,
): Figure | null {
  const readings = wall.plumb.map((reading) => ({ ...reading, at: survey.along(wall.id, reading.along) }))
  const far = ({ at }: (typeof readings)[number]) =>
    hasValue(at) && hasValue(along) ? Math.abs(at.value - along.value) : Number.POSITIVE_INFINITY
  const nearest = readings
    .filter(({ lean, over }) => hasValue(lean) && hasValue(over))
    .sort((a, b) => far(a) - far(b))[0]
  if (nearest === undefined) return null
  return derive('mm', overItsHeight, [nearest.lean, nearest.over, height], (lean, over, h) =>
    over === 0 ? 0 : ((lean as number) * (h as number)) / (over as number),
  )
}
