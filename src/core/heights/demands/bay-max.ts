import { hasValue } from '../../figure'
import { factId } from '../../kitchen/fact-id'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { lowestOf } from '../../survey/extremes'
import { citing, sum } from '../../survey/sum'
import { applianceSaid } from '../../units/part-name'
import { type Bay, finishInBays, type HeightsContext } from '../context'
import { type DemandRule, demand, geometry } from './demand'

const feetWoundOut = geometry(
  'the appliance with its feet wound right out still reaches the worktop from the lowest floor of its bay',
)

/**
 * An appliance must reach the worktop it is held under: from the lowest corner of its bay its height with the feet
 * wound out comes up to the tops of the base units. Only where that height is known.
 */
export const bayMax: DemandRule = (context) =>
  context.bays.filter(({ underWorktop }) => underWorktop).flatMap((bay) => maxOf(context, bay))

function maxOf(context: HeightsContext, { position, appliance, corners }: Bay): readonly Demand[] {
  if (appliance === null || !hasValue(appliance.heightMax)) return []
  const finish = finishInBays(context)
  const floors = corners.map(({ floor }) => floor)
  const floor = lowestOf('mm', feetWoundOut, floors)
  const reach = [floor, appliance.heightMax, ...(finish === null ? [] : [finish])]
  const { id } = position.unit
  return [
    demand('bay-max', {
      subject: appliance.id,
      of: 'base-top',
      max: citing(sum('mm', feetWoundOut, reach), [
        factId('units', id, 'applianceBay'),
        ...(finish === null ? [] : [factId('floor', 'finishWhere')]),
      ]),
      because: message('heights.bay-max', {
        appliance: applianceSaid(appliance),
        floor,
        height: appliance.heightMax,
      }),
      basis: feetWoundOut,
      about: [appliance.id, id],
    }),
  ]
}
