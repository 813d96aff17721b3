import type { PlanPoint, RoomPoint } from '../plan/types'
import { type Covered, coveredBy } from './covered-by'
import { type Direction, FIELD, type Framed, frameView } from './frame-view'
import { blockerFrom, type InTheWay, isBehindWall, isFacing } from './rays'
import type { Spot, View, ViewSubject } from './view'

/** A three-quarter view: what is preferred when all else is equal, degrees from straight on. */
const THREE_QUARTER = 35
/** A surface seen more edge-on than this can't be read, and cuts the marks on it: sine of 20°. */
const EDGE_ON = 0.34
/** Radius of what must be free round a fixing over the height of the picture: 8 px of the lowest it is likely to have. */
const MARK = { wide: 8 / 600, tall: 8 / 780 }
/**
 * Marks are drawn in front of their fixing, the further the further off the eye is: so many steps of a depth of 24 bits
 * (materials.ts), from 300 mm on (CameraRig.tsx).
 */
const forwardAt = (distance: number) => ((distance * distance) / 300) * (6000 / 2 ** 24)
/** Enough of the part in hand (methods B.4, B1). */
export const PART_ENOUGH = 0.6
/** The share is reckoned from a few spots, so a little more than enough is asked of it. */
export const MARGIN = 0.16
/** Enough of its place to know where it goes. */
const PLACE_ENOUGH = 0.7
/** The part in hand covers no less of the picture than this and no more (methods B.4, B4), with something to spare. */
const COVERS = { least: 0.048, most: 0.42 }
/** A part that is thin or small covers little of any picture: it reaches at least so far across it. */
const REACHES = 0.24

export const turnBetween = (a: number, b: number) => Math.abs(((((a - b) % 360) + 540) % 360) - 180)
export const azimuthOf = (d: PlanPoint) => (Math.atan2(d.y, d.x) * 180) / Math.PI

/**
 * What of its subject is seen from a direction, and how good a picture that makes; turning there is not counted. With
 * `onlyGood` nothing more is looked at once a fixing is found hidden; `isFar`: from further off, where marks stand
 * further before a surface seen at a slant.
 */
export function tryView(
  subject: ViewSubject,
  aspect: number,
  d: Direction,
  onlyGood = false,
  isFar = false,
): View {
  const { framed, isLargeEnough } = framedFor(subject, aspect, d, isFar)
  const { eye, target, fill } = framed
  const hidden = subject.screens.filter((s) => !isFacing(s, eye)).map((s) => s.wall)
  const gone = new Set(hidden)
  const blockers = subject.blockers
    .filter((b) => b.wall === null || !gone.has(b.wall))
    .map((b) => blockerFrom(eye, b))
  const screens = subject.screens.filter((s) => !gone.has(s.wall))
  const isFree = ({ at }: Spot) =>
    !screens.some((s) => isBehindWall(eye, at, s)) && !blockers.some((isBehind) => isBehind(at))
  const isSeen = (spot: Spot, more: InTheWay | null) =>
    !(spot.wall !== null && gone.has(spot.wall)) &&
    squareness(spot, eye) > EDGE_ON &&
    !(more?.(spot.at) ?? false) &&
    isFree(spot)
  const own = subject.moments.flatMap((m) => (m.blocker === null ? [] : [blockerFrom(eye, m.blocker)]))
  const others = own.length > 0 ? own : [null]
  const fixings = Math.min(...others.map((b) => share(subject.fixings, (s) => isSeen(s, b))))
  // Where a fixing is hidden the rest hardly matters, and there is nearly always a better direction.
  const isHopeless = fixings < 1 && onlyGood
  const seen = {
    part: isHopeless ? 0 : Math.min(1, ...subject.moments.map((m) => shareOfPart(m.part, eye, isFree))),
    fixings,
    marks: isHopeless
      ? 0
      : Math.min(
          1,
          ...subject.fixings.flatMap((f) =>
            others.map((b) =>
              Math.min(
                isCutByItsWall(f, eye, aspect) ? 0.9 : 1,
                share(overMark(f, eye, aspect), (s) => isSeen(s, b)),
              ),
            ),
          ),
        ),
    place: isHopeless ? 0 : share(subject.place, (s) => isSeen(s, null)),
  }
  const angle = subject.facing === null ? THREE_QUARTER : turnBetween(d.azimuth, azimuthOf(subject.facing))
  const quarter = 1 - Math.min(1, Math.abs(angle - THREE_QUARTER) / 45)
  const height = 1 - Math.min(1, Math.abs(d.elevation - 17) / 40)
  const low = eye.z < subject.lowestEye ? 2.5 : 0
  const lost = isLargeEnough ? 0 : 4
  return {
    ...d,
    eye,
    target,
    hidden,
    seen,
    score: total(seen, subject, { quarter, height, fill }) - low - lost,
  }
}

/** Whether a view shows all it must. */
export const showsAll = ({ seen }: View) =>
  seen.fixings >= 1 && seen.marks >= 1 && seen.part >= PART_ENOUGH + MARGIN

/** So much further off is far. */
const BACK = 1.35

function steppedBack({ eye, target, fill }: Framed): Framed {
  const away = (e: number, t: number) => t + (e - t) * BACK
  return {
    eye: { x: away(eye.x, target.x), y: away(eye.y, target.y), z: away(eye.z, target.z) },
    target,
    fill: fill / BACK,
  }
}

/** The widest framing in which the part in hand is large enough. */
function framedFor(
  subject: ViewSubject,
  aspect: number,
  d: Direction,
  isFar: boolean,
): { readonly framed: Framed; readonly isLargeEnough: boolean } {
  let framed: Framed | null = null
  for (const frame of subject.frames) {
    const near = frameView(d, frame, aspect)
    const tried = isFar ? steppedBack(near) : near
    if (subject.bodies.length === 0) return { framed: tried, isLargeEnough: true }
    const covered = coveredBy(tried, subject.bodies, aspect)
    // Closer than this it would only be too large.
    if (framed !== null && covered.share > COVERS.most) break
    framed = tried
    if (isLarge(covered)) return { framed, isLargeEnough: true }
  }
  return { framed: framed ?? frameView(d, [], aspect), isLargeEnough: false }
}

const isLarge = ({ share, reach, isThin }: Covered) => share >= COVERS.least || (isThin && reach >= REACHES)

/** One number for a view. A fixing that can't be seen outweighs everything else together. */
function total(
  seen: View['seen'],
  subject: ViewSubject,
  manner: { readonly quarter: number; readonly height: number; readonly fill: number },
): number {
  const enough = Math.min(1, seen.part / 0.9)
  const isBarelySeen = seen.part < PART_ENOUGH + MARGIN && subject.moments.length > 0
  const lacking = isBarelySeen ? (seen.part < PART_ENOUGH ? 8 : 2) : 0
  // Where nothing is in hand, what it happens to is all there is to see.
  const isBare = subject.moments.length === 0 && subject.fixings.length === 0
  return (
    12 * seen.fixings +
    5 * seen.marks +
    (seen.marks < 1 ? 0 : 3) +
    3 * enough +
    (isBare ? 5 * seen.place : 1.5 * Math.min(1, seen.place / PLACE_ENOUGH)) +
    0.7 * manner.quarter +
    0.6 * manner.height +
    0.8 * manner.fill -
    lacking
  )
}

/** Whether a surface is seen so edge-on that it comes before the mark on it, though that is drawn in front of it. */
function isCutByItsWall(spot: Spot, eye: RoomPoint, aspect: number): boolean {
  const square = squareness(spot, eye)
  if (spot.faces === null || square <= 0) return false
  const forward = forwardAt(distanceOf(spot.at, eye))
  return (radiusAt(spot.at, eye, aspect) * Math.sqrt(1 - square * square)) / square > CUT * forward
}
/** A disc of which a tenth is cut off is cut at 0.69 of its radius; some of that is kept to spare. */
const CUT = 1.4

const distanceOf = (a: RoomPoint, b: RoomPoint) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)

/** Radius of what must be free round a spot, mm. */
function radiusAt(at: RoomPoint, eye: RoomPoint, aspect: number): number {
  const distance = Math.hypot(eye.x - at.x, eye.y - at.y, eye.z - at.z)
  return (aspect < 1 ? MARK.tall : MARK.wide) * distance * 2 * Math.tan((FIELD * Math.PI) / 360)
}

/** Points over the mark drawn at a fixing, in the plane it faces out of, and as far forward of it as marks are drawn. */
function overMark(spot: Spot, eye: RoomPoint, aspect: number): readonly Spot[] {
  const { at, faces } = spot
  if (faces === null) return []
  const distance = Math.hypot(eye.x - at.x, eye.y - at.y, eye.z - at.z)
  const r = radiusAt(at, eye, aspect)
  const f = Math.min(1, forwardAt(distance) / distance)
  const [x, y, z] = [at.x + f * (eye.x - at.x), at.y + f * (eye.y - at.y), at.z + f * (eye.z - at.z)]
  const level = Math.hypot(faces.x, faces.y)
  const [ax, ay] = level === 0 ? [1, 0] : [-faces.y / level, faces.x / level]
  const off = (across: number, up: number): Spot => ({
    ...spot,
    at: { x: x + across * ax, y: y + across * ay, z: z + up },
  })
  // The rim alone would miss a board thinner than the mark, and four spots of it an edge that runs aslant.
  const d = r * Math.SQRT1_2
  return [
    ...[r, r * 0.6, r * 0.3].flatMap((by) => [off(by, 0), off(-by, 0), off(0, by), off(0, -by)]),
    ...[off(d, d), off(d, -d), off(-d, d), off(-d, -d)],
  ]
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
