import { type Basis, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import { overLimit } from '../placing/over-limit'
import { lowestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import { boxNames } from '../units/box-name'
import type { UnitPosition } from '../units/positions'
import type { Found, Rule, Site } from './rule'

const practice: Basis = { kind: 'common-practice', why: 'a flap keeps 5 mm off what is over it' }
const CLEAR = known(5, 0, 'mm', [], practice)

type Door = UnitPosition['unit']['doors'][number]
type Box = Kitchen['boxes'][number]

/** Something over the arc of a flap: the ceiling, or a box whose underside has been read or not. */
interface Over {
  readonly name: string
  readonly id: string
  readonly underside: Figure
}

/** How far out from the wall the flap's arc reaches: level, it stands its own height out from the front. */
function reachOf({ unit, out, depth }: UnitPosition, door: Door): Figure {
  return sum('mm', rule.basis, [out, depth, unit.front, hasValue(door.height) ? door.height : unit.height])
}

function overlap(a0: Figure, a1: Figure, b0: Figure, b1: Figure): boolean {
  return (
    hasValue(a0) && hasValue(a1) && hasValue(b0) && hasValue(b1) && a0.value < b1.value && b0.value < a1.value
  )
}

/** Boxes of the same wall that hang over the arc: covings, beams, lights, boxings. */
function boxesOver(site: Site, position: UnitPosition, door: Door): readonly Over[] {
  const { unit, left, right, out, depth } = position
  return site.kitchen.boxes.flatMap((box: Box): readonly Over[] => {
    if (box.wall !== unit.wall) return []
    const [l, r] = [site.survey.along(box.wall, box.left), site.survey.along(box.wall, box.right)]
    const front = sum('mm', rule.basis, [out, depth])
    const near = hasValue(box.near) ? box.near : known(0, 0, 'mm', [], rule.basis)
    if (!overlap(left, right, l, r) || !overlap(front, reachOf(position, door), near, box.out)) return []
    const underside = site.survey.height(box.bottom, { wall: box.wall, along: l, out: near })
    return [{ name: boxNames(site.kitchen).get(box.id) ?? 'the boxing', id: box.id, underside }]
  })
}

function judged(site: Site, position: UnitPosition, door: Door): readonly Found[] {
  const { unit, left, right, name } = position
  const plan = site.unit(unit.id)
  if (plan === undefined) return []
  const ceiling = site.survey.ceilingOver(unit.wall, left, right, reachOf(position, door))
  const overs: readonly Over[] = [
    { name: 'the ceiling', id: 'ceiling', underside: ceiling },
    ...boxesOver(site, position, door),
  ]
  const read = overs.filter(({ underside }) => hasValue(underside))
  const underside = lowestOf(
    'mm',
    rule.basis,
    read.map((one) => one.underside),
  )
  const lowest = read.find(
    (one) => hasValue(underside) && hasValue(one.underside) && one.underside.value === underside.value,
  )
  const fact = factId('units', unit.id, 'doors', door.id, 'rise')
  const common = {
    subjects: [unit.id, door.id],
    about: [unit.id],
    where: { wall: unit.wall, along: left, height: plan.top },
  }
  const values = {
    unit: name,
    over: lowest?.name ?? '',
    underside,
    top: plan.top,
    rise: door.rise,
    clear: CLEAR,
  }
  const unread = overs.filter((one) => !hasValue(one.underside) && one.id !== 'ceiling')
  if (!hasValue(door.rise)) {
    const room = sum(
      'mm',
      rule.basis,
      [underside],
      [plan.top, hasValue(door.height) ? door.height : unit.height],
    )
    if (!hasValue(room) || room.value >= CLEAR.value) return []
    return [{ ...common, weight: 'ask', said: ['not-read', values], from: [fact], ask: ['ask.read'] }]
  }
  const short = sum('mm', practice, [plan.top, door.rise, CLEAR], [underside])
  const stands = lowest === undefined ? 'not-known' : overLimit(short)
  const asks = unread.map((one): Found => {
    const bottom = factId('boxes', one.id, 'bottom', 'up')
    return {
      ...common,
      subjects: [unit.id, door.id, one.id],
      weight: 'ask',
      said: ['over-not-read', { unit: name, over: one.name }],
      from: [bottom],
      ask: ['ask.over'],
    }
  })
  if (stands === 'within' || stands === 'not-known') return asks
  const isSure = stands === 'over'
  const less = hasValue(short) ? Math.floor(door.rise.value - short.value - short.pm) : -1
  return [
    {
      ...common,
      about: [unit.id, ...(lowest === undefined || lowest.id === 'ceiling' ? [] : [lowest.id])],
      weight: isSure ? 'stop' : 'ask',
      said: [isSure ? 'meets' : 'near', { ...values, short }],
      ask: ['ask'],
      waysOut:
        less < 0
          ? []
          : [
              {
                said: ['lower', { less, unit: name }],
                cost: 'a part to buy',
                edits: [{ set: fact, to: less }],
              },
            ],
    },
    ...asks,
  ]
}

/** F99: a flap that rises over the top of its unit into the ceiling, a coving or a light. */
export const rule: Rule = {
  id: 'flap-rise',
  heading: 'A flap that meets something',
  catches: ['F99'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the top of the unit and the rise of the flap, against the lowest thing over its arc, from the front out by its own height',
  },
  why: 'A flap that goes up needs room that nobody sees while it is shut.',
  words: {
    meets:
      'The flap of {unit} meets {over} as it opens. The top of the unit is {top:signed} from the line and the flap rises {rise} over it; {over} is at {underside:signed}. With {clear} to spare, {short} is wanting.',
    near: 'The flap of {unit} may meet {over} as it opens: the top of the unit is {top:signed} from the line, the flap rises {rise} over it, {over} is at {underside:signed}. Readings this near cannot tell: read it again in front of the unit.',
    'not-read':
      'How far the flap of {unit} rises over its top is not known. There is not room for its whole height under {over}.',
    'over-not-read': 'The flap of {unit} opens under {over}, and how low that hangs has not been read.',
    ask: 'Ask the maker for a lift fitting that rises less, hang the units lower, or take doors hinged at the side.',
    'ask.read': 'Look on the sheet of the lift fitting for the rise at this height of flap.',
    'ask.over': 'Read its underside from the line.',
    lower: 'Take a lift fitting for {unit} that rises {less} mm at most.',
  },
  check: (site) =>
    site.positions.flatMap((position) =>
      position.unit.doors
        .filter(({ hinge }) => hinge === 'top')
        .flatMap((door) => judged(site, position, door)),
    ),
}
