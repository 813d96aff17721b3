import { expect, test } from 'vitest'
import { inputName } from '../../src/ui/names'
import { dateText, surveyFacts } from '../../src/ui/survey-facts'
import { planOf } from '../support/kitchens'

const plan = planOf('l-shape')

test.each([
  ['walls.a.studs.a-s3.centre', 'centre of stud a-s3, Hall partition'],
  ['walls.a.length', 'length of Hall partition'],
  ['walls.a.cornerRight', 'corner at its right end of Hall partition'],
  ['units.wall-3.hanging.heightScrew.perTurn', 'hanging, height screw, mm a turn of wall unit 3'],
  ['units.base-2.feet.fl.x', 'x of foot front left, base unit 2'],
  ['floor.readings.f1.drop', 'drop from the line of reading f1, the floor'],
  ['log.e3', 'entry e3 of the day log'],
  ['region', 'the country whose rules apply'],
])('%s is %s', (id, name) => {
  expect(inputName(id, plan)).toBe(name)
})

test('no fact of a real plan is left without a name', () => {
  const ids = new Set(plan.operations.flatMap((o) => o.from))
  const nameless = [...ids].filter((id) => /^$|undefined|\./.test(inputName(id, plan)))
  expect(ids.size).toBeGreaterThan(50)
  expect(nameless).toEqual([])
})

test('the head of a sheet says only what the file says', () => {
  expect(
    surveyFacts({ survey: { date: '2026-10-12', tapePrecision: 1, levelPrecision: { value: 0.5 } } }),
  ).toEqual({
    date: '2026-10-12',
    by: null,
    tape: 1,
    level: 0.5,
  })
  expect(surveyFacts(null)).toEqual({ date: null, by: null, tape: null, level: null })
  expect(dateText('2026-10-12')).toBe('12 October 2026')
  expect(dateText('last week')).toBe('last week')
})
