import { factId } from '../../kitchen/fact-id'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { highestOf } from '../../survey/extremes'
import { citing, sum } from '../../survey/sum'
import { applianceSaid } from '../../units/part-name'
import { type Bay, finishInBays, type HeightsContext } from '../context'
import { type DemandRule, demand, geometry } from './demand'

const underTheWorktop = geometry(
  'the appliance at its lowest, and the room to slide it in, under the tops of the base units, over the highest floor of its bay',
)

/**
 * An appliance must go in under the worktop: over the highest corner of its bay there is its height with the feet wound
 * in, and the working gap. A finish still to be laid in the bay lifts that floor.
 */
export const bayIn: DemandRule = (context) =>
  context.bays.filter(({ underWorktop }) => underWorktop).flatMap((bay) => inOf(context, bay))

function inOf(context: HeightsContext, { position, appliance, corners }: Bay): readonly Demand[] {
  if (appliance === null) return []
  const finish = finishInBays(context)
  const floors = corners.map(({ floor }) => floor)
  const floor = highestOf('mm', underTheWorktop, floors)
  const needed = [floor, appliance.heightMin, appliance.workingGap, ...(finish === null ? [] : [finish])]
  const { id } = position.unit
  return [
    demand('bay-in', {
      subject: appliance.id,
      of: 'base-top',
      min: citing(sum('mm', underTheWorktop, needed), [
        factId('units', id, 'applianceBay'),
        ...(finish === null ? [] : [factId('floor', 'finishWhere')]),
      ]),
      because: message('heights.bay-in', {
        appliance: applianceSaid(appliance),
        floor,
        height: appliance.heightMin,
        gap: appliance.workingGap,
      }),
      basis: underTheWorktop,
      about: [appliance.id, id],
    }),
  ]
}
