import type { UnitId } from '../plan/types'
import type { Job } from './job'

/** Which of the plan's paths a unit travels; null: none was found, or its place is not known. */
export function pathIndex(job: Job, unit: UnitId): number | null {
  const at = job.context.paths.findIndex((path) => path.unit === unit)
  return at < 0 ? null : at
}
