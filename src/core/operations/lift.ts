import type { Caution } from '../plan/types'
import type { FittedUnit, Job } from './job'
import { caution } from './make'
import type { Tool } from './tools'

/**
 * People a unit's lift asks for, never fewer than `least`. Over the filter for the crew there is: all of them, two at
 * least, and the finding stops it.
 */
export function peopleFor(job: Job, unit: FittedUnit, least: number): number {
  return Math.max(least, unit.plan.lift.people ?? Math.max(2, job.kitchen.crew.people.length))
}

/** People while a hung unit is not yet secured: one holds it, one works; one alone only where a lifter carries it. */
export function peopleHolding(unit: FittedUnit): number {
  return unit.plan.lift.people === 1 ? 1 : 2
}

export function liftTools(unit: FittedUnit): readonly Tool[] {
  const { aid } = unit.plan.lift
  if (aid === 'lifter') return ['lifter']
  return aid === 'batten-or-prop' ? ['prop'] : []
}

/** Which sentence tells how a unit is lifted: alone, by two, by three, with an aid, or not at all. */
export function liftWords(unit: FittedUnit): 'alone' | 'two' | 'three' | 'lifter' | 'prop' | 'too-heavy' {
  const { aid, people } = unit.plan.lift
  if (aid === 'lifter') return 'lifter'
  if (aid === 'batten-or-prop') return 'prop'
  if (people === null || aid === 'stop' || aid === 'lighten-it') return 'too-heavy'
  return people === 1 ? 'alone' : people === 2 ? 'two' : 'three'
}

/** While a tall stands and is not restrained. */
export function tippingCautions(): readonly Caution[] {
  return [caution('W019', 'tall-tips'), caution('M008', 'feet')]
}
