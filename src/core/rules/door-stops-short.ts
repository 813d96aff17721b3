import { type Basis, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { type Block, type CornerSide, fromCorner } from '../placing/corners'
import { bareWall, type DoorAtCorner, doorsAtCorners, leafGap } from '../placing/doors-at-corners'
import { type Front, frontsInRoom, HANDLE_BACK, handleStretch } from '../placing/fronts-in-room'
import { overLimit } from '../placing/over-limit'
import type { Edit, UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import type { Found, Rule, Site, Way } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'a handle keeps 3 mm off what stands beside it: a stick-on bumper, and doors are never hung truer than that',
}
const BUMPER = known(3, 0, 'mm', [], practice)
const SQUARE = known(90, 0, 'deg', [], {
  kind: 'common-practice',
  why: 'a door is wanted open to a right angle',
})
/** No handle of a kitchen stands out further than this, mm: nearer than it, an unknown one matters. Common practice. */
const LARGEST_HANDLE = 60

/** Something a door meets before it is square. */
interface Meeting {
  readonly front: Front
  readonly against: string
  readonly ids: readonly string[]
  readonly wall: string
  /** From the hinge edge of the door to what it meets, level with its handle. */
  readonly gap: Figure
  readonly isHingeKnown: boolean
}

/** What stands along the other wall at the height of the door: the wall itself, its units, their fronts and handles. */
function blocksOf(
  site: Site,
  side: CornerSide,
  front: Front,
  fronts: readonly Front[],
): readonly (readonly [UnitPlan | null, Block])[] {
  const low = front.pose.z + front.box.z0
  const high = front.pose.z + front.box.z1
  const at = (plan: UnitPlan, x: number) =>
    fromCorner(side, 'other', sum('mm', rule.basis, [plan.left, known(x, 0, 'mm', [], rule.basis)]))
  const units = site.positions.flatMap((position): readonly (readonly [UnitPlan, Block])[] => {
    const plan = site.unit(position.unit.id)
    if (plan === undefined || plan.wall !== side.other || plan.unit === front.unit.id || plan.pose === null)
      return []
    if (!hasValue(plan.top) || plan.top.value <= low || plan.pose.z >= high) return []
    const carcass = sum('mm', rule.basis, [position.out, position.depth])
    return [
      [
        plan,
        {
          from: fromCorner(side, 'other', plan.left),
          to: fromCorner(side, 'other', plan.right),
          reach: carcass,
        },
      ],
    ]
  })
  const shut = fronts
    .filter(({ plan }) => plan.wall === side.other && plan.unit !== front.unit.id)
    .filter(({ pose, box }) => pose.z + box.z0 < high && pose.z + box.z1 > low)
    .flatMap((front): readonly (readonly [UnitPlan, Block])[] => {
      const { plan, box, face, handle } = front
      const [x0, x1] = handleStretch(front)
      const leaf: Block = { from: at(plan, box.x0), to: at(plan, box.x1), reach: face }
      if (!hasValue(handle)) return [[plan, leaf]]
      const reach = sum('mm', rule.basis, [face, handle])
      return [
        [plan, leaf],
        [plan, { from: at(plan, x0), to: at(plan, x1), reach }],
      ]
    })
  return [[null, bareWall(side)], ...units, ...shut]
}

function roundTheCorner(
  site: Site,
  { side, front, door, leaf }: DoorAtCorner,
  fronts: readonly Front[],
): readonly Meeting[] {
  return blocksOf(site, side, front, fronts).flatMap(([plan, block]): readonly Meeting[] => {
    const gap = leafGap(side, leaf, block, SQUARE)
    if (gap === null) return []
    const against = plan === null ? site.name(side.other) : plan.name
    const ids = plan === null ? [side.other] : [plan.unit]
    return [{ front, against, ids, wall: side.own, gap, isHingeKnown: door.hinge !== null }]
  })
}

/** A neighbour on the hinge side that stands further out than the door, so that the open handle comes beside it. */
function besideIt(site: Site, front: Front, fronts: readonly Front[]): readonly Meeting[] {
  const { door, plan, box, face, handle } = front
  const width = box.x1 - box.x0
  if (door === null || !hasValue(handle) || !hasValue(face)) return []
  const isLeft = door.hinge === 'left'
  if (!isLeft && door.hinge !== 'right') return []
  const edge = sum('mm', rule.basis, [plan.left, known(isLeft ? box.x0 : box.x1, 0, 'mm', [], rule.basis)])
  const low = front.pose.z + box.z0
  const high = front.pose.z + box.z1
  return site.along(plan.wall).flatMap((other): readonly Meeting[] => {
    const near = isLeft ? other.right : other.left
    const gap = isLeft
      ? sum('mm', rule.basis, [edge], [near, handle])
      : sum('mm', rule.basis, [near], [edge, handle])
    if (other.unit === plan.unit || other.pose === null || !hasValue(other.top) || !hasValue(gap)) return []
    if (other.top.value <= low || other.pose.z >= high || gap.value < -handle.value - 2) return []
    const own = fronts.filter(({ unit }) => unit.id === other.unit).map((one) => one.face)
    const position = site.positions.find(({ unit }) => unit.id === other.unit)
    const faces = [
      ...own,
      ...(position === undefined ? [] : [sum('mm', rule.basis, [position.out, position.depth])]),
    ]
    const furthest = Math.max(...faces.map((one) => (hasValue(one) ? one.value : 0)))
    if (furthest <= face.value + Math.max(0, width - HANDLE_BACK)) return []
    return [{ front, against: other.name, ids: [other.unit], wall: plan.wall, gap, isHingeKnown: true }]
  })
}

const value = (figure: Figure) => (hasValue(figure) ? figure.value : Number.POSITIVE_INFINITY)

/** The tightest for each unit, and the tightest of those of its doors whose handle nobody has measured. */
function tightest(meetings: readonly Meeting[]): readonly Meeting[] {
  const units = [...new Set(meetings.map(({ front }) => front.unit.id))]
  return units.flatMap((id) =>
    [true, false].flatMap((isMeasured) => {
      const own = meetings.filter(
        ({ front }) => front.unit.id === id && hasValue(front.handle) === isMeasured,
      )
      const least = Math.min(...own.map(({ gap }) => value(gap)))
      return own.filter(({ gap }) => value(gap) === least).slice(0, 1)
    }),
  )
}

/** Hung on its other side, with a flatter handle, or held back by a stop: only what a single door of the unit can do. */
function waysOut({ front }: Meeting, short: Figure): readonly Way[] {
  const { unit, door } = front
  const fact = (id: string, name: string) => factId('units', unit.id, 'doors', id, name)
  const hung = unit.doors.filter(({ hinge }) => hinge === door?.hinge)
  const set = (name: string, to: unknown): readonly Edit[] =>
    hung.map(({ id }) => ({ set: fact(id, name), to }))
  const flat =
    hasValue(front.handle) && hasValue(short) ? Math.floor(front.handle.value - short.value - short.pm) : -1
  const other = door?.hinge === 'left' ? 'right' : 'left'
  const isPair = hung.length < unit.doors.length
  const rehung: Way = {
    said: ['rehang', { unit: front.plan.name, side: other }],
    cost: 'an hour',
    edits: set('hinge', other),
  }
  return [
    ...(isPair ? [] : [rehung]),
    ...(flat < 0
      ? []
      : [
          {
            said: ['flatter', { flat, unit: front.plan.name }],
            cost: 'a part to buy',
            edits: set('handle', flat),
          } as const,
        ]),
  ]
}

function judged(site: Site, meeting: Meeting): readonly Found[] {
  const { front, against, ids, wall, gap, isHingeKnown } = meeting
  const short = sum('mm', practice, [BUMPER], [gap])
  const stands = overLimit(short)
  const common = {
    subjects: [front.unit.id],
    about: [front.unit.id, ...ids],
    where: { wall, along: front.plan.left },
  }
  const values = {
    unit: front.plan.name,
    against,
    handle: front.handle,
    short,
    bumper: BUMPER,
    wall: site.name(wall),
  }
  const fact = (name: string) => factId('units', front.unit.id, 'doors', front.door?.id ?? '', name)
  if (stands === 'not-known') return []
  if (!hasValue(front.handle)) {
    if (value(gap) >= LARGEST_HANDLE + BUMPER.value) return []
    return [
      {
        ...common,
        subjects: [front.unit.id, 'handle'],
        weight: 'ask',
        said: ['handle', { ...values, gap }],
        figures: [gap],
        from: [fact('handle')],
        ask: ['ask.handle'],
      },
    ]
  }
  // The bumper is there to take up what readings are out by: inside it, only what may touch is asked about.
  const mayTouch = hasValue(gap) && gap.value <= gap.pm
  if (stands === 'within' || (stands === 'near' && value(short) <= 0 && !mayTouch)) return []
  if (!isHingeKnown) {
    return [
      {
        ...common,
        weight: 'ask',
        said: ['hinge', values],
        figures: [gap],
        from: [fact('hinge')],
        ask: ['ask.hinge'],
      },
    ]
  }
  return [
    {
      ...common,
      weight: stands === 'over' ? 'stop' : 'ask',
      said: [stands === 'over' ? 'short' : 'near', values],
      figures: [gap],
      from: [fact('hinge')],
      ask: ['ask'],
      waysOut: waysOut(meeting, short),
    },
  ]
}

/** A door whose own hinges stop it before it is square is not expected to open further. */
const opensSquare = ({ door }: Front) =>
  door !== null && !(hasValue(door.opens) && door.opens.value < SQUARE.value)

/** F45: a door beside a wall, another run or a deeper unit, that meets it with its handle before it is square. */
export const rule: Rule = {
  id: 'door-stops-short',
  heading: 'A door that stops short',
  catches: ['F45'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the handle of the door, opened square about the front corner of its carcass, against what stands on its hinge side',
  },
  why: 'A door that stops short of a right angle lets nothing out of its unit, and its handle wears a hole in the wall.',
  words: {
    short:
      'The door of {unit} does not open square: its handle stands out {handle} and meets {against} on its hinge side. With {bumper} to spare it wants {short} more room there.',
    near: 'The door of {unit} may not open square: its handle stands out {handle} and comes near {against} on its hinge side. Readings this near cannot tell: measure from the unit to it again, at the floor and at the top.',
    hinge:
      'It is not known on which side the door of {unit} is hinged. Hinged towards {against} it would not open square: its handle stands out {handle}, and {short} is wanting.',
    handle:
      'How far the handle of {unit} stands out is not known. Open square, its door leaves {gap} to {against}, so a handle may meet it.',
    ask: 'Plan a wider filler there, hang the door on its other side, or take a flatter handle. Settle it before the unit is fixed.',
    'ask.hinge': 'Look at the holes for the hinges, or decide on which side it is to hang.',
    'ask.handle': 'Lay the handle on a table and measure how far it stands out.',
    rehang: 'Hang the door of {unit} on its {side} side.',
    flatter: 'Fit handles that stand out {flat} mm at most on {unit}.',
  },
  check: (site) => {
    const fronts = frontsInRoom(site)
    const corner = doorsAtCorners(site).flatMap((door) =>
      opensSquare(door.front) ? roundTheCorner(site, door, fronts) : [],
    )
    const beside = fronts.filter(opensSquare).flatMap((front) => besideIt(site, front, fronts))
    return tightest([...corner, ...beside]).flatMap((meeting) => judged(site, meeting))
  },
}
