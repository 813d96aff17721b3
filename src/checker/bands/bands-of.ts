import type { Given, GivenWall } from '../given'
import type { Levels } from '../levels'
import { fromLeft, type Room } from '../room'
import { accessoryBands, isPlain } from './accessory'
import { type RegionBands, regionBands, type WallBands } from './band'
import { lintelBand, openingHole, pastTheEnds, serviceBands } from './obstructions'
import { ceilingBand, cornerBands, floorBands, openingBands } from './strips'

export function bandsOf(given: Given, room: Room, levels: Levels, wall: GivenWall): WallBands {
  const region = regionBands(given.region)
  const parts: readonly WallBands[] = [
    ...(region === null ? [] : wall.accessories.map((a) => accessoryBands(levels, wall, a))),
    ...(region === null
      ? []
      : [cornerBands(given, wall, region), ceilingBand(given, levels, room, wall, region)]),
    ...(region === null ? [] : [floorBands(levels, room, wall, region), openingBands(wall, region)]),
    ...wall.services.map((s) => serviceBands(levels, wall, s)),
    ...wall.lintels.map((l) => lintelBand(levels, wall, l)),
    ...wall.openings.map((o) => openingHole(levels, wall, o)),
    pastTheEnds(wall),
  ]
  return {
    bands: parts.flatMap((p) => p.bands),
    unknown: parts.flatMap((p) => p.unknown),
    unsure:
      parts.some((p) => p.unknown.length > 0) ||
      hasUnsure(wall) ||
      (region !== null && wall.length.value === null) ||
      ceilingUnsure(given, levels) ||
      floorUnsure(given, levels, region),
  }
}

/** Openings whose edges nobody has read; things of the other face without a sure place or size. */
function hasUnsure(wall: GivenWall): boolean {
  const others = [
    ...wall.accessories.map((a) => ({ ...a, sizes: [a.width, a.tall] })),
    ...wall.services.flatMap((s) => s.points.map((p) => ({ ...p, face: s.face, sizes: [s.width] }))),
  ].filter((thing) => thing.face === 'other')
  const openings = wall.openings.flatMap((o) => [o.bottom, o.top])
  const unread = openings.some((h) => [h.up, h.down, h.aboveFloor].every((m) => m.value === null))
  return (
    unread ||
    others.some(
      ({ face, along, sizes }) =>
        !isPlain(face, along) ||
        [fromLeft(wall, along), wall.thickness, ...sizes].some((m) => m.value === null),
    )
  )
}

/** A floor reading without a place or a level, where bands are counted from the floor. */
function floorUnsure(given: Given, levels: Levels, region: RegionBands | null): boolean {
  const { readings } = levels.floor
  const unread = readings.length < given.readings.length || readings.some((r) => r.z.value === null)
  return region !== null && region.aboveFloor.length > 0 && unread
}

/** A ceiling reading without a place or a level. */
function ceilingUnsure(given: Given, levels: Levels): boolean {
  const { readings } = levels.ceiling
  return readings.length < given.ceiling.length || readings.some((r) => r.z.value === null)
}
