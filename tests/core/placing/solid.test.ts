import { describe, expect, test } from 'vitest'
import {
  convexHull,
  footprint,
  inRoom,
  inUnit,
  overlapOf,
  planDistance,
  planOverlap,
  pointInside,
  prismDistance,
  prismOver,
  prismsAt,
  prismsMeet,
  sweptHull,
} from '../../../src/core/placing/solid'
import type { PlanPoint } from '../../../src/core/plan/types'
import { box, pose } from './rooms'

const square = (x: number, y: number, size: number): readonly PlanPoint[] => [
  { x, y },
  { x: x + size, y },
  { x: x + size, y: y + size },
  { x, y: y + size },
]
const turned = (points: readonly PlanPoint[], degrees: number): readonly PlanPoint[] => {
  const a = (degrees * Math.PI) / 180
  return points.map(({ x, y }) => ({
    x: x * Math.cos(a) - y * Math.sin(a),
    y: x * Math.sin(a) + y * Math.cos(a),
  }))
}
function area(points: readonly PlanPoint[]): number {
  return (
    points.reduce((sum, p, i) => {
      const q = points[(i + 1) % points.length] ?? p
      return sum + p.x * q.y - q.x * p.y
    }, 0) / 2
  )
}

describe('frames', () => {
  test('local x runs along the first wall, local y out into the room at −y', () => {
    expect(inRoom(pose(100, 0, 0), 600, 560)).toEqual({ x: 700, y: -560 })
    expect(inRoom(pose(3000, -500, 0, 270), 600, 560)).toEqual({ x: 2440, y: -1100 })
  })
  test('back again', () => {
    const at = pose(120, -70, 0, 33)
    const there = inUnit(at, inRoom(at, 250, 410))
    expect(there.x).toBeCloseTo(250, 9)
    expect(there.y).toBeCloseTo(410, 9)
  })
  test('a solid at a pose is a prism a box, on its height', () => {
    const [prism] = prismsAt([box(600, 560, 720)], pose(0, 0, -750))
    expect(prism).toMatchObject({ bottom: -750, top: -30, x0: 0, x1: 600, y0: -560, y1: 0 })
  })
})

describe('plan overlap', () => {
  test.each([
    ['apart', square(0, 0, 100), square(150, 0, 100), -50],
    ['touching', square(0, 0, 100), square(100, 0, 100), 0],
    ['in by 3', square(0, 0, 100), square(97, 20, 100), 3],
    ['one inside the other: the least push out', square(0, 0, 100), square(10, 40, 20), 30],
    ['corner to corner', square(0, 0, 100), square(95, 92, 100), 5],
  ])('%s', (_, a, b, by) => {
    expect(planOverlap(a, b)).toBeCloseTo(by, 9)
    expect(planOverlap(b, a)).toBeCloseTo(by, 9)
    expect(planOverlap(turned(a, 31), turned(b, 31))).toBeCloseTo(by, 9)
  })
  test('squares that only seem to meet by their extents are apart', () => {
    expect(planOverlap(turned(square(-50, -50, 100), 45), square(40, 40, 30))).toBeLessThan(0)
  })
  test('a thin piece of wall standing inside is seen', () => {
    const wall = [
      { x: 50, y: -20 },
      { x: 50, y: 10 },
    ]
    expect(planOverlap(square(0, 0, 100), wall)).toBeCloseTo(10, 9)
    expect(planOverlap(square(60, 0, 100), wall)).toBeLessThanOrEqual(0)
  })
})

test('prisms meet only where both plan and heights do, by more than contact', () => {
  const low = prismOver(square(0, 0, 100), 0, 100)
  expect(prismsMeet(low, prismOver(square(50, 50, 100), 100, 200))).toBe(false)
  expect(prismsMeet(low, prismOver(square(50, 50, 100), 99.95, 200))).toBe(false)
  expect(prismsMeet(low, prismOver(square(50, 50, 100), 99.8, 200))).toBe(true)
  expect(prismsMeet(low, prismOver(square(99.8, 0, 100), 0, 200))).toBe(true)
  expect(overlapOf(low, prismOver(square(50, 50, 100), 95, 200))).toBeCloseTo(5, 9)
})

test('distances: side to side, corner to side, corner to corner, and over one another', () => {
  expect(planDistance(square(0, 0, 100), square(130, 40, 10))).toBeCloseTo(30, 9)
  expect(planDistance(square(0, 0, 100), square(103, 104, 10))).toBeCloseTo(5, 9)
  expect(planDistance(turned(square(0, 0, 100), 17), turned(square(130, 40, 10), 17))).toBeCloseTo(30, 9)
  expect(planDistance(square(0, 0, 100), square(50, 50, 10))).toBe(0)
  const low = prismOver(square(0, 0, 100), 0, 100)
  expect(prismDistance(low, prismOver(square(103, 0, 10), 104, 200))).toBeCloseTo(5, 9)
  expect(prismDistance(low, prismOver(square(0, 0, 10), 140, 200))).toBeCloseTo(40, 9)
})

test('a hull leaves out what lies inside or along its sides', () => {
  expect(
    convexHull([...square(0, 0, 100), { x: 50, y: 0 }, { x: 20, y: 70 }, { x: 100, y: 100 }]),
  ).toHaveLength(4)
})

test('what a pushed footprint passes over: its area plus its width across the push times the way', () => {
  const foot = footprint(pose(0, 0, 0, 45), box(600, 560, 720))
  const straight = sweptHull(footprint(pose(0, 0, 0), box(600, 560, 720)), 0, -900)
  expect(Math.abs(area(straight))).toBeCloseTo(600 * (560 + 900), 6)
  const slanted = sweptHull(foot, 0, -900)
  const across = (600 + 560) * Math.SQRT1_2
  expect(Math.abs(area(slanted))).toBeCloseTo(600 * 560 + across * 900, 6)
})

test('inside an L, outside in its missing corner', () => {
  const l = [
    { x: 0, y: 0 },
    { x: 4000, y: 0 },
    { x: 4000, y: -2000 },
    { x: 2000, y: -2000 },
    { x: 2000, y: -4000 },
    { x: 0, y: -4000 },
  ]
  expect(pointInside({ x: 1000, y: -3000 }, l)).toBe(true)
  expect(pointInside({ x: 3000, y: -1000 }, l)).toBe(true)
  expect(pointInside({ x: 3000, y: -3000 }, l)).toBe(false)
})
