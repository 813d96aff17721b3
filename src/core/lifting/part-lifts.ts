import { derive, type Figure, hasValue, known } from '../figure'
import type { Appliance, Kitchen, Worktop } from '../kitchen/schema'
import { message } from '../message'
import { finding } from '../plan/finding'
import type { Finding, FloorSurface, Heights } from '../plan/types'
import type { HandZone, RegionPack } from '../region/region'
import { applianceSaid, worktopName } from '../units/part-name'
import { applianceAlone } from './appliance-alone'
import { filterOf } from './guidance'
import type { Zones } from './hand-zone'
import { judgeLift } from './lift'
import type { Alone } from './lift-alone'
import { covers, teamsFor } from './team'
import { massOfWorktop, type WorktopSite } from './worktop-mass'

/**
 * Lifts of what is no unit: worktops and appliances. How it is lifted: by `people` as it is; with a `prop` under it; a
 * worktop `end-by-end`; walked or rolled in (`rolled`), never lifted; by whoever fits it (`fitters`); or this crew does
 * not do (`stop`). `not-known`: its mass, or the crew, is not. `weight-not-known`: what is recommended for one person is not,
 * and there is only one.
 */
export type PartAid =
  | 'none'
  | 'prop'
  | 'end-by-end'
  | 'rolled'
  | 'fitters'
  | 'stop'
  | 'not-known'
  | 'weight-not-known'

export interface PartLift {
  readonly mass: Figure
  /** One end of it, of a worktop. */
  readonly end: Figure | null
  readonly people: number
  readonly filter: Figure
  readonly aid: PartAid
  /** What is recommended for one person, where the guidance has such a weight and one person might lift it. */
  readonly alone: Alone | null
}

export interface PartSite extends WorktopSite {
  readonly kitchen: Pick<Kitchen, 'units' | 'crew' | 'worktops' | 'appliances'>
  readonly region: Pick<RegionPack, 'lifting'> | null
  readonly heights: Pick<Heights, 'values'>
  readonly floor: Pick<FloorSurface, 'highPoint'>
}

/** Of a lift that nobody judges: there is no figure to compare it with. */
const NO_FILTER: Figure = known(0, 0, 'kg', [], { kind: 'geometry', why: 'not judged' })

/** All of them, two at least: more hands where no team was found. */
const everybody = ({ kitchen }: PartSite): number => Math.max(2, kitchen.crew.people.length)

/**
 * A worktop comes off trestles onto the bases: the hands stay between knuckle and elbow. Never by one alone. Too heavy to
 * carry whole, it may still go end by end: one end rested on the bases, the other lifted and slid on.
 */
const FROM_TRESTLES: Zones = { worst: 'elbow-knuckle', propped: null }

/** The lift of the heaviest piece of a worktop. Stone is left to those who template and lay it. */
export function worktopLift(top: Worktop, site: PartSite): PartLift {
  const { heaviestPiece: mass } = massOfWorktop(top, site)
  const end = derive('kg', { kind: 'geometry', why: 'half of an even piece' }, [mass], (all = 0) => all / 2)
  const { crew } = site.kitchen
  if (top.material === 'stone')
    return { mass, end, people: 2, filter: NO_FILTER, aid: 'fitters', alone: null }
  const judged = judgeLift(
    { mass, zones: FROM_TRESTLES, leastPeople: 2, mayUseLifter: false, comesApart: false },
    crew,
    filterOf(site.region),
  )
  const shared = { mass, end, filter: judged.filter, alone: null }
  if (!hasValue(mass) || crew.people.length === 0)
    return { ...shared, people: everybody(site), aid: 'not-known' }
  if (judged.people !== null) return { ...shared, people: judged.people, aid: 'none' }
  const teams = teamsFor(crew.people, FROM_TRESTLES.worst, filterOf(site.region))
  const oneEnd = teams.some((team) => team.people >= 2 && covers(team.capability, end))
  return { ...shared, people: everybody(site), aid: oneEnd ? 'end-by-end' : 'stop' }
}

type Kind = Appliance['kind']
/** They stand on the floor and go in along it. */
const ROLLED: readonly Kind[] = ['dishwasher', 'washing-machine', 'fridge', 'freezer', 'fridge-freezer']

/** Where the hands are: a hood over the head; what goes into a worktop at its height; the rest may come up from the floor. */
function zonesFor(kind: Kind): Zones {
  if (kind === 'hood') return { worst: 'above-shoulder', propped: 'shoulder-elbow' }
  if (kind === 'hob' || kind === 'sink') return { worst: 'elbow-knuckle', propped: null }
  const low: HandZone = 'knuckle-lower-leg'
  return { worst: low, propped: null }
}

/** The lift of an appliance into its place. A boiler is lifted by whoever fits it. */
export function applianceLift(appliance: Appliance, site: PartSite): PartLift {
  const { mass, kind } = appliance
  const { crew } = site.kitchen
  if (kind === 'boiler') return { mass, end: null, people: 1, filter: NO_FILTER, aid: 'fitters', alone: null }
  const isRolled = ROLLED.includes(kind)
  const alone = isRolled || kind === 'hood' ? null : applianceAlone(appliance, site)
  const judged = judgeLift(
    {
      mass,
      zones: zonesFor(kind),
      leastPeople: kind === 'hood' ? 2 : 1,
      mayUseLifter: false,
      comesApart: false,
      ...(alone === null ? {} : { alone: alone.lower }),
    },
    crew,
    filterOf(site.region),
  )
  const people = judged.people ?? everybody(site)
  const shared = { mass, end: null, people, filter: judged.filter, alone }
  if (isRolled) return { ...shared, people: Math.max(people, hasValue(mass) ? 1 : 2), aid: 'rolled' }
  if (!hasValue(mass) || crew.people.length === 0) return { ...shared, aid: 'not-known' }
  if (!hasValue(judged.filter)) return { ...shared, aid: 'weight-not-known' }
  if (judged.people !== null) return { ...shared, aid: 'none' }
  return { ...shared, aid: judged.aid === 'batten-or-prop' ? 'prop' : 'stop' }
}

/** What is to be said of lifting worktops and appliances before the day comes. */
export function partLiftFindings(site: PartSite): readonly Finding[] {
  return [
    ...site.kitchen.worktops.flatMap((top) => worktopFinding(top, worktopLift(top, site), site)),
    ...site.kitchen.appliances.flatMap((appliance) =>
      applianceFinding(appliance, applianceLift(appliance, site)),
    ),
  ]
}

function worktopFinding(
  top: Worktop,
  { mass, end, filter, aid }: PartLift,
  site: PartSite,
): readonly Finding[] {
  const worktop = worktopName(site.kitchen, top)
  const parts = { subjects: [top.id], figures: [mass, filter], basis: filter.basis }
  if (aid === 'not-known') {
    const key = hasValue(mass) ? 'lifting.worktop-crew-not-known' : 'lifting.worktop-mass-not-known'
    return [finding({ ...parts, rule: 'lift-not-known', weight: 'ask', say: message(key, { worktop }) })]
  }
  if (aid !== 'end-by-end' && aid !== 'stop') return []
  return [
    finding({
      ...parts,
      rule: 'lift-over-filter',
      weight: aid === 'stop' ? 'stop' : 'warn',
      dangerous: aid === 'stop',
      say: message(`lifting.worktop-over-filter-${aid}`, {
        worktop,
        mass,
        filter,
        end: end ?? mass,
        crew: site.kitchen.crew.people.length,
      }),
    }),
  ]
}

/** Whoever connects an appliance may bring a mate, so it is never more than a warning. */
function applianceFinding(appliance: Appliance, { mass, filter, aid, alone }: PartLift): readonly Finding[] {
  if (aid === 'weight-not-known') {
    const say = message('lifting.appliance-weight-not-known', { appliance: applianceSaid(appliance), mass })
    const parts = { subjects: [appliance.id], figures: [mass, filter], basis: filter.basis }
    return [finding({ ...parts, rule: 'lift-not-known', weight: 'ask', say })]
  }
  if (aid !== 'prop' && aid !== 'stop') return []
  const isAlone = alone !== null && filter.basis === alone.lower.basis
  const which = isAlone ? 'recommended-stop' : (`filter-${aid}` as const)
  return [
    finding({
      rule: 'lift-over-filter',
      subjects: [appliance.id],
      weight: 'warn',
      figures: [mass, filter],
      basis: filter.basis,
      say: message(`lifting.appliance-over-${which}`, {
        appliance: applianceSaid(appliance),
        mass,
        filter,
      }),
    }),
  ]
}
