import { type Basis, type Figure, hasValue } from '../figure'
import type { Kitchen, Worktop } from '../kitchen/schema'
import type { UnitPlan, WallId } from '../plan/types'
import { highestOf, lowestOf } from '../survey/extremes'

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
