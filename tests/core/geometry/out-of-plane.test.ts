import { expect, test } from 'vitest'
import { outOfPlane } from '../../../src/core/geometry/out-of-plane'

const at = (x: number, y: number, z: number) => ({ at: { x, y }, z })
/** A floor that falls 10 in 1000 to the right, and one reading of it 20 too high. */
const FLOOR = [at(0, 0, 0), at(1000, 0, -10), at(0, 1000, 0), at(2000, 0, -20), at(2000, 1000, 0)]

test('one height against the plane through all the others', () => {
  const lie = outOfPlane(FLOOR, 4)
  // The others lie in z = −x / 100: −20 is expected, and they lie in it themselves.
  expect(lie?.expected).toBeCloseTo(-20, 6)
  expect(lie?.worst).toBeCloseTo(0, 6)
  expect(lie?.highest).toBe(0)
})

test('nothing is said with fewer than four others, or others on one line', () => {
  expect(outOfPlane(FLOOR.slice(0, 4), 0)).toBeNull()
  const row = [0, 1, 2, 3].map((i) => at(i * 1000, 0, 0))
  expect(outOfPlane([...row, at(0, 1000, 9)], 4)).toBeNull()
  expect(outOfPlane(FLOOR, 9)).toBeNull()
})
