import type { PlanPoint } from '../plan/types'
import { byPlace, cross, distance, leftOfLine, subtract } from './point'
import { ON_EDGE } from './tolerance'

/** Three places in the list, anticlockwise seen from above. */
export type Triangle = readonly [number, number, number]

interface Growing {
  readonly triangles: Triangle[]
  /** Anticlockwise outline of what stands so far, points on its edges included; while all are on one line, that line. */
  rim: number[]
  flat: boolean
}

/**
 * The Delaunay triangulation of some points: triangles whose circles hold no other point, so that each place is judged
 * by points near it on all sides.
 *
 * Of points on one circle, the earliest in the list takes the diagonals: so the answer depends on the order only where
 * nothing else decides, and taking a point away changes no triangle that it was not a corner of. Points in one place
 * must have been made one before. Points all on one line give no triangles.
 */
export function triangulate(points: readonly PlanPoint[]): readonly Triangle[] {
  return flipUntilDelaunay(points, sweep(points))
}

/** Any triangulation: points taken left to right, each joined to the part of the rim it can see. */
function sweep(points: readonly PlanPoint[]): Triangle[] {
  const order = points.map((_, i) => i)
  order.sort((i, k) => byPlace(points[i] as PlanPoint, points[k] as PlanPoint))
  const growing: Growing = { triangles: [], rim: [], flat: true }
  for (const next of order) {
    if (growing.flat) takeOntoLine(points, growing, next)
    else takeOntoRim(points, growing, next)
  }
  return growing.triangles
}

/** While all points lie on one line they are only kept; the first beside it is joined to every stretch of it. */
function takeOntoLine(points: readonly PlanPoint[], growing: Growing, next: number): void {
  const { rim, triangles } = growing
  const [first, last] = [rim[0], rim.at(-1)]
  const side =
    first === undefined || last === undefined || first === last ? 0 : sideOf(points, first, last, next)
  if (side === 0) {
    rim.push(next)
    return
  }
  const line = side > 0 ? rim : rim.reverse()
  for (let i = 0; i + 1 < line.length; i++) {
    triangles.push([line[i] as number, line[i + 1] as number, next])
  }
  growing.rim = [...line, next]
  growing.flat = false
}

/** Joins a point outside the rim to each stretch of it that it sees, and takes the point into the rim. */
function takeOntoRim(points: readonly PlanPoint[], growing: Growing, next: number): void {
  const { rim, triangles } = growing
  const n = rim.length
  const sees = rim.map((a, i) => sideOf(points, a, rim[(i + 1) % n] as number, next) < 0)
  const start = sees.findIndex((s, i) => s && !sees[(i + n - 1) % n])
  if (start < 0) return
  let end = start
  while (sees[end % n]) {
    triangles.push([rim[(end + 1) % n] as number, rim[end % n] as number, next])
    end++
  }
  const kept: number[] = []
  for (let i = end; i <= start + n; i++) kept.push(rim[i % n] as number)
  growing.rim = [...kept, next]
}

/** 1 left, −1 right, 0 on the line from point i to point k. */
function sideOf(points: readonly PlanPoint[], i: number, k: number, p: number): -1 | 0 | 1 {
  const off = leftOfLine(points[i] as PlanPoint, points[k] as PlanPoint, points[p] as PlanPoint)
  return off > ON_EDGE ? 1 : off < -ON_EDGE ? -1 : 0
}

/** Swaps diagonals of neighbouring triangles until each triangle's circle is empty. */
function flipUntilDelaunay(points: readonly PlanPoint[], start: readonly Triangle[]): readonly Triangle[] {
  let triangles = [...start]
  // Each swap comes nearer to the one answer; the bound only stops a sliver that rounding makes swap for ever.
  for (let round = 0; round < points.length * points.length + 1; round++) {
    const swapped = flipOnce(points, triangles)
    if (swapped === undefined) break
    triangles = swapped
  }
  return triangles
}

/** One pass over all inner edges; undefined when none wants swapping. */
function flipOnce(points: readonly PlanPoint[], triangles: readonly Triangle[]): Triangle[] | undefined {
  const next = [...triangles]
  const touched = new Set<number>()
  const edges = new Map<string, number>()
  triangles.forEach((triangle, at) => {
    for (const [a, b] of sides(triangle)) edges.set(`${a} ${b}`, at)
  })
  for (const [at, triangle] of triangles.entries()) {
    for (const [a, b, c] of sides(triangle)) {
      const across = edges.get(`${b} ${a}`)
      if (across === undefined || across < at || touched.has(at) || touched.has(across)) continue
      const d = (triangles[across] as Triangle).find((i) => i !== a && i !== b) as number
      if (!wantsSwap(points, a, b, c, d)) continue
      next[at] = [c, a, d]
      next[across] = [d, b, c]
      touched.add(at).add(across)
    }
  }
  return touched.size === 0 ? undefined : next
}

/** The three sides of a triangle, each with the corner opposite. */
function sides([a, b, c]: Triangle): readonly (readonly [number, number, number])[] {
  return [
    [a, b, c],
    [b, c, a],
    [c, a, b],
  ]
}

/** Whether the edge a–b, with c on its left and d on its right, should rather be c–d. */
function wantsSwap(points: readonly PlanPoint[], a: number, b: number, c: number, d: number): boolean {
  // Only when the four make a bulging quadrilateral can the diagonals be swapped.
  if (sideOf(points, c, d, a) >= 0 || sideOf(points, c, d, b) <= 0) return false
  const inside = insideCircle(points, a, b, c, d)
  return inside === 0 ? Math.min(c, d) < Math.min(a, b) : inside > 0
}

/** 1 when d lies inside the circle through a, b and c, −1 outside, 0 on it. */
function insideCircle(points: readonly PlanPoint[], a: number, b: number, c: number, d: number): -1 | 0 | 1 {
  const [pa, pb, pc, pd] = [a, b, c, d].map((i) => points[i] as PlanPoint) as [
    PlanPoint,
    PlanPoint,
    PlanPoint,
    PlanPoint,
  ]
  const [u, v] = [subtract(pb, pa), subtract(pc, pa)]
  const twice = 2 * cross(u, v)
  const [uu, vv] = [u.x * u.x + u.y * u.y, v.x * v.x + v.y * v.y]
  const centre = { x: pa.x + (v.y * uu - u.y * vv) / twice, y: pa.y + (u.x * vv - v.x * uu) / twice }
  const deep = distance(centre, pa) - distance(centre, pd)
  return deep > ON_EDGE ? 1 : deep < -ON_EDGE ? -1 : 0
}
