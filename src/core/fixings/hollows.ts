import { type Basis, derive, type Figure, hasValue, known, type ValueFigure } from '../figure'
import type { Wall } from '../kitchen/schema'
import type { Survey } from '../survey/survey'

const ON_FACE = known(0, 0, 'mm', [])
const between: Basis = {
  kind: 'geometry',
  why: 'between the straightedge readings on either side, in a straight line; a belly is no hollow',
}
/** A straightedge laid further up or down than this says little of a place, mm. Common practice. */
const SAME_HEIGHT = 400
/** Readings no further apart along the wall than this are at one place, mm. */
const SAME_PLACE = 1

interface Bow {
  readonly along: ValueFigure
  readonly height: ValueFigure
  readonly bow: ValueFigure
}

/** Straightedge readings on a wall, all of each known. */
export function bowsOn(wall: Wall, survey: Pick<Survey, 'along' | 'height'>): readonly Bow[] {
  return wall.straightness.flatMap(({ along: at, height: typed, bow }): readonly Bow[] => {
    const along = survey.along(wall.id, at)
    const height = survey.height(typed, { wall: wall.id, along, out: ON_FACE })
    return hasValue(along) && hasValue(height) && hasValue(bow) ? [{ along, height, bow }] : []
  })
}

/** How far a wall is hollow at a place, from the readings on either side of it; null without both. */
export function hollowAt(bows: readonly Bow[], along: Figure, height: Figure): Figure | null {
  if (!hasValue(along) || !hasValue(height)) return null
  const off = (bow: Bow) => Math.abs(bow.height.value - height.value)
  const near = bows.filter((bow) => off(bow) <= SAME_HEIGHT)
  const from = (bow: Bow) => bow.along.value - along.value
  const nearest = (side: readonly Bow[]) => {
    const least = Math.min(...side.map((bow) => Math.abs(from(bow))))
    const there = side.filter((bow) => Math.abs(from(bow)) <= least + SAME_PLACE)
    return there.sort((a, b) => off(a) - off(b))[0]
  }
  const left = nearest(near.filter((bow) => from(bow) <= SAME_PLACE))
  const right = nearest(near.filter((bow) => from(bow) >= -SAME_PLACE))
  if (left === undefined || right === undefined) return null
  const span = right.along.value - left.along.value
  const share = span <= 0 ? 0 : (along.value - left.along.value) / span
  return derive('mm', between, [left.bow, right.bow], (a, b) =>
    Math.max(0, (a as number) + ((b as number) - (a as number)) * Math.min(1, Math.max(0, share))),
  )
}
