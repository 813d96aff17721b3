import { describe, expect, test } from 'vitest'
import {
  type Side,
  SLICES,
  type StandUp,
  sweepOf,
  sweptMoving,
  tiltFloor,
} from '../../../src/core/placing/sweep'
import { box, pose } from './rooms'

const tall = [box(600, 580, 2150)]
const standUp = (over: Side, blocks = 20): StandUp => ({
  kind: 'stand-up',
  upright: pose(1000, -3000, -880),
  over,
  blocks,
})

describe('moves', () => {
  test('over the floor: the hull of both footprints, at its height', () => {
    const [swept] = sweptMoving(tall, pose(0, -900, 5), pose(0, 0, 5))
    expect(swept).toMatchObject({ x0: 0, x1: 600, y0: -1480, y1: 0, bottom: 5, top: 2155 })
    expect(swept?.polygon).toHaveLength(4)
  })
  test('on a slant the hull has six corners', () => {
    const [swept] = sweptMoving(tall, pose(-300, -900, 0), pose(0, 0, 0))
    expect(swept?.polygon).toHaveLength(6)
  })
  test('up and down: the same footprint between both heights', () => {
    const [swept] = sweptMoving(tall, pose(0, 0, 30), pose(0, 0, 0))
    expect(swept).toMatchObject({ bottom: 0, top: 2180, y0: -580, y1: 0 })
  })
  test('each box of a unit sweeps for itself', () => {
    expect(sweptMoving([...tall, box(300, 900, 700)], pose(0, -900, 0), pose(0, 0, 0))).toHaveLength(2)
  })
  test('a turn on the way is our own mistake', () => {
    expect(() => sweptMoving(tall, pose(0, 0, 0, 0), pose(0, 0, 0, 10))).toThrow(RangeError)
  })
})

describe('standing up', () => {
  test.each([
    ['back', 580],
    ['front', 580],
    ['left', 600],
    ['right', 600],
  ] as const)(
    'over the %s: as high as the diagonal over the blocks, exactly, and down to the floor',
    (over, side) => {
      const swept = sweepOf(tall, standUp(over))
      expect(swept).toHaveLength(SLICES)
      const top = Math.max(...swept.map((prism) => prism.top))
      expect(top - -880).toBe(Math.sqrt(2150 ** 2 + side ** 2))
      expect(Math.min(...swept.map((prism) => prism.bottom))).toBe(-900)
    },
  )

  test.each([
    ['back', { x0: 1000, x1: 1600, y0: -3580, y1: -850 }],
    ['front', { x0: 1000, x1: 1600, y0: -5730, y1: -3000 }],
    ['left', { x0: -1150, x1: 1600, y0: -3580, y1: -3000 }],
    ['right', { x0: 1000, x1: 3750, y0: -3580, y1: -3000 }],
  ] as const)('over the %s: the floor from under the lying head to under the foot', (over, floor) => {
    const swept = sweepOf(tall, standUp(over))
    const extents = {
      x0: Math.min(...swept.map((p) => p.x0)),
      x1: Math.max(...swept.map((p) => p.x1)),
      y0: Math.min(...swept.map((p) => p.y0)),
      y1: Math.max(...swept.map((p) => p.y1)),
    }
    for (const key of ['x0', 'x1', 'y0', 'y1'] as const) expect(extents[key]).toBeCloseTo(floor[key], 9)
    const corners = tiltFloor(tall, standUp(over))
    expect(Math.min(...corners.map(({ x }) => x))).toBeCloseTo(floor.x0, 9)
    expect(Math.max(...corners.map(({ x }) => x))).toBeCloseTo(floor.x1, 9)
    expect(Math.min(...corners.map(({ y }) => y))).toBeCloseTo(floor.y0, 9)
    expect(Math.max(...corners.map(({ y }) => y))).toBeCloseTo(floor.y1, 9)
  })

  test('at no moment does it span more floor than the diagonal, and at tan θ = s/h it does just that', () => {
    const span = (angle: number): number => 2150 * Math.cos(angle) + 580 * Math.sin(angle)
    const spans = Array.from({ length: 1000 }, (_, i) => span((i * Math.PI) / 2000))
    expect(Math.max(...spans)).toBeLessThanOrEqual(Math.hypot(2150, 580))
    expect(span(Math.atan2(580, 2150))).toBeCloseTo(Math.hypot(2150, 580), 9)
    // Which is why one slice alone is never much wider than that.
    const widest = Math.max(...sweepOf(tall, standUp('back')).map((p) => p.y1 - p.y0))
    expect(widest).toBeLessThan(Math.hypot(2150, 580) + 150)
  })

  test('it ends where it stands: the last slice holds the upright unit and hardly more', () => {
    const last = sweepOf(tall, standUp('back')).at(-1)
    expect(last?.y0).toBe(-3580)
    expect(last?.top).toBeGreaterThan(-880 + 2150)
    expect(last?.bottom).toBe(-880)
  })

  test('swinging on its feet it lies up to a leg further back', () => {
    const floor = tiltFloor(tall, standUp('back', 100), 100)
    expect(Math.max(...floor.map(({ y }) => y))).toBeCloseTo(-750, 9)
  })

  test('a unit that is only a space sweeps nothing', () => {
    expect(sweepOf([], standUp('back'))).toEqual([])
    expect(tiltFloor([], standUp('back'))).toEqual([])
  })
})
