/** Planes and falls through readings, against certified and published figures. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { fitPlane, heightOn, worstOff } from '../../src/core/geometry/plane'
import { workThrough } from '../../src/core/plan/entry'
import type { Plan } from '../../src/core/plan/types'
import { ROOT } from '../support/root'

/**
 * NIST Statistical Reference Datasets, linear regression, "Norris" (36 observations, lower difficulty), y then x; data and
 * certified values as published by NIST. A line is a plane that does not change across: every point is entered twice, a
 * metre apart.
 */
const NORRIS: readonly (readonly [y: number, x: number])[] = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888.0, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777.0],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338.0],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556.0],
  [228.3, 228.1],
  [998.0, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888.0, 887.2],
  [998.5, 999.0],
  [778.9, 779.0],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
]

test('NIST StRD Norris: intercept −0.262323073774029, slope 1.00211681802045', () => {
  const samples = NORRIS.flatMap(([z, x]) => [0, 1000].map((y) => ({ at: { x, y }, z })))
  const plane = fitPlane(samples)
  expect(plane?.a).toBeCloseTo(-0.262323073774029, 10)
  expect(plane?.b).toBeCloseTo(1.00211681802045, 12)
  expect(plane?.c).toBeCloseTo(0, 12)
})

test('a worked plane: corners 10.0, 10.2, 10.6, 10.4 on a square of 20 fall 0.01 and 0.02, 2.236 % in all, with nothing left over', () => {
  // Surveying course note on grading, as quoted in a secondary copy; slopes re-computed.
  const samples = [
    { at: { x: 0, y: 0 }, z: 10.0 },
    { at: { x: 20, y: 0 }, z: 10.2 },
    { at: { x: 20, y: 20 }, z: 10.6 },
    { at: { x: 0, y: 20 }, z: 10.4 },
  ]
  const plane = fitPlane(samples)
  if (plane === null) throw new Error('no plane')
  expect([plane.b, plane.c].map((s) => s.toFixed(4))).toEqual(['0.0100', '0.0200'])
  expect((Math.hypot(plane.b, plane.c) * 100).toFixed(3)).toBe('2.236')
  expect(worstOff(plane, samples)).toBeLessThan(1e-12)
})

/**
 * A floor over a kitchen as somebody measured and published it: 24 drops from a level in inches, every 12 in along and 24 in
 * across (secondary copy, numbers only; plane, residuals and range re-computed by hand from them).
 */
const DROPS: readonly (readonly number[])[] = [
  [0.0, 0.695, 1.345, 1.865, 2.225, 2.59],
  [0.0, 0.719, 1.405, 1.978, 2.398, 2.73],
  [0.0, 0.789, 1.474, 2.064, 2.472, 2.775],
  [0.0, 0.763, 1.453, 1.968, 2.356, 2.649],
]
const INCH = 25.4

describe('a badly sloping floor, published: range 70.5 mm, plane 0.04488, residuals 3.9 mm', () => {
  const planned = (): Plan => {
    const file = JSON.parse(readFileSync(join(ROOT, 'scenes', 'one-wall.dryrun.json'), 'utf8')) as {
      floor: Record<string, unknown>
    }
    const readings = DROPS.flatMap((row, j) =>
      row.map((drop, i) => ({
        id: `f${j}${i}`,
        at: { wall: 'a', along: { at: i * 12 * INCH }, out: j * 24 * INCH },
        drop: 1000 + drop * INCH,
      })),
    )
    const outcome = workThrough({ ...file, floor: { ...file.floor, readings } })
    if (outcome.kind !== 'plan') throw new Error('no plan')
    return outcome.plan
  }

  test('the plane of the plan is the published one, in millimetres', () => {
    const { floor } = planned()
    // Published in inches of drop: 0.0448649 a inch along, 0.0012160 out, 0.139987 at the corner; the drop is downwards.
    const [origin] = floor.points
    if (floor.plane === null || origin === undefined) throw new Error('no plane')
    const { a, b, c, worst } = floor.plane
    const along = {
      x: (floor.points[1]?.at.x ?? 0) - origin.at.x,
      y: (floor.points[1]?.at.y ?? 0) - origin.at.y,
    }
    const reach = Math.hypot(along.x, along.y)
    const [ux, uy] = [along.x / reach, along.y / reach]
    expect(-(b * ux + c * uy)).toBeCloseTo(0.0448649, 6)
    // Out of the wall is a quarter turn clockwise from along it.
    expect(-(b * uy - c * ux)).toBeCloseTo(0.001216, 6)
    expect(Math.hypot(b, c).toFixed(5)).toBe('0.04488')
    expect(-1000 - heightOn({ a, b, c }, origin.at)).toBeCloseTo(0.139987 * INCH, 2)
    expect(worst).toBeCloseTo(0.2704 * INCH, 1)
    const squares = floor.points.map(
      ({ at, z }) => (z.state === 'unknown' ? 0 : z.value - heightOn({ a, b, c }, at)) ** 2,
    )
    expect(Math.sqrt(squares.reduce((x, y) => x + y, 0) / 24)).toBeCloseTo(3.885, 2)
  })

  test('its highest and lowest reading are 70.5 mm apart, and it is asked whether there is a step', () => {
    const { floor, findings } = planned()
    const heights = floor.points.map(({ z }) => (z.state === 'unknown' ? 0 : z.value))
    expect((Math.max(...heights) - Math.min(...heights)).toFixed(1)).toBe('70.5')
    expect(findings.some((f) => f.rule === 'floor-step')).toBe(true)
  })

  test('legs are worked from the floor under each foot, not from the plane: the two differ by up to the residual', () => {
    const { floor, units } = planned()
    if (floor.plane === null) throw new Error('no plane')
    const plane = floor.plane
    const feet = units
      .flatMap((u) => u.legs)
      .filter((leg) => leg.floor.state === 'known')
      .map((leg) => ({
        leg,
        off: leg.floor.state === 'unknown' ? 0 : leg.floor.value - heightOn(plane, { x: leg.x, y: leg.y }),
      }))
    expect(feet.length).toBeGreaterThan(3)
    expect(Math.max(...feet.map(({ off }) => Math.abs(off)))).toBeGreaterThan(1)
  })
})
