import { type Basis, type Figure, hasValue, known, restingOn, unknown, valueOf } from '../figure'
import { dot, subtract } from '../geometry/point'
import { convexTouch, distanceOutside, edgesOf, pointInPolygon, signedArea } from '../geometry/polygon'
import { crossing } from '../geometry/segment'
import { SAME_POINT } from '../geometry/tolerance'
import { mergedIds } from '../ids'
import { factId } from '../kitchen/fact-id'
import type { Kitchen, Place, Wall } from '../kitchen/schema'
import type { PlanPoint } from '../plan/types'
import { alongFromLeft } from './along'
import { lowestOf } from './extremes'
import { heightFromLine, isAboveFloor } from './height'
import { citing } from './sum'
import type { Sheet, Surface, SurfaceReading } from './surface'
import { allKnown, type Frame, linksBetween, pointIn, type WallChains } from './wall-chain'

const lowestReading: Basis = { kind: 'geometry', why: 'the lowest of the ceiling readings about this place' }
const lowestPlace: Basis = {
  kind: 'geometry',
  why: 'the lowest place of the ceiling over this one, straight between its readings',
}
/** A place no further than this past the outermost readings counts as among them, mm. Common practice. */
const AT_THE_RIM = 1

/** The ceiling readings whose wall is on the list. */
export function ceilingReadings(
  kitchen: Kitchen,
  chains: WallChains,
  floorAt: (place: Place) => Figure,
): readonly SurfaceReading[] {
  return kitchen.ceiling.flatMap((reading): SurfaceReading[] => {
    const wall = chains.indexOf.get(reading.at.wall)
    if (wall === undefined) return []
    const along = restingOn(alongFromLeft(chains.walls[wall] as Wall, reading.at.along), [
      factId('ceiling', reading.id, 'at', 'wall'),
    ])
    const z = heightFromLine(
      kitchen,
      reading.height,
      isAboveFloor(reading.height) ? floorAt(reading.at) : null,
    )
    return [{ id: reading.id, wall, along, out: reading.at.out, z }]
  })
}

/** A stretch of a wall and the room in front of it, from one depth to another. */
interface Area {
  readonly wall: number
  readonly from: Figure
  readonly to: Figure
  readonly out: Figure
  /** Where it begins, out from the wall. */
  readonly near: Figure
}

/**
 * The lowest ceiling over an area in front of a wall. Among the readings it is the lowest place of the surface through
 * them: a sloping ceiling asks no more of a unit than it is low over that unit. An area that reaches past the outermost
 * readings has the lowest of those round it, for nobody knows how the ceiling goes on. With fewer than three readings, or
 * an area outside them all, the lowest of all; that it lies outside them all cannot be said while one of them has no place.
 */
export function lowestCeiling(ceiling: Surface, chains: WallChains, area: Area): Figure {
  const { readings } = ceiling
  if (readings.length === 0) return unknown('mm', ['ceiling'], ['ceiling'], lowestReading)
  if (readings.length < 3) return lowestOf('mm', lowestReading, heightsOf(readings))
  const over = spreadOver(ceiling, chains, area)
  const near = over === null || over.touching.length === 0 ? readings : over.touching
  const places = placesOf(chains, area, near)
  const from = mergedIds(places.map((place) => place.from))
  if (!allKnown(places)) {
    const missing = places.flatMap((place) => (hasValue(place) ? [] : place.missing))
    return unknown('mm', missing, from, lowestReading)
  }
  const isAmong = over?.patch.every((p) => distanceOutside(over.sheet.hull, p) <= AT_THE_RIM) === true
  if (!isAmong) return citing(lowestOf('mm', lowestReading, heightsOf(near)), from)
  const spots = lowSpots(over).map((p) => heightOver(ceiling, chains, area, p))
  return citing(lowestOf('mm', lowestPlace, spots), from)
}

/** An area on the plan of its walls, and the readings of the triangles over it. */
interface Spread {
  readonly sheet: Sheet
  readonly patch: readonly PlanPoint[]
  readonly touching: readonly SurfaceReading[]
}

/** Where the surface over an area can be lowest: its corners, readings in it, and where its sides cross the triangles'. */
function lowSpots({ sheet, patch }: Spread): readonly PlanPoint[] {
  const folds = sheet.triangles.flatMap((triangle) =>
    edgesOf(triangle.map((i) => sheet.points[i] as PlanPoint)),
  )
  const spots = [
    ...patch.filter((p) => pointInPolygon(sheet.hull, p)),
    ...sheet.points.filter((p) => pointInPolygon(patch, p)),
    ...edgesOf(patch).flatMap(([a, b]) => folds.flatMap(([c, d]) => crossing(a, b, c, d) ?? [])),
  ]
  return spots.filter((p, i) => spots.findIndex((q) => isSamePlace(p, q)) === i)
}

function isSamePlace(p: PlanPoint, q: PlanPoint): boolean {
  return Math.abs(p.x - q.x) <= SAME_POINT && Math.abs(p.y - q.y) <= SAME_POINT
}

/** The ceiling at a place of an area, which is known as well as the area itself is. */
function heightOver(ceiling: Surface, chains: WallChains, area: Area, p: PlanPoint): Figure {
  const { origin, along, out } = chains.frames[area.wall] as Frame
  const off = subtract(p, origin)
  const pmOf = (...figures: readonly Figure[]) => Math.max(...figures.map((f) => (hasValue(f) ? f.pm : 0)))
  const at = (value: number, pm: number): Figure => known(value, pm, 'mm', [], lowestPlace)
  const [x, y] = [dot(off, along), dot(off, out)]
  return ceiling.heightAt(area.wall, at(x, pmOf(area.from, area.to)), at(y, pmOf(area.near, area.out)))
}

function heightsOf(readings: readonly SurfaceReading[]): readonly Figure[] {
  return readings.map(({ z }) => z)
}

/** What says where these readings lie beside this area: its extent, their places, and the walls between. */
function placesOf(chains: WallChains, area: Area, near: readonly SurfaceReading[]): readonly Figure[] {
  const walls = [area.wall, ...near.map(({ wall }) => wall)]
  const links = linksBetween(chains, Math.min(...walls), Math.max(...walls))
  return [
    area.from,
    area.to,
    area.out,
    area.near,
    ...near.flatMap(({ along, out }) => [along, out]),
    ...links,
  ]
}

/** The area among the readings of its walls: the corners of every triangle that touches it, in order of their ids. */
function spreadOver(ceiling: Surface, chains: WallChains, area: Area): Spread | null {
  const sheet = ceiling.sheets.find(({ chain }) => chain === chains.chainOf[area.wall])
  if (sheet === undefined || !allKnown([area.from, area.to, area.out, area.near])) return null
  const patch = patchOf(chains.frames[area.wall] as Frame, area)
  const touching = sheet.triangles.filter((triangle) =>
    convexTouch(
      triangle.map((i) => sheet.points[i] as PlanPoint),
      patch,
    ),
  )
  const corners = [...new Set(touching.flat())].sort((a, b) => a - b)
  return { sheet, patch, touching: corners.map((i) => sheet.readings[i] as SurfaceReading) }
}

/** The area on the plan, anticlockwise. */
function patchOf(frame: Frame, area: Area): readonly PlanPoint[] {
  const [from = 0, to = 0, near = 0, out = 0] = [area.from, area.to, area.near, area.out].map(valueOf)
  const corners = [
    pointIn(frame, from, near),
    pointIn(frame, from, out),
    pointIn(frame, to, out),
    pointIn(frame, to, near),
  ]
  return signedArea(corners) < 0 ? corners.reverse() : corners
}
