import { expect, test } from 'vitest'
import { fitPlane, heightOn, type Plane, worstOff } from '../../../src/core/geometry/plane'

const sample = (x: number, y: number, z: number) => ({ at: { x, y }, z })

test('four corners of a true plane: slopes 0.01 and 0.02, nothing left over', () => {
  // 10.0, 10.2, 10.6, 10.4 at the corners of a 20 × 20 square: 0.2 in 20 along x, 0.4 in 20 along y.
  const corners = [sample(0, 0, 10), sample(20, 0, 10.2), sample(20, 20, 10.6), sample(0, 20, 10.4)]
  const plane = fitPlane(corners) as Plane
  expect(plane.a).toBeCloseTo(10, 12)
  expect(plane.b).toBeCloseTo(0.01, 12)
  expect(plane.c).toBeCloseTo(0.02, 12)
  expect(worstOff(plane, corners)).toBeCloseTo(0, 12)
})

test('a plane through four corners that are not true', () => {
  // 0, 0, 0, 4 at the corners of a square of side 1: mean 1, slope 2 each way, so z = −1 + 2x + 2y; each is 1 off.
  const corners = [sample(0, 0, 0), sample(1, 0, 0), sample(0, 1, 0), sample(1, 1, 4)]
  const plane = fitPlane(corners) as Plane
  expect(plane).toEqual({ a: -1, b: 2, c: 2 })
  expect(worstOff(plane, corners)).toBe(1)
  expect(heightOn(plane, { x: 2, y: 3 })).toBe(9)
})

/** A real sloping floor: drops from a level in inches, over x = 0, 12 … 60 and y = 0, 24, 48, 72 inches. */
const FLOOR = [
  [0, 0.695, 1.345, 1.865, 2.225, 2.59],
  [0, 0.719, 1.405, 1.978, 2.398, 2.73],
  [0, 0.789, 1.474, 2.064, 2.472, 2.775],
  [0, 0.763, 1.453, 1.968, 2.356, 2.649],
]

test('a badly sloping floor read at 24 places', () => {
  const samples = FLOOR.flatMap((row, j) => row.map((z, i) => sample(12 * i, 24 * j, z)))
  const plane = fitPlane(samples) as Plane
  expect(plane.b).toBeCloseTo(0.0448649, 7)
  expect(plane.c).toBeCloseTo(0.001216, 7)
  expect(plane.a).toBeCloseTo(0.139987, 6)
  expect(worstOff(plane, samples)).toBeCloseTo(0.2704, 4)
})

test('no plane through two places, or places on one line', () => {
  expect(fitPlane([sample(0, 0, 1), sample(1, 0, 2)])).toBeNull()
  expect(fitPlane([sample(0, 0, 1), sample(1, 1, 2), sample(3, 3, 9)])).toBeNull()
})
