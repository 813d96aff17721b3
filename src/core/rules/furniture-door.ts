import { type Figure, hasValue } from '../figure'
import { heightNamed } from '../heights/height-named'
import { factId } from '../kitchen/fact-id'
import type { Appliance, Unit } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { plinthEndsOf } from '../placing/plinth-line'
import type { UnitPlan } from '../plan/types'
import { rangeOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import { applianceName } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

/** A limit of the sheet and the figure that has to keep to it. */
interface Limit {
  readonly what: 'plinth' | 'front'
  readonly side: 'low' | 'high'
  readonly is: Figure
  readonly limit: Figure
  /** By how much it is past the limit. */
  readonly by: Figure
}

function limitsOn(what: Limit['what'], range: { lowest: Figure; highest: Figure }, min: Figure, max: Figure) {
  const low: Limit = {
    what,
    side: 'low',
    is: range.lowest,
    limit: min,
    by: sum('mm', maker, [min], [range.lowest]),
  }
  const high: Limit = {
    what,
    side: 'high',
    is: range.highest,
    limit: max,
    by: sum('mm', maker, [range.highest], [max]),
  }
  return [low, high]
}
const maker = { kind: 'maker' } as const

/** The plinth under a space as it will really be: at both ends, over the finished floor. */
function plinthUnder(site: Site, plan: UnitPlan): { lowest: Figure; highest: Figure } | null {
  const part = site.kitchen.finishing.find(({ kind, of }) => kind === 'plinth' && of.includes(plan.unit))
  const position = site.positions.find(({ unit }) => unit.id === plan.unit)
  if (part === undefined || position === undefined) return null
  const underside = heightNamed(site.heights, 'base-underside')
  const ends = plinthEndsOf(site.kitchen, site.survey, plan, position, underside, part.setBack)
  const heights = ends.map(({ height }) => height)
  return rangeOf('mm', maker, heights)
}

function judged(site: Site, plan: UnitPlan, space: Unit, appliance: Appliance): readonly Found[] {
  const { plinthMin, plinthMax, frontMin, frontMax } = appliance
  const plinth = plinthUnder(site, plan)
  const name = applianceName(site.kitchen, appliance)
  const fronts = space.doors.map(({ height }) => height)
  const isAnySheet = [plinthMin, plinthMax, frontMin, frontMax].some(hasValue)
  if (!isAnySheet) {
    if (fronts.length === 0) return []
    const from = ['plinthMin', 'plinthMax', 'frontMin', 'frontMax'].map((fact) =>
      factId('appliances', appliance.id, fact),
    )
    const values = { appliance: name }
    const about = [plan.unit, appliance.id]
    return [
      { subjects: [appliance.id], about, weight: 'ask', said: ['not-known', values], from, ask: ['ask'] },
    ]
  }
  const limits = [
    ...(plinth === null ? [] : limitsOn('plinth', plinth, plinthMin, plinthMax)),
    ...fronts.flatMap((height) => limitsOn('front', { lowest: height, highest: height }, frontMin, frontMax)),
  ]
  return limits.flatMap(({ what, side, is, limit, by }): readonly Found[] => {
    const stands = overLimit(by)
    if (stands !== 'over' && stands !== 'near') return []
    const said = stands === 'over' ? `${what}-${side}` : `${what}-near`
    return [
      {
        subjects: [appliance.id, `${what}-${side}`],
        about: [plan.unit, appliance.id],
        weight: stands === 'over' ? 'stop' : 'ask',
        said: [said, { appliance: name, is, limit, by }],
        where: { wall: plan.wall, along: plan.left },
        ask: ['ask'],
      },
    ]
  })
}

/** F102: an appliance behind a furniture door, over a plinth or with a door that its sheet does not allow. */
export const rule: Rule = {
  id: 'furniture-door',
  heading: 'The door of an appliance and the plinth',
  catches: ['F102'],
  dangerous: false,
  basis: maker,
  why: 'The door swings down past the plinth: over too high a plinth it strikes it, over too low a one the tub is seen.',
  words: {
    'plinth-low':
      'The plinth under {appliance} is only {is} high where the floor is highest; its sheet asks for {limit} at least. {by} too low: the tub shows under the door.',
    'plinth-high':
      'The plinth under {appliance} is {is} high where the floor is lowest; its sheet allows {limit}. {by} too high: the door strikes the plinth as it opens.',
    'plinth-near':
      'The plinth under {appliance} is {is} high and the limit of its sheet is {limit}. Readings this near cannot tell: read the floor at the plinth again.',
    'front-low':
      'The furniture door of {appliance} is {is} high; its sheet asks for {limit} at least. It is {by} too short, and the tub shows.',
    'front-high':
      'The furniture door of {appliance} is {is} high; its sheet allows {limit}. It is {by} too high, and strikes the plinth as it opens.',
    'front-near':
      'The furniture door of {appliance} is {is} high and the limit of its sheet is {limit}: too near to tell. Measure the door.',
    'not-known':
      '{appliance} has a furniture door, and what plinth and what door its sheet allows has not been entered.',
    ask: 'Find plinth height and door height on its sheet. The plinth may be cut away under the door, or the base units set to another height.',
  },
  check: (site) =>
    site.units.flatMap((plan) => {
      const space = site.stated(plan.unit)
      const appliance = site.kitchen.appliances.find(({ id }) => id === space?.applianceBay)
      if (space === undefined || appliance === undefined || plan.kind !== 'appliance-space') return []
      return judged(site, plan, space, appliance)
    }),
}
