import fc from 'fast-check'
import { expect, test } from 'vitest'
import { convexHull } from '../../../src/core/geometry/convex-hull'
import { distance } from '../../../src/core/geometry/point'
import { signedArea } from '../../../src/core/geometry/polygon'
import { type Triangle, triangulate } from '../../../src/core/geometry/triangulate'
import type { PlanPoint } from '../../../src/core/plan/types'

const grid = (columns: number, rows: number, step = 1): readonly PlanPoint[] =>
  Array.from({ length: columns * rows }, (_, i) => ({
    x: (i % columns) * step,
    y: Math.floor(i / columns) * step,
  }))

const cornersOf = (points: readonly PlanPoint[], triangle: Triangle) =>
  triangle.map((i) => points[i] as PlanPoint)

const named = (triangles: readonly Triangle[]) =>
  triangles.map((triangle) => [...triangle].sort((a, b) => a - b).join('-')).sort()

test('of four points on one circle the first takes the diagonal', () => {
  const square = grid(2, 2)
  expect(named(triangulate(square))).toEqual(['0-1-3', '0-2-3'])
  // The same square with the points named the other way round: now 0 and 3 are the other two corners.
  const turned = [square[1], square[0], square[3], square[2]] as PlanPoint[]
  expect(named(triangulate(turned))).toEqual(['0-1-3', '0-2-3'])
})

test('a flat kite is split along its short diagonal', () => {
  // Tips 10 apart either way of a waist 2 wide: the circle through a tip and the waist leaves the other tip out.
  const kite = [
    { x: -10, y: 0 },
    { x: 10, y: 0 },
    { x: 0, y: -1 },
    { x: 0, y: 1 },
  ]
  expect(named(triangulate(kite))).toEqual(['0-2-3', '1-2-3'])
})

test('points on one line, two, one, none: no triangles', () => {
  expect(triangulate([0, 1, 2].map((x) => ({ x, y: x })))).toEqual([])
  expect(triangulate(grid(2, 1))).toEqual([])
  expect(triangulate(grid(1, 1))).toEqual([])
  expect(triangulate([])).toEqual([])
})

test('a wall full of readings in two rows, turned by an odd angle, is covered once', () => {
  const turn = (p: PlanPoint, degrees: number): PlanPoint => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)]
    return { x: c * p.x - s * p.y, y: s * p.x + c * p.y }
  }
  for (const degrees of [0, 90, 180, 270, -90.4, 37, 88.7]) {
    const points = grid(6, 2, 600).map((p) => turn(p, degrees))
    const triangles = triangulate(points)
    expect(triangles).toHaveLength(10)
    const area = triangles.reduce((sum, triangle) => sum + signedArea(cornersOf(points, triangle)), 0)
    expect(area).toBeCloseTo(5 * 600 * 600, 3)
  }
})

const points = fc.uniqueArray(
  fc.record({ x: fc.integer({ min: 0, max: 9 }), y: fc.integer({ min: 0, max: 9 }) }),
  {
    minLength: 3,
    maxLength: 24,
    selector: ({ x, y }) => `${x} ${y}`,
  },
)

/** Centre of the circle through three points. */
function centreOf([a, b, c]: readonly PlanPoint[]): PlanPoint {
  const [p, q, r] = [a, b, c] as [PlanPoint, PlanPoint, PlanPoint]
  const d = 2 * (p.x * (q.y - r.y) + q.x * (r.y - p.y) + r.x * (p.y - q.y))
  const [pp, qq, rr] = [p, q, r].map(({ x, y }) => x * x + y * y) as [number, number, number]
  return {
    x: (pp * (q.y - r.y) + qq * (r.y - p.y) + rr * (p.y - q.y)) / d,
    y: (pp * (r.x - q.x) + qq * (p.x - r.x) + rr * (q.x - p.x)) / d,
  }
}

test('triangles cover the hull once, and no circle holds a point', () => {
  fc.assert(
    fc.property(points, (all) => {
      const triangles = triangulate(all)
      const area = triangles.reduce((sum, t) => sum + signedArea(cornersOf(all, t)), 0)
      expect(area).toBeCloseTo(Math.max(0, signedArea(convexHull(all))), 9)
      for (const triangle of triangles) {
        const corners = cornersOf(all, triangle)
        expect(signedArea(corners)).toBeGreaterThan(0)
        const centre = centreOf(corners)
        const radius = distance(centre, corners[0] as PlanPoint)
        for (const p of all) expect(distance(centre, p)).toBeGreaterThan(radius - 1e-6)
      }
    }),
    { seed: 41, numRuns: 400 },
  )
})

test('taking a point away changes no triangle that it was not a corner of', () => {
  fc.assert(
    fc.property(points, fc.nat(), (all, pick) => {
      const gone = pick % all.length
      const left = all.filter((_, i) => i !== gone)
      const back = (i: number) => (i < gone ? i : i + 1)
      const still = new Set(
        named(triangulate(left).map(([a, b, c]): Triangle => [back(a), back(b), back(c)])),
      )
      const before = named(triangulate(all).filter((triangle) => !triangle.includes(gone)))
      for (const triangle of before) expect(still).toContain(triangle)
    }),
    { seed: 42, numRuns: 400 },
  )
})
