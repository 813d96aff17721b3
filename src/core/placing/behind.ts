import type { Figure } from '../figure'
import type { UnitPlan } from '../plan/types'
import { both, liesBetween } from '../survey/between'

/** Something on the face of a wall. Along the wall; height from the line. */
export interface OnWall {
  readonly along: Figure
  readonly height: Figure
}

/**
 * Whether something on the wall is behind a unit of that wall, with `beyond` mm more on every side: `perhaps` when
 * readings cannot tell. What goes into a space for an appliance stands on the floor, so all below its top is behind it.
 */
export function liesBehind(
  { along, height }: OnWall,
  unit: Pick<UnitPlan, 'kind' | 'left' | 'right' | 'underside' | 'top'>,
  beyond = 0,
): ReturnType<typeof both> {
  const across = liesBetween(along, unit.left, unit.right, beyond)
  const low = unit.kind === 'appliance-space' ? null : unit.underside
  return both(across, liesBetween(height, low, unit.top, beyond))
}
