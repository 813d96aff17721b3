import { hasValue } from '../figure'
import { holesSaid } from '../holes/holes-said'
import type { Message } from '../message'
import { type LegsInTheTilt, legsInThePlan } from '../placing/stand-up'
import type { Caution, Hole, LiftPlan, NamedFigure } from '../plan/types'
import type { FittedUnit, Job } from './job'

import { caution, shown, told, when } from './make'
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

/** What is recommended for one person, shown where a unit or an appliance is lifted; none where the filter is all there is. */
export function aloneFigures(alone: LiftPlan['alone'] | null, what: string): readonly NamedFigure[] {
  return alone === undefined || alone === null || !hasValue(alone.lower)
    ? []
    : [shown('recommended-alone', alone.lower, 'recommended-alone', { what })]
}

/** Which sentence tells how a unit is lifted: alone, by two, by three, with an aid, or not at all. */
export function liftWords(unit: FittedUnit): 'alone' | 'two' | 'three' | 'lifter' | 'prop' | 'too-heavy' {
  const { aid, people } = unit.plan.lift
  if (aid === 'lifter') return 'lifter'
  if (aid === 'batten-or-prop') return 'prop'
  if (people === null || aid === 'stop' || aid === 'lighten-it') return 'too-heavy'
  return people === 1 ? 'alone' : people === 2 ? 'two' : 'three'
}

/** Which sentence tells how the head end of a tall is lifted from the floor; `not-known`: its mass, or who lifts, is not. */
export function headWords(
  unit: FittedUnit,
): 'two' | 'three' | 'head-on-blocks' | 'in-parts' | 'too-heavy' | 'not-known' {
  const { aid, people } = unit.plan.lift
  if (aid === 'batten-or-prop') return 'head-on-blocks'
  if (aid === 'lighten-it') return 'in-parts'
  if (aid === 'stop') return 'too-heavy'
  if (people === null) return 'not-known'
  return people > 2 ? 'three' : 'two'
}

/** So many people in words, for the sentences that begin with them. */
export function crewWords(people: number): 'one' | 'two' | 'three' | 'all' {
  if (people > 3) return 'all'
  return people === 3 ? 'three' : people === 2 ? 'two' : 'one'
}

/** Whether there is anything to take out of a unit before it is lifted. Loose shelves nobody has counted may be there. */
function holdsLooseParts({ unit }: FittedUnit): boolean {
  const { doors, drawers, shelves } = unit
  return doors.length + drawers.length > 0 || shelves.state === 'unknown' || shelves.value > 0
}

/**
 * Said first where a unit is lifted that came built: doors, drawers and shelves are still in it, and the mass of the lift
 * is without them. One that came flat has them added last.
 */
export function stripFirst(unit: FittedUnit): readonly Message[] {
  const isFull = unit.unit.assembled === 'built' && holdsLooseParts(unit)
  return when(isFull, told('lift', 'strip', { unit: unit.name }))
}

/** What becomes of the legs of a tall while it is stood up; null while how it is stood up is not known. */
export function legsInTilt({ unit, plan }: FittedUnit): LegsInTheTilt | null {
  if (plan.standUp === null) return null
  return legsInThePlan(unit.stands === 'legs' ? unit.legs.min : null, plan.standUp)
}

/**
 * Whether what is to hold a unit at last can be drilled as it stands: `none` while fewer than `least` of its holes may be,
 * `ask` while something is to be settled for one of them. It is not stood up or hung before: what cannot be secured has
 * to be held, and nobody holds it for long. Null: nothing known stands against it.
 */
export function holdingOpen(holes: readonly Hole[], least: number): 'none' | 'ask' | null {
  if (holes.length < least) return 'none'
  return holes.some((hole) => hole.verdict === 'ask') ? 'ask' : null
}

/** The holes that something is still to be settled for, by their numbers. */
export function holesToSettle(holes: readonly Hole[]): string {
  const open = holes.filter((hole) => hole.verdict === 'ask')
  return holesSaid(open)
}

/** While a tall stands and is not restrained. */
export function tippingCautions(): readonly Caution[] {
  return [caution('W019', 'tall-tips'), caution('M008', 'feet')]
}
