import { type Basis, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { AccessPoint } from '../kitchen/schema'
import { pmBetween, pmOf, standingBodies } from '../placing/fronts-in-room'
import { aheadTo, type Strip, upTo, wallAhead } from '../placing/in-front'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import type { Found, Rule, Site } from './rule'

const KINDS: readonly AccessPoint['kind'][] = ['meter', 'consumer-unit']
const WHAT: Readonly<Partial<Record<AccessPoint['kind'], string>>> = {
  meter: 'the meter',
  'consumer-unit': 'the consumer unit',
}

const practice: Basis = {
  kind: 'common-practice',
  why: 'a flap wants 5 mm of air on either side to be opened',
}
const AIR = known(5, 0, 'mm', [], practice)
/** A flap nobody has measured is asked about where a unit stands this near the middle of its box, mm. */
const ABOUT = 400
/** Half of the width somebody at work before it takes, mm. */
const SHOULDERS = 300

/** The room in front of a board of breakers that the electrician's rules of the region ask for. */
function workingSpace(site: Site): { readonly space: Figure; readonly basis: Basis } {
  const basis: Basis =
    site.kitchen.region === 'north-america'
      ? {
          kind: 'standard',
          source: 'NEC (NFPA 70)',
          where: '110.26(A)(1), 3 ft; from memory, to be confirmed with the edition in force',
        }
      : {
          kind: 'common-practice',
          why: 'somebody standing before it with the cover off takes 700 mm; no published figure was found for a dwelling',
        }
  return { space: known(site.kitchen.region === 'north-america' ? 914 : 700, 0, 'mm', [], basis), basis }
}

interface Point {
  readonly point: AccessPoint
  readonly what: string
  readonly along: Figure
  readonly height: Figure
}

const isLevelWith = (height: Figure, { underside, top }: UnitPlan): boolean =>
  hasValue(height) &&
  hasValue(underside) &&
  hasValue(top) &&
  height.value > underside.value &&
  height.value < top.value

/** By how much the sides of a unit cut into the width a flap opens in; null where the unit is not there at all. */
function cut(site: Site, { point, along }: Point, plan: UnitPlan): Figure | null {
  const board = site.stated(plan.unit)?.board
  const side = board !== undefined && hasValue(board) ? board : known(0, 0, 'mm', [], rule.basis)
  if (!hasValue(point.door) || !hasValue(along) || !hasValue(plan.left) || !hasValue(plan.right)) return null
  const width = { ...point.door, value: point.door.value / 2, pm: point.door.pm / 2 }
  const isBehind = along.value > plan.left.value && along.value < plan.right.value
  const left = isBehind
    ? sum('mm', practice, [plan.left, side, width, AIR], [along])
    : sum('mm', practice, [plan.right, width, AIR], [along])
  const right = isBehind
    ? sum('mm', practice, [along, width, side, AIR], [plan.right])
    : sum('mm', practice, [along, width, AIR], [plan.left])
  const value = (figure: Figure) => (hasValue(figure) ? figure.value : Number.NEGATIVE_INFINITY)
  if (isBehind) return value(left) >= value(right) ? left : right
  return along.value >= plan.right.value ? left : right
}

function flap(site: Site, at: Point): readonly Found[] {
  const { point, what, along, height } = at
  const near = site
    .along(point.wall)
    .filter((plan) => plan.kind !== 'appliance-space' && isLevelWith(height, plan))
  return near.flatMap((plan): readonly Found[] => {
    const common = {
      subjects: [point.id, plan.unit],
      about: [plan.unit],
      where: { wall: point.wall, along, height },
    }
    const values = { what, unit: plan.name, along, door: point.door, wall: site.name(point.wall) }
    if (!hasValue(point.door)) {
      const isNear =
        hasValue(along) &&
        hasValue(plan.left) &&
        hasValue(plan.right) &&
        along.value > plan.left.value - ABOUT &&
        along.value < plan.right.value + ABOUT
      const fact = factId('access', point.id, 'door')
      return isNear
        ? [{ ...common, weight: 'ask', said: ['not-read', values], from: [fact], ask: ['ask.read'] }]
        : []
    }
    const by = cut(site, at, plan)
    const stands = by === null ? 'not-known' : overLimit(by)
    if (by === null || stands === 'within' || stands === 'not-known') return []
    return [
      {
        ...common,
        weight: stands === 'over' ? 'stop' : 'ask',
        said: [stands === 'over' ? 'flap' : 'near', { ...values, by }],
        ask: ['ask'],
      },
    ]
  })
}

/** What is in front of it, the cupboard it is in left out: that is opened first. */
function before(
  site: Site,
  { point, along, height }: Point,
): { readonly distance: Figure; readonly what: string; readonly id: string } | null {
  const frame = site.survey.frame(point.wall)
  if (frame === undefined || !hasValue(along) || !hasValue(height)) return null
  const foot = site.survey.toRoom(point.wall, along.value, 0)
  if (foot === null) return null
  const yaw = (Math.atan2(frame.alongDir.y, frame.alongDir.x) * 180) / Math.PI
  const out = hasValue(point.out) ? point.out.value : 0
  const strip: Strip = { pose: { ...foot, z: height.value, yaw }, x0: -SHOULDERS, x1: SHOULDERS, y0: out }
  const own = site
    .along(point.wall)
    .filter(
      ({ left, right }) =>
        hasValue(left) && hasValue(right) && left.value < along.value && right.value > along.value,
    )
    .map(({ unit }) => unit)
  const bodies = standingBodies(site)
    .filter(
      ({ id, wall, prism }) =>
        !own.includes(id) && wall !== point.wall && upTo(prism, height.value - 500, height.value + 500),
    )
    .map(({ id, name, prism, figures, wall }) => ({
      id,
      what: name,
      at: aheadTo(strip, prism.polygon),
      pm: pmOf(figures) + pmBetween(site.survey, wall, point.wall),
      from: figures.flatMap((f) => f.from),
    }))
  const { outline } = site.survey
  const walls = (outline ?? []).flatMap((from, i) => {
    const to = outline?.[(i + 1) % outline.length]
    const other = site.survey.frames[i]
    if (to === undefined || other === undefined || other.wall === point.wall) return []
    return [
      {
        id: other.wall,
        what: other.name,
        at: wallAhead(strip, from, to),
        pm: pmBetween(site.survey, other.wall, point.wall),
        from: other.length.from,
      },
    ]
  })
  const all = [...bodies, ...walls].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
  const [nearest] = all
  if (nearest === undefined || !Number.isFinite(nearest.at)) return null
  const pm = nearest.pm + pmOf([along, point.out])
  return {
    distance: known(nearest.at, pm, 'mm', [...along.from, ...nearest.from], rule.basis),
    what: nearest.what,
    id: nearest.id,
  }
}

function space(site: Site, at: Point): readonly Found[] {
  const { point, what, along, height } = at
  const ahead = before(site, at)
  if (ahead === null) return []
  const { space: wanted, basis } = workingSpace(site)
  const stands = overLimit(sum('mm', basis, [wanted], [ahead.distance]))
  if (stands === 'within' || stands === 'not-known') return []
  return [
    {
      subjects: [point.id, 'in-front'],
      about: [ahead.id],
      weight: 'ask',
      said: ['space', { what, opposite: ahead.what, there: ahead.distance, wanted }],
      where: { wall: point.wall, along, height },
      basis,
      ask: ['ask'],
    },
  ]
}

/** F111: a consumer unit or meter whose own door does not open once the units stand, or that nobody can stand before. */
export const rule: Rule = {
  id: 'meter-door',
  heading: 'A meter or board that does not open',
  catches: ['F111'],
  dangerous: true,
  basis: {
    kind: 'geometry',
    why: 'the flap turning out from its box, hinged at either side, against the sides of the units, and what stands in front',
  },
  why: 'Whoever has to switch off in a hurry must be able to open the flap and see what is behind it.',
  words: {
    flap: 'The flap of {what} on {wall}, {door} wide about {along}, does not open: {unit} cuts {by} into the width it needs.',
    near: 'The flap of {what} on {wall}, {door} wide about {along}, may not open beside {unit}. Readings this near cannot tell: measure the flap and its place again.',
    'not-read': 'The width of the flap of {what} on {wall} is not known, and {unit} stands about it.',
    space: 'In front of {what} {there} is left to {opposite}. Somebody at work before it takes {wanted}.',
    ask: 'Ask an electrician, or whoever the meter belongs to, how much room it must keep. Then move the unit, or have it moved by them.',
    'ask.read': 'Measure the flap; leave it shut if it is sealed.',
  },
  check: (site) =>
    site.kitchen.access
      .filter(({ kind }) => KINDS.includes(kind))
      .flatMap((point) => {
        const at: Point = {
          point,
          what: WHAT[point.kind] ?? '',
          along: site.survey.along(point.wall, point.along),
          height: site.survey.height(point.height),
        }
        return [...flap(site, at), ...space(site, at)]
      }),
}
