import { expect, test } from 'vitest'
import { convexTouch, distanceOutside, pointInPolygon, signedArea } from '../../../src/core/geometry/polygon'

/** An L: 4 by 4 with the upper right quarter cut out. */
const ell = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 2 },
  { x: 2, y: 2 },
  { x: 2, y: 4 },
  { x: 0, y: 4 },
]

test('an area is positive anticlockwise: 4 × 4 less 2 × 2', () => {
  expect(signedArea(ell)).toBe(12)
  expect(signedArea([...ell].reverse())).toBe(-12)
})

test.each([
  ['in the foot', { x: 3, y: 1 }, true],
  ['in the notch', { x: 3, y: 3 }, false],
  ['on an edge', { x: 4, y: 1 }, true],
  ['on the inner corner', { x: 2, y: 2 }, true],
  ['level with a corner, outside', { x: 5, y: 2 }, false],
  ['level with a corner, inside', { x: 1, y: 2 }, true],
])('%s', (_, p, inside) => {
  expect(pointInPolygon(ell, p)).toBe(inside)
  expect(pointInPolygon([...ell].reverse(), p)).toBe(inside)
})

test('how far outside: 0 within, square to an edge, to a corner', () => {
  expect(distanceOutside(ell, { x: 1, y: 1 })).toBe(0)
  expect(distanceOutside(ell, { x: 6, y: 1 })).toBe(2)
  expect(distanceOutside(ell, { x: 7, y: -4 })).toBe(5)
})

test('convex shapes touch when nothing parts them, at a single point too', () => {
  const triangle = [
    { x: 0, y: 0 },
    { x: 2, y: 0 },
    { x: 0, y: 2 },
  ]
  const square = (x: number, y: number) => [
    { x, y },
    { x: x + 1, y },
    { x: x + 1, y: y + 1 },
    { x, y: y + 1 },
  ]
  expect(convexTouch(triangle, square(0.2, 0.2))).toBe(true)
  // Its lower left corner lies on the slanting edge.
  expect(convexTouch(triangle, square(1, 1))).toBe(true)
  expect(convexTouch(triangle, square(1.1, 1.1))).toBe(false)
  // Only the slanting edge parts them: no edge of the square does.
  expect(convexTouch(square(1.1, 1.1), triangle)).toBe(false)
  expect(convexTouch(triangle, square(-3, 0))).toBe(false)
})

test('a strip of no depth touches what it crosses', () => {
  const strip = [
    { x: 0, y: 1 },
    { x: 4, y: 1 },
    { x: 4, y: 1 },
    { x: 0, y: 1 },
  ]
  const above = [
    { x: 1, y: 2 },
    { x: 3, y: 2 },
    { x: 2, y: 3 },
  ]
  const across = [
    { x: 1, y: 0 },
    { x: 3, y: 0 },
    { x: 2, y: 3 },
  ]
  expect(convexTouch(strip, above)).toBe(false)
  expect(convexTouch(strip, across)).toBe(true)
})
