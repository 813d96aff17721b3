import { type Basis, derive, type Figure, hasValue } from '../figure'
import type { Kitchen, Worktop } from '../kitchen/schema'
import type { UnitPlan, WallId } from '../plan/types'
import { highestOf, lowestOf } from '../survey/extremes'
import type { Survey } from '../survey/survey'

/** A straight stretch of worktop along one wall: from the leftmost to the rightmost of the units it lies on there. */
export interface WorktopRun {
  readonly worktop: Worktop
  readonly wall: WallId
  readonly left: Figure
  readonly right: Figure
}

const overItsUnits: Basis = { kind: 'geometry', why: 'a worktop reaches as far as the units it lies on' }

/** Where worktops lie along the walls, without what they reach past their units. */
export function worktopRuns(
  { worktops }: Pick<Kitchen, 'worktops'>,
  units: readonly UnitPlan[],
): readonly WorktopRun[] {
  return worktops.flatMap((worktop) => {
    const under = units.filter(({ unit }) => worktop.over.includes(unit))
    return [...new Set(under.map(({ wall }) => wall))].map((wall) => {
      const here = under.filter((unit) => unit.wall === wall)
      const ends = (side: 'left' | 'right') => here.map((unit) => unit[side])
      return {
        worktop,
        wall,
        left: lowestOf('mm', overItsUnits, ends('left')),
        right: highestOf('mm', overItsUnits, ends('right')),
      }
    })
  })
}

/** Whether a run of worktop passes in front of a stretch of its wall; not while one of the ends is not known. */
export function passes(run: Pick<WorktopRun, 'left' | 'right'>, left: Figure, right: Figure): boolean {
  const { left: from, right: to } = run
  if (!hasValue(left) || !hasValue(right) || !hasValue(from) || !hasValue(to)) return false
  return right.value > from.value && left.value < to.value
}

/** A joint nearer the end of a run than this is the joint to the next run: it makes no further piece. */
const AT_THE_END = 100

/** The length of the longest piece a stretch of worktop is carried in: between its ends and the joints along it. */
export function longestPiece(
  { joints }: Pick<Worktop, 'joints'>,
  { wall, left, right }: Pick<WorktopRun, 'left' | 'right'> & { readonly wall: WallId | null },
  survey: Pick<Survey, 'along'>,
): Figure {
  const at = joints
    .filter((joint) => joint.wall === wall)
    .map((joint) => survey.along(joint.wall, joint.along))
  return derive('mm', overItsUnits, [left, right, ...at], (from = 0, to = 0, ...cuts) =>
    longestBetween(from, to, cuts),
  )
}

function longestBetween(from: number, to: number, joints: readonly number[]): number {
  const inside = joints.filter((at) => at > from + AT_THE_END && at < to - AT_THE_END).sort((a, b) => a - b)
  const cuts = [from, ...inside, to]
  return Math.max(...cuts.slice(1).map((at, i) => at - (cuts[i] as number)))
}
