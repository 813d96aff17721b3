import { type Basis, type Figure, hasValue, known, restingOn } from '../figure'
import { factId } from '../kitchen/fact-id'
import { type ApplianceDoor, applianceDoors } from '../placing/appliance-doors'
import { pmBetween, pmOf, standingBodies } from '../placing/fronts-in-room'
import { aheadTo, type Strip, upTo, wallAhead } from '../placing/in-front'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import { boxNames } from '../units/box-name'
import { applianceSaid } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'somebody who loads an appliance stands beside or before its open door, and sideways takes 400 mm',
}
const STAND = known(400, 0, 'mm', [], practice)
/** No door of an appliance under a worktop reaches out further, mm: nearer, one that was not read matters. Common practice. */
const LARGEST_DOOR = 700

interface Ahead {
  readonly what: string
  readonly id: string
  readonly distance: Figure
}

function stripOf({ plan, front }: ApplianceDoor): Strip | null {
  if (plan.pose === null || !hasValue(plan.width) || !hasValue(plan.depth) || !hasValue(front)) return null
  return { pose: plan.pose, x0: 0, x1: plan.width.value, y0: plan.depth.value }
}

/** What stands opposite an appliance, nearest first, measured from the front of its carcass. */
function opposite(site: Site, door: ApplianceDoor): Ahead | null {
  const strip = stripOf(door)
  const { plan } = door
  if (strip === null || !hasValue(plan.top)) return null
  const own = [plan.left, plan.depth]
  const at = (value: number, wall: string, figures: readonly Figure[]): Figure => {
    const pm = pmOf([...own, ...figures]) + pmBetween(site.survey, plan.wall, wall)
    const from = [...own, ...figures].flatMap((figure) => figure.from)
    return known(value, pm, 'mm', from, rule.basis)
  }
  const [bottom, top] = [strip.pose.z, plan.top.value]
  const bodies = standingBodies(site)
    .filter(({ id, what, prism }) => id !== plan.unit && what !== 'panel' && upTo(prism, bottom, top))
    .filter(({ prism, wall }) => wall !== plan.wall || aheadTo(strip, prism.polygon) > 1)
    .map(
      (body): Ahead => ({
        what: body.name,
        id: body.id,
        distance: at(aheadTo(strip, body.prism.polygon), body.wall, body.figures),
      }),
    )
  const boxes = site.obstacles
    .filter(
      (box) =>
        (box.top ?? Number.POSITIVE_INFINITY) > bottom && (box.bottom ?? Number.NEGATIVE_INFINITY) < top,
    )
    .map((box): Ahead => {
      const stated = site.kitchen.boxes.find(({ id }) => id === box.id)
      const figures = stated === undefined ? [] : [stated.out]
      return {
        what: boxNames(site.kitchen).get(box.id) ?? 'the boxing',
        id: box.id,
        distance: at(aheadTo(strip, box.polygon), stated?.wall ?? plan.wall, figures),
      }
    })
  const { outline } = site.survey
  const walls = (outline ?? []).flatMap((from, i): readonly Ahead[] => {
    const to = outline?.[(i + 1) % outline.length]
    const frame = site.survey.frames[i]
    if (to === undefined || frame === undefined || frame.wall === plan.wall) return []
    return [{ what: frame.name, id: frame.wall, distance: at(wallAhead(strip, from, to), frame.wall, []) }]
  })
  const all = [...bodies, ...boxes, ...walls].filter(
    ({ distance }) => hasValue(distance) && Number.isFinite(distance.value),
  )
  const least = Math.min(
    ...all.map(({ distance }) => (hasValue(distance) ? distance.value : Number.POSITIVE_INFINITY)),
  )
  return all.find(({ distance }) => hasValue(distance) && distance.value === least) ?? null
}

function judged(site: Site, door: ApplianceDoor, all: readonly ApplianceDoor[]): readonly Found[] {
  const { appliance, plan } = door
  const ahead = opposite(site, door)
  if (ahead === null || !hasValue(ahead.distance)) return []
  const { doorOut } = appliance
  const what = applianceSaid(appliance)
  const common = { about: [plan.unit, ahead.id], where: { wall: plan.wall, along: plan.left } }
  const values = { what, opposite: ahead.what, aisle: ahead.distance, out: doorOut, stand: STAND }
  if (!hasValue(doorOut)) {
    if (ahead.distance.value >= LARGEST_DOOR + STAND.value) return []
    const fact = factId('appliances', appliance.id, 'doorOut')
    return [
      {
        ...common,
        subjects: [appliance.id],
        weight: 'ask',
        said: ['not-read', values],
        from: [fact],
        ask: ['ask.read'],
      },
    ]
  }
  const short = sum('mm', rule.basis, [doorOut], [ahead.distance])
  const stands = overLimit(short)
  if (stands === 'over' || stands === 'near') {
    const isSure = stands === 'over'
    return [
      {
        ...common,
        subjects: [appliance.id],
        weight: isSure ? 'stop' : 'ask',
        said: [isSure ? 'shut' : 'near', { ...values, short }],
        ask: ['ask'],
      },
    ]
  }
  const left = sum('mm', rule.basis, [ahead.distance], [doorOut])
  const tight = overLimit(sum('mm', practice, [STAND], [left]))
  const narrow: readonly Found[] =
    tight === 'over'
      ? [
          {
            ...common,
            subjects: [appliance.id],
            weight: 'warn',
            said: ['tight', { ...values, left }],
            ask: ['ask'],
          },
        ]
      : []
  return [...narrow, ...facing(door, ahead, all)]
}

/** Two appliances across an aisle whose doors cannot be open at once. */
function facing(door: ApplianceDoor, ahead: Ahead, all: readonly ApplianceDoor[]): readonly Found[] {
  const isAcross = ({ plan }: { readonly plan: UnitPlan }) => plan.unit === ahead.id
  return all.filter(isAcross).flatMap((other): readonly Found[] => {
    const [one, two] = [door.appliance, other.appliance]
    if (one.id >= two.id || !hasValue(two.doorOut)) return []
    const over = sum('mm', rule.basis, [one.doorOut, two.doorOut], [ahead.distance])
    if (overLimit(over) !== 'over') return []
    const values = { what: applianceSaid(one), other: applianceSaid(two), over, aisle: ahead.distance }
    return [
      {
        subjects: [one.id, two.id],
        about: [door.plan.unit, other.plan.unit],
        weight: 'warn',
        said: ['both', values],
        figures: [restingOn(over, [])],
        ask: ['ask'],
      },
    ]
  })
}

/** F68: an aisle too narrow, at its narrowest, for the doors of the appliances that open into it. */
export const rule: Rule = {
  id: 'aisle',
  heading: 'Little room before an open door',
  catches: ['F68'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'from the front of the appliance straight out to what stands nearest opposite, over its whole width',
  },
  why: 'An aisle is drawn between carcasses; doors, handles and worktops take their part of it.',
  words: {
    shut: 'The door of {what} does not come all the way open: it reaches {out} out, and {opposite} stands {aisle} in front of it. {short} is wanting.',
    near: 'The door of {what} may not come all the way open: it reaches {out} out, and {opposite} stands {aisle} in front of it. Readings this near cannot tell: measure the aisle again at its narrowest.',
    tight:
      'With the door of {what} open, {left} is left of the aisle to {opposite}. Somebody standing there takes {stand}: nobody passes while it is open.',
    both: 'The doors of {what} and of {other} cannot be open at once: together they want {over} more than the {aisle} between them.',
    'not-read':
      'How far the open door of {what} reaches out is not known, and {opposite} stands {aisle} in front of it.',
    ask: 'Hold a board as long as the door on the floor where it will open, and walk past. Then move the one or the other.',
    'ask.read': 'Look on its sheet how far the open door reaches.',
  },
  check: (site) => {
    const all = applianceDoors(site)
    return all.flatMap((door) => judged(site, door, all))
  },
}
