import type { PlanPoint, RoomPoint } from '../../core/plan/types'
import { type Direction, FIELD, type Framing, frameView } from './frame-view'
import { type Blocker, blockerFrom, type InTheWay, isBehindWall, isFacing, type Screen } from './rays'

/** A flat spot to be seen, and which way it faces; null: it counts from every side. */
export interface Spot {
  readonly at: RoomPoint
  readonly faces: RoomPoint | null
  /** The wall it is on: left out with that wall. */
  readonly wall: string | null
  /** Surface it stands for, mm²; left out: all the same. */
  readonly area?: number
}

/** The part in hand at one moment: its own spots, and itself as something that may hide a fixing. */
export interface Moment {
  readonly part: readonly Spot[]
  readonly blocker: Blocker | null
}

/** What the view of one operation is to show. Plain data; nothing of it is decided here. */
export interface ViewSubject {
  /** The way the wall it is about faces; null: the whole room. */
  readonly facing: PlanPoint | null
  readonly moments: readonly Moment[]
  /** Every one of these must be seen at every moment: holes, fixings, the level. */
  readonly fixings: readonly Spot[]
  /** The place it goes to, lines struck: the more of it the better. */
  readonly place: readonly Spot[]
  readonly frame: readonly RoomPoint[]
  readonly blockers: readonly Blocker[]
  readonly screens: readonly Screen[]
  /** The eye is nobody's that lies on the floor: lower than this only if nothing else shows the fixings. */
  readonly lowestEye: number
}

export interface View extends Direction, Framing {
  /** Walls between the eye and the room, by id: not drawn. */
  readonly hidden: readonly string[]
  readonly score: number
  /** Shares seen, 0..1. */
  readonly seen: {
    readonly part: number
    readonly fixings: number
    /** Of the round marks drawn at the fixings: how much of them. */
    readonly marks: number
    readonly place: number
  }
}

/** Directions tried: 15° steps, because people hardly tell finer ones apart (Niimi and Yokosawa 2009). */
export const STEP = 15
export const ELEVATIONS = [20, 5, 35, -10, 50] as const
/** Furthest from straight on that a wall is looked at, degrees. */
const WIDEST = 75
/** A three-quarter view: what is preferred when all else is equal, degrees from straight on. */
const THREE_QUARTER = 35
/** Along one wall the way we looked before is kept while it is no worse than the best by this; on another wall, by less. */
const KEEP = { sameWall: 0.4, otherWall: 0.1 }
/** Degrees of turn that weigh as much as one point, on the same wall and on another. */
const TURN = { sameWall: 90, otherWall: 200 }
/** A surface seen more edge-on than this can't be read: sine of 17°. */
const EDGE_ON = 0.3
/** Radius of a mark over the height of the picture: 6.5 px of 600, so that it holds on small pictures too. */
const MARK = 6.5 / 600
/** Marks are drawn about this far in front of their fixing, mm (see materials.ts). */
const FORWARD = 45
/** Enough of the part in hand (methods B.4, B1). */
export const PART_ENOUGH = 0.6
/** Enough of its place to know where it goes. */
const PLACE_ENOUGH = 0.7

const turnBetween = (a: number, b: number) => Math.abs(((((a - b) % 360) + 540) % 360) - 180)
const azimuthOf = (d: PlanPoint) => (Math.atan2(d.y, d.x) * 180) / Math.PI

/** All directions worth trying, in a fixed order so that equal scores always give the same one. */
export function candidates(subject: ViewSubject): readonly Direction[] {
  const straight = subject.facing === null ? null : azimuthOf(subject.facing)
  const turns = straight === null ? 360 / STEP : (2 * WIDEST) / STEP + 1
  const first = straight === null ? 0 : straight - WIDEST
  return ELEVATIONS.flatMap((elevation) =>
    Array.from({ length: turns }, (_, i) => ({ azimuth: first + i * STEP, elevation })),
  )
}

/** Whether an operation goes on along the wall of the one before it. */
export type Run = 'sameWall' | 'otherWall'

/**
 * The view of an operation: the part in hand and every fixing really visible, three-quarter, with as few turns as may
 * be. The direction of the operation before is kept when it still shows all that and is nearly as good.
 */
export function chooseView(
  subject: ViewSubject,
  aspect: number,
  before: Direction | null,
  run: Run = 'sameWall',
): View {
  const attempt = (d: Direction) => tryView(subject, aspect, d, before, run)
  const kept = before !== null && isAllowed(subject, before) ? attempt(before) : null
  if (kept !== null && showsAll(kept) && kept.score >= idealScore(subject) - KEEP[run]) return kept
  const tried = candidates(subject).map(attempt)
  const coarse = bestOf(tried)
  const isCut = coarse.seen.marks < 1 || coarse.seen.fixings < 1
  const best = isCut ? bestOf([coarse, ...near(coarse).map(attempt)]) : coarse
  const isAsClear = kept !== null && kept.seen.marks >= best.seen.marks - 0.01
  return kept !== null && isAsClear && showsAll(kept) && kept.score >= best.score - KEEP[run] ? kept : best
}

/** The best view; of equal ones the first. */
function bestOf(views: readonly View[]): View {
  return views.reduce((a, b) => (b.score > a.score + 1e-9 ? b : a))
}

/** Finer steps round a direction, for a mark that a board's edge just cuts. */
function near({ azimuth, elevation }: Direction): readonly Direction[] {
  return [0, -5, 5].flatMap((up) =>
    [0, -5, 5, -10, 10].map((turn) => ({ azimuth: azimuth + turn, elevation: elevation + up })),
  )
}

function isAllowed(subject: ViewSubject, d: Direction): boolean {
  return subject.facing === null || turnBetween(d.azimuth, azimuthOf(subject.facing)) <= WIDEST + 1e-9
}

/** The share is reckoned from a few spots, so a little more than enough is asked of it. */
const MARGIN = 0.1
const showsAll = ({ seen }: View) => seen.fixings >= 1 && seen.part >= PART_ENOUGH + MARGIN

/** What a view scores that lacks nothing and fills its picture as well as most can: then others needn't be tried. */
function idealScore(subject: ViewSubject): number {
  return total({ fixings: 1, marks: 1, part: 1, place: 1 }, subject, { quarter: 1, height: 1, fill: 0.7 }, 0)
}

function tryView(
  subject: ViewSubject,
  aspect: number,
  d: Direction,
  before: Direction | null,
  run: Run,
): View {
  const { eye, target, fill } = frameView(d, subject.frame, aspect)
  const hidden = subject.screens.filter((s) => !isFacing(s, eye)).map((s) => s.wall)
  const gone = new Set(hidden)
  const blockers = subject.blockers
    .filter((b) => b.wall === null || !gone.has(b.wall))
    .map((b) => blockerFrom(eye, b))
  const screens = subject.screens.filter((s) => !gone.has(s.wall))
  const isSeen = (spot: Spot, more: InTheWay | null) =>
    !(spot.wall !== null && gone.has(spot.wall)) &&
    squareness(spot, eye) > EDGE_ON &&
    !screens.some((s) => isBehindWall(eye, spot.at, s)) &&
    !blockers.some((isBehind) => isBehind(spot.at)) &&
    !(more?.(spot.at) ?? false)
  const given: readonly Moment[] =
    subject.moments.length > 0 ? subject.moments : [{ part: [], blocker: null }]
  const moments = given.map((m) => ({
    part: m.part,
    own: m.blocker === null ? null : blockerFrom(eye, m.blocker),
  }))
  const seen = {
    part: Math.min(
      ...moments.map((m) => shareOfPart(m.part, eye, (s) => isSeen({ ...s, faces: null }, null))),
    ),
    fixings: Math.min(...moments.map((m) => share(subject.fixings, (s) => isSeen(s, m.own)))),
    marks: Math.min(
      ...moments.map((m) =>
        share(
          subject.fixings.flatMap((s) => overMark(s, eye)),
          (s) => isSeen(s, m.own),
        ),
      ),
    ),
    place: share(subject.place, (s) => isSeen(s, null)),
  }
  const angle = subject.facing === null ? THREE_QUARTER : turnBetween(d.azimuth, azimuthOf(subject.facing))
  const quarter = 1 - Math.min(1, Math.abs(angle - THREE_QUARTER) / 45)
  const height = 1 - Math.min(1, Math.abs(d.elevation - 17) / 40)
  const turn =
    before === null ? 0 : turnBetween(d.azimuth, before.azimuth) + Math.abs(d.elevation - before.elevation)
  const low = eye.z < subject.lowestEye ? 2.5 : 0
  return {
    ...d,
    eye,
    target,
    hidden,
    seen,
    score: total(seen, subject, { quarter, height, fill }, turn / TURN[run]) - low,
  }
}

/** One number for a view. A fixing that can't be seen outweighs everything else together. */
function total(
  seen: View['seen'],
  subject: ViewSubject,
  manner: { readonly quarter: number; readonly height: number; readonly fill: number },
  turn: number,
): number {
  const enough = Math.min(1, seen.part / 0.9)
  const isBarelySeen = seen.part < PART_ENOUGH + MARGIN && subject.moments.length > 0
  const lacking = isBarelySeen ? (seen.part < PART_ENOUGH ? 2 : 1) : 0
  // Where nothing is in hand, what it happens to is all there is to see.
  const isBare = subject.moments.length === 0 && subject.fixings.length === 0
  return (
    8 * seen.fixings +
    4 * seen.marks +
    3 * enough +
    (isBare ? 5 * seen.place : 1.5 * Math.min(1, seen.place / PLACE_ENOUGH)) +
    0.7 * manner.quarter +
    0.6 * manner.height +
    0.8 * manner.fill -
    turn -
    lacking
  )
}

/** Points over the mark drawn at a fixing, in the plane it faces out of, and as far forward of it as marks are drawn. */
function overMark(spot: Spot, eye: RoomPoint): readonly Spot[] {
  const { at, faces } = spot
  if (faces === null) return []
  const distance = Math.hypot(eye.x - at.x, eye.y - at.y, eye.z - at.z)
  const r = MARK * distance * 2 * Math.tan((FIELD * Math.PI) / 360)
  const f = Math.min(1, FORWARD / distance)
  const [x, y, z] = [at.x + f * (eye.x - at.x), at.y + f * (eye.y - at.y), at.z + f * (eye.z - at.z)]
  const level = Math.hypot(faces.x, faces.y)
  const [ax, ay] = level === 0 ? [1, 0] : [-faces.y / level, faces.x / level]
  // The rim alone would miss a board thinner than the mark.
  return [r, r * 0.6, r * 0.3].flatMap((d) => [
    { ...spot, at: { x: x + d * ax, y: y + d * ay, z } },
    { ...spot, at: { x: x - d * ax, y: y - d * ay, z } },
    { ...spot, at: { x, y, z: z + d } },
    { ...spot, at: { x, y, z: z - d } },
  ])
}

/** How squarely a spot faces the eye: 1 straight on, 0 edge-on, below that turned away. */
function squareness({ at, faces }: Spot, eye: RoomPoint): number {
  if (faces === null) return 1
  const [x, y, z] = [eye.x - at.x, eye.y - at.y, eye.z - at.z]
  return (faces.x * x + faces.y * y + faces.z * z) / Math.hypot(x, y, z)
}

function share(spots: readonly Spot[], isSeen: (spot: Spot) => boolean): number {
  return spots.length === 0 ? 1 : spots.filter(isSeen).length / spots.length
}

/** Of what the part would show if it were alone, by the room each spot takes in the picture: the share that is seen. */
function shareOfPart(part: readonly Spot[], eye: RoomPoint, isSeen: (spot: Spot) => boolean): number {
  let [alone, seen] = [0, 0]
  for (const spot of part) {
    const size = Math.max(0, squareness(spot, eye)) * (spot.area ?? 1)
    if (size === 0) continue
    alone += size
    if (isSeen(spot)) seen += size
  }
  return alone === 0 ? 1 : seen / alone
}
