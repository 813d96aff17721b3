import { assumed, derive, type Figure, hasValue, known, quantise, restingOn } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import type { HandZone, LiftingFilter } from '../region/region'
import { LOAD_CONSTANT } from './niosh'

type Person = Kitchen['crew']['people'][number]

/** More than three do not share a unit of a kitchen: there is no room for their hands. */
const LARGEST_TEAM = 3

/**
 * What one person's figure is in a zone: their column of the filter, or less where they have said so. A lower figure of
 * their own is for close to the body at elbow height, and the other zones go down with it. Whose column is not known is
 * read off the lower one.
 */
export function capabilityOf(person: Person, zone: HandZone, filter: LiftingFilter): Figure {
  const facts = [factId('crew', 'people', person.id, 'filter')]
  const column = person.filter === 'man' ? filter.man : filter.woman
  const published =
    person.filter === null
      ? assumed(column[zone], 0, 'kg', facts, {
          kind: 'common-practice',
          why: 'the lower column of the filter is read for somebody whose column is not known',
        })
      : known(column[zone], 0, 'kg', facts, filter.basis)
  if (!hasValue(person.own)) return published
  return derive('kg', { kind: 'wish' }, [published, person.own], (whole = 0, own = 0) =>
    Math.min(whole, (whole * own) / column['elbow-knuckle']),
  )
}

/**
 * What so many people lift together: one, all of their own; two, two thirds of the sum; three, half of it.
 * Source: HSE L23; team shares as railway and trainers' guidance print them (20 kg each: 26.6 kg for two).
 */
export function teamCapability(each: readonly Figure[], filter: LiftingFilter): Figure {
  const share = each.length === 1 ? 1 : each.length === 2 ? filter.team.two : filter.team.three
  return derive('kg', filter.basis, each, (...all) => share * all.reduce((sum, one) => sum + one, 0))
}

export interface Team {
  readonly people: number
  readonly capability: Figure
}

/**
 * The strongest team of each size this crew has for a zone, one to three people, smallest first. How strong it is rests
 * on the whole crew, since others might have been in it. `alone`: a weight recommended for one person, where the guidance
 * has one; it takes the place of the filter for a team of one, and for no other.
 */
export function teamsFor(
  people: readonly Person[],
  zone: HandZone,
  filter: LiftingFilter,
  alone?: Figure,
): readonly Team[] {
  const all = people
    .map((person) => ({ person, figure: capabilityOf(person, zone, filter) }))
    .sort((a, b) => strength(b.figure) - strength(a.figure) || (a.person.id < b.person.id ? -1 : 1))
  const facts = all.flatMap(({ figure }) => figure.from)
  const teams = all.slice(0, LARGEST_TEAM).map((_, i) => ({
    people: i + 1,
    capability: restingOn(
      teamCapability(
        all.slice(0, i + 1).map(({ figure }) => figure),
        filter,
      ),
      facts,
    ),
  }))
  if (alone === undefined || people.length === 0) return teams
  return [{ people: 1, capability: strongestAlone(people, alone) }, ...teams.slice(1)]
}

function strongestAlone(people: readonly Person[], alone: Figure): Figure {
  const each = people.map((person) => limitedAlone(person, alone))
  const best = [...each].sort((a, b) => strength(b) - strength(a))[0] as Figure
  return restingOn(
    best,
    each.flatMap(({ from }) => from),
  )
}

const strength = (figure: Figure): number => (hasValue(figure) ? figure.value : 0)

/**
 * What one person's figure is by a weight recommended for one: that, or less where they have said so. A lower figure of
 * their own is for the easiest lift there is, and stands in for the load constant.
 */
export function limitedAlone(person: Person, alone: Figure): Figure {
  if (!hasValue(person.own)) return alone
  return derive('kg', { kind: 'wish' }, [alone, person.own], (weight = 0, own = 0) =>
    Math.min(weight, (weight * own) / LOAD_CONSTANT),
  )
}

/** Does a team's figure reach a mass? The filter is no limit, so a mass is taken as it is reckoned: see `isNear`. */
export function covers(capability: Figure, mass: Figure): boolean {
  return hasValue(capability) && hasValue(mass) && mass.value <= capability.value
}

/** Reaches it, but not by more than the mass is known to: worth weighing. */
export function isNear(capability: Figure, mass: Figure): boolean {
  return hasValue(capability) && hasValue(mass) && quantise(mass.value + mass.pm) > capability.value
}
