import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Basis, derive, type Figure, known, restingOn, sortedIds } from '../../../src/core/figure'
import { mergedIds } from '../../../src/core/ids'
import { highestOf, lowestOf } from '../../../src/core/survey/extremes'
import { citing, sum } from '../../../src/core/survey/sum'
import { workedFrom } from '../../../src/core/survey/worked'

const basis: Basis = { kind: 'geometry', why: 'a test' }
const id = fc.constantFrom('a.1', 'a.10', 'a.2', 'b', 'b.x', 'c', 'walls.a.length', 'walls.b.length')
const ids = fc.uniqueArray(id, { maxLength: 6 }).map(sortedIds)
const figure: fc.Arbitrary<Figure> = fc
  .record({
    state: fc.constantFrom('known', 'known', 'known', 'assumed', 'unknown'),
    value: fc.integer({ min: -5000, max: 5000 }),
    pm: fc.constantFrom(0, 0.5, 1, 2),
    from: ids,
  })
  .map(({ state, value, pm, from }) =>
    state === 'unknown'
      ? { state, unit: 'mm', basis, from, missing: from }
      : { state: state as 'known' | 'assumed', value, pm, unit: 'mm', basis, from },
  )
const figures = fc.array(figure, { minLength: 1, maxLength: 9 })
const runs = { seed: 7, numRuns: 500 }

test('a sum is what derive makes of it', () => {
  fc.assert(
    fc.property(figures, fc.array(figure, { maxLength: 4 }), (plus, minus) => {
      const work = (...values: number[]) =>
        values.reduce((total, value, i) => total + (i < plus.length ? value : -value), 0)
      expect(sum('mm', basis, plus, minus)).toEqual(derive('mm', basis, [...plus, ...minus], work))
    }),
    runs,
  )
})

test('worked figures are what derive makes of them', () => {
  fc.assert(
    fc.property(figures, (inputs) => {
      const work = (values: readonly number[]) =>
        values.reduce((total, value, i) => total + (i + 1) * value * value, 0)
      expect(workedFrom('mm', basis, inputs, work)).toEqual(derive('mm', basis, inputs, (...v) => work(v)))
    }),
    runs,
  )
})

test('merged ids are the sorted ids of all lists', () => {
  fc.assert(
    fc.property(fc.array(ids, { maxLength: 9 }), (lists) => {
      expect(mergedIds(lists)).toEqual(sortedIds(lists.flat()))
    }),
    runs,
  )
})

test('citing adds facts as restingOn does, and gives the figure itself when nothing is new', () => {
  fc.assert(
    fc.property(figure, ids, (one, facts) => {
      expect(citing(one, facts)).toEqual(restingOn(one, facts))
    }),
    runs,
  )
  const one = known(3, 0, 'mm', ['a', 'b'])
  expect(citing(one, ['b'])).toBe(one)
})

test('the highest rests on all; its precision is how far it could move, not a sum', () => {
  const [low, mid, high] = [known(7, 5, 'mm', ['l']), known(9, 1, 'mm', ['m']), known(10, 1, 'mm', ['h'])]
  // Highest could be 12 (from the loose 7 ± 5), at least 9 (from 10 ± 1): 10 ± 2.
  expect(highestOf('mm', basis, [low, mid, high])).toMatchObject({ value: 10, pm: 2, from: ['h', 'l', 'm'] })
  // Lowest could be 2, at most 8 (from 9 ± 1): 7 ± 5.
  expect(lowestOf('mm', basis, [low, mid, high])).toMatchObject({ value: 7, pm: 5 })
  expect(highestOf('mm', basis, [mid, { ...mid }])).toMatchObject({ value: 9, pm: 1 })
  expect(highestOf('mm', basis, [])).toMatchObject({ state: 'unknown', missing: [] })
})
