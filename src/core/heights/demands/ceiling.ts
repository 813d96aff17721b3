import type { Figure } from '../../figure'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { sum } from '../../survey/sum'
import type { HeightsContext } from '../context'
import { type GroupedUnit, TOP, UNDERSIDE } from '../groups'
import { type DemandRule, demand, geometry } from './demand'

const underTheCeiling = geometry('the top of a unit against the lowest ceiling over it')

/** Units that hang and tall units must end under the ceiling over them. */
export const ceiling: DemandRule = (context) =>
  context.units.filter(({ group }) => group !== 'base').map((unit) => under(context, unit))

function under({ ceilings, nameOf }: HeightsContext, unit: GroupedUnit): Demand {
  const { id, group, position } = unit
  const lowest = ceilings.get(id) as Figure
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
