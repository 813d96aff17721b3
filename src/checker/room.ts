import type { PlanPoint } from '../core/plan/types'
import type { Given, GivenAlong, GivenWall } from './given'
import { less, type Measure, sum } from './measure'
import type { Polygon } from './polygon'

/** Where a wall stands in the room: its left end and its directions along and out. */
export interface Frame {
  readonly wall: GivenWall
  readonly origin: PlanPoint
  readonly alongDir: PlanPoint
  readonly outDir: PlanPoint
  /** Direction of `along`, degrees anticlockwise from +x. */
  readonly bearing: number
  /** False after a length or corner that is not known. */
  readonly placed: boolean
  /** What keeps it from having a place. */
  readonly missing: readonly string[]
}

export interface Room {
  readonly frames: ReadonlyMap<string, Frame>
  /** The walls go all the way round. */
  readonly closed: boolean
  /** By how much they then miss their own start, mm. */
  readonly misses: number
}

/**
 * Walks the walls clockwise seen from above, from (0, 0) along +x with the room on the right hand. Headings are kept in
 * degrees, and an inside angle of 180 goes straight on.
 */
export function buildRoom(given: Given): Room {
  const frames = new Map<string, Frame>()
  let origin: PlanPoint = { x: 0, y: 0 }
  let bearing = 0
  let missing: readonly string[] = []
  for (const wall of given.walls) {
    const alongDir = unitVector(bearing)
    frames.set(wall.id, {
      wall,
      origin,
      alongDir,
      outDir: unitVector(bearing - 90),
      bearing,
      placed: missing.length === 0,
      missing,
    })
    const length = wall.length.value ?? 0
    origin = { x: origin.x + length * alongDir.x, y: origin.y + length * alongDir.y }
    bearing -= 180 - (wall.corner.value ?? 90)
    missing = [...missing, ...wall.length.missing, ...wall.corner.missing]
  }
  return { frames, closed: given.closed === true, misses: Math.hypot(origin.x, origin.y) }
}

function unitVector(bearing: number): PlanPoint {
  const right = Math.round(bearing / 90)
  // Square corners exactly, so that neighbours touch instead of overlapping by a rounding.
  if (Math.abs(bearing - right * 90) < 1e-9) {
    const quarter = ((right % 4) + 4) % 4
    return { x: [1, 0, -1, 0][quarter] ?? 1, y: [0, 1, 0, -1][quarter] ?? 0 }
  }
  const radians = (bearing * Math.PI) / 180
  return { x: Math.cos(radians), y: Math.sin(radians) }
}

/**
 * Distance from the left end of the wall as seen from the room. Seen from the other face, left and right change places:
 * what is p from the left end there is p short of that end, which lies `otherFaceShift` beyond this face's right end.
 */
export function fromLeft(wall: GivenWall, along: GivenAlong): Measure {
  if (along.face === 'other') {
    return along.end === 'right' ? along.at : less(sum(wall.length, wall.otherFaceShift), along.at)
  }
  return along.end === 'left' ? along.at : less(wall.length, along.at)
}

export function roomPoint(frame: Frame, along: number, out: number): PlanPoint {
  return {
    x: frame.origin.x + along * frame.alongDir.x + out * frame.outDir.x,
    y: frame.origin.y + along * frame.alongDir.y + out * frame.outDir.y,
  }
}

/** A point of the plan as measures: unknown when the wall has no place or the point none on it. */
export function pointMeasures(
  frame: Frame | undefined,
  along: Measure,
  out: Measure,
): { readonly point: PlanPoint | null; readonly missing: readonly string[] } {
  if (frame === undefined) return { point: null, missing: ['walls'] }
  const missing = [...frame.missing, ...along.missing, ...out.missing]
  if (missing.length > 0 || along.value === null || out.value === null) return { point: null, missing }
  return { point: roomPoint(frame, along.value, out.value), missing: [] }
}

/** Rectangle on the plan between two distances along a wall and two out from it, anticlockwise. */
export function wallRectangle(frame: Frame, a0: number, a1: number, o0: number, o1: number): Polygon {
  return [
    roomPoint(frame, a0, o1),
    roomPoint(frame, a1, o1),
    roomPoint(frame, a1, o0),
    roomPoint(frame, a0, o0),
  ]
}

/** Thickness given to a wall on the plan: enough that nothing passes through it between two places. */
const WALL_STRIP = 20

/** A wall turned to end at (0, 0), by the hair that the measured walls miss it. */
function backTo(frame: Frame, length: number): Frame {
  const { origin } = frame
  const reach = Math.hypot(origin.x, origin.y)
  if (reach === 0 || Math.abs(reach - length) > 100) return frame
  const alongDir = { x: -origin.x / reach, y: -origin.y / reach }
  return { ...frame, alongDir, outDir: { x: alongDir.y, y: -alongDir.x } }
}

/** Every placed wall as a strip behind its finished face. */
export function wallStrips(room: Room): readonly { readonly wall: string; readonly strip: Polygon }[] {
  const frames = [...room.frames.values()]
  return frames.flatMap((frame, i) => {
    const length = frame.wall.length.value
    if (!frame.placed || length === null) return []
    // Measured walls never close to the hair: the last one of a closed room runs to where the first began.
    const closing = room.closed && i === frames.length - 1 ? backTo(frame, length) : frame
    return [{ wall: frame.wall.id, strip: wallRectangle(closing, 0, length, -WALL_STRIP, 0) }]
  })
}

/** The corner at the left end of a wall is the one at the right end of the wall before it. */
export function leftCorner(given: Given, wall: GivenWall): Measure | null {
  const index = given.walls.indexOf(wall)
  const before = index > 0 ? given.walls[index - 1] : given.closed === true ? given.walls.at(-1) : undefined
  return before === undefined ? null : before.corner
}

/** The corner at the right end, when another wall follows it. */
export function rightCorner(given: Given, wall: GivenWall): Measure | null {
  const last = given.walls.at(-1) === wall
  return last && given.closed !== true ? null : wall.corner
}
