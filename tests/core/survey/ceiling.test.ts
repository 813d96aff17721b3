import { expect, test } from 'vitest'
import { type Figure, known } from '../../../src/core/figure'
import { type Survey, workOutSurvey } from '../../../src/core/survey/survey'
import { kitchenOf, placeOn, plain, sure, wallsOf } from '../../support/surveyed'

const at = (value: number): Figure => known(value, 0, 'mm', [])
const ceilingOf = (readings: readonly object[], walls = wallsOf([6000])): Survey =>
  workOutSurvey(kitchenOf({ walls, ceiling: readings }), null)
const over = (survey: Survey, from: number, to: number, out: number) =>
  survey.ceilingOver('a', at(from), at(to), at(out))
const reading = (id: string, along: number, out: number, up: number | null) => ({
  id,
  at: placeOn('a', along, out),
  height: up === null ? {} : { up: sure(up) },
})

/** Two squares side by side, 2000 each, the far end lower. */
const SIX = [
  reading('c1', 0, 0, 1400),
  reading('c2', 2000, 0, 1398),
  reading('c3', 4000, 0, 1350),
  reading('c4', 0, 2000, 1399),
  reading('c5', 2000, 2000, 1397),
  reading('c6', 4000, 2000, 1390),
]

test('the lowest of the readings round the place, not of those far off', () => {
  const survey = ceilingOf(SIX)
  expect(plain(over(survey, 100, 700, 300))).toBe(1397)
  // Reaches into the second square by 100: c3 counts.
  expect(plain(over(survey, 1500, 2100, 300))).toBe(1350)
  expect(over(survey, 100, 700, 300).from).not.toContain('ceiling.c3.height.up')
})

test('outside all readings, and with fewer than three, the lowest of all', () => {
  expect(plain(over(ceilingOf(SIX), 4500, 5000, 300))).toBe(1350)
  const two = ceilingOf(SIX.slice(1, 3))
  expect(plain(over(two, 100, 700, 300))).toBe(1350)
  expect(over(two, 100, 700, 300).from).toEqual(
    ['c2', 'c3'].flatMap((id) => [`ceiling.${id}.height.line`, `ceiling.${id}.height.up`]),
  )
})

test('an unknown reading round the place leaves its ceiling unknown, and no other', () => {
  const survey = ceilingOf(SIX.map((one) => (one.id === 'c3' ? { ...one, height: {} } : one)))
  expect(plain(over(survey, 100, 700, 300))).toBe(1397)
  expect(over(survey, 3000, 3600, 300)).toMatchObject({ state: 'unknown' })
})

test('no readings: the ceiling is asked for', () => {
  expect(over(ceilingOf([]), 0, 600, 300)).toMatchObject({ state: 'unknown', missing: ['ceiling'] })
})

test('every wall tells the lowest ceiling over it', () => {
  expect(plain(ceilingOf(SIX, wallsOf([3900])).frame('a')?.ceiling)).toBe(1350)
})

test('a ceiling may be read up from the floor', () => {
  const kitchen = kitchenOf({
    walls: wallsOf([3000]),
    floor: { readings: [{ id: 'f', at: placeOn('a', 10, 10), drop: sure(1000) }] },
    ceiling: [{ id: 'c', at: placeOn('a', 10, 10), height: { aboveFloor: sure(2400) } }],
  })
  const figure = over(workOutSurvey(kitchen, null), 0, 600, 300)
  expect(plain(figure)).toBe(1400)
  expect(figure.from).toContain('floor.readings.f.drop')
})

test('over one place the ceiling lies straight between the readings round it', () => {
  const survey = ceilingOf(SIX)
  // Half-way from c1 (1400) to c2 (1398), and on c3 itself.
  expect(plain(survey.ceilingAt('a', at(1000), at(0)))).toBe(1399)
  expect(plain(survey.ceilingAt('a', at(4000), at(0)))).toBe(1350)
  expect(survey.ceilingAt('z', at(0), at(0)).state).toBe('unknown')
})
