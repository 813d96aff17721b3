import { expect, test } from 'vitest'
import { known } from '../../../src/core/figure'
import { wayAlongWalls } from '../../../src/core/placing/way-along-walls'
import type { WallFrame } from '../../../src/core/plan/types'

const mm = (value: number) => known(value, 1, 'mm', [])
const frames = [
  ['a', 4000],
  ['b', 3000],
  ['c', 4000],
  ['d', 3000],
].map(([wall, length]) => ({ wall, length: mm(length as number) })) as unknown as readonly WallFrame[]
const way = (closed: boolean, from: [string, number], to: [string, number]) =>
  wayAlongWalls(
    { closed },
    { frames },
    { wall: from[0], along: mm(from[1]) },
    { wall: to[0], along: mm(to[1]) },
  )

test('along one wall, either way', () => {
  expect(way(true, ['a', 500], ['a', 1700])).toMatchObject({ value: 1200, pm: 2 })
  expect(way(true, ['a', 1700], ['a', 500])).toMatchObject({ value: 1200 })
})

test('round a corner: what is left of the one wall and what is gone of the other', () => {
  expect(way(true, ['a', 3600], ['b', 500])).toMatchObject({ value: 900 })
  expect(way(true, ['b', 500], ['a', 3600])).toMatchObject({ value: 900 })
})

test('the shorter way round where the walls close, the only one where they do not', () => {
  // a 300 to d 2 800: 200 + 300 back; the other way 3 700 + 3 000 + 4 000 + 2 800.
  expect(way(true, ['a', 300], ['d', 2800])).toMatchObject({ value: 500 })
  expect(way(false, ['a', 300], ['d', 2800])).toMatchObject({ value: 13_500 })
})

test('walls that are not there', () => {
  expect(way(true, ['a', 300], ['x', 100])).toBeNull()
})
