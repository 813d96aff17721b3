import { type Figure, hasValue, known, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Appliance, Kitchen } from '../kitchen/schema'
import type { FloorSurface, Heights, UnitPlan } from '../plan/types'
import type { RegionPack } from '../region/region'
import { sum } from '../survey/sum'
import { basisAlone } from './guidance'
import { type Alone, FROM_THE_FLOOR, recommendedAlone } from './lift-alone'

/** All that is read for where an appliance goes. */
export interface ApplianceSite {
  readonly kitchen: Pick<Kitchen, 'worktops'>
  readonly region: Pick<RegionPack, 'lifting'> | null
  readonly units: readonly UnitPlan[]
  readonly heights: Pick<Heights, 'values'>
  readonly floor: Pick<FloorSurface, 'highPoint'>
}

/** What one person is recommended to lift of an appliance; null: the region's guidance has no such weight. */
export function applianceAlone(appliance: Appliance, site: ApplianceSite): Alone | null {
  const basis = basisAlone(site.region)
  if (basis === null) return null
  const load = {
    width: appliance.widthNeeded,
    height: appliance.heightMin,
    depth: frontToBack(appliance, site),
  }
  return recommendedAlone(load, { from: FROM_THE_FLOOR, to: setDownAt(appliance, site) }, basis)
}

/** As its sheet has it; of what is let into a worktop, its cut-out where the sheet says nothing. */
function frontToBack({ id, depthNeeded }: Appliance, { kitchen }: ApplianceSite): Figure {
  if (hasValue(depthNeeded)) return depthNeeded
  const holes = kitchen.worktops.flatMap(({ cutouts }) => cutouts.filter((hole) => hole.for === id))
  return holes[0]?.depth ?? depthNeeded
}

/** How high over the floor it is set down: on the worktop, on the shelf or bottom of its unit, or on the floor of its bay. */
function setDownAt(appliance: Appliance, { units, heights, floor }: ApplianceSite): Figure {
  const over = { kind: 'geometry', why: 'over the highest floor' } as const
  if (appliance.kind === 'hob' || appliance.kind === 'sink') {
    const top = heights.values.find((value) => value.of === 'worktop-top')?.height
    return sum('mm', over, [top ?? unknown('mm', ['worktops'])], [floor.highPoint.z])
  }
  const unit = units.find((one) => one.unit === appliance.over)
  if (unit === undefined) return unknown('mm', [factId('appliances', appliance.id, 'over')])
  if (unit.kind === 'appliance-space') {
    return known(0, 0, 'mm', [factId('appliances', appliance.id, 'over')], FROM_THE_FLOOR.basis)
  }
  const shelf = unit.kind === 'tall' ? [appliance.shelf] : []
  return sum('mm', over, [unit.underside, ...shelf], [floor.highPoint.z])
}
