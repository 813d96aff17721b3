import { type Figure, hasValue } from '../figure'
import type { HeightName } from '../kitchen/kinds'
import type { Unit } from '../kitchen/schema'
import type { HeightVariable, UnitId } from '../plan/types'
import type { UnitPosition } from '../units/positions'

/** Units that share their heights: all that stand under the worktop, all that hang, all tall ones. */
export type HeightGroup = 'base' | 'wall' | 'tall'

export const UNDERSIDE = {
  base: 'base-underside',
  wall: 'wall-underside',
  tall: 'tall-underside',
} as const satisfies Record<HeightGroup, HeightName>

export const TOP = {
  base: 'base-top',
  wall: 'wall-top',
  tall: 'tall-top',
} as const satisfies Record<HeightGroup, HeightName>

/** A unit that takes part in the heights, and what its underside is called. */
export interface GroupedUnit {
  readonly id: UnitId
  readonly position: UnitPosition
  readonly group: HeightGroup
  readonly underside: HeightVariable
}

const STANDING_ON = new Set(['legs', 'shims', 'plinth-frame', 'floor-cleat', 'nothing'])

/** Which heights a unit shares; null for appliance spaces, and for an open end unit not known to stand or to hang. */
export function groupOf({ kind, stands }: Pick<Unit, 'kind' | 'stands'>): HeightGroup | null {
  switch (kind) {
    case 'tall':
      return 'tall'
    case 'wall':
    case 'corner-wall':
    case 'bridging':
      return 'wall'
    case 'base':
    case 'corner-base':
    case 'island':
      return 'base'
    case 'open-end':
      return stands === null ? null : STANDING_ON.has(stands) ? 'base' : 'wall'
    case 'appliance-space':
      return null
  }
}

/**
 * The units in their groups. Base units and hung units are set level along their tops, so one that is lower than the
 * tallest of its group has an underside of its own; tall units all stand at one height and differ at the top.
 */
export function groupUnits(positions: readonly UnitPosition[]): readonly GroupedUnit[] {
  return positions.flatMap((position): GroupedUnit[] => {
    const { unit, height } = position
    const group = groupOf(unit)
    if (group === null) return []
    const alike = group === 'tall' || !differs(height, tallestOf(positions, group))
    return [{ id: unit.id, position, group, underside: alike ? UNDERSIDE[group] : `unit:${unit.id}` }]
  })
}

function differs(height: Figure, tallest: number): boolean {
  return hasValue(height) && height.value !== tallest
}

function tallestOf(positions: readonly UnitPosition[], group: HeightGroup): number {
  return positions.reduce(
    (tallest, { unit, height }) =>
      groupOf(unit) === group && hasValue(height) ? Math.max(tallest, height.value) : tallest,
    0,
  )
}
