import { type Basis, derive, type Figure, hasValue, known, valueOf } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Opening } from '../kitchen/schema'
import { type ApplianceDoor, applianceDoors } from '../placing/appliance-doors'
import { pmBetween, pmOf, type StandingBody, standingBodies } from '../placing/fronts-in-room'
import { overLimit } from '../placing/over-limit'
import { inUnit, type Polygon, rectangleInRoom } from '../placing/solid'
import type { Pose } from '../plan/types'
import { sum } from '../survey/sum'
import { applianceSaid } from '../units/part-name'
import type { Found, Rule, Site } from './rule'

const practice: Basis = {
  kind: 'common-practice',
  why: 'the way through a kitchen door is kept 750 mm clear, which is about what an inner door leaves; 600 mm past its open leaf',
}
const PASS = known(750, 0, 'mm', [], practice)
const PAST_LEAF = known(600, 0, 'mm', [], practice)
/** How far into the room the way is looked at, from the wall: past the end of a run one can turn, mm. Common practice. */
const WAY = 800
/** Thickness of the leaf of an inner door, mm. Common practice. */
const LEAF_THICK = 40

interface Way {
  readonly wall: string
  readonly door: Opening
  readonly pose: Pose
  readonly width: Figure
}

function waysIn(site: Site): readonly Way[] {
  return site.kitchen.walls.flatMap((wall) =>
    wall.openings.flatMap((door): readonly Way[] => {
      if (door.kind !== 'door' && door.kind !== 'arch') return []
      const [left, right] = [door.left, door.right].map((end) => site.survey.along(wall.id, end)) as [
        Figure,
        Figure,
      ]
      const frame = site.survey.frame(wall.id)
      const at = hasValue(left) ? site.survey.toRoom(wall.id, left.value, 0) : null
      const width = sum('mm', rule.basis, [right], [left])
      if (at === null || frame === undefined || !hasValue(width)) return []
      const yaw = (Math.atan2(frame.alongDir.y, frame.alongDir.x) * 180) / Math.PI
      return [{ wall: wall.id, door, pose: { ...at, z: 0, yaw }, width }]
    }),
  )
}

/** What a body takes of the width of the way in front of an opening, and from how far out; null when it takes none. */
interface Taken {
  readonly from: number
  readonly to: number
  readonly ahead: number
}

/** The part of a convex polygon between the wall and the depth of the way, as a stretch of the opening's width. */
function takenBy(way: Way, polygon: Polygon): Taken | null {
  const local = polygon.map((corner) => inUnit(way.pose, corner))
  const inWay = local.flatMap((a, i) => {
    const b = local[(i + 1) % local.length] ?? a
    const crossing = [0, WAY].flatMap((y) => {
      const share = (y - a.y) / (b.y - a.y)
      return a.y !== b.y && share > 0 && share < 1 ? [{ x: a.x + (b.x - a.x) * share, y }] : []
    })
    return [...(a.y >= 0 && a.y <= WAY ? [a] : []), ...crossing]
  })
  const xs = inWay.map(({ x }) => x)
  const width = valueOf(way.width) ?? 0
  const [from, to] = [Math.max(0, Math.min(...xs)), Math.min(width, Math.max(...xs))]
  if (inWay.length === 0 || to - from <= 0) return null
  return { from, to, ahead: Math.min(...inWay.map(({ y }) => y)) }
}

/** The widest straight stretch that is left of the opening, or the way sideways before what stands in it, if that is more. */
function clearOf(width: number, taken: readonly Taken[]): number {
  const sorted = [...taken].sort((a, b) => a.from - b.from)
  let [at, widest] = [0, 0]
  for (const { from, to } of sorted) {
    widest = Math.max(widest, from - at)
    at = Math.max(at, to)
  }
  return Math.max(widest, width - at, Math.min(...taken.map(({ ahead }) => ahead)))
}

interface InWay {
  readonly id: string
  readonly name: string
  readonly wall: string
  readonly polygon: Polygon
  readonly figures: readonly Figure[]
}

/** The clear way past some bodies, and which of them takes most of it; null when none is in it. */
function clearPast(
  site: Site,
  way: Way,
  bodies: readonly InWay[],
): { readonly clear: Figure; readonly body: InWay } | null {
  const within = bodies.flatMap((body) => {
    const taken = takenBy(way, body.polygon)
    return taken === null ? [] : [{ body, taken }]
  })
  const most = Math.max(...within.map(({ taken }) => taken.to - taken.from))
  const worst = within.find(({ taken }) => taken.to - taken.from === most)
  const width = valueOf(way.width)
  if (worst === undefined || width === undefined) return null
  const pm = pmOf(worst.body.figures) + pmBetween(site.survey, way.wall, worst.body.wall) + pmOf([way.width])
  const from = [...way.width.from, ...worst.body.figures.flatMap((figure) => figure.from)]
  const value = clearOf(
    width,
    within.map(({ taken }) => taken),
  )
  return { clear: known(value, pm, 'mm', from, rule.basis), body: worst.body }
}

const standing = (site: Site): readonly InWay[] =>
  standingBodies(site).map(({ id, name, wall, prism, figures }: StandingBody) => ({
    id,
    name,
    wall,
    polygon: prism.polygon,
    figures,
  }))

/** The open doors of appliances, as they lie out from their fronts. */
function openDoors(doors: readonly ApplianceDoor[]): readonly InWay[] {
  return doors.flatMap(({ appliance, plan, open, front }): readonly InWay[] => {
    const [w, d] = [plan.width, plan.depth].map(valueOf)
    if (plan.pose === null || w === undefined || d === undefined || !hasValue(open) || !hasValue(front))
      return []
    const polygon = rectangleInRoom(plan.pose, 0, w, d, d + open.value - front.value)
    const figures = [plan.left, plan.width, open]
    return [
      {
        id: plan.unit,
        name: `the open door of ${applianceSaid(appliance)}`,
        wall: plan.wall,
        polygon,
        figures,
      },
    ]
  })
}

/** What is wanted: as much as the opening itself gives, where that is less. */
function wantedOf(limit: Figure, width: Figure): Figure {
  return derive('mm', practice, [limit, width], (l, w) => Math.min(l as number, w as number))
}

function judged(site: Site, way: Way): readonly Found[] {
  const { wall, door, width } = way
  const shut = clearPast(site, way, standing(site))
  const common = { where: { wall, along: site.survey.along(wall, door.left) }, ask: ['ask'] as const }
  const subjects = [`${wall}.${door.id}`]
  if (shut !== null) {
    const wanted = wantedOf(PASS, width)
    const short = sum('mm', practice, [wanted], [shut.clear])
    const stands = hasValue(short) && short.value <= 0 ? 'within' : overLimit(short)
    const values = { wall: site.name(wall), body: shut.body.name, clear: shut.clear, wanted }
    if (stands === 'over' || stands === 'near') {
      const isSure = stands === 'over'
      return [
        {
          ...common,
          subjects,
          about: [shut.body.id, wall],
          weight: isSure ? 'stop' : 'ask',
          said: [isSure ? 'narrow' : 'near', values],
        },
      ]
    }
    const leaf =
      door.opens === 'in' && hasValue(door.handle) ? known(LEAF_THICK, 0, 'mm', [], practice) : null
    const left = leaf === null ? null : sum('mm', practice, [shut.clear], [leaf, door.handle])
    if (left !== null && overLimit(sum('mm', practice, [wantedOf(PAST_LEAF, width)], [left])) === 'over') {
      const past = { ...values, clear: left, wanted: wantedOf(PAST_LEAF, width), handle: door.handle }
      const from = [factId('walls', wall, 'openings', door.id, 'opens')]
      return [
        { ...common, subjects, about: [shut.body.id, wall], weight: 'stop', said: ['leaf', past], from },
      ]
    }
  }
  const open = clearPast(site, way, openDoors(applianceDoors(site)))
  if (open === null) return []
  const wanted = wantedOf(PAST_LEAF, width)
  if (overLimit(sum('mm', practice, [wanted], [open.clear])) !== 'over') return []
  const values = { wall: site.name(wall), body: open.body.name, clear: open.clear, wanted }
  return [
    {
      ...common,
      subjects: [...subjects, open.body.id],
      about: [open.body.id, wall],
      weight: 'warn',
      said: ['open', values],
    },
  ]
}

/** F110: the way through a door or arch, past the end of a run with its worktop and handles, doors shut and open. */
export const rule: Rule = {
  id: 'passage',
  heading: 'A passage that is too narrow',
  catches: ['F110'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'what is left of the width of the opening straight ahead, past worktops and handles, at its narrowest',
  },
  why: 'A run is drawn up to the door; the worktop and the handles then stand in the way through it.',
  words: {
    narrow:
      'Through the opening in {wall} only {clear} is left past {body}, worktop and handles counted. {wanted} is wanted to walk through.',
    near: 'Through the opening in {wall} about {clear} is left past {body}, worktop and handles counted, and {wanted} is wanted. Readings this near cannot tell: measure it again on the floor.',
    leaf: 'With the door in {wall} standing open, only {clear} is left between it and {body}: its handle stands out {handle}. {wanted} is wanted to walk through.',
    open: 'Through the opening in {wall} only {clear} is left past {body}. {wanted} is wanted to walk through, so nobody does while it is open.',
    ask: 'Mark the end of the run on the floor, worktop and handles with it, and walk through. Then end the run sooner.',
  },
  check: (site) => waysIn(site).flatMap((way) => judged(site, way)),
}
