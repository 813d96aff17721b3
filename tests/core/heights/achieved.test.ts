import { expect, test } from 'vitest'
import { type Achieved, nothingAchieved } from '../../../src/core/daylog/achieved'
import { known } from '../../../src/core/figure'
import type { HeightName } from '../../../src/core/kitchen/kinds'
import { ceilingAt, rowKitchen, TWO_BASES, wallUnit, withDishwasher } from '../../support/row-kitchen'
import { atLeft, heightIn, plain, type WorkedThrough, without, workThrough } from '../../support/surveyed'

const reached = { kind: 'achieved' } as const
const undersides = (...read: readonly (readonly [string, number, number])[]): Achieved => ({
  ...nothingAchieved,
  undersides: new Map(
    read.map(([unit, value, pm]) => [unit, known(value, pm, 'mm', [`log.${unit}`], reached)]),
  ),
})
const valueOf = ({ worked }: WorkedThrough, of: HeightName) =>
  worked.heights.values.find((value) => value.of === of)

test('what was set on the day is no longer chosen, and sizes carry it on', () => {
  const kitchen = workThrough(withDishwasher(), undersides(['base-1', -848, 1]))
  expect(valueOf(kitchen, 'base-underside')).toMatchObject({
    height: { value: -848, pm: 1, basis: reached, from: ['log.base-1'] },
    lowest: -849,
    highest: -847,
    lowestBy: ['achieved:base-1'],
    achieved: true,
  })
  expect(valueOf(kitchen, 'base-top')).toMatchObject({ height: { value: -128, pm: 1 }, achieved: true })
  expect(heightIn(kitchen, 'worktop-top')).toBe(-90)
  expect(kitchen.worked.heights.unmet).toEqual([])
  // The next unit is set to what stands: −848 over its floor at −1001.3.
  expect(kitchen.worked.undersides.get('base-2')).toMatchObject({ value: -848 })
  expect(plain(kitchen.worked.legs.get('base-2')?.[0]?.extension)).toBe(153.3)
})

test('demands that it misses by more than it was read to are told, and lose', () => {
  const wishes = { heights: [{ id: 'high', of: 'worktop-top', min: { up: { value: -85, pm: 0 } } }] }
  const kitchen = workThrough(withDishwasher({ wishes }), undersides(['base-1', -848, 1]))
  // The worktop comes to −90 ± 1: 5 under the wish.
  expect(kitchen.worked.heights.conflicts).toEqual([{ demands: ['achieved:base-1', 'wish:high'], by: 5 }])
  expect(kitchen.worked.heights.unmet).toEqual(['wish:high'])
  const near = { heights: [{ id: 'high', of: 'worktop-top', min: { up: { value: -89, pm: 0 } } }] }
  const met = workThrough(withDishwasher({ wishes: near }), undersides(['base-1', -848, 1]))
  expect(met.worked.heights.unmet).toEqual([])
})

test('two units of a row that stand differently: both cannot be the one height', () => {
  const kitchen = workThrough(withDishwasher(), undersides(['base-1', -848, 1], ['base-2', -845, 1]))
  // −849 … −847 and −846 … −844 are 1 apart.
  expect(kitchen.worked.heights.conflicts).toEqual([
    { demands: ['achieved:base-1', 'achieved:base-2'], by: 1 },
  ])
  expect(kitchen.worked.heights.unmet).toEqual(['achieved:base-2'])
  expect(plain(kitchen.worked.undersides.get('base-2'))).toBe(-845)
})

test('two that agree leave what both allow', () => {
  const kitchen = workThrough(withDishwasher(), undersides(['base-1', -848, 1], ['base-2', -847, 1]))
  // −848 … −847.
  expect(valueOf(kitchen, 'base-underside')?.height).toMatchObject({ value: -847.5, pm: 0.5 })
})

test('heights still to come are chosen from what stands', () => {
  const units = [wallUnit('wall-1', { left: atLeft(0) })]
  const kitchen = workThrough(
    withDishwasher({ units, ceiling: ceilingAt(1400) }),
    undersides(['base-1', -848, 1]),
  )
  // Worktop −90: underside from 360 to 410.
  expect(heightIn(kitchen, 'wall-underside')).toBe(385)
  expect(valueOf(kitchen, 'wall-underside')?.height.from).toContain('log.base-1')
})

test('what stands is known although a floor reading is not', () => {
  const kitchen = workThrough(
    without(withDishwasher(), 'floor.readings.f2.drop'),
    undersides(['base-1', -848, 1]),
  )
  expect(heightIn(kitchen, 'base-underside')).toBe(-848)
  expect(heightIn(kitchen, 'worktop-top')).toBe(-90)
})

test('the floor found under a foot takes the place of the surface', () => {
  const found: Achieved = {
    ...nothingAchieved,
    floorAtFoot: new Map([['base-1.bl', known(-990, 1, 'mm', ['log.1'], reached)]]),
  }
  const { worked } = workThrough(rowKitchen({ units: TWO_BASES }), found)
  expect(worked.highPoint).toMatchObject({ z: { value: -990 }, where: 'base-1.bl' })
  // −990 + 130 = −860, and −1002.3 + 180: drawn in by 1 below: −859 … −822.3, middle −840.65.
  expect(plain(worked.undersides.get('base-1'))).toBe(-841)
})

test('a unit hung too high to be hooked on under its ceiling is stopped', () => {
  const kitchen = rowKitchen({ units: [wallUnit('wall-1', { left: atLeft(0) })], ceiling: ceilingAt(1100) })
  const { worked } = workThrough(kitchen, undersides(['wall-1', 350, 1]))
  // 1100 − (350 + 720) = 30 over its top, and 35 are needed.
  expect(worked.hookOn.get('wall-1')).toMatchObject({
    there: { value: 30 },
    needed: { value: 35 },
    fits: 'no',
  })
  expect(worked.findings.map(({ id }) => id)).toContain('cannot-hook-on:wall-1')
  expect(worked.heights.conflicts).toEqual([{ demands: ['achieved:wall-1', 'hook-on:wall-1'], by: 5 }])
})

test('a leg that does not reach at the height that stands', () => {
  const { worked } = workThrough(rowKitchen({ units: TWO_BASES }), undersides(['base-1', -810, 1]))
  // −810 + 1000.1 = 190.1, and the leg reaches 180.
  expect(worked.legs.get('base-1')?.map(({ within }) => within)).toEqual(Array(4).fill('too-long'))
  expect(worked.findings.filter(({ rule }) => rule === 'leg-out-of-reach')).toHaveLength(8)
})
