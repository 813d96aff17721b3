import { expect, test } from 'vitest'
import { convexHull } from '../../../src/core/geometry/convex-hull'

test('inner points and points on edges are left out; the rest runs anticlockwise', () => {
  const points = [
    { x: 2, y: 2 },
    { x: 0, y: 0 },
    { x: 4, y: 4 },
    { x: 4, y: 0 },
    { x: 2, y: 0 },
    { x: 0, y: 4 },
  ]
  expect(convexHull(points)).toEqual([
    { x: 0, y: 0 },
    { x: 4, y: 0 },
    { x: 4, y: 4 },
    { x: 0, y: 4 },
  ])
})

test('points on one line give its ends, one point itself', () => {
  const line = [1, 3, 2, 0].map((x) => ({ x, y: 2 * x }))
  expect(convexHull(line)).toEqual([
    { x: 0, y: 0 },
    { x: 3, y: 6 },
  ])
  expect(convexHull([{ x: 1, y: 1 }])).toEqual([{ x: 1, y: 1 }])
  expect(convexHull([])).toEqual([])
})
