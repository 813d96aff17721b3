import type { InputId } from '../figure'
import type { Caution, HolePurpose } from '../plan/types'
import { listed } from '../words/listed'
import type { FittedUnit, Job } from './job'
import { caution } from './make'
import { joints } from './neighbours'

/** What screws a unit to its wall, by how it comes to be held up. */
const TO_THE_WALL: Readonly<Record<'tall' | 'hung' | 'base', readonly HolePurpose[]>> = {
  tall: ['tall-restraint'],
  hung: ['second-fixing', 'back-rail'],
  base: ['base-bracket', 'back-rail'],
}

/**
 * Whether no hole has been found that would screw a unit to its wall: the order goes on past it, for it is settled on the
 * day, and whoever comes later must know. One that was secured all the same, by the day log, is held.
 */
export function hasNoFixing(job: Job, unit: FittedUnit): boolean {
  const { way } = unit
  if (way === 'island' || (way === 'hung' && !unit.wantsSecondFixing)) return false
  if (job.context.achieved.states.get(unit.id) === 'secured') return false
  return job.holesFor(unit.id, ...TO_THE_WALL[way]).length === 0
}

/** What decides that: the wall, and the timber found in it. */
export function noFixingFacts(job: Job, unit: FittedUnit): readonly InputId[] {
  const wall = `walls.${unit.wall}`
  return [
    `${wall}.construction`,
    ...(job.wall(unit.wall)?.studs ?? []).map((stud) => `${wall}.studs.${stud.id}`),
  ]
}

/** What that means where its doors and drawers go on, and are opened. */
export function notHeldAtFronts(job: Job, unit: FittedUnit): readonly Caution[] {
  if (!hasNoFixing(job, unit)) return []
  const values = { unit: unit.name, wall: job.wallName(unit.wall) }
  if (unit.way === 'hung') return [caution('W001', 'not-held.hung', values)]
  const pulls = unit.unit.drawers.length > 0 ? 'drawers' : 'doors'
  const others = joints(job).flatMap(({ left, right }) =>
    left.id === unit.id ? [right.name] : right.id === unit.id ? [left.name] : [],
  )
  return [
    others.length === 0
      ? caution('W001', `not-held.${pulls}`, values)
      : caution('W001', `not-held.joined.${pulls}`, { ...values, others: listed(others) }),
  ]
}

/** What it means before a worktop covers the units. */
export function notHeldUnder(job: Job, units: readonly FittedUnit[]): readonly Caution[] {
  return units
    .filter((unit) => hasNoFixing(job, unit))
    .map((unit) => caution('W001', 'not-held.under', { unit: unit.name, wall: job.wallName(unit.wall) }))
}
