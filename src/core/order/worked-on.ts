import type { Job } from '../operations/job'
import type { Operation } from '../plan/types'
import { applianceSaid } from '../units/part-name'
import { listed } from '../words/listed'

/** What an operation works on, by name: its units, worktop, part, rail or appliance; timber by the wall it is let into. */
export function workedOn(job: Job, operation: Operation): string {
  if (operation.kind === 'fit-nogging') return job.wallName(operation.wall ?? '')
  const { finishing, worktops, appliances } = job.kitchen
  const named = (id: string) => {
    const appliance = appliances.find((a) => a.id === id)
    if (operation.kind === 'connect') return appliance === undefined ? id : applianceSaid(appliance)
    if (job.wall(id) !== undefined) return job.wallName(id)
    const rail = job.kitchen.rails.find((one) => one.id === id)
    if (rail !== undefined) return `the rail of ${listed(rail.units.map(job.name))}`
    const part = [...finishing, ...worktops].find((p) => p.id === id)
    return job.unit(id) === undefined ? (part?.name ?? id) : job.name(id)
  }
  return listed(operation.on.map(named))
}
