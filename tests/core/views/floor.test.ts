import { expect, test } from 'vitest'
import { unknown } from '../../../src/core/figure'
import { floorAt } from '../../../src/core/views/floor'
import { roomShape } from '../../../src/core/views/room-shape'
import { mm, sampleFloor, samplePlan } from '../../support/sample-plan'

const triangle = {
  points: [
    { id: 'a', at: { x: 0, y: 0 }, z: mm(-1000) },
    { id: 'b', at: { x: 1000, y: 0 }, z: mm(-1010) },
    { id: 'c', at: { x: 0, y: -1000 }, z: mm(-1020) },
  ],
  triangles: [{ readings: ['a', 'b', 'c'] as const }],
  plane: null,
  highPoint: { z: unknown('mm', ['x']), where: '' },
  fall: unknown('mm', ['x']),
}

test.each([
  [0, 0, -1000],
  [500, 0, -1005],
  [250, -250, -1007.5],
  [0, -1000, -1020],
])('between readings the floor is flat: at %s, %s', (x, y, z) => {
  expect(floorAt(triangle)({ x, y })).toBeCloseTo(z)
})

test('outside them it is the plane if there is one, else nothing is known', () => {
  expect(floorAt(triangle)({ x: 900, y: -900 })).toBeNull()
  const plane = { a: -1000, b: -0.01, c: 0.02, worst: 0 }
  expect(floorAt({ ...triangle, plane })({ x: 2000, y: -1000 })).toBeCloseTo(-1040)
})

test('the sample floor is read as it was made, and an unread one is drawn as not known', () => {
  const room = roomShape(samplePlan)
  expect(room.isFloorKnown).toBe(true)
  expect(room.floorOr({ x: 1700, y: -900 })).toBeCloseTo(sampleFloor({ x: 1700, y: -900 }), 1)
  const unread = { ...samplePlan, floor: { ...triangle, points: [], triangles: [] } }
  expect(roomShape(unread).isFloorKnown).toBe(false)
})

test('two walls in a corner are closed to a floor with four corners', () => {
  expect(roomShape(samplePlan).outline).toEqual([
    { x: 0, y: 0 },
    { x: 3000, y: 0 },
    { x: 3000, y: -4200 },
    { x: 0, y: -4200 },
  ])
})
