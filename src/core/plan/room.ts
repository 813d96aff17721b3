import { valueOf } from '../figure'
import type { Room } from '../placing/paths'
import type { Survey } from '../survey/survey'
import type { FloorSurface, Obstacle, PlanPoint } from './types'

/**
 * The room as placing sees it: its outline or the walls that have a place, what is fixed in it, the floor and the
 * ceiling. Among its readings the ceiling is the surface through them; past them it counts as low as the lowest that was
 * read anywhere over the walls.
 */
export function roomFor(survey: Survey, fixed: readonly Obstacle[], closed: boolean): Room {
  const floor = piecesOf(survey)
  const read = { ...floor, plane: null }
  const ceiling = piecesOf({ ...survey.ceiling, plane: null })
  const placed = survey.frames.filter((f) => f.placed)
  const ceilings = placed.map((f) => valueOf(f.ceiling)).filter((z) => z !== undefined)
  const lowest = ceilings.length === 0 ? null : Math.min(...ceilings)
  const walls = placed.flatMap((f) => {
    const length = valueOf(f.length)
    if (length === undefined) return []
    const to = { x: f.origin.x + f.alongDir.x * length, y: f.origin.y + f.alongDir.y * length }
    return [{ wall: f.wall, from: f.origin, to }]
  })
  return {
    outline: closed ? survey.outline : null,
    outlineWalls: placed.map((f) => f.wall),
    walls,
    obstacles: fixed,
    floorHighUnder: (polygon) => highestUnder(floor, polygon),
    floorReadUnder: (polygon) => highestUnder(read, polygon),
    ceilingLowUnder: (polygon) => lowestOver(ceiling, polygon, lowest),
  }
}

/** Floor or ceiling as bare numbers, for asking many times. A reading not taken leaves its triangles without a height. */
interface Pieces {
  /** Sides of the triangles, each once, where both ends are known. */
  readonly folds: readonly {
    readonly from: PlanPoint
    readonly to: PlanPoint
    readonly zFrom: number
    readonly zTo: number
  }[]
  readonly plane: FloorSurface['plane']
  readonly points: readonly { readonly at: PlanPoint; readonly z: number }[]
  readonly triangles: readonly {
    readonly corners: readonly [PlanPoint, PlanPoint, PlanPoint]
    readonly z: readonly (number | undefined)[]
  }[]
}

function piecesOf({
  points,
  triangles,
  plane,
}: Pick<FloorSurface, 'points' | 'triangles' | 'plane'>): Pieces {
  const byId = new Map(points.map((p) => [p.id, p]))
  return {
    plane,
    folds: foldsOf(triangles, byId),
    points: points.flatMap(({ at, z }) => (z.state === 'unknown' ? [] : [{ at, z: z.value }])),
    triangles: triangles.flatMap(({ readings }) => {
      const [a, b, c] = readings.map((id) => byId.get(id))
      if (a === undefined || b === undefined || c === undefined) return []
      return [{ corners: [a.at, b.at, c.at] as const, z: [a, b, c].map((p) => valueOf(p.z)) }]
    }),
  }
}

type Point = FloorSurface['points'][number]

function foldsOf(triangles: FloorSurface['triangles'], byId: ReadonlyMap<string, Point>): Pieces['folds'] {
  const seen = new Set<string>()
  return triangles.flatMap(({ readings: [a, b, c] }) =>
    [
      [a, b],
      [b, c],
      [c, a],
    ].flatMap(([p = '', q = '']) => {
      const name = p < q ? `${p} ${q}` : `${q} ${p}`
      const [from, to] = [byId.get(p), byId.get(q)]
      if (seen.has(name) || from === undefined || to === undefined) return []
      seen.add(name)
      const [zFrom, zTo] = [valueOf(from.z), valueOf(to.z)]
      return zFrom === undefined || zTo === undefined ? [] : [{ from: from.at, to: to.at, zFrom, zTo }]
    }),
  )
}

/** Where a fold crosses the sides of a polygon, as shares of its length. */
function crossings(from: PlanPoint, to: PlanPoint, polygon: readonly PlanPoint[]): readonly number[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const out: number[] = []
  polygon.forEach((p, i) => {
    const q = polygon[(i + 1) % polygon.length] as PlanPoint
    const [ex, ey] = [q.x - p.x, q.y - p.y]
    const cross = dx * ey - dy * ex
    if (Math.abs(cross) < 1e-9) return
    const share = ((p.x - from.x) * ey - (p.y - from.y) * ex) / cross
    const along = ((p.x - from.x) * dy - (p.y - from.y) * dx) / cross
    if (share >= 0 && share <= 1 && along >= 0 && along <= 1) out.push(share)
  })
  return out
}

/**
 * Highest floor under a polygon: at its corners, at every reading inside it, and where its sides cross the folds between
 * triangles, since a ridge may run across it; null where nothing can be said.
 */
function highestUnder(floor: Pieces, polygon: readonly PlanPoint[]): number | null {
  let highest: number | null = null
  for (const corner of polygon) highest = higher(highest, floorAt(floor, corner))
  // A reading or a fold that lies lower than what was met already changes nothing.
  for (const { at, z } of floor.points) {
    if ((highest === null || z > highest) && pointIn(polygon, at)) highest = z
  }
  for (const { from, to, zFrom, zTo } of floor.folds) {
    if (highest !== null && zFrom <= highest && zTo <= highest) continue
    for (const share of crossings(from, to, polygon)) highest = higher(highest, zFrom + (zTo - zFrom) * share)
  }
  return highest
}

/**
 * Lowest ceiling over a polygon: the surface where the whole polygon lies among the readings, else that or the lowest
 * over the walls, whichever is lower. A reading without a height leaves that lowest. Not `survey/ceiling`: that answers
 * with figures, by the walls, and cites each reading it used; this is asked over and over for one way in, of bare
 * numbers, and past the readings it errs low over the whole room, since nobody can be asked on the way.
 */
function lowestOver(ceiling: Pieces, polygon: readonly PlanPoint[], overWalls: number | null): number | null {
  const corners = polygon.map((corner) => heightIn(ceiling, corner))
  const heights = [
    ...corners.flatMap((z) => (typeof z === 'number' ? [z] : [])),
    ...ceiling.points.flatMap(({ at, z }) => (pointIn(polygon, at) ? [z] : [])),
    ...ceiling.folds.flatMap(({ from, to, zFrom, zTo }) =>
      crossings(from, to, polygon).map((share) => zFrom + (zTo - zFrom) * share),
    ),
  ]
  const isAmong = corners.every((z) => z !== 'outside') && ceiling.triangles.length > 0
  const isRead = ceiling.triangles.every(({ z }) => z.every((v) => v !== undefined))
  if (isAmong && isRead) return Math.min(...heights)
  return overWalls === null ? null : Math.min(overWalls, ...heights)
}

function higher(a: number | null, b: number | null): number | null {
  return a === null || (b !== null && b > a) ? b : a
}

/**
 * The floor at a point: in the triangle it lies in; outside all of them, on the plane through the readings, which is
 * where units are only set down on their way. Null where a reading is not known.
 */
function floorAt(floor: Pieces, at: PlanPoint): number | null {
  const z = heightIn(floor, at)
  if (z !== 'outside') return z
  const { plane } = floor
  return plane === null ? null : plane.a + plane.b * at.x + plane.c * at.y
}

/** The height in the triangle a point lies in; null where a reading of it is not known. */
function heightIn({ triangles }: Pieces, at: PlanPoint): number | null | 'outside' {
  for (const { corners, z } of triangles) {
    const weights = within(at, corners)
    if (weights === null) continue
    if (z.some((v) => v === undefined)) return null
    return z.reduce<number>((sum, v, i) => sum + (v as number) * (weights[i] as number), 0)
  }
  return 'outside'
}

/** How much each corner of a triangle counts at a point in it; null outside, and where it has no area. */
function within(
  p: PlanPoint,
  [a, b, c]: readonly [PlanPoint, PlanPoint, PlanPoint],
): readonly number[] | null {
  const area = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)
  if (Math.abs(area) < 1e-9) return null
  const wb = ((p.x - a.x) * (c.y - a.y) - (c.x - a.x) * (p.y - a.y)) / area
  const wc = ((b.x - a.x) * (p.y - a.y) - (p.x - a.x) * (b.y - a.y)) / area
  const wa = 1 - wb - wc
  return wa < -1e-6 || wb < -1e-6 || wc < -1e-6 ? null : [wa, wb, wc]
}

/** Inside a convex polygon, whichever way round it is listed. */
function pointIn(polygon: readonly PlanPoint[], p: PlanPoint): boolean {
  let isLeft = true
  let isRight = true
  let a = polygon[polygon.length - 1]
  if (a === undefined) return true
  for (const b of polygon) {
    const turn = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)
    if (turn < 0) isLeft = false
    if (turn > 0) isRight = false
    if (!isLeft && !isRight) return false
    a = b
  }
  return true
}
