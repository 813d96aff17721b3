import { type Basis, type Figure, hasValue } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import type { WallId } from '../plan/types'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'

/** A place on a wall. */
export interface OnWall {
  readonly wall: WallId
  readonly along: Figure
}

const alongTheWalls: Basis = { kind: 'geometry', why: 'along the walls, round their corners' }

/**
 * How far it is from one place to another along the walls: by the shorter way where the walls close, else by the only
 * one. Null where they do not hang together; unknown while a length on the way is.
 */
export function wayAlongWalls(
  { closed }: Pick<Kitchen, 'closed'>,
  { frames }: Pick<Survey, 'frames'>,
  from: OnWall,
  to: OnWall,
): Figure | null {
  const at = (id: WallId) => frames.findIndex(({ wall }) => wall === id)
  const [i, j] = [at(from.wall), at(to.wall)]
  if (i < 0 || j < 0) return null
  if (i === j) {
    const isRight = hasValue(from.along) && hasValue(to.along) && to.along.value >= from.along.value
    return isRight
      ? sum('mm', alongTheWalls, [to.along], [from.along])
      : sum('mm', alongTheWalls, [from.along], [to.along])
  }
  const lengths = frames.map(({ length }) => length)
  // To the right: what is left of the first wall, the walls between, and the way in on the last one.
  const right = (a: number, b: number, start: Figure, end: Figure) => {
    const between = lengths.slice(a, b < a ? undefined : b)
    const round = b < a ? lengths.slice(0, b) : []
    return sum('mm', alongTheWalls, [...between, ...round, end], [start])
  }
  const forth = i < j || closed === true ? right(i, j, from.along, to.along) : null
  const back = j < i || closed === true ? right(j, i, to.along, from.along) : null
  if (forth === null || back === null) return forth ?? back
  if (!hasValue(forth) || !hasValue(back)) return hasValue(forth) ? forth : back
  return forth.value <= back.value ? forth : back
}
