import type { Given, GivenWall } from '../given'
import type { Levels } from '../levels'
import { type Measure, nought } from '../measure'
import { fromLeft, leftCorner, type Room, rightCorner, roomPoint } from '../room'
import { highestOver, lowestOver } from '../surface'
import { OPEN, type OwnBand, type RegionBands, type WallBands } from './band'

function pointOver(room: Room, wall: GivenWall, along: Measure): { x: number; y: number } | null {
  const frame = room.frames.get(wall.id)
  if (frame === undefined || !frame.placed || along.value === null) return null
  return roomPoint(frame, along.value, 0)
}

/** A strip at each end that is an internal corner. An end of which the file says nothing may be one: either will do. */
export function cornerBands(given: Given, wall: GivenWall, region: RegionBands): WallBands {
  const length = wall.length.value
  const ends = [
    { corner: leftCorner(given, wall), left: 0, right: region.cornerStrip },
    { corner: rightCorner(given, wall), left: (length ?? 0) - region.cornerStrip, right: length ?? 0 },
  ]
  const bands = ends.flatMap(({ corner, left, right }, i): readonly OwnBand[] => {
    if (i === 1 && length === null) return []
    if (corner?.value !== undefined && corner.value !== null && corner.value >= 180) return []
    return [
      {
        wall: wall.id,
        kind: 'corner',
        about: wall.id,
        face: 'room',
        left: i === 0 ? -OPEN : left,
        right: i === 0 ? right : OPEN,
        bottom: -OPEN,
        top: OPEN,
        weight: (corner?.value ?? null) === null ? 'either' : 'refuse',
      },
    ]
  })
  return { bands, unknown: [] }
}

/** The strip below the ceiling, from the lowest ceiling read along the wall; a hole between that and the ceiling over the hole itself is judged either way. */
export function ceilingBand(
  given: Given,
  levels: Levels,
  room: Room,
  wall: GivenWall,
  region: RegionBands,
): WallBands {
  const length = wall.length.value
  const from = pointOver(room, wall, nought)
  const to = pointOver(room, wall, wall.length)
  if (length === null || from === null || to === null) return { bands: [], unknown: [] }
  const known = levels.ceiling.readings.flatMap((r) => (r.z.value === null ? [] : [r.z.value]))
  const lowest = lowestOver(levels.ceiling, [from, to]) ?? (known.length > 0 ? Math.min(...known) : null)
  if (lowest === null || known.length === 0) return { bands: [], unknown: [] }
  const highest = Math.max(lowest, ...known)
  const sure = known.length === given.ceiling.length
  const common = {
    wall: wall.id,
    about: wall.id,
    face: 'room' as const,
    left: -OPEN,
    right: OPEN,
    kind: 'ceiling' as const,
  }
  return {
    bands: [
      { ...common, bottom: highest - region.ceilingStrip, top: OPEN, weight: sure ? 'refuse' : 'either' },
      { ...common, bottom: Math.min(lowest, ...known) - region.ceilingStrip, top: OPEN, weight: 'either' },
    ],
    unknown: [],
  }
}

/** Level bands above the floor: sure between the highest and lowest floor along the wall, open on their rims. */
export function floorBands(levels: Levels, room: Room, wall: GivenWall, region: RegionBands): WallBands {
  const from = pointOver(room, wall, nought)
  const to = pointOver(room, wall, wall.length)
  if (from === null || to === null) return { bands: [], unknown: [] }
  const low = lowestOver(levels.floor, [from, to])
  const high = highestOver(levels.floor, [from, to])
  if (low === null || high === null) return { bands: [], unknown: [] }
  const common = {
    wall: wall.id,
    kind: 'fixed' as const,
    about: wall.id,
    face: 'room' as const,
    left: -OPEN,
    right: OPEN,
  }
  return {
    bands: region.aboveFloor.flatMap(([a, b]): readonly OwnBand[] => [
      { ...common, bottom: high + a, top: low + b, weight: 'refuse' },
      { ...common, bottom: low + a, top: high + b, weight: 'either' },
    ]),
    unknown: [],
  }
}

export function openingBands(wall: GivenWall, region: RegionBands): WallBands {
  const reach = region.besideOpenings
  if (reach === null) return { bands: [], unknown: [] }
  const [near, far] = reach
  const common = {
    wall: wall.id,
    kind: 'fixed' as const,
    face: 'room' as const,
    bottom: -OPEN,
    top: OPEN,
    weight: 'refuse' as const,
  }
  const parts = wall.openings.map((opening): WallBands => {
    const left = fromLeft(wall, opening.left).value
    const right = fromLeft(wall, opening.right).value
    if (left === null || right === null) return { bands: [], unknown: [opening.id] }
    return {
      bands: [
        { ...common, about: opening.id, left: left - far, right: left - near },
        { ...common, about: opening.id, left: right + near, right: right + far },
      ],
      unknown: [],
    }
  })
  return { bands: parts.flatMap((p) => p.bands), unknown: parts.flatMap((p) => p.unknown) }
}
