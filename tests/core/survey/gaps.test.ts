import { expect, test } from 'vitest'
import { gapsAmong } from '../../../src/core/survey/gaps'

const on = (x: number, z: number, y = 0) => ({ x, y, z })
const gaps = (...spots: readonly ReturnType<typeof on>[]) =>
  gapsAmong(spots).map(({ from, to, at, distance, gap }) => [from, to, at, distance, gap])

test('a slope is flat, however steep', () => {
  expect(gaps(on(0, 0), on(1000, 20), on(2000, 40))).toEqual([[0, 2, 1, 2000, 0]])
})

test('a hollow is measured at the reading, a hump against its neighbours', () => {
  expect(gaps(on(0, 0), on(500, -8), on(2000, 4))).toEqual([[0, 2, 1, 2000, 9]])
  expect(gaps(on(0, 0), on(1000, 5), on(2000, 0))).toEqual([[0, 2, 1, 2000, -5]])
})

test('a straightedge does not lie on two readings with a higher one between', () => {
  // Over the hump in the middle it cannot reach from end to end; the hollows beside it are measured from the hump.
  const hill = [on(0, 0), on(500, -3), on(1000, 6), on(1500, -3), on(2000, 0)]
  expect(gaps(...hill)).toEqual([
    [0, 2, 1, 1000, 6],
    [1, 3, 2, 1000, -9],
    [2, 4, 3, 1000, 6],
  ])
})

test('of several readings under one line the deepest counts', () => {
  expect(gaps(on(0, 0), on(1000, -4), on(2000, -6), on(3000, 0)).at(1)).toEqual([0, 3, 2, 3000, 6])
})

test('a reading 50 mm beside the line lies under the straightedge, one further does not', () => {
  expect(gaps(on(0, 0), on(1000, -4, 50), on(2000, 0)).length).toBe(1)
  expect(gaps(on(0, 0), on(1000, -4, 51), on(2000, 0))).toEqual([])
})
