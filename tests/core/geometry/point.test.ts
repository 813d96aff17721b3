import { expect, test } from 'vitest'
import { bearing, byPlace, direction, leftOfLine } from '../../../src/core/geometry/point'

test.each([
  [0, 1, 0],
  [90, 0, 1],
  [180, -1, 0],
  [-90, 0, -1],
  [-360, 1, 0],
])('%i° points exactly along an axis', (degrees, x, y) => {
  expect(direction(degrees)).toEqual({ x, y })
})

test('left of a line is positive, seen from above', () => {
  const [a, b] = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
  ]
  expect(leftOfLine(a, b, { x: 3, y: 2 })).toBe(2)
  expect(leftOfLine(a, b, { x: 3, y: -2 })).toBe(-2)
  expect(leftOfLine(a, a, { x: 3, y: -2 })).toBe(0)
})

test('a bearing is read anticlockwise from +x', () => {
  expect(bearing({ x: 0, y: 1 })).toBe(90)
  expect(bearing(direction(-90))).toBe(-90)
})

test('points on an upright line stay in order in spite of rounding', () => {
  const line = [
    { x: 5 + 1e-12, y: 0 },
    { x: 5 - 1e-12, y: 2 },
    { x: 5, y: 1 },
  ]
  expect([...line].sort(byPlace).map(({ y }) => y)).toEqual([0, 1, 2])
})
