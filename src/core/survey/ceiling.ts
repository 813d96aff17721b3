import { type Basis, type Figure, hasValue, restingOn, unknown, valueOf } from '../figure'
import { convexTouch, signedArea } from '../geometry/polygon'
import { mergedIds } from '../ids'
import { factId } from '../kitchen/fact-id'
import type { Kitchen, Place, Wall } from '../kitchen/schema'
import type { PlanPoint } from '../plan/types'
import { alongFromLeft } from './along'
import { lowestOf } from './extremes'
import { heightFromLine, isAboveFloor } from './height'
import { citing } from './sum'
import type { Surface, SurfaceReading } from './surface'
import { allKnown, type Frame, linksBetween, pointIn, type WallChains } from './wall-chain'

const lowestReading: Basis = { kind: 'geometry', why: 'the lowest of the ceiling readings about this place' }

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

/** A stretch of a wall and the room in front of it, out to a depth. */
interface Area {
  readonly wall: number
  readonly from: Figure
  readonly to: Figure
  readonly out: Figure
}

/**
 * The lowest ceiling over an area in front of a wall: the lowest of the readings round it, which is never above the
 * ceiling between them. With fewer than three readings, or an area outside them all, the lowest of all readings; that it
 * lies outside them all cannot be said while one of them has no place.
 */
export function lowestCeiling(ceiling: Surface, chains: WallChains, area: Area): Figure {
  const { readings } = ceiling
  if (readings.length === 0) return unknown('mm', ['ceiling'], ['ceiling'], lowestReading)
  if (readings.length < 3) return lowestOf('mm', lowestReading, heightsOf(readings))
  const touching = readingsRound(ceiling, chains, area)
  const near = touching.length === 0 ? readings : touching
  const places = placesOf(chains, area, near)
  const from = mergedIds(places.map((place) => place.from))
  if (allKnown(places)) return citing(lowestOf('mm', lowestReading, heightsOf(near)), from)
  const missing = places.flatMap((place) => (hasValue(place) ? [] : place.missing))
  return unknown('mm', missing, from, lowestReading)
}

function heightsOf(readings: readonly SurfaceReading[]): readonly Figure[] {
  return readings.map(({ z }) => z)
}

/** What says where these readings lie beside this area: its extent, their places, and the walls between. */
function placesOf(chains: WallChains, area: Area, near: readonly SurfaceReading[]): readonly Figure[] {
  const walls = [area.wall, ...near.map(({ wall }) => wall)]
  const links = linksBetween(chains, Math.min(...walls), Math.max(...walls))
  return [area.from, area.to, area.out, ...near.flatMap(({ along, out }) => [along, out]), ...links]
}

/** The corners of every triangle that touches the area, in order of their ids. */
function readingsRound(ceiling: Surface, chains: WallChains, area: Area): readonly SurfaceReading[] {
  const sheet = ceiling.sheets.find(({ chain }) => chain === chains.chainOf[area.wall])
  if (sheet === undefined || !allKnown([area.from, area.to, area.out])) return []
  const patch = patchOf(chains.frames[area.wall] as Frame, area)
  const touching = sheet.triangles.filter((triangle) =>
    convexTouch(
      triangle.map((i) => sheet.points[i] as PlanPoint),
      patch,
    ),
  )
  const corners = [...new Set(touching.flat())].sort((a, b) => a - b)
  return corners.map((i) => sheet.readings[i] as SurfaceReading)
}

/** The area on the plan, anticlockwise. */
function patchOf(frame: Frame, area: Area): readonly PlanPoint[] {
  const [from = 0, to = 0, out = 0] = [area.from, area.to, area.out].map(valueOf)
  const corners = [
    pointIn(frame, from, 0),
    pointIn(frame, from, out),
    pointIn(frame, to, out),
    pointIn(frame, to, 0),
  ]
  return signedArea(corners) < 0 ? corners.reverse() : corners
}
