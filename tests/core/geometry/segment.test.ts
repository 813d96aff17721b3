import { expect, test } from 'vitest'
import { distanceToSegment, nearestOnSegment, shareAlong } from '../../../src/core/geometry/segment'

const a = { x: 0, y: 0 }
const b = { x: 10, y: 0 }

test.each([
  ['beside the middle', { x: 4, y: 3 }, 0.4, 3],
  ['past the end', { x: 13, y: 4 }, 1.3, 5],
  ['before the start', { x: -3, y: 4 }, -0.3, 5],
  ['on it', { x: 2, y: 0 }, 0.2, 0],
])('%s', (_, p, share, off) => {
  expect(shareAlong(a, b, p)).toBeCloseTo(share, 12)
  expect(distanceToSegment(a, b, p)).toBeCloseTo(off, 12)
})

test('a segment of no length is a point', () => {
  expect(nearestOnSegment(a, a, { x: 3, y: 4 })).toEqual(a)
  expect(distanceToSegment(a, a, { x: 3, y: 4 })).toBe(5)
})
