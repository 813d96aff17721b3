import { describe, expect, test } from 'vitest'
import { roomFor } from '../../../src/core/plan/room'
import type { PlanPoint } from '../../../src/core/plan/types'
import { workOutSurvey } from '../../../src/core/survey/survey'
import { kitchenOf, placeOn, sure, wallsOf } from '../../support/surveyed'

/** A rectangle in front of the first wall, which runs along +x with the room at −y of it. */
function area(from: number, to: number, near: number, out: number): readonly PlanPoint[] {
  return [
    { x: from, y: -near },
    { x: to, y: -near },
    { x: to, y: -out },
    { x: from, y: -out },
  ]
}

type Reading = readonly [along: number, out: number, up: number | null]

function ceilingLow(readings: readonly Reading[], over: readonly PlanPoint[]): number | null {
  const kitchen = kitchenOf({
    walls: wallsOf([4000]),
    ceiling: readings.map(([along, out, up], i) => ({
      id: `c${i}`,
      at: placeOn('a', along, out),
      height: up === null ? {} : { up: sure(up) },
    })),
  })
  return roomFor(workOutSurvey(kitchen, null), [], false).ceilingLowUnder(over)
}

/** Falls 50 mm a metre along the wall, read out to 3 m. */
const SLOPE: readonly Reading[] = [
  [0, 0, 1400],
  [4000, 0, 1200],
  [0, 3000, 1400],
  [4000, 3000, 1200],
]

describe('the lowest ceiling over a piece of floor', () => {
  test('is that over the piece, not over the room', () => {
    // At its right side, 1000 along: 1400 − 50.
    expect(ceilingLow(SLOPE, area(400, 1000, 200, 2800))).toBeCloseTo(1350, 6)
  })

  test('a reading within the piece counts', () => {
    expect(ceilingLow([...SLOPE, [700, 1500, 1100]], area(400, 1000, 200, 2800))).toBe(1100)
  })

  test('a fold of the surface that crosses its sides counts, though no corner lies on it', () => {
    // A dip at 2000, 1500 to 1000 between level corners at 1400; the piece passes 300 before the dip, from wall to wall.
    const level: readonly Reading[] = SLOPE.map(([along, out]) => [along, out, 1400])
    // On the fold from the corner 0, 0 to the dip, 1200 out: 1400 − 400 × 1200 / 1500.
    expect(ceilingLow([...level, [2000, 1500, 1000]], area(0, 4000, 0, 1200))).toBeCloseTo(1080, 6)
  })

  test('past the readings it is as low as the lowest over the walls', () => {
    expect(ceilingLow(SLOPE, area(400, 1000, 200, 3200))).toBe(1200)
    expect(ceilingLow(SLOPE, area(400, 1000, 4000, 5000))).toBe(1200)
  })

  test('while a reading has no height it is as low as the lowest over the walls that is known', () => {
    const open = SLOPE.map(([along, out, up], i): Reading => [along, out, i === 3 ? null : up])
    expect(ceilingLow(open, area(400, 1000, 200, 2800))).toBeNull()
  })

  test('nothing read: nothing is said', () => {
    expect(ceilingLow([], area(400, 1000, 200, 2800))).toBeNull()
  })
})
