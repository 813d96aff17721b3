import { type Basis, type Figure, hasValue, unknown } from '../figure'
import { mergedIds } from '../ids'
import { factId } from '../kitchen/fact-id'
import type { HeightVariable, UnitId } from '../plan/types'
import { highestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import type { UnitPosition } from '../units/positions'
import type { HeightsContext } from './context'

/** Any height by its name; undefined for one that nothing speaks of. */
export type HeightOf = (variable: HeightVariable) => Figure | undefined

const levelWithBases: Basis = {
  kind: 'geometry',
  why: 'the space ends level with the base units, and never below the floor under it',
}
const asSet: Basis = { kind: 'geometry', why: 'the height its group is set to' }

/**
 * The underside of every unit: as reached on the day, else that of its group. A space for an appliance ends level with
 * the tops of the base units or, where it is higher than that, stands on the floor.
 */
export function undersidesOf(context: HeightsContext, heightOf: HeightOf): ReadonlyMap<UnitId, Figure> {
  const grouped = new Map(context.units.map(({ id, underside }) => [id, underside]))
  return new Map(
    context.positions.map((position): [UnitId, Figure] => {
      const { id } = position.unit
      const variable = grouped.get(id)
      const reached = context.achieved.undersides.get(id)
      if (reached !== undefined && hasValue(reached)) return [id, reached]
      if (variable !== undefined) return [id, heightOf(variable) ?? notSaid(id)]
      return [id, underSpace(context, position, heightOf)]
    }),
  )
}

function notSaid(id: UnitId): Figure {
  return unknown('mm', [factId('units', id, 'stands')], [factId('units', id, 'stands')], asSet)
}

function underSpace(context: HeightsContext, { unit, height }: UnitPosition, heightOf: HeightOf): Figure {
  const bay = context.bays.find(({ position }) => position.unit.id === unit.id)
  if (bay === undefined) return notSaid(unit.id)
  const floor = highestOf(
    'mm',
    levelWithBases,
    bay.corners.map((corner) => corner.floor),
  )
  const top = heightOf('base-top')
  if (top === undefined) return floor
  return higher(sum('mm', levelWithBases, [top], [height]), floor)
}

/** The higher of two heights, which rests on both. */
function higher(a: Figure, b: Figure): Figure {
  const both = highestOf('mm', levelWithBases, [a, b])
  return { ...both, from: mergedIds([a.from, b.from]) }
}
