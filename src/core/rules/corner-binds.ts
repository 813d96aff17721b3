import { type Basis, type Figure, hasValue, known } from '../figure'
import { factId } from '../kitchen/fact-id'
import { applianceDoors } from '../placing/appliance-doors'
import {
  type Block,
  type CornerSide,
  cornerSides,
  fromCorner,
  gapToBlock,
  type Piece,
} from '../placing/corners'
import { type Front, frontsInRoom, handleStretch } from '../placing/fronts-in-room'
import { overLimit } from '../placing/over-limit'
import type { UnitPlan } from '../plan/types'
import { sum } from '../survey/sum'
import { applianceSaid } from '../units/part-name'
import type { Found, Rule, Site, Way } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'what comes out of a run passes the handles of the other run by 5 mm',
}
const PAST = known(5, 0, 'mm', [], practice)
/** No handle of a kitchen stands out further than this, mm: nearer than it, an unknown one matters. Common practice. */
const LARGEST_HANDLE = 60
const CORNER = known(0, 0, 'mm', [], { kind: 'geometry', why: 'the corner of the room' })

/** What comes straight out beside a corner: a drawer, or the door of an appliance that comes down. */
interface Mover {
  readonly plan: UnitPlan
  readonly what: 'drawer' | 'appliance'
  readonly name: string
  readonly from: Figure
  readonly to: Figure
  readonly low: number
  readonly high: number
}

function moversOf(site: Site, fronts: readonly Front[]): readonly Mover[] {
  const drawers = fronts.flatMap(({ drawer, plan, face, pose, box }): readonly Mover[] => {
    if (drawer === null) return []
    const to = sum('mm', rule.basis, [face, drawer.travel])
    const [low, high] = [pose.z + box.z0, pose.z + box.z1]
    return [{ plan, what: 'drawer', name: plan.name, from: face, to, low, high }]
  })
  const doors = applianceDoors(site).flatMap(({ appliance, plan, front, open }): readonly Mover[] => {
    if (plan.pose === null || !hasValue(plan.top)) return []
    const name = applianceSaid(appliance)
    return [{ plan, what: 'appliance', name, from: front, to: open, low: plan.pose.z, high: plan.top.value }]
  })
  return [...drawers, ...doors]
}

/** A shut front of the other run: where it stands from the corner, with its handle and without. */
function blockOf(side: CornerSide, front: Front, handle: boolean): Block {
  const { plan, face } = front
  const [x0, x1] = handle ? handleStretch(front) : [front.box.x0, front.box.x1]
  const at = (x: number) =>
    fromCorner(side, 'other', sum('mm', rule.basis, [plan.left, known(x, 0, 'mm', [], rule.basis)]))
  const reach = handle ? sum('mm', rule.basis, [face, front.handle]) : face
  return { from: at(x0), to: at(x1), reach }
}

/**
 * The gap between a thing's near edge and a block, over the whole way out; null where they never pass. Once they do, what
 * lies between the block and the corner counts as standing out as far: the trade's formula takes the other run so.
 */
function gapOf(side: CornerSide, mover: Mover, edge: Figure, block: Block): Figure | null {
  const figures = [edge, mover.from, mover.to]
  const piece = (...values: number[]): Piece => {
    const [x, y0, y1] = values as [number, number, number]
    return [
      [x, y0],
      [x, y1],
    ]
  }
  if (gapToBlock(side, block, rule.basis, figures, piece) === null) return null
  const isNearFrom = hasValue(block.from) && hasValue(block.to) && block.from.value <= block.to.value
  const whole = { reach: block.reach, from: CORNER, to: isNearFrom ? block.to : block.from }
  return gapToBlock(side, whole, rule.basis, figures, piece)
}

/**
 * The near edge of a unit from the corner. Where its far edge was set out from that very corner, that less its width: the
 * length of the wall says nothing of it.
 */
function edgeOf(site: Site, side: CornerSide, plan: UnitPlan): Figure {
  const unit = site.stated(plan.unit)
  const left = unit?.order.left
  return side.end === 'right' && left !== undefined && left.from === 'right' && left.face === 'room'
    ? sum('mm', rule.basis, [left.at], [unit?.width ?? plan.left])
    : fromCorner(side, 'own', plan[side.end])
}

interface Meeting {
  readonly mover: Mover
  readonly front: Front
  readonly edge: Figure
  readonly gap: Figure
  readonly short: Figure
  /** The same, known as the room is read: what the parts round the corner are out by is what the 5 mm are for. */
  readonly read: Figure
  readonly reach: Figure
}

const asPrinted = (size: Figure): Figure => (hasValue(size) ? { ...size, pm: 0 } : size)

function meetingsOf(
  site: Site,
  side: CornerSide,
  movers: readonly Mover[],
  fronts: readonly Front[],
): readonly Meeting[] {
  return movers
    .filter(({ plan }) => plan.wall === side.own)
    .flatMap((mover) =>
      fronts
        .filter((front) => front.plan.wall === side.other && front.unit.id !== mover.plan.unit)
        .filter(({ pose, box }) => pose.z + box.z0 < mover.high && pose.z + box.z1 > mover.low)
        .flatMap((front) =>
          (hasValue(front.handle) ? [false, true] : [false]).flatMap((handle): readonly Meeting[] => {
            const block = blockOf(side, front, handle)
            const edge = edgeOf(site, side, mover.plan)
            const gap = gapOf(side, mover, edge, block)
            if (gap === null) return []
            const asMade = gapOf(side, mover, edge, { ...block, reach: asPrinted(block.reach) }) ?? gap
            const [short, read] = [gap, asMade].map((one) => sum('mm', practice, [PAST], [one])) as [
              Figure,
              Figure,
            ]
            return [{ mover, front, edge, gap, short, read, reach: block.reach }]
          }),
        ),
    )
}

const shortBy = ({ short }: Meeting) => (hasValue(short) ? short.value : Number.NEGATIVE_INFINITY)

/** The tightest of the meetings of one unit with one other. */
function tightest(meetings: readonly Meeting[]): readonly Meeting[] {
  const pairs = new Map<string, Meeting>()
  for (const meeting of meetings) {
    const pair = `${meeting.mover.name} ${meeting.mover.plan.unit} ${meeting.front.unit.id}`
    const sofar = pairs.get(pair)
    if (sofar === undefined || shortBy(meeting) > shortBy(sofar)) pairs.set(pair, meeting)
  }
  return [...pairs.values()]
}

/** Flatter handles on the other run, or the unit further from the corner. */
function waysOut(site: Site, side: CornerSide, { mover, front, short }: Meeting): readonly Way[] {
  if (!hasValue(short)) return []
  const by = Math.ceil(short.value + short.pm)
  const flat = hasValue(front.handle) ? Math.floor(front.handle.value - by) : -1
  const lists = [
    ...front.unit.doors.map((d) => ['doors', d] as const),
    ...front.unit.drawers.map((d) => ['drawers', d] as const),
  ]
  const flatter = lists.flatMap(([list, { id, handle }]) =>
    hasValue(handle) && handle.value > flat
      ? [{ set: factId('units', front.unit.id, list, id, 'handle'), to: flat }]
      : [],
  )
  const left = site.stated(mover.plan.unit)?.order.left
  const isMovable = left !== undefined && hasValue(left.at) && left.from === side.end && left.face === 'room'
  const away =
    isMovable && hasValue(left.at)
      ? [{ set: factId('units', mover.plan.unit, 'order', 'left', 'at'), to: left.at.value + by }]
      : []
  return [
    ...(flat < 0
      ? []
      : [
          {
            said: ['flatter', { flat, unit: front.plan.name }],
            cost: 'a part to buy',
            edits: flatter,
          } as const,
        ]),
    ...(away.length === 0
      ? []
      : [{ said: ['away', { by, unit: mover.plan.name }], cost: 'a part to buy', edits: away } as const]),
  ]
}

function judged(site: Site, side: CornerSide, meeting: Meeting): readonly Found[] {
  const { mover, front, edge, gap, short, read, reach } = meeting
  const isHandleKnown = hasValue(front.handle)
  const values = {
    what: mover.name,
    unit: mover.plan.name,
    other: front.plan.name,
    wall: site.name(side.other),
    edge,
    handle: front.handle,
    past: PAST,
    gap,
    short,
    reach,
  }
  const common = {
    subjects: [`${mover.plan.unit}.${front.unit.id}`],
    about: [mover.plan.unit],
    where: { wall: side.own, along: mover.plan[side.end] },
  }
  const stands = overLimit(short)
  if (stands === 'not-known' || !hasValue(gap)) return []
  if (stands === 'within') {
    if (isHandleKnown || gap.value >= LARGEST_HANDLE + PAST.value) return []
    const list = front.door === null ? 'drawers' : 'doors'
    const fact = factId('units', front.unit.id, list, (front.door ?? front.drawer)?.id ?? '', 'handle')
    return [
      {
        ...common,
        about: [mover.plan.unit, front.unit.id],
        weight: 'ask',
        said: ['handle', values],
        figures: [gap],
        from: [fact],
        ask: ['ask.handle'],
      },
    ]
  }
  // The 5 mm are there to take up what readings are out by: inside them, only what may touch is asked about.
  if (stands === 'near' && hasValue(short) && short.value <= 0 && gap.value > gap.pm) return []
  const isShort = overLimit(read) === 'over'
  const near = !isShort ? '-near' : gap.value > 0 ? '-tight' : ''
  return [
    {
      ...common,
      weight: isShort ? 'stop' : 'ask',
      said: [`${mover.what}${near}`, values],
      ask: ['ask'],
      waysOut: waysOut(site, side, meeting),
    },
  ]
}

/** The door of an appliance beside a corner whose sheet does not say how far it comes out. */
function unread(site: Site, sides: readonly CornerSide[], fronts: readonly Front[]): readonly Found[] {
  return applianceDoors(site).flatMap(({ appliance, plan }): readonly Found[] => {
    if (hasValue(appliance.doorOut)) return []
    const near = sides.some((side) => {
      const edge = fromCorner(side, 'own', plan[side.end])
      const others = fronts.filter((front) => front.plan.wall === side.other)
      const reach = Math.max(...others.map(({ face }) => (hasValue(face) ? face.value : 0)))
      return side.own === plan.wall && hasValue(edge) && edge.value < reach + LARGEST_HANDLE + PAST.value
    })
    const fact = factId('appliances', appliance.id, 'doorOut')
    const values = { what: applianceSaid(appliance) }
    return near
      ? [
          {
            subjects: [appliance.id],
            about: [plan.unit],
            weight: 'ask',
            said: ['door-out', values],
            from: [fact],
            ask: ['ask.door-out'],
          },
        ]
      : []
  })
}

/** F43, F61: a drawer or the door of a dishwasher beside a corner that meets the fronts or handles of the other run. */
export const rule: Rule = {
  id: 'corner-binds',
  heading: 'Drawers that bind in the corner',
  catches: ['F43', 'F61'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the near edge of what comes out, from shut to fully out, against the fronts and handles round the corner',
  },
  why: 'Without a filler wide enough the first drawer beside a corner strikes the handle round it, and stays shut.',
  words: {
    drawer:
      'A drawer of {unit} does not come out past {other} round the corner. Its edge is {edge} from the corner, and what it has to pass stands {reach} out from {wall}. With {past} to spare it wants {short} more.',
    'drawer-tight':
      'A drawer of {unit} passes {other} round the corner by {gap} only, with every size as printed. Its edge is {edge} from the corner, and what it has to pass stands {reach} out from {wall}. {past} are wanted to spare: {short} is missing.',
    'drawer-near':
      'A drawer of {unit} may not come out past {other} round the corner. Its edge is {edge} from the corner, and what it has to pass, with {past} to spare, stands {reach} out from {wall}. Readings this near cannot tell: measure both runs from the corner again.',
    appliance:
      'The door of {what} does not open past {other} round the corner. Its edge is {edge} from the corner, and what it has to pass stands {reach} out from {wall}. With {past} to spare it wants {short} more.',
    'appliance-tight':
      'The door of {what} passes {other} round the corner by {gap} only, with every size as printed. Its edge is {edge} from the corner, and what it has to pass stands {reach} out from {wall}. {past} are wanted to spare: {short} is missing.',
    'appliance-near':
      'The door of {what} may not open past {other} round the corner. Its edge is {edge} from the corner, and what it has to pass, with {past} to spare, stands {reach} out from {wall}. Readings this near cannot tell: measure both runs from the corner again.',
    handle:
      'How far the handles of {other} stand out is not known. What comes out of {unit} passes its fronts with a gap of {gap}, so a handle may be in the way.',
    'door-out':
      'How far the open door of {what} reaches out is not known, and it opens beside a corner where another run stands.',
    ask: 'Measure both runs from the corner again, and the handles. Then plan a wider filler or flatter handles before anything is fixed.',
    'ask.handle': 'Lay the handle on a table and measure how far it stands out.',
    'ask.door-out': 'Look on its sheet how far the open door reaches.',
    flatter: 'Fit handles that stand out {flat} mm at most on {unit}.',
    away: 'Set {unit} {by} mm further from the corner, with a wider filler.',
  },
  check: (site) => {
    const fronts = frontsInRoom(site).filter(({ drawer }) => drawer?.inner !== true)
    const sides = cornerSides(site.kitchen, site.survey)
    const movers = moversOf(site, fronts)
    return [
      ...sides.flatMap((side) =>
        tightest(meetingsOf(site, side, movers, fronts)).flatMap((one) => judged(site, side, one)),
      ),
      ...unread(site, sides, fronts),
    ]
  },
}
