import { type Basis, type Figure, hasValue } from '../figure'
import type { Appliance, Kitchen } from '../kitchen/schema'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import type { Fitted } from './fronts-in-room'

/** An appliance whose door comes down or out, and the unit or space it stands in. */
export interface ApplianceDoor {
  readonly appliance: Appliance
  readonly plan: UnitPlan
  /** Front of its carcass out from the wall; its open door reaches `doorOut` past it. */
  readonly front: Figure
  readonly open: Figure
}

const FLAP: readonly Appliance['kind'][] = ['dishwasher', 'oven', 'washing-machine', 'microwave']
const openDoor: Basis = {
  kind: 'geometry',
  why: 'the front of the carcass, and how far the open door reaches',
}

/** Which unit or space an appliance stands in, by either end of that link. */
export function bayOf(kitchen: Pick<Kitchen, 'units'>, appliance: Appliance): string | null {
  const bay = kitchen.units.find(({ applianceBay }) => applianceBay === appliance.id)
  return bay?.id ?? appliance.over
}

/** Appliances whose open door reaches into the room: by their sheet, or by their kind where it does not say. */
export function applianceDoors({ kitchen, units, positions }: Fitted): readonly ApplianceDoor[] {
  return kitchen.appliances.flatMap((appliance): readonly ApplianceDoor[] => {
    if (!hasValue(appliance.doorOut) && !FLAP.includes(appliance.kind)) return []
    const bay = bayOf(kitchen, appliance)
    const plan = units.find(({ unit }) => unit === bay)
    const position = positions.find(({ unit }) => unit.id === bay)
    if (plan === undefined || position === undefined) return []
    const front = sum('mm', openDoor, [position.out, position.depth])
    return [{ appliance, plan, front, open: sum('mm', openDoor, [front, appliance.doorOut]) }]
  })
}
