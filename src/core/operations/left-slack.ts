import type { FittedUnit, Job } from './job'
import { joints } from './neighbours'

/** Last screws without which nothing is left slack: into timber, and into other walls. */
const LEAST = { timber: 2, other: 1 }

/**
 * Whether the last screws of a hung unit are left a quarter turn slack until it is joined. Hooks and lock carry it and
 * the screws keep it on, so that nobody need hold it; yet the clamp can still bring its front flush with its neighbour's.
 * A unit that hangs by those screws alone has them driven home at once. Common practice.
 */
export function leftSlack(job: Job, unit: FittedUnit): boolean {
  if (unit.way !== 'hung' || unit.hangs === 'back-rail-screws' || unit.hangs === 'not-said') return false
  const screws = job.holesFor(unit.id, 'second-fixing', 'back-rail').length
  if (screws < (unit.wantsSecondFixing ? LEAST.timber : LEAST.other)) return false
  return joints(job).some(({ left, right }) => left.id === unit.id || right.id === unit.id)
}
