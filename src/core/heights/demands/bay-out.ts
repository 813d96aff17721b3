import { hasValue } from '../../figure'
import { factId } from '../../kitchen/fact-id'
import { message } from '../../message'
import type { Demand } from '../../plan/types'
import { highestOf } from '../../survey/extremes'
import { citing, sum } from '../../survey/sum'
import { applianceSaid } from '../../units/part-name'
import { type Bay, floorAtPlinth, type HeightsContext, plinthOf, setBackOf } from '../context'
import { type DemandRule, demand, geometry } from './demand'

const overTheLip = geometry(
  'the appliance at its lowest, and the room to slide it, over the lip that a finish laid up to the plinth leaves in front',
)

/**
 * An appliance must come out again: when a finish is laid up to the plinth only, it has to be lifted over that lip, so
 * its height and the working gap must fit over the finished floor in front of the bay too.
 */
export const bayOut: DemandRule = (context) => {
  const { finishToCome, finishWhere } = context.kitchen.floor
  const leavesALip = finishWhere === 'up-to-plinth' && !(hasValue(finishToCome) && finishToCome.value === 0)
  if (!leavesALip) return []
  return context.bays.filter(({ underWorktop }) => underWorktop).flatMap((bay) => outOf(context, bay))
}

function outOf(context: HeightsContext, { position, appliance }: Bay): readonly Demand[] {
  if (appliance === null) return []
  const { finishToCome: finish } = context.kitchen.floor
  const { id } = position.unit
  const floors = floorAtPlinth(context, position, setBackOf(plinthOf(context, id)))
  const lip = sum('mm', overTheLip, [highestOf('mm', overTheLip, floors), finish])
  return [
    demand('bay-out', {
      subject: appliance.id,
      of: 'base-top',
      min: citing(sum('mm', overTheLip, [lip, appliance.heightMin, appliance.workingGap]), [
        factId('units', id, 'applianceBay'),
        factId('floor', 'finishWhere'),
      ]),
      because: message('heights.bay-out', {
        appliance: applianceSaid(appliance),
        lip,
        finish,
        height: appliance.heightMin,
        gap: appliance.workingGap,
      }),
      basis: overTheLip,
      about: [appliance.id, id],
    }),
  ]
}
