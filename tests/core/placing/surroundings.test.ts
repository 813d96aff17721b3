import { describe, expect, test } from 'vitest'
import { prismOver, rectangleInRoom } from '../../../src/core/placing/solid'
import {
  distanceToFixed,
  fixedCuts,
  fixedInTheWay,
  surroundingsOf,
} from '../../../src/core/placing/surroundings'
import type { Obstacle } from '../../../src/core/plan/types'
import { aRoom, pose, rectangle } from './rooms'

const L_SHAPE = [
  { x: 0, y: 0 },
  { x: 4000, y: 0 },
  { x: 4000, y: -2000 },
  { x: 2000, y: -2000 },
  { x: 2000, y: -4000 },
  { x: 0, y: -4000 },
]
const at = (x: number, y: number, width = 600, depth = 560, yaw = 0, bottom = -750, top = -30) =>
  prismOver(rectangleInRoom(pose(x, y, 0, yaw), 0, width, 0, depth), bottom, top)
const boxing = (x: number, y: number, bottom: number | null = null, top: number | null = null): Obstacle => ({
  id: 'boxing',
  polygon: rectangleInRoom(pose(x, y, 0), 0, 300, 0, 300),
  bottom,
  top,
})

describe('inside the outline', () => {
  const around = surroundingsOf(
    aRoom(L_SHAPE, 2400, { outlineWalls: ['north', 'east', 'step', 'nib', 'south', 'west'] }),
  )
  test.each([
    ['in a corner, touching two walls', at(0, 0), null],
    ['in by half of contact', at(-0.05, 0), null],
    ['in the wall by 0.2', at(-0.2, 0), 'west'],
    ['right up to the inward corner', at(1400, -1500, 600, 1000), null],
    ['the inward corner in it', at(1900, -1800, 600, 560), 'step'],
    ['wholly in the missing corner', at(2500, -2500), 'step'],
    ['wholly outside', at(5000, -100), 'east'],
    ['round the whole room', at(-100, 100, 5000, 5000), 'north'],
  ])('%s', (_, prism, wall) => {
    expect(fixedInTheWay(around, prism)?.id ?? null).toBe(wall)
  })
})

describe('obstacles', () => {
  test.each([
    ['beside it', boxing(600, 0), null],
    ['in it', boxing(500, 0), 'boxing'],
    ['over it', boxing(100, 0, -30, 500), null],
    ['under it', boxing(100, 0, -900, -750), null],
    ['hanging down into it', boxing(100, 0, -31, 500), 'boxing'],
    ['open upwards and downwards', boxing(100, -100, null, null), 'boxing'],
  ])('%s', (_, obstacle, hit) => {
    const around = surroundingsOf(aRoom(rectangle(4000, 3000), 2400, { obstacles: [obstacle] }))
    expect(fixedInTheWay(around, at(0, 0))?.id ?? null).toBe(hit)
  })
  test('of any plan shape, also one that is not convex', () => {
    const u: Obstacle = {
      id: 'u',
      bottom: null,
      top: null,
      polygon: [
        { x: 1000, y: -1000 },
        { x: 2800, y: -1000 },
        { x: 2800, y: -2000 },
        { x: 2600, y: -2000 },
        { x: 2600, y: -1200 },
        { x: 1200, y: -1200 },
        { x: 1200, y: -2000 },
        { x: 1000, y: -2000 },
      ],
    }
    const around = surroundingsOf(aRoom(rectangle(4000, 3000), 2400, { obstacles: [u] }))
    expect(fixedInTheWay(around, at(1500, -1300))).toBeNull()
    expect(fixedInTheWay(around, at(1100, -1300))?.id).toBe('u')
    expect(fixedInTheWay(around, at(1020, -1020, 100, 100))?.id).toBe('u')
  })
  test('how deep it cuts', () => {
    const around = surroundingsOf(aRoom(rectangle(4000, 3000), 2400, { obstacles: [boxing(590, 0)] }))
    expect(fixedCuts(around, at(-5, 0, 605)).map(({ thing, by }) => [thing.id, by])).toEqual([
      ['wall 4', 5],
      ['boxing', 10],
    ])
    expect(fixedCuts(around, at(0, 0, 590))).toEqual([])
  })
})

test('walls with a place in an open room are solid for 100 mm behind their face', () => {
  const around = surroundingsOf(
    aRoom(null, 2400, { walls: [{ wall: 'a', from: { x: 0, y: 0 }, to: { x: 3000, y: 0 } }] }),
  )
  expect(around.walls).toBe('known-walls')
  expect(fixedInTheWay(around, at(0, 0))).toBeNull()
  expect(fixedInTheWay(around, at(0, 50))?.id).toBe('a')
  expect(fixedInTheWay(around, at(0, 640))?.id).toBe('a')
  expect(fixedInTheWay(around, at(0, 700))).toBeNull()
  expect(fixedInTheWay(around, at(3200, 50))).toBeNull()
})

describe('distance to what is fixed', () => {
  const around = surroundingsOf(
    aRoom(rectangle(4000, 3000), 2400, { obstacles: [boxing(1000, -1000, 0, 300)] }),
  )
  const nothing = (): boolean => false
  test('nearest wall', () => {
    expect(distanceToFixed(around, at(250, -1900, 200, 200), nothing, 5000)).toBeCloseTo(250, 9)
  })
  test('an obstacle below counts by its height, or on the slant', () => {
    expect(distanceToFixed(around, at(1050, -1050, 100, 100, 0, 340, 500), nothing, 5000)).toBeCloseTo(40, 9)
    expect(distanceToFixed(around, at(1330, -1050, 100, 100, 0, 340, 500), nothing, 5000)).toBeCloseTo(50, 9)
  })
  test('what is left out is left out, and beyond the cut-off nothing is looked for', () => {
    const notWalls = (points: readonly unknown[]): boolean => points.length === 2
    expect(distanceToFixed(around, at(0, 0, 600, 560, 0, 340, 500), notWalls, 5000)).toBeGreaterThan(500)
    expect(distanceToFixed(around, at(1700, -2000, 100, 100), nothing, 30)).toBe(30)
  })
})
