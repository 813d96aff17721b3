import { derive, type Figure, hasValue, unknown } from '../figure'
import { isHung } from '../fixings/hung'
import { finding } from '../holes/finding'
import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import type { Finding, LiftPlan } from '../plan/types'
import type { RegionPack } from '../region/region'
import { sum } from '../survey/sum'
import type { UnitPosition } from '../units/positions'
import { basisAlone, filterOf } from './guidance'
import { zonesOf } from './hand-zone'
import { type Aided, judgeLift, type LiftToJudge } from './lift'
import { type Alone, FROM_THE_FLOOR, recommendedAlone } from './lift-alone'
import { massesOf } from './panel-mass'
import { covers, isNear } from './team'

type Lifted = Pick<UnitPosition, 'unit' | 'name' | 'width' | 'height' | 'depth'>

/** Where a unit is set down: its underside, and the highest floor under any, both from the line. */
export interface SetDown {
  readonly underside: Figure
  readonly floor: Figure
}

const NOT_SAID: SetDown = { underside: unknown('mm', []), floor: unknown('mm', []) }

/**
 * What lifting a unit takes: its mass stripped of doors, drawers and shelves, the whole of it, the people the published
 * filter asks for in the worst zone of the hands, and what helps when this crew is not enough. The filter is where a
 * closer look is usually not needed; it is no limit, and a lift within it is not thereby without risk.
 *
 * Where the guidance recommends a weight for one person, that is what one person is held against: from the floor to where
 * the unit is set down. A tall is tilted by two and never lifted whole, so it has none.
 */
export function liftOf(
  position: Lifted,
  kitchen: Pick<Kitchen, 'crew'>,
  region: Pick<RegionPack, 'lifting'> | null,
  setDown: SetDown = NOT_SAID,
): { readonly lift: LiftPlan; readonly findings: readonly Finding[] } {
  const { unit } = position
  const filter = filterOf(region)
  const { stripped, whole } = massesOf(position)
  if (unit.kind === 'appliance-space') return { lift: nothingToLift(stripped, whole), findings: [] }
  const endLift = unit.kind === 'tall' ? halfOf(stripped) : null
  const hung = isHung(unit) || unit.kind === 'wall' || unit.kind === 'corner-wall'
  const zones = zonesOf(unit.kind, hung)
  const alone = unit.kind === 'tall' ? null : aloneOf(position, setDown, region)
  const toJudge: LiftToJudge = {
    mass: endLift ?? stripped,
    zones,
    leastPeople: unit.kind === 'tall' || hung ? 2 : 1,
    mayUseLifter: hung,
    comesApart: unit.assembled === 'flat-packed',
    ...(alone === null ? {} : { alone: alone.lower }),
  }
  const aided = judgeLift(toJudge, kitchen.crew, filter)
  const lift: LiftPlan = {
    massStripped: stripped,
    massFull: whole,
    ...aided,
    zone: zones.worst,
    endLift,
    ...(alone === null ? {} : { alone }),
  }
  return { lift, findings: findingsOf(position, toJudge, aided, kitchen) }
}

function aloneOf(
  position: Lifted,
  { underside, floor }: SetDown,
  region: Pick<RegionPack, 'lifting'> | null,
): Alone | null {
  const basis = basisAlone(region)
  if (basis === null) return null
  const overFloor = sum('mm', { kind: 'geometry', why: 'over the highest floor' }, [underside], [floor])
  return recommendedAlone(position, { from: FROM_THE_FLOOR, to: overFloor }, basis)
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
  { mass, alone, leastPeople }: LiftToJudge,
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
  if (aided.people === null && aid === 'none') {
    const say = message('lifting.place-not-known', { unit: name })
    return [finding({ ...shared, rule: 'lift-not-known', weight: 'ask', say })]
  }
  const isAlone = alone !== undefined && (aided.people === 1 || crew.people.length === 1)
  if (aid === 'none') {
    if (!isNear(filter, mass)) return []
    const which = isAlone ? 'lifting.near-recommended' : (`${of}near-filter` as const)
    const say = message(which, { unit: name, mass, filter })
    return [finding({ ...shared, rule: 'lift-near-filter', weight: 'note', say })]
  }
  const isStop = aid === 'stop'
  // The figure would allow it, and it is still no lift for one.
  const isTooFew = leastPeople > crew.people.length && aid !== 'lifter' && covers(filter, mass)
  if (isTooFew && (unit.kind === 'tall' || alone === undefined)) {
    const say = message(`${of}never-alone-${isStop ? 'stop' : 'lighten-it'}`, { unit: name, mass })
    const weight = isStop ? 'stop' : 'warn'
    return [finding({ ...shared, rule: 'lift-over-filter', weight, dangerous: isStop, say })]
  }
  if (isAlone && aid !== 'lifter') {
    const what = leastPeople > 1 ? 'never-alone' : (`over-recommended-${aid}` as const)
    const say = message(`lifting.${what}`, { unit: name, mass, filter })
    const weight = isStop ? 'stop' : 'warn'
    return [finding({ ...shared, rule: 'lift-over-filter', weight, dangerous: isStop, say })]
  }
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
