import type { InputId } from '../figure'
import type { Job } from '../operations/job'
import { bayOf } from '../operations/prove'

type Appliance = Job['kitchen']['appliances'][number]
type Worktop = Job['kitchen']['worktops'][number]

/** The unit or space an appliance goes into, and the facts that say so. */
export function bayFacts(
  job: Job,
  appliance: Appliance,
): { readonly bay: string; readonly facts: readonly InputId[] } | null {
  const bay = bayOf(job.kitchen, appliance)
  if (bay === undefined) return null
  const said =
    bay.applianceBay === appliance.id ? `units.${bay.id}.applianceBay` : `appliances.${appliance.id}.over`
  return { bay: bay.id, facts: [said, `units.${bay.id}`] }
}

/** The facts by which a worktop carries or covers an appliance; null when it has nothing to do with it. */
export function underWorktop(job: Job, top: Worktop, appliance: Appliance): readonly InputId[] | null {
  if (appliance.over === top.id) return [`appliances.${appliance.id}.over`]
  const place = bayFacts(job, appliance)
  if (place === null || !top.over.includes(place.bay)) return null
  return [...place.facts, `worktops.${top.id}.over`]
}
