import { type Figure, hasValue, unknown } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import type { LiftPlan } from '../plan/types'
import type { LiftingFilter } from '../region/region'
import type { Zones } from './hand-zone'
import { capabilityOf, covers, isNear, limitedAlone, type Team, teamsFor } from './team'

/** One lift: what is lifted, where the hands are, and what the rules ask of it. */
export interface LiftToJudge {
  /** The mass that is lifted: all of a unit, or one end of a tall one. */
  readonly mass: Figure
  readonly zones: Zones
  /** Never fewer than this, whatever the filter says. */
  readonly leastPeople: 1 | 2
  /** A rated lifter may take it: wall units only. */
  readonly mayUseLifter: boolean
  /** It can be carried in parts and put together where it stands. */
  readonly comesApart: boolean
  /** What is recommended for one person, where the guidance has such a weight; absent: the filter says it. */
  readonly alone?: Figure
}

export type Aided = Pick<LiftPlan, 'people' | 'filter' | 'aid'>

/**
 * The least team of this crew that the filter allows a lift to, and if there is none, what helps: a lifter rated for
 * it, a batten or prop that keeps the hands out of the worst zone, carrying it in parts, or else nothing: stop.
 *
 * No tall unit alone; no wall unit alone unless a rated lifter carries all of it; and nothing alone that may weigh more
 * than the figure of whoever of the crew has the least, since nobody has said who of them lifts it (common practice).
 */
export function judgeLift(lift: LiftToJudge, crew: Kitchen['crew'], filter: LiftingFilter): Aided {
  const teams = teamsFor(crew.people, lift.zones.worst, filter, lift.alone)
  const strongest = teams[teams.length - 1]?.capability ?? unknown('kg', ['crew.people'])
  if (!hasValue(lift.mass) || teams.length === 0) return { people: null, filter: strongest, aid: 'none' }
  const team = leastTeam(teams, lift)
  if (team !== undefined) {
    const shared = wantsAnother(team, lift, crew, filter) ? (withAnother(teams, lift.mass) ?? team) : team
    return { people: shared.people, filter: shared.capability, aid: 'none' }
  }
  const best = strongestOf(teams)
  if (lift.mayUseLifter && crew.lifter !== null && covers(crew.lifter.rated, lift.mass)) {
    return { people: 1, filter: best, aid: 'lifter' }
  }
  if (!hasValue(best) && lift.leastPeople === 1) return { people: null, filter: best, aid: 'none' }
  if (isCoveredWhenPropped(lift, crew, filter)) return { people: null, filter: best, aid: 'batten-or-prop' }
  return { people: null, filter: best, aid: lift.comesApart ? 'lighten-it' : 'stop' }
}

function leastTeam(teams: readonly Team[], { mass, leastPeople }: LiftToJudge): Team | undefined {
  return teams.find((team) => team.people >= leastPeople && covers(team.capability, mass))
}

/** One could lift it, but not every one of them, as much as it may weigh. */
function wantsAnother(
  team: Team,
  { mass, zones, alone }: LiftToJudge,
  { people }: Kitchen['crew'],
  filter: LiftingFilter,
): boolean {
  if (team.people > 1) return false
  return people.some((person) => {
    const own = alone === undefined ? capabilityOf(person, zones.worst, filter) : limitedAlone(person, alone)
    return !covers(own, mass) || isNear(own, mass)
  })
}

/**
 * The same lift by two. One who is far weaker than the other brings two thirds of the sum below what the strong one
 * lifts alone: then the second steadies it, and the figure stays that of the one. Undefined: there is no second.
 */
function withAnother(teams: readonly Team[], mass: Figure): Team | undefined {
  const [alone, two] = teams
  if (alone === undefined || two === undefined) return undefined
  return covers(two.capability, mass) ? two : { people: 2, capability: alone.capability }
}

/** A team of three is not always stronger than the best two of it. */
function strongestOf(teams: readonly Team[]): Figure {
  const value = (t: Team) => (hasValue(t.capability) ? t.capability.value : 0)
  const sorted = [...teams].sort((a, b) => value(b) - value(a) || a.people - b.people)
  return (sorted[0] as Team).capability
}

function isCoveredWhenPropped(lift: LiftToJudge, crew: Kitchen['crew'], filter: LiftingFilter): boolean {
  const { propped } = lift.zones
  if (propped === null) return false
  return leastTeam(teamsFor(crew.people, propped, filter), { ...lift, leastPeople: 2 }) !== undefined
}
