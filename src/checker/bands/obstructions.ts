import type { GivenRect, GivenService, GivenWall } from '../given'
import type { Levels } from '../levels'
import { fromLeft } from '../room'
import { isStudWall } from '../wall-make-up'
import { isPlain, showsThrough, weightOf } from './accessory'
import { OPEN, type OwnBand, type WallBands } from './band'

/** What carries the wall over an opening bears this far on masonry; in a framed wall on two studs or a post beside it. */
const ON_MASONRY = 150
const ON_STUDS = 100

const bearing = (wall: GivenWall): number => (isStudWall(wall) ? ON_STUDS : ON_MASONRY)

/** Past either end of a wall there is none of it to be drilled. */
export function pastTheEnds(wall: GivenWall): WallBands {
  const common = {
    wall: wall.id,
    kind: 'fixed' as const,
    about: wall.id,
    face: 'room' as const,
    left: -OPEN,
    right: OPEN,
    bottom: -OPEN,
    top: OPEN,
    weight: 'refuse' as const,
  }
  const end = wall.length.value
  return {
    bands: [{ ...common, right: 0 }, ...(end === null ? [] : [{ ...common, left: end }])],
    unknown: [],
  }
}

/** A door or window itself: there is no wall to drill. An edge nobody has read is left open. */
export function openingHole(levels: Levels, wall: GivenWall, opening: GivenRect): WallBands {
  const left = fromLeft(wall, opening.left)
  const right = fromLeft(wall, opening.right).value
  if (left.value === null || right === null) return { bands: [], unknown: [] }
  const band: OwnBand = {
    wall: wall.id,
    kind: 'fixed',
    about: opening.id,
    face: 'room',
    left: left.value,
    right,
    bottom: levels.onWall(opening.bottom, wall.id, left).value ?? -OPEN,
    top: levels.onWall(opening.top, wall.id, left).value ?? OPEN,
    weight: 'refuse',
  }
  const sure = Number.isFinite(band.bottom) && Number.isFinite(band.top)
  // Something carries the wall over it, listed or not, and bears on both sides.
  const over: OwnBand = {
    ...band,
    left: band.left - bearing(wall),
    right: band.right + bearing(wall),
    bottom: Number.isFinite(band.top) ? band.top : band.bottom,
    top: OPEN,
    weight: 'either',
  }
  return { bands: [{ ...band, weight: sure ? 'refuse' : 'either' }, over], unknown: [] }
}

/** A rectangle round every leg of a known run, wider when its course is only guessed. */
export function serviceBands(levels: Levels, wall: GivenWall, service: GivenService): WallBands {
  const margin = service.traced === null || service.traced === 'guessed' ? 50 : 25
  const width = service.width.value
  const points = service.points.map((p) => {
    const along = fromLeft(wall, p.along)
    return { along, height: levels.onWall(p.height, wall.id, along) }
  })
  const unknown = width === null || points.some((p) => p.along.value === null || p.height.value === null)
  const sure = service.points.every((p) => weightOf(wall, service.face, p.along) === 'refuse')
  const mixed = service.points.some((p) => !isPlain(service.face, p.along))
  const legs = points.length === 1 ? [[points[0], points[0]]] : points.slice(1).map((p, i) => [points[i], p])
  const bands = legs.flatMap(([a, b]): readonly OwnBand[] => {
    const xs = [a?.along.value ?? null, b?.along.value ?? null]
    const zs = [a?.height.value ?? null, b?.height.value ?? null]
    if (width === null || xs.includes(null) || zs.includes(null)) return []
    const reach = width / 2 + margin
    return [
      {
        wall: wall.id,
        kind: 'service',
        about: service.id,
        face: service.face,
        left: Math.min(...xs.map(Number)) - reach,
        right: Math.max(...xs.map(Number)) + reach,
        bottom: Math.min(...zs.map(Number)) - reach,
        top: Math.max(...zs.map(Number)) + reach,
        weight: sure ? 'refuse' : 'either',
      },
    ]
  })
  return { bands, unknown: unknown || (mixed && showsThrough(wall)) ? [service.id] : [] }
}

/** A lintel with its bearings: never drilled when it is prestressed, steel or not known; otherwise asked about. */
export function lintelBand(levels: Levels, wall: GivenWall, lintel: GivenRect): WallBands {
  const left = fromLeft(wall, lintel.left)
  const right = fromLeft(wall, lintel.right)
  const bottom = levels.onWall(lintel.bottom, wall.id, left)
  const top = levels.onWall(lintel.top, wall.id, left)
  if (left.value === null || right.value === null || bottom.value === null || top.value === null) {
    return { bands: [], unknown: [lintel.id] }
  }
  const soft = lintel.kind === 'timber' || lintel.kind === 'concrete'
  return {
    bands: [
      {
        wall: wall.id,
        kind: 'lintel',
        about: lintel.id,
        face: 'room',
        left: left.value - bearing(wall),
        right: right.value + bearing(wall),
        bottom: bottom.value,
        top: top.value,
        weight: soft ? 'ask' : 'refuse',
      },
    ],
    unknown: [],
  }
}
