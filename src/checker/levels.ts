import type { PlanPoint } from '../core/plan/types'
import type { Given, GivenHeight, GivenPlace } from './given'
import { isKnown, less, type Measure, notKnown, nought, sum } from './measure'
import { type Frame, fromLeft, pointMeasures, type Room, roomPoint } from './room'
import { type Reading, type Surface, surfaceOver, type Triangle } from './surface'

/** Heights re the line, and the surfaces they are read from. */
export interface Levels {
  readonly floor: Surface
  readonly ceiling: Surface
  /**
   * Floor by a wall that has no place in the room: over the readings by those walls that stand in a known place to it,
   * drawn wherever the walk round the room happens to put them.
   */
  readonly floorBy: (frame: Frame) => Surface
  /** A height as typed; `over` is where it is measured above the floor. */
  readonly of: (height: GivenHeight, over: PlanPoint | null) => Measure
  /** A height as typed of something on a wall, at a distance along it. */
  readonly onWall: (height: GivenHeight, wall: string, along: Measure) => Measure
}

export function buildLevels(
  given: Given,
  room: Room,
  floorTriangles: readonly (readonly [string, string, string])[] | null,
): Levels {
  const readings = floorReadings(given, room)
  const lost = unplacedReadings(given, room)
  const triangles = trianglesById(readings, floorTriangles)
  const floor = surfaceOver(readings, triangles, 'floor.readings', lost)
  const alone = new Map<string, Surface>()
  const floorBy = (frame: Frame): Surface => {
    const key = frame.missing.join()
    const before = alone.get(key)
    if (before !== undefined) return before
    const own = readingsBy(given, room, frame)
    // Past them the floor goes on as the plane through every reading there is.
    const others = given.readings.filter((r) => !own.some(({ id }) => id === r.id))
    const surface = surfaceOver(
      own,
      null,
      'floor.readings',
      others.map((r) => `floor.readings.${r.id}`),
    )
    alone.set(key, surface)
    return surface
  }
  const of = (height: GivenHeight, over: PlanPoint | null): Measure => heightOf(given, floor, height, over)
  const onWall = (height: GivenHeight, wall: string, along: Measure): Measure => {
    const frame = room.frames.get(wall)
    if (frame === undefined || along.value === null) return of(height, null)
    const surface = frame.placed ? floor : floorBy(frame)
    return heightOf(given, surface, height, roomPoint(frame, along.value, 0))
  }
  const over = given.ceiling.flatMap((c): readonly Reading[] => {
    const { point } = placePoint(given, room, c.at)
    return point === null ? [] : [{ id: c.id, at: point, z: of(c.height, point) }]
  })
  return { floor, ceiling: surfaceOver(over, null, 'ceiling'), floorBy, of, onWall }
}

/** The floor readings whose place is known, with their level: the line's height less the drop. */
export function floorReadings(given: Given, room: Room): readonly Reading[] {
  return given.readings.flatMap((r): readonly Reading[] => {
    const { point } = placePoint(given, room, r.at)
    return point === null ? [] : [{ id: r.id, at: point, z: less(lineLevel(given, r.line), r.drop) }]
  })
}

/** The readings by walls that no unknown length or corner parts from this one. */
function readingsBy(given: Given, room: Room, frame: Frame): readonly Reading[] {
  return given.readings.flatMap((r): readonly Reading[] => {
    const own = room.frames.get(r.at.wall)
    if (own === undefined || own.missing.join() !== frame.missing.join()) return []
    const along = fromLeft(own.wall, r.at.along).value
    const out = r.at.out.value
    if (along === null || out === null) return []
    return [{ id: r.id, at: roomPoint(own, along, out), z: less(lineLevel(given, r.line), r.drop) }]
  })
}

/** Readings whose place is not known. */
export function unplacedReadings(given: Given, room: Room): readonly string[] {
  return given.readings.flatMap((r) => placePoint(given, room, r.at).missing)
}

export function trianglesById(
  readings: readonly Reading[],
  ids: readonly (readonly [string, string, string])[] | null,
): readonly Triangle[] | null {
  if (ids === null) return null
  const byId = new Map(readings.map((r) => [r.id, r]))
  const found = ids.map((three) => three.map((id) => byId.get(id)))
  return found.flatMap(([a, b, c]) =>
    a === undefined || b === undefined || c === undefined ? [] : [[a, b, c] as const],
  )
}

export function placePoint(
  given: Given,
  room: Room,
  place: GivenPlace,
): { readonly point: PlanPoint | null; readonly missing: readonly string[] } {
  const wall = given.walls.find((w) => w.id === place.wall)
  const along = wall === undefined ? place.along.at : fromLeft(wall, place.along)
  return pointMeasures(room.frames.get(place.wall), along, place.out)
}

function lineLevel(given: Given, id: string): Measure {
  const line = given.lines.find((l) => l.id === id)
  // A file without lines still has the line: height 0, exactly.
  if (line === undefined) return nought
  return line.offset
}

function heightOf(given: Given, floor: Surface, height: GivenHeight, over: PlanPoint | null): Measure {
  if (isKnown(height.up)) return sum(lineLevel(given, height.line), height.up)
  if (isKnown(height.down)) return less(lineLevel(given, height.line), height.down)
  if (!isKnown(height.aboveFloor)) return notKnown(height.id)
  return over === null ? notKnown('floor.readings') : sum(floor.at(over), height.aboveFloor)
}
