import { type Figure, hasValue, known, valueOf } from '../figure'
import type { Leaf } from '../geometry/swept-leaf'
import { factId } from '../kitchen/fact-id'
import type { Opening } from '../kitchen/schema'
import { pmBetween, pmOf, type StandingBody, standingBodies } from '../placing/fronts-in-room'
import { meets, nearTo, type Sweep, sweepOfLeaf } from '../placing/swept-against'
import type { Found, Rule, Site, Way } from './rule'

/** A door of a room is wanted open to a right angle. Common practice. */
const SQUARE = 90
/** Thickness of the leaf of an inner door, and how far back from its edge a lever reaches and where it begins, mm. Common practice. */
const LEAF_THICK = 40
const LEVER = 150
const LEVER_EDGE = 40

/** A door that opens less than this does not open, degrees. */
const AT_ONCE = 5

type Hinge = 'left' | 'right'

/** The leaf on its wall: hung at one side of its opening, on the finished face. */
function leafOn(site: Site, wall: string, door: Opening, hinge: Hinge, width: number): Leaf | null {
  const [left, right] = [door.left, door.right].map((end) => valueOf(site.survey.along(wall, end)))
  const frame = site.survey.frame(wall)
  const at = hinge === 'left' ? left : right
  const pivot = at === undefined ? null : site.survey.toRoom(wall, at, 0)
  if (pivot === null || frame === undefined) return null
  const bearing = (Math.atan2(frame.alongDir.y, frame.alongDir.x) * 180) / Math.PI
  return {
    pivot,
    shut: hinge === 'left' ? bearing : bearing + 180,
    opens: hinge === 'left' ? 'clockwise' : 'anticlockwise',
    width,
    thickness: LEAF_THICK,
    handle: valueOf(door.handle) ?? 0,
    handleBack: LEVER,
    handleEdge: LEVER_EDGE,
  }
}

interface Clash {
  readonly body: StandingBody
  readonly angle: number
  readonly by: Figure
}

/** All that stands in the way of the opening leaf, what it meets first at the head. */
function clashes(site: Site, wall: string, door: Opening, sweep: Sweep): readonly Clash[] {
  return standingBodies(site)
    .flatMap((body): readonly Clash[] => {
      const pm =
        pmOf([door.left.at, door.right.at, door.leaf, door.handle, ...body.figures]) +
        pmBetween(site.survey, wall, body.wall)
      const met = meets(sweep, body.prism)
      if (met === null && !nearTo(sweep, body.prism, pm)) return []
      const from = [...door.leaf.from, ...body.figures.flatMap((figure) => figure.from)]
      return [{ body, angle: met?.angle ?? SQUARE, by: known(met?.by ?? 0, pm, 'mm', from, rule.basis) }]
    })
    .sort((a, b) => value(b.by) - value(a.by) || a.angle - b.angle || (a.body.id < b.body.id ? -1 : 1))
}

const value = (figure: Figure) => valueOf(figure) ?? 0

const WHAT: Readonly<Record<StandingBody['what'], string>> = {
  unit: '',
  worktop: '',
  panel: '',
  handle: 'the front or handle of ',
}

function judged(site: Site, wall: string, door: Opening): readonly Found[] {
  const [left, right] = [door.left, door.right].map((end) => site.survey.along(wall, end)) as [Figure, Figure]
  const wide = hasValue(left) && hasValue(right) ? right.value - left.value : undefined
  const width = valueOf(door.leaf) ?? wide
  const z = doorHeights(site, wall, door)
  if (width === undefined || z === null) return []
  const hinges: readonly Hinge[] =
    door.hinge === 'left' || door.hinge === 'right' ? [door.hinge] : ['left', 'right']
  const swings = hinges.map((hinge) => {
    const leaf = leafOn(site, wall, door, hinge, width)
    const sweep = leaf === null ? null : sweepOfLeaf(leaf, SQUARE, z.bottom, z.top)
    return { hinge, hits: sweep === null ? [] : clashes(site, wall, door, sweep) }
  })
  const [worst] = swings.flatMap(({ hits }) => hits).sort((a, b) => value(b.by) - value(a.by))
  if (worst === undefined) return []
  const { body, angle, by } = worst
  const fact = (name: string) => factId('walls', wall, 'openings', door.id, name)
  const unread = (['opens', 'hinge'] as const).filter((name) => door[name] === null)
  const common = {
    subjects: [`${wall}.${door.id}`],
    about: [body.id, wall],
    where: { wall, along: left },
    from: [fact('hinge'), fact('opens')],
  }
  const what = `${WHAT[body.what]}${body.name}`
  const values = {
    wall: site.name(wall),
    what,
    angle,
    by,
    leaf: hasValue(door.leaf) ? door.leaf : width,
    square: SQUARE,
  }
  if (unread.length > 0 || !hasValue(door.leaf)) {
    const from = [...unread, ...(hasValue(door.leaf) ? [] : ['leaf'])].map(fact)
    return [{ ...common, weight: 'ask', said: ['not-read', values], from, ask: ['ask.read'] }]
  }
  const isSure = hasValue(by) && by.value > by.pm
  const other = door.hinge === 'left' ? 'right' : 'left'
  const waysOut: readonly Way[] = [
    {
      said: ['rehang', { side: other, wall: site.name(wall) }],
      cost: 'an hour',
      edits: [{ set: fact('hinge'), to: other }],
    },
    {
      said: ['outwards', { wall: site.name(wall) }],
      cost: 'a day or more',
      edits: [{ set: fact('opens'), to: 'out' }],
    },
  ]
  return [
    {
      ...common,
      weight: isSure ? 'stop' : 'ask',
      said: [isSure ? (angle < AT_ONCE ? 'at-once' : 'meets') : 'near', values],
      figures: [by],
      ask: ['ask'],
      waysOut,
    },
  ]
}

/** From the threshold to the head, from the line; a threshold nobody has read is at the floor, a head open. */
function doorHeights(
  site: Site,
  wall: string,
  door: Opening,
): { readonly bottom: number; readonly top: number } | null {
  const along = site.survey.along(wall, door.left)
  const bottom = valueOf(site.onFace(wall, along, door.bottom)) ?? Number.NEGATIVE_INFINITY
  const top = valueOf(site.onFace(wall, along, door.top)) ?? Number.POSITIVE_INFINITY
  return top > bottom ? { bottom, top } : null
}

/** F05: a door of the room that opens in and meets a unit, its handle or a worktop. */
export const rule: Rule = {
  id: 'room-door-meets-unit',
  heading: 'A room door that meets a unit',
  catches: ['F05'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'the leaf with its handle at every angle to square, hung on the finished face at the side of its opening',
  },
  why: 'Nobody thinks of the door while the units are drawn; then it opens half-way, onto a new handle.',
  words: {
    meets:
      'The door in {wall} does not open square: at about {angle} degrees its leaf of {leaf} meets {what}. That stands {by} too far in its way.',
    'at-once':
      'The door in {wall} cannot be opened: as soon as it moves, its leaf of {leaf} meets {what}. That stands {by} too far in its way.',
    near: 'The door in {wall} may not open square: its leaf of {leaf} comes near {what}. Readings this near cannot tell: measure the leaf, and from its hinges to where that will stand.',
    'not-read':
      'The door in {wall} may meet {what} as it opens, and it is not known how wide its leaf is, on which side it is hinged or which way it opens.',
    ask: 'Open the door and hold a tape from its hinges to where the unit will stand. Then move the unit, or have the door hung the other way.',
    'ask.read':
      'Look at the door from inside the kitchen: which way it opens, where its hinges are, how wide the leaf is.',
    rehang: 'Hang the door in {wall} on its {side} side, seen from inside.',
    outwards: 'Have the door in {wall} open outwards.',
  },
  check: (site) =>
    site.kitchen.walls.flatMap((wall) =>
      wall.openings
        .filter(
          ({ kind, opens, hinge }) =>
            kind === 'door' && (opens === 'in' || opens === null) && hinge !== 'slides',
        )
        .flatMap((door) => judged(site, wall.id, door)),
    ),
}
