import { expect, test } from 'vitest'
import { footOf, inputName } from '../../src/core/words/plan-names'
import { entryWords } from '../../src/ui/day/entry-words'
import { dateText, surveyFacts } from '../../src/ui/survey-facts'
import { planOf } from '../support/kitchens'

const plan = planOf('l-shape')

test.each([
  ['walls.a.studs.a-s3.centre.at', 'centre along the wall of the third stud from the left of Hall partition'],
  ['walls.a.length', 'length of Hall partition'],
  ['walls.a.cornerRight', 'the corner at the right end of Hall partition'],
  [
    'units.wall-3.hanging.heightScrew.perTurn',
    'millimetres the height screw moves in one turn of wall unit 3',
  ],
  ['units.base-2.feet.fl.x', 'x of the front left foot of base unit 2'],
  ['worktops.worktop-a.mass', 'mass of worktop 1'],
  ['floor.readings.f1.drop', 'the drop from the line of floor reading “f1”'],
  ['log.e3', 'entry e3 of the day log'],
  ['region', 'the country whose rules apply'],
])('%s is %s', (id, name) => {
  expect(inputName(id, plan)).toBe(name)
})

test('a foot whose id does not say it is called by where it stands under its unit', () => {
  const units = plan.units.map((u) => ({
    ...u,
    legs: u.legs.map((leg, i) => ({ ...leg, foot: `f${i}` })),
  }))
  const odd = { ...plan, units }
  const unit = units.find((u) => u.unit === 'base-2')
  const said = unit?.legs.map(({ foot }) => footOf(unit, foot)) ?? []
  expect([...said].sort()).toEqual(['back left', 'back right', 'front left', 'front right'])
  expect(inputName('units.base-2.feet.f0.x', odd)).toBe(`x of the ${said[0]} foot of base unit 2`)
  expect(inputName('units.base-2.feet.f9.x', odd)).toBe('x of the f9 foot of base unit 2')
  expect(
    entryWords({ id: 'e1', kind: 'floor-at-foot', unit: 'base-2', foot: 'f0', drop: { value: 950 } }, odd),
  ).toBe(`Floor under the ${said[0]} foot of base unit 2: 950 below the line`)
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
