import { type Basis, type Figure, known, restingOn, unknown } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'

const toTheFinish: Basis = {
  kind: 'geometry',
  why: 'from the finished floor at the face of the plinth up to the underside of the unit',
}
const nothing: Figure = known(0, 0, 'mm', [], toTheFinish)

/** What is still to come on the floor where the plinth stands: nothing, so much, or not known. */
export function finishAtPlinth({ floor }: Pick<Kitchen, 'floor'>): Figure {
  if (floor.finishWhere === 'none') return restingOn(nothing, ['floor.finishWhere'])
  if (floor.finishWhere === null) return unknown('mm', ['floor.finishWhere'])
  return restingOn(floor.finishToCome, ['floor.finishWhere'])
}

/** How much of the plinth will be seen at one end of a unit. */
export interface PlinthEnd {
  readonly side: 'left' | 'right'
  readonly along: Figure
  readonly height: Figure
}

/** The gap the plinth fills at both ends of a unit, over the finished floor at the face of the plinth. */
export function plinthEndsOf(
  kitchen: Pick<Kitchen, 'floor'>,
  survey: Pick<Survey, 'floorAt'>,
  plan: Pick<UnitPlan, 'left' | 'right' | 'wall'>,
  position: Pick<UnitPosition, 'out' | 'depth'>,
  underside: Figure,
  setBack: Figure,
): readonly PlinthEnd[] {
  const face = sum('mm', toTheFinish, [position.out, position.depth], [setBack])
  return (['left', 'right'] as const).map((side) => {
    const floor = survey.floorAt(plan.wall, plan[side], face)
    return {
      side,
      along: plan[side],
      height: sum('mm', toTheFinish, [underside], [floor, finishAtPlinth(kitchen)]),
    }
  })
}
