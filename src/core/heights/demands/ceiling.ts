import type { Figure } from '../../figure'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { sum } from '../../survey/sum'
import type { Survey } from '../../survey/survey'
import type { UnitPosition } from '../../units/positions'
import type { HeightsContext } from '../context'
import { type GroupedUnit, TOP, UNDERSIDE } from '../groups'
import { type DemandRule, demand, geometry } from './demand'

const underTheCeiling = geometry('the top of a unit against the lowest ceiling over it')

/** The lowest ceiling over a unit, from the wall out to its front. */
export function ceilingOver(survey: Survey, { unit, left, right, out, depth }: UnitPosition): Figure {
  return survey.ceilingOver(unit.wall, left, right, sum('mm', underTheCeiling, [out, depth]))
}

/** Units that hang and tall units must end under the ceiling over them. */
export const ceiling: DemandRule = (context) =>
  context.units.filter(({ group }) => group !== 'base').map((unit) => under(context, unit))

function under({ survey, nameOf }: HeightsContext, unit: GroupedUnit): Demand {
  const { id, group, position } = unit
  const lowest = ceilingOver(survey, position)
  // Tall units stand at one height and differ at the top, so each is held at its underside, its own height lower.
  const atUnderside = group === 'tall'
  return demand('ceiling', {
    subject: id,
    of: atUnderside ? UNDERSIDE.tall : TOP[group],
    max: atUnderside ? sum('mm', underTheCeiling, [lowest], [position.height]) : lowest,
    because: message('heights.ceiling', { unit: nameOf(id), ceiling: lowest }),
    basis: underTheCeiling,
    about: [id],
  })
}
