import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { highestOf } from '../../survey/extremes'
import { type HeightsContext, unitsIn } from '../context'
import { type HeightGroup, TOP, UNDERSIDE } from '../groups'
import { type DemandRule, demand, geometry } from './demand'

const carcass = geometry('the top of a carcass is its height above its underside')
const GROUPS = ['base', 'wall', 'tall'] as const

/**
 * Top and underside of each group lie a carcass apart: the tallest carcass of the group. A lower unit set level with
 * the others along the top has an underside of its own, its own height below.
 */
export const carcassHeight: DemandRule = (context) =>
  GROUPS.flatMap((group) => [...tallestOf(context, group), ...lowerOnes(context, group)])

function tallestOf(context: HeightsContext, group: HeightGroup): readonly Demand[] {
  const units = unitsIn(context, group)
  if (units.length === 0) return []
  const height = highestOf(
    'mm',
    carcass,
    units.map(({ position }) => position.height),
  )
  return [
    demand('carcass-height', {
      subject: group,
      from: UNDERSIDE[group],
      of: TOP[group],
      min: height,
      max: height,
      because: message(`heights.carcass-height.${group}`, { height }),
      basis: carcass,
      about: units.map(({ id }) => id),
    }),
  ]
}

function lowerOnes(context: HeightsContext, group: HeightGroup): readonly Demand[] {
  return unitsIn(context, group)
    .filter(({ underside }) => underside !== UNDERSIDE[group])
    .map(({ id, underside, position: { height } }) =>
      demand('carcass-height', {
        subject: id,
        from: underside,
        of: TOP[group],
        min: height,
        max: height,
        because: message('heights.carcass-height.lower', { unit: context.nameOf(id), height }),
        basis: carcass,
        about: [id],
      }),
    )
}
