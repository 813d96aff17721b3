/** The strip of the walls against figures worked by hand from the sheet of Mill Lane. */
import { expect, test } from 'vitest'
import { mmTyped } from '../../src/core/form/typed'
import { piecesOf, type StripWall, stripOf } from '../../src/ui/survey/strip/strip'
import { sceneFile } from '../support/kitchens'

const strip = stripOf(sceneFile('l-shape'))
const wall = (id: string): StripWall => {
  const found = strip.walls.find((w) => w.id === id)
  if (found === undefined) throw new Error(id)
  return found
}
const lengths = (id: string, level: 'standing' | 'hung') =>
  piecesOf(wall(id), level).map((p) => [p.unit, p.to - p.from])

test('walls stand one after the other', () => {
  expect(strip.walls.map((w) => [w.id, w.x])).toEqual([
    ['a', 0],
    ['b', 3900],
    ['c', 7000],
    ['d', 10918],
  ])
  expect(strip.width).toBe(3900 + 3100 + 3918 + 3113)
})

// The hall begins 150 past our right end: 3900 + 150 − 3650 = 400. From its right end, which is our left: 880.
test('what is on the other side is turned about', () => {
  const spots = new Map(wall('a').outlets.map((o) => [o.id, [o.x, o.up, o.isOnOtherSide]]))
  expect(spots.get('hall-socket')).toEqual([400, -555, true])
  expect(spots.get('hall-switch')).toEqual([880, 200, true])
  expect(spots.get('socket-2')).toEqual([3200, 80, false])
})

test('strings of dimensions run from corner to corner and add up to the wall', () => {
  expect(lengths('a', 'standing')).toEqual([
    [null, 40],
    ['tall-1', 600],
    ['base-1', 600],
    ['base-2', 900],
    ['base-3', 800],
    ['corner-1', 900],
    [null, 60],
  ])
  expect(lengths('a', 'hung')).toEqual([
    [null, 640],
    ['wall-1', 600],
    ['wall-2', 300],
    ['wall-3', 600],
    [null, 800],
    ['wall-4', 600],
    [null, 360],
  ])
  expect(lengths('b', 'standing')).toEqual([
    [null, 640],
    ['base-4', 450],
    ['base-5', 800],
    ['dishwasher-space', 600],
    [null, 610],
  ])
  expect(lengths('c', 'standing')).toEqual([])
})

test('what is not known yet is a stand-in and says so', () => {
  const half = stripOf({
    walls: [
      { id: 'a', length: '2,' },
      { id: 'b', length: '96 in' },
    ],
    units: [
      { id: 'base-1', kind: 'base', wall: 'b', order: { left: { at: 0 } } },
      { id: 'base-2', kind: 'base', wall: 'b', order: { rightOf: 'base-1' }, width: 400 },
      { id: 'base-3', kind: 'base', wall: 'b', order: { rightOf: 'base-4' } },
      { id: 'base-4', kind: 'base', wall: 'b', order: { rightOf: 'base-3' } },
    ],
  })
  expect(half.walls.map((w) => [w.width, w.isKnown])).toEqual([
    [2400, false],
    [expect.closeTo(2438.4, 6), true],
  ])
  expect(half.walls[1]?.units.map((u) => [u.id, u.x, u.isKnown])).toEqual([
    ['base-1', 0, false],
    ['base-2', 600, true],
  ])
})

test.each([
  [2400, 2400],
  ['34 1/2 in', 876.3],
  [{ value: 12.5, pm: 0.5 }, 12.5],
  [null, undefined],
  ['two', undefined],
  [Number.NaN, undefined],
])('%j is %s mm', (typed, mm) => {
  expect(mmTyped(typed)).toBe(mm)
})
