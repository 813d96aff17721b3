import type { FinishingPart } from '../../kitchen/schema'
import { message } from '../../message'
import type { Demand, HeightVariable } from '../../plan/types'
import { lowestOf } from '../../survey/extremes'
import { sum } from '../../survey/sum'
import { partName } from '../../units/part-name'
import { floorAtPlinth, type HeightsContext } from '../context'
import { type GroupedUnit, UNDERSIDE } from '../groups'
import { type DemandRule, demand, geometry } from './demand'

const boardReaches = geometry(
  'the plinth board is no lower than the gap it covers, where the floor in front is lowest',
)

/**
 * A plinth board must cover the gap under its units: the underside is no higher above the lowest floor along the plinth
 * than the board is high. Where the floor is higher it is ripped down. Units of different undersides make a demand each;
 * a space for an appliance is passed at the height of the base units.
 */
export const plinthCover: DemandRule = (context) =>
  context.kitchen.finishing
    .filter(({ kind }) => kind === 'plinth')
    .flatMap((plinth) => coverOf(context, plinth))

function coverOf(context: HeightsContext, plinth: FinishingPart): readonly Demand[] {
  const units = context.units.filter(({ id, group }) => group !== 'wall' && plinth.of.includes(id))
  const undersides = [...new Set(units.map(({ underside }) => underside))]
  return undersides.map((underside, i) => {
    const under = units.filter((unit) => unit.underside === underside)
    return coverUnder(context, plinth, underside, under, i === 0)
  })
}

function coverUnder(
  context: HeightsContext,
  plinth: FinishingPart,
  underside: HeightVariable,
  units: readonly GroupedUnit[],
  isFirst: boolean,
): Demand {
  const spaces = context.bays.filter(
    ({ position }) => underside === UNDERSIDE.base && plinth.of.includes(position.unit.id),
  )
  const floors = [...units, ...spaces].flatMap(({ position }) =>
    floorAtPlinth(context, position, plinth.setBack),
  )
  const floor = lowestOf('mm', boardReaches, floors)
  return demand('plinth-cover', {
    subject: isFirst ? plinth.id : `${plinth.id}.${underside}`,
    of: underside,
    max: sum('mm', boardReaches, [floor, plinth.height]),
    because: message('heights.plinth-cover', {
      plinth: partName(context.kitchen, plinth),
      floor,
      height: plinth.height,
    }),
    basis: boardReaches,
    about: [plinth.id, ...units.map(({ id }) => id), ...spaces.map(({ position }) => position.unit.id)],
  })
}
