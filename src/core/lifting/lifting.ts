import { derive, type Figure, hasValue } from '../figure'
import { isHung } from '../fixings/hung'
import { finding } from '../holes/finding'
import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import type { Finding, LiftPlan } from '../plan/types'
import { hseFilter } from '../region/hse-filter'
import type { RegionPack } from '../region/region'
import type { UnitPosition } from '../units/positions'
import { zonesOf } from './hand-zone'
import { type Aided, judgeLift, type LiftToJudge } from './lift'
import { massesOf } from './panel-mass'
import { isNear } from './team'

type Lifted = Pick<UnitPosition, 'unit' | 'name' | 'width' | 'height' | 'depth'>

/**
 * What lifting a unit takes: its mass stripped of doors, drawers and shelves, the whole of it, the people the published
 * filter asks for in the worst zone of the hands, and what helps when this crew is not enough. The filter is where a
 * closer look is usually not needed; it is no limit, and a lift within it is not thereby without risk.
 *
 * Where the region is not known the same filter is read: it is about people, not about the country.
 */
export function liftOf(
  position: Lifted,
  kitchen: Pick<Kitchen, 'crew'>,
  region: Pick<RegionPack, 'lifting'> | null,
): { readonly lift: LiftPlan; readonly findings: readonly Finding[] } {
  const { unit } = position
  const filter = region?.lifting ?? hseFilter
  const { stripped, whole } = massesOf(position)
  if (unit.kind === 'appliance-space') return { lift: nothingToLift(stripped, whole), findings: [] }
  const endLift = unit.kind === 'tall' ? halfOf(stripped) : null
  const hung = isHung(unit) || unit.kind === 'wall' || unit.kind === 'corner-wall'
  const zones = zonesOf(unit.kind, hung)
  const toJudge: LiftToJudge = {
    mass: endLift ?? stripped,
    zones,
    leastPeople: unit.kind === 'tall' || hung ? 2 : 1,
    mayUseLifter: hung,
    comesApart: unit.assembled === 'flat-packed',
  }
  const aided = judgeLift(toJudge, kitchen.crew, filter)
  const lift: LiftPlan = {
    massStripped: stripped,
    massFull: whole,
    ...aided,
    zone: zones.worst,
    endLift,
  }
  return { lift, findings: findingsOf(position, toJudge, aided, kitchen) }
}

function nothingToLift(stripped: Figure, whole: Figure): LiftPlan {
  return {
    massStripped: stripped,
    massFull: whole,
    people: 1,
    filter: stripped,
    zone: 'knuckle-lower-leg',
    aid: 'none',
    endLift: null,
  }
}

/** The end of an even unit that lies on its back weighs half of it in the hands when it starts to rise. */
function halfOf(mass: Figure): Figure {
  const why = 'an even unit, tilted up from lying: half its mass at the start'
  return derive('kg', { kind: 'geometry', why }, [mass], (whole = 0) => whole / 2)
}

function findingsOf(
  { unit, name }: Lifted,
  { mass }: LiftToJudge,
  aided: Aided,
  { crew }: Pick<Kitchen, 'crew'>,
): readonly Finding[] {
  const { aid, filter } = aided
  // Of a tall unit it is one end that is judged.
  const of = unit.kind === 'tall' ? 'lifting.end-' : 'lifting.'
  const shared = { subjects: [unit.id], figures: [mass, filter], basis: filter.basis }
  if (!hasValue(mass) || crew.people.length === 0) {
    const key = hasValue(mass) ? 'lifting.crew-not-known' : 'lifting.mass-not-known'
    return [finding({ ...shared, rule: 'lift-not-known', weight: 'ask', say: message(key, { unit: name }) })]
  }
  if (aided.people !== null && aid === 'none') {
    if (!isNear(filter, mass)) return []
    const say = message(`${of}near-filter`, { unit: name, mass, filter })
    return [finding({ ...shared, rule: 'lift-near-filter', weight: 'note', say })]
  }
  const isStop = aid === 'stop'
  return [
    finding({
      ...shared,
      rule: 'lift-over-filter',
      weight: isStop ? 'stop' : 'warn',
      dangerous: isStop,
      say: message(`${of}over-filter-${aid}`, { unit: name, mass, filter, crew: crew.people.length }),
    }),
  ]
}
