import { type Figure, hasValue, known } from '../figure'
import { distanceOutside } from '../geometry/polygon'
import { type Leaf, reachOf } from '../geometry/swept-leaf'
import { factId } from '../kitchen/fact-id'
import { type DoorAtCorner, doorsAtCorners, meetsWallAt } from '../placing/doors-at-corners'
import { type Front, frontPm, frontsInRoom, leafOf, pmBetween, pmOf } from '../placing/fronts-in-room'
import { overLimit } from '../placing/over-limit'
import { prismOver } from '../placing/solid'
import { meets, nearTo, type Sweep, sweepOfLeaf } from '../placing/swept-against'
import type { Obstacle } from '../plan/types'
import { sum } from '../survey/sum'
import { boxNames } from '../units/box-name'
import type { Found, Rule, Site, Way } from './rule'

/** A door is opened at least to a right angle; a hinge whose sheet nobody read is taken to do no more. Common practice. */
const SQUARE = 90

/** As far as the door turns: by its hinges, or until the wall beside it stops it. */
function opensTo(corners: readonly DoorAtCorner[], { unit, door }: Front): number {
  const own = door !== null && hasValue(door.opens) ? door.opens.value : SQUARE
  const stopped = corners.find((at) => at.front.unit.id === unit.id && at.door.id === door?.id)
  const wall = stopped === undefined ? null : meetsWallAt(stopped.side, stopped.leaf)
  return wall !== null && hasValue(wall) ? Math.min(own, wall.value) : own
}

/** Further than this from the reach of a leaf nothing is in doubt, mm. */
const DOUBT = 100

function isNear(leaf: Leaf, { polygon }: Obstacle): boolean {
  return distanceOutside(polygon, leaf.pivot) < reachOf(leaf) + DOUBT
}

/** How far door and fitting share the same height: from the lower of their tops to the higher of their undersides. */
function sharedHeight(
  site: Site,
  front: Front,
  id: string,
): { readonly by: Figure; readonly underside: Figure } {
  const stated = site.kitchen.boxes.find((box) => box.id === id)
  const edge = (z: number) => sum('mm', rule.basis, [front.plan.underside, known(z, 0, 'mm', [], rule.basis)])
  const [low, high] = [edge(front.box.z0), edge(front.box.z1)]
  if (stated === undefined) return { by: high, underside: low }
  const along = site.survey.along(stated.wall, stated.left)
  const [underside, top] = [stated.bottom, stated.top].map((end) => site.onFace(stated.wall, along, end)) as [
    Figure,
    Figure,
  ]
  const under = sum('mm', rule.basis, [high], [underside])
  const over = sum('mm', rule.basis, [top], [low])
  const isUnder = !hasValue(over) || (hasValue(under) && under.value <= over.value)
  return { by: isUnder ? under : over, underside }
}

function judged(site: Site, front: Front, sweep: Sweep, fitting: Obstacle): readonly Found[] {
  const { unit, plan, door } = front
  const stated = site.kitchen.boxes.find(({ id }) => id === fitting.id)
  if (stated === undefined || door === null) return []
  const { by, underside } = sharedHeight(site, front, fitting.id)
  if (hasValue(by) && overLimit(by) === 'within') return []
  const pm =
    frontPm(front) +
    pmOf([stated.left.at, stated.right.at, stated.near, stated.out]) +
    pmBetween(site.survey, plan.wall, stated.wall)
  const prism = prismOver(fitting.polygon, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)
  const met = meets(sweep, prism)
  if (met === null && !nearTo(sweep, prism, pm)) return []
  const what = boxNames(site.kitchen).get(stated.id) ?? 'the boxing'
  const into = known(met?.by ?? 0, pm, 'mm', [...plan.left.from, ...stated.out.from], rule.basis)
  const common = {
    subjects: [unit.id, fitting.id],
    about: [unit.id, fitting.id],
    where: { wall: plan.wall, along: plan.left, height: underside },
    from: [factId('units', unit.id, 'doors', door.id, 'opens')],
  }
  const values = {
    unit: plan.name,
    what,
    wall: site.name(stated.wall),
    underside,
    by,
    angle: Math.round(met?.angle ?? 0),
    into,
  }
  if (!hasValue(underside) || !hasValue(by)) {
    const facts = ['bottom', 'top'].map((name) => factId('boxes', fitting.id, name, 'up'))
    return [{ ...common, weight: 'ask', said: ['not-read', values], from: facts, ask: ['ask.read'] }]
  }
  const isSure = met !== null && met.by > pm && overLimit(by) === 'over'
  return [
    {
      ...common,
      weight: isSure ? 'stop' : 'ask',
      said: [isSure ? 'meets' : 'near', values],
      figures: [by, into],
      ask: ['ask'],
      waysOut: waysOut(front, met?.angle ?? 0),
    },
  ]
}

/** Hung on its other side, or held back before it gets there. */
function waysOut({ unit, plan, door }: Front, angle: number): readonly Way[] {
  if (door === null) return []
  const fact = (name: string) => factId('units', unit.id, 'doors', door.id, name)
  const other = door.hinge === 'left' ? 'right' : 'left'
  const held = Math.floor(angle) - 2
  return [
    ...(unit.doors.length > 1
      ? []
      : [
          {
            said: ['rehang', { unit: plan.name, side: other }],
            cost: 'an hour',
            edits: [{ set: fact('hinge'), to: other }],
          } as const,
        ]),
    ...(held < SQUARE
      ? []
      : [
          {
            said: ['stop', { unit: plan.name, held }],
            cost: 'a part to buy',
            edits: [{ set: fact('opens'), to: held }],
          } as const,
        ]),
  ]
}

/** F112: the door of a wall or tall unit that meets a light, a beam or a boxing as it opens. */
export const rule: Rule = {
  id: 'door-meets-fitting',
  heading: 'A door that meets a fitting',
  catches: ['F112'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the leaf with its handle at every angle it opens to, hung on the front corner of its carcass (overlay, common practice), against what is fixed at its height',
  },
  why: 'What hangs from a ceiling is forgotten until a door strikes it.',
  words: {
    meets:
      'The door of {unit} meets {what} at about {angle} degrees as it opens. The underside of {what} is {underside:signed} from the line: {by} of the door is at its height, and it stands {into} in the way.',
    near: 'The door of {unit} may meet {what} as it opens, whose underside is {underside:signed} from the line. Readings this near cannot tell: read its underside and its place again.',
    'not-read':
      'The door of {unit} swings where {what} on {wall} is, and it has not been read from which height to which that reaches.',
    ask: 'Move the fitting, hang the door on its other side, or take a lower unit. Settle it before the unit is hung.',
    'ask.read': 'Read its underside and its top from the line.',
    rehang: 'Hang the door of {unit} on its {side} side.',
    stop: 'Fit a stop that holds the door of {unit} at {held} degrees.',
  },
  check: (site) => {
    if (site.obstacles.length === 0) return []
    const corners = doorsAtCorners(site)
    return frontsInRoom(site).flatMap((front): readonly Found[] => {
      const leaf = leafOf(front)
      const near = leaf === null ? [] : site.obstacles.filter((one) => isNear(leaf, one))
      if (leaf === null || near.length === 0) return []
      const sweep = sweepOfLeaf(leaf, opensTo(corners, front), -1, 1)
      return near.flatMap((fitting) => judged(site, front, sweep, fitting))
    })
  },
}
