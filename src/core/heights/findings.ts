import { type Basis, type Figure, hasValue, known, sortedIds } from '../figure'
import { mergedIds } from '../ids'
import { factId } from '../kitchen/fact-id'
import { message } from '../message'
import { finding } from '../plan/finding'
import { namesOf } from '../plan/names-of'
import type { Demand, Finding, HeightConflict, HeightValue, LegPlan, UnitId } from '../plan/types'
import { sum } from '../survey/sum'
import { footName } from '../units/foot-name'
import { factNames } from '../words/fact-name'
import { isUnknown, missingIn } from './components'
import type { HeightsContext, StandingUnit } from './context'
import { demandName, demandNames } from './demand-name'
import { ruleOf } from './demands/demand'
import { leastRoomToHookOn } from './demands/hook-on'
import { USUAL_RULES } from './demands/usual-worktop'
import { footPlace } from './footings'
import { heightWords } from './height-words'
import { fitsIn, type HookOn, roomUnderCeiling } from './hooking-on'
import type { Kept } from './keep'

const chain: Basis = { kind: 'geometry', why: 'demands that run in a ring and do not add up' }
const narrow: Basis = {
  kind: 'geometry',
  why: 'the room left is narrower than the precision of the readings that bound it',
}

const limitsOf = ({ min, max }: Demand): readonly Figure[] =>
  [min, max].flatMap((limit) => (limit === null ? [] : [limit]))

const inputsOf = (demands: readonly Demand[]): readonly string[] =>
  mergedIds(demands.flatMap(limitsOf).map(({ from }) => from))

/** Demands that cannot be worked out yet, each with the facts that would settle it. */
export function unknownDemands(
  { kitchen }: Pick<HeightsContext, 'kitchen'>,
  demands: readonly Demand[],
): readonly Finding[] {
  const names = namesOf(kitchen)
  return demands.filter(isUnknown).map((demand) => {
    const missing = sortedIds(missingIn(demand))
    const facts = factNames(missing, names)
    return finding({
      rule: 'height-demand-unknown',
      subjects: [demand.id],
      weight: 'ask',
      say: message('heights.height-demand-unknown', { demand: demandName(demand), missing: facts }),
      ask: message('heights.height-demand-unknown.ask', { missing: facts }),
      about: sortedIds(demand.about),
      basis: demand.basis,
      from: inputsOf([demand]),
    })
  })
}

const asRead: Basis = {
  kind: 'survey',
}

/** Wishes counted from the floor while a finish is still to come on it: what will stand over it is said, not changed. */
export function wishesFromBareFloor({ kitchen }: HeightsContext): readonly Finding[] {
  const { finishToCome, finishWhere } = kitchen.floor
  const comes = hasValue(finishToCome) && finishToCome.value > 0
  if (!comes || finishWhere === null || finishWhere === 'none') return []
  return kitchen.wishes.heights.flatMap(({ id, of, min, max }) => {
    const above = [min, max].flatMap((limit) =>
      limit !== undefined && hasValue(limit.aboveFloor) ? [limit.aboveFloor] : [],
    )
    if (above.length === 0) return []
    return finding({
      rule: 'wish-from-bare-floor',
      subjects: [id],
      weight: 'note',
      say: message('heights.wish-from-bare-floor', { height: heightWords(of), finish: finishToCome }),
      ask: message('heights.wish-from-bare-floor.ask', { finish: finishToCome }),
      figures: [finishToCome, ...above],
      basis: asRead,
      from: [factId('floor', 'finishWhere')],
    })
  })
}

/** Demands that cannot all be met, and by how much: something of them has to give. */
export function clashes(
  conflicts: readonly HeightConflict[],
  demands: readonly Demand[],
): readonly Finding[] {
  return conflicts.map(({ demands: ids, by }) => {
    const within = demands.filter(({ id }) => ids.includes(id))
    const from = inputsOf(within)
    return finding({
      rule: 'heights-clash',
      subjects: ids,
      weight: 'stop',
      say: message('heights.heights-clash', { count: ids.length, demands: demandNames(within), by }),
      ask: message('heights.heights-clash.ask'),
      about: sortedIds(within.flatMap(({ about }) => about)),
      figures: [known(by, 0, 'mm', from, chain), ...within.flatMap(limitsOf)],
      basis: chain,
      from,
    })
  })
}

/** Preferences that were given up for what must be; not one of a unit that cannot be hooked on at all. */
export function givenUpFindings({ givenUp, dropped }: Pick<Kept, 'givenUp' | 'dropped'>): readonly Finding[] {
  const cannot = new Set(dropped.map(({ id }) => id.replace(/^hook-on:/, 'hook-on-mid:')))
  return givenUp
    .filter(({ id }) => !cannot.has(id))
    .map((demand) =>
      finding({
        rule: 'preferred-height-given-up',
        subjects: [demand.id],
        weight: USUAL_RULES.has(ruleOf(demand)) ? 'note' : 'warn',
        say: message(
          USUAL_RULES.has(ruleOf(demand))
            ? 'heights.usual-height-given-up'
            : 'heights.preferred-height-given-up',
          { demand: demandName(demand) },
        ),
        about: sortedIds(demand.about),
        figures: limitsOf(demand),
        basis: demand.basis,
        from: inputsOf([demand]),
      }),
    )
}

/** Heights with less room than their readings are good for; told once for heights with the same two ends. */
export function marginalHeights(
  values: readonly HeightValue[],
  demands: readonly Demand[],
): readonly Finding[] {
  const told = new Set<string>()
  return values.flatMap((value) => {
    if (!value.marginal) return []
    const ends = endsOf(value)
    if (told.has(ends.join(' '))) return []
    told.add(ends.join(' '))
    const within = demands.filter(({ id }) => ends.includes(id))
    return finding({
      rule: 'height-marginal',
      subjects: [value.of],
      weight: 'ask',
      say: message('heights.height-marginal', {
        height: heightWords(value.of),
        lowest: value.lowest ?? '',
        highest: value.highest ?? '',
        demands: demandNames(within),
      }),
      ask: message('heights.height-marginal.ask'),
      about: sortedIds(within.flatMap(({ about }) => about)),
      figures: [value.height],
      basis: narrow,
    })
  })
}

/** What sets only one of the two ends: what sets both takes nothing from the room. */
function endsOf({ lowestBy, highestBy }: HeightValue): readonly string[] {
  const one = lowestBy.filter((id) => !highestBy.includes(id))
  const other = highestBy.filter((id) => !lowestBy.includes(id))
  return sortedIds([...one, ...other])
}

/** Legs that do not reach at the heights chosen. */
export function legFindings(
  context: HeightsContext,
  legs: ReadonlyMap<UnitId, readonly LegPlan[]>,
): readonly Finding[] {
  return context.standing.flatMap((unit) =>
    (legs.get(unit.id) ?? [])
      .filter(({ within }) => within === 'too-short' || within === 'too-long')
      .map((leg) => outOfReach(context, unit, leg)),
  )
}

function outOfReach(
  context: HeightsContext,
  { id, position, footings }: StandingUnit,
  leg: LegPlan,
): Finding {
  const footing = footings.find((foot) => foot.id === leg.foot)
  const values = {
    unit: context.nameOf(id),
    foot: footName(leg.foot, footing && footPlace(position, footing)),
    extension: leg.extension,
    min: leg.min,
    max: leg.max,
  }
  return finding({
    rule: 'leg-out-of-reach',
    subjects: [`${id}.${leg.foot}`],
    weight: 'stop',
    say: message(`heights.leg-out-of-reach.${leg.within}`, values),
    about: [id, `${id}.${leg.foot}`],
    figures: [leg.extension, leg.min, leg.max],
    basis: leg.extension.basis,
    where: { wall: position.unit.wall, along: footing?.along, height: leg.floor },
  })
}

/** A foot further than this outside the floor readings asks for more of them. Common practice, mm. */
const FAR_OUTSIDE = 300
const guessed: Basis = {
  kind: 'common-practice',
  why: 'a floor read more than 300 mm from where a unit stands says little about it',
}

/** Units with a foot far outside the floor readings: the plane laid through them may miss the floor there. */
export function outsideReadings(context: HeightsContext): readonly Finding[] {
  const places = [
    ...context.standing.map(({ id, position, footings }) => ({ id, position, footings })),
    ...context.bays.map(({ position, corners }) => ({ id: position.unit.id, position, footings: corners })),
  ]
  return places.flatMap(({ id, position, footings }) => {
    const furthest = [...footings].sort((a, b) => (b.outsideBy ?? 0) - (a.outsideBy ?? 0))[0]
    if (furthest === undefined || (furthest.outsideBy ?? 0) <= FAR_OUTSIDE) return []
    const worst = context.survey.plane?.worst
    const values = {
      unit: context.nameOf(id),
      foot: footName(furthest.id, footPlace(position, furthest)),
      outside: Math.round(furthest.outsideBy ?? 0),
    }
    return finding({
      rule: 'floor-outside-readings',
      subjects: [id],
      weight: 'ask',
      say:
        worst === undefined
          ? message('heights.floor-outside-readings', values)
          : message('heights.floor-outside-readings.worst', { ...values, worst }),
      ask: message('heights.floor-outside-readings.ask', { unit: context.nameOf(id) }),
      about: [id],
      figures: [furthest.floor],
      basis: guessed,
      where: { wall: position.unit.wall, along: furthest.along },
    })
  })
}

/** Hung units that cannot be lifted over their place under this ceiling; boxings have a rule of their own. */
export function hookOnFindings(
  context: HeightsContext,
  hookOn: ReadonlyMap<UnitId, HookOn>,
  undersides: ReadonlyMap<UnitId, Figure>,
): readonly Finding[] {
  return context.units.flatMap((unit) => {
    const { id, position } = unit
    const room = hookOn.get(id)
    if (room === undefined || room.fits !== 'no') return []
    const least = leastRoomToHookOn(position.unit)
    const there = roomUnderCeiling(context, undersides, unit)
    if (fitsIn(least, there) !== 'no') return []
    const short = sum('mm', room.needed.basis, [least], [there])
    const values = { unit: context.nameOf(id), needed: room.needed, least, there, short }
    const canBeWound = hasValue(least) && hasValue(room.needed) && least.value < room.needed.value
    return finding({
      rule: 'cannot-hook-on',
      subjects: [id],
      weight: 'stop',
      say: message(canBeWound ? 'heights.cannot-hook-on.wound-down' : 'heights.cannot-hook-on', values),
      about: [id],
      figures: [room.needed, there],
      basis: room.needed.basis,
      where: { wall: position.unit.wall, along: position.left },
    })
  })
}
