import type { PlanPoint } from '../core/plan/types'
import { type Measure, notKnown, work } from './measure'
import { area, cross, depthInside, distanceTo, hull, overlap, type Polygon, thinness } from './polygon'

/**
 * A surface through level readings (floor or ceiling). Where several triangulations are equally good, four readings on
 * one circle, the choice is the plan's: it publishes its triangles, and they are used here once they have been proved to
 * be a Delaunay triangulation by trying every reading against every circle.
 */
export interface Reading {
  readonly id: string
  readonly at: PlanPoint
  readonly z: Measure
}
export type Triangle = readonly [Reading, Reading, Reading]

export interface Surface {
  readonly readings: readonly Reading[]
  readonly triangles: readonly Triangle[]
  /** z = a + b·x + c·y, least squares; null when the readings do not span a plane. */
  readonly plane: Plane | null
  readonly at: (point: PlanPoint) => Measure
}
export interface Plane {
  readonly a: number
  readonly b: number
  readonly c: number
  readonly worst: number
}

const ON_EDGE = 1e-6
/** A foot within this of a reading stands on it. */
const AT_READING = 1

/**
 * The surface over the given triangles, or over the checker's own triangulation when none are given. Outside them it is
 * the plane through all readings, which needs every one of them: `unplaced` are those that have no place.
 */
export function surfaceOver(
  readings: readonly Reading[],
  chosen: readonly Triangle[] | null,
  nothingRead: string,
  unplaced: readonly string[] = [],
): Surface {
  const triangles = chosen ?? ownTriangles(readings)
  const plane = planeThrough(readings)
  const spans = spansPlane(readings.filter((r) => r.z.value !== null))
  const all = readings.map((r) => r.z)
  const outside = (p: PlanPoint): Measure => {
    if (unplaced.length > 0) return notKnown(...unplaced)
    if (plane === null) return notKnown(nothingRead)
    return work(all, () => plane.a + plane.b * p.x + plane.c * p.y)
  }
  return {
    readings,
    triangles,
    plane,
    at: (p) => {
      if (!spans) return onSegments(readings, p, nothingRead)
      const inside = triangles.find((t) => depthInside(anticlockwiseTriangle(t), p) >= -ON_EDGE)
      return inside === undefined ? outside(p) : interpolate(inside, p)
    },
  }
}

function anticlockwiseTriangle([a, b, c]: Triangle): Polygon {
  return cross(a.at, b.at, c.at) >= 0 ? [a.at, b.at, c.at] : [a.at, c.at, b.at]
}

function spansPlane(readings: readonly Reading[]): boolean {
  return thinness(hull(readings.map((r) => r.at))) > 1e-6
}

/** Between three readings: each counts by the area of the triangle facing it, and not at all on the side facing it. */
function interpolate([a, b, c]: Triangle, p: PlanPoint): Measure {
  const whole = cross(a.at, b.at, c.at)
  const share = (u: Reading, v: Reading): number => {
    const facing = cross(p, u.at, v.at)
    const side = Math.hypot(u.at.x - v.at.x, u.at.y - v.at.y)
    return Math.abs(facing) <= ON_EDGE * side ? 0 : facing / whole
  }
  const [shareA, shareB, shareC] = [share(b, c), share(c, a), share(a, b)]
  const counted = [
    { z: a.z, share: shareA },
    { z: b.z, share: shareB },
    { z: c.z, share: shareC },
  ].filter((one) => one.share !== 0)
  return work(
    counted.map(({ z }) => z),
    (...levels) => levels.reduce((sum, z, i) => sum + z * (counted[i]?.share ?? 0), 0),
  )
}

/** Too few readings for a surface: only at a reading, or straight between two, is anything known. */
function onSegments(readings: readonly Reading[], p: PlanPoint, nothingRead: string): Measure {
  const near = readings.find((r) => Math.hypot(r.at.x - p.x, r.at.y - p.y) <= AT_READING)
  if (near !== undefined) return near.z
  const spans = readings
    .flatMap((a, i) => readings.slice(i + 1).map((b) => [a, b] as const))
    .filter(([a, b]) => distanceTo(p, a.at, b.at) <= 1e-3)
    .sort((s, t) => span(s) - span(t))
  const between = spans[0]
  if (between === undefined) return notKnown(nothingRead)
  const [a, b] = between
  const share = Math.hypot(p.x - a.at.x, p.y - a.at.y) / span(between)
  return work([a.z, b.z], (za = 0, zb = 0) => za + (zb - za) * share)
}

function span([a, b]: readonly [Reading, Reading]): number {
  return Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y)
}

/** Least squares by the normal equations about the centre of the readings. Null when they do not span a plane. */
export function planeThrough(readings: readonly Reading[]): Plane | null {
  const known = readings.flatMap((r) => (r.z.value === null ? [] : [{ ...r.at, z: r.z.value }]))
  if (!spansPlane(readings.filter((r) => r.z.value !== null))) return null
  const n = known.length
  const mean = (of: (r: { x: number; y: number; z: number }) => number): number =>
    known.reduce((total, r) => total + of(r), 0) / n
  const x0 = mean((r) => r.x)
  const y0 = mean((r) => r.y)
  const z0 = mean((r) => r.z)
  const xx = mean((r) => (r.x - x0) ** 2)
  const yy = mean((r) => (r.y - y0) ** 2)
  const xy = mean((r) => (r.x - x0) * (r.y - y0))
  const xz = mean((r) => (r.x - x0) * (r.z - z0))
  const yz = mean((r) => (r.y - y0) * (r.z - z0))
  const det = xx * yy - xy * xy
  if (Math.abs(det) < 1e-9) return null
  const b = (xz * yy - yz * xy) / det
  const c = (yz * xx - xz * xy) / det
  const a = z0 - b * x0 - c * y0
  return { a, b, c, worst: Math.max(...known.map((r) => Math.abs(r.z - (a + b * r.x + c * r.y)))) }
}

/** Every triple whose circle holds no other reading; of readings on one circle, triangles that do not overlap. */
export function ownTriangles(readings: readonly Reading[]): readonly Triangle[] {
  const chosen: Triangle[] = []
  readings.forEach((a, i) => {
    readings.slice(i + 1).forEach((b, j) => {
      for (const c of readings.slice(i + j + 2)) {
        const t: Triangle = [a, b, c]
        if (thinness(anticlockwiseTriangle(t)) > ON_EDGE && isDelaunay(t, readings) && !overlaps(t, chosen)) {
          chosen.push(t)
        }
      }
    })
  })
  return chosen
}

function overlaps(t: Triangle, others: readonly Triangle[]): boolean {
  const shape = anticlockwiseTriangle(t)
  return others.some((o) => thinness(overlap(shape, anticlockwiseTriangle(o))) > 1e-6)
}

/**
 * The level at a point by whichever Delaunay triangle over it comes nearest to a given level: where readings lie on one
 * circle there are several, and nobody has said which was chosen. `to` null: one whose level is not known, if there
 * is any. Null when no triangle lies over the point.
 */
export function nearestLevel(readings: readonly Reading[], p: PlanPoint, to: number | null): Measure | null {
  let best: Measure | null = null
  readings.forEach((a, i) => {
    readings.slice(i + 1).forEach((b, j) => {
      for (const c of readings.slice(i + j + 2)) {
        const t: Triangle = [a, b, c]
        const shape = anticlockwiseTriangle(t)
        if (thinness(shape) <= ON_EDGE || depthInside(shape, p) < -ON_EDGE || !isDelaunay(t, readings))
          continue
        const level = interpolate(t, p)
        const off = (m: Measure | null): number => {
          const level = m?.value ?? null
          if (to === null) return m !== null && level === null ? 0 : 1
          return level === null ? Number.POSITIVE_INFINITY : Math.abs(level - to)
        }
        if (best === null || off(level) < off(best)) best = level
      }
    })
  })
  return best
}

/** No reading lies inside the circle through the three corners. */
export function isDelaunay([a, b, c]: Triangle, readings: readonly Reading[]): boolean {
  const centre = circumcentre(a.at, b.at, c.at)
  if (centre === null) return true
  const radius = Math.hypot(a.at.x - centre.x, a.at.y - centre.y)
  const slack = 0.01 + radius * 1e-6
  return readings.every((r) => Math.hypot(r.at.x - centre.x, r.at.y - centre.y) >= radius - slack)
}

function circumcentre(a: PlanPoint, b: PlanPoint, c: PlanPoint): PlanPoint | null {
  const d = 2 * cross(a, b, c)
  if (Math.abs(d) < 1e-6) return null
  const b2 = (b.x - a.x) ** 2 + (b.y - a.y) ** 2
  const c2 = (c.x - a.x) ** 2 + (c.y - a.y) ** 2
  return {
    x: a.x + ((c.y - a.y) * b2 - (b.y - a.y) * c2) / d,
    y: a.y + ((b.x - a.x) * c2 - (c.x - a.x) * b2) / d,
  }
}

/** What is wrong with a list of triangles as a Delaunay triangulation of the readings; null when nothing is. */
export function triangulationFault(
  readings: readonly Reading[],
  triangles: readonly Triangle[],
): string | null {
  const wrong = triangles.find((t) => !isDelaunay(t, readings))
  if (wrong !== undefined) {
    return `a reading lies inside the circle through ${wrong.map((r) => r.id).join(', ')}`
  }
  const covered = triangles.reduce((total, [a, b, c]) => total + Math.abs(cross(a.at, b.at, c.at)) / 2, 0)
  const whole = Math.abs(area(hull(readings.map((r) => r.at))))
  if (Math.abs(covered - whole) > 10 + whole * 1e-6)
    return 'the triangles do not cover the readings once each'
  const clash = triangles.find((t, i) => overlaps(t, triangles.slice(i + 1)))
  return clash === undefined ? null : `triangle ${clash.map((r) => r.id).join(', ')} lies over another`
}

/** Highest level known over a convex area: at its corners, at readings in it, and where edges of triangles cross its rim. */
export function highestOver(surface: Surface, over: Polygon): number | null {
  return extremeOver(surface, over, Math.max)
}

export function lowestOver(surface: Surface, over: Polygon): number | null {
  return extremeOver(surface, over, Math.min)
}

/** The same over the part of the area that the triangles span; null when they span none of it. */
export function lowestSpanned(surface: Surface, over: Polygon): number | null {
  const values = spannedLevels(surface, over)
  return values.length === 0 ? null : Math.min(...values)
}

export function highestSpanned(surface: Surface, over: Polygon): number | null {
  const values = spannedLevels(surface, over)
  return values.length === 0 ? null : Math.max(...values)
}

function spannedLevels(surface: Surface, over: Polygon): readonly number[] {
  return surface.triangles
    .flatMap((t) => overlap(anticlockwiseTriangle(t), over).map((p) => interpolate(t, p)))
    .flatMap((m) => (m.value === null ? [] : [m.value]))
}

function extremeOver(surface: Surface, over: Polygon, pick: (...values: number[]) => number): number | null {
  const rim = over.map((p) => surface.at(p)).flatMap((m) => (m.value === null ? [] : [m.value]))
  const values = [...spannedLevels(surface, over), ...rim]
  return values.length === 0 ? null : pick(...values)
}
