import { expect, test } from 'vitest'
import { aheadTo, type Strip, wallAhead } from '../../../src/core/placing/in-front'

/** At the first wall: its width runs along +x and its front looks along −y. */
const strip: Strip = { pose: { x: 100, y: 0, z: 0, yaw: 0 }, x0: 0, x1: 600, y0: 560 }
const box = (x0: number, x1: number, y0: number, y1: number) => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
]

test('what stands opposite, from its nearest face', () => {
  expect(aheadTo(strip, box(0, 900, -2000, -1500))).toBe(940)
  expect(aheadTo(strip, box(650, 900, -2000, -1500))).toBe(940)
})

test('beside the strip, behind it, and hardly touching its edge: not in front', () => {
  expect(aheadTo(strip, box(700, 900, -2000, -1500))).toBe(Number.POSITIVE_INFINITY)
  expect(aheadTo(strip, box(0, 900, -560, 0))).toBe(Number.POSITIVE_INFINITY)
})

test('a slanting wall counts where it comes nearest within the strip, not past it', () => {
  // From (100, −1 160) straight to (1 300, −560): half a mm nearer for each mm to the right. At x = 700 it is at −860.
  expect(wallAhead(strip, { x: 100, y: -1160 }, { x: 1300, y: -560 })).toBeCloseTo(300, 9)
  expect(
    aheadTo(
      strip,
      [
        { x: 100, y: -1160 },
        { x: 1300, y: -560 },
      ],
      false,
    ),
  ).toBeCloseTo(300, 9)
})

test('the wall at its own back is not ahead', () => {
  expect(wallAhead(strip, { x: 0, y: 0 }, { x: 3000, y: 0 })).toBe(Number.POSITIVE_INFINITY)
})

test('against a second way: rays from every millimetre of its width', () => {
  const shape = [
    { x: 60, y: -1300 },
    { x: 420, y: -1033 },
    { x: 903, y: -1401 },
    { x: 300, y: -1900 },
  ]
  let least = Number.POSITIVE_INFINITY
  for (let x = 100; x <= 700; x++) {
    shape.forEach((a, i) => {
      const b = shape[(i + 1) % shape.length] as { x: number; y: number }
      const share = (x - a.x) / (b.x - a.x)
      if (share >= 0 && share <= 1) least = Math.min(least, -(a.y + (b.y - a.y) * share) - 560)
    })
  }
  expect(aheadTo(strip, shape)).toBeCloseTo(least, 0)
})
