import { expect, test } from 'vitest'
import { known } from '../../src/core/figure'
import { teamCapability } from '../../src/core/lifting/team'
import { hseFilter } from '../../src/core/region/hse-filter'
import type { HandZone } from '../../src/core/region/region'
import { plain } from '../support/fixed-wall'

const team = (...each: readonly number[]) =>
  Number(
    plain(
      teamCapability(
        each.map((kg) => known(kg, 0, 'kg', [])),
        hseFilter,
      ),
    ),
  )

/** Team lifts: two lift two thirds of the sum, three half of it. Printed figures are cut off, not rounded. */
test.each([
  { source: 'Network Rail guidance: 20 kg each, two people', each: [20, 20], printed: 26.6 },
  { source: 'trainer: a pair of 25 and 16', each: [25, 16], printed: 27.3 },
  { source: 'trainer: two of 50', each: [50, 50], printed: 66 },
  { source: 'trainer: three of 50', each: [50, 50, 50], printed: 75 },
  { source: 'own arithmetic: two of 25', each: [25, 25], printed: 33.3 },
  { source: 'own arithmetic: three of 25', each: [25, 25, 25], printed: 37.5 },
  { source: 'own arithmetic: two men above the shoulder', each: [10, 10], printed: 13.3 },
  { source: 'own arithmetic: two men below the shoulder', each: [20, 20], printed: 26.6 },
])('$source: $printed kg', ({ each, printed }) => {
  const whole = Number.isInteger(printed)
  const scale = whole ? 1 : 10
  expect(Math.floor(team(...each) * scale + 1e-9) / scale).toBe(printed)
})

test('two are exactly two thirds, three exactly half', () => {
  expect(team(20, 20)).toBe(26.667)
  expect(team(30, 30)).toBe(40)
  expect(team(20, 30, 10)).toBe(30)
})

/** HSE INDG143 rev 4 (2020), close to the body; secondary copies. */
test.each<[HandZone, number, number]>([
  ['above-shoulder', 10, 7],
  ['shoulder-elbow', 20, 13],
  ['elbow-knuckle', 25, 16],
  ['knuckle-lower-leg', 20, 13],
  ['below-lower-leg', 10, 7],
])('%s: men %d, women %d kg', (zone, man, woman) => {
  expect([hseFilter.man[zone], hseFilter.woman[zone]]).toEqual([man, woman])
})

test('no zone is better than elbow to knuckle, and each further from it is worse', () => {
  for (const column of [hseFilter.man, hseFilter.woman]) {
    expect(column['elbow-knuckle']).toBeGreaterThan(column['shoulder-elbow'])
    expect(column['shoulder-elbow']).toBeGreaterThan(column['above-shoulder'])
    expect(column['elbow-knuckle']).toBeGreaterThan(column['knuckle-lower-leg'])
    expect(column['knuckle-lower-leg']).toBeGreaterThan(column['below-lower-leg'])
  }
})
