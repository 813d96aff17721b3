import { type Basis, hasValue, type InputId, mergedIds } from '../../figure'
import { factId } from '../../kitchen/fact-id'
import type { Opening } from '../../kitchen/schema'
import { message } from '../../message'
import { passes } from '../../placing/worktop-runs'
import type { Demand } from '../../plan/types'
import { lowestOf } from '../../survey/extremes'
import { citing } from '../../survey/sum'
import type { HeightsContext } from '../context'
import { type DemandRule, demand, exactly } from './demand'

const under: Basis = {
  kind: 'geometry',
  why: 'a worktop goes in under a window board that stands out over it, at both ends of the board',
}
/** A board lower than this over the floor has no worktop under it. Common practice, mm. */
const LOWEST_WORKTOP = 800

/**
 * A worktop in front of a window goes in under its board: no higher than the lower of the two ends of the board. Only
 * where the board stands out from the wall and its underside was read; a low board, which no worktop goes under, and one
 * that was not read are left to the rules of the trade.
 */
export const windowBoard: DemandRule = (context) =>
  context.kitchen.walls.flatMap((wall) =>
    wall.openings
      .filter(({ kind }) => kind === 'window')
      .flatMap((window) => {
        const over = overWorktop(context, wall.id, window)
        return over === undefined ? [] : boardOf(context, wall.id, window, over)
      }),
  )

/** The facts that put a worktop in front of an opening, on a unit that stands there; undefined where none lies there. */
function overWorktop({ kitchen, survey, positions }: HeightsContext, wall: string, at: Opening) {
  const [from, to] = [survey.along(wall, at.left), survey.along(wall, at.right)]
  const covered = new Set(kitchen.worktops.flatMap(({ over }) => over))
  const own = positions.filter(({ unit }) => unit.wall === wall && covered.has(unit.id))
  const before = own.find(({ left, right }) => passes({ left, right }, from, to))
  return before && mergedIds([from, to, before.left, before.right].map((end) => end.from))
}

function boardOf(
  { survey }: HeightsContext,
  wall: string,
  window: Opening,
  over: readonly InputId[],
): readonly Demand[] {
  const { boardProjection, boardLeft, boardRight } = window
  if (!hasValue(boardProjection) || boardProjection.value <= 0) return []
  const out = exactly(0, under)
  const ends = [
    { board: boardLeft, along: survey.along(wall, window.left) },
    { board: boardRight, along: survey.along(wall, window.right) },
  ].map(({ board, along }) => ({
    underside: survey.height(board, { wall, along, out }),
    floor: survey.floorAt(wall, along, out),
  }))
  const isHigh = ends.every(
    ({ underside, floor }) =>
      hasValue(underside) && (!hasValue(floor) || underside.value - floor.value >= LOWEST_WORKTOP),
  )
  if (!isHigh) return []
  const undersides = ends.map(({ underside }) => underside)
  const lowest = lowestOf('mm', under, undersides)
  const fact = factId('walls', wall, 'openings', window.id, 'boardProjection')
  return [
    demand('window-board', {
      subject: `${wall}.${window.id}`,
      of: 'worktop-top',
      max: citing(lowest, mergedIds([over, [fact]])),
      because: message('heights.window-board', { underside: lowest }),
      basis: under,
      about: [window.id, wall],
    }),
  ]
}
