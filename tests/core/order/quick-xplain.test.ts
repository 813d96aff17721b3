import fc from 'fast-check'
import { expect, test } from 'vitest'
import { quickXplain } from '../../../src/core/order/quick-xplain'

/** Facts are numbers; sets of them that cannot hold together are given. */
const holdsBut =
  (conflicts: readonly (readonly number[])[]) =>
  (facts: readonly number[]): boolean =>
    !conflicts.some((conflict) => conflict.every((fact) => facts.includes(fact)))

test.each([
  ['nothing speaks against them', [1, 2, 3], [], null],
  ['one fact alone', [1, 2, 3], [[2]], [2]],
  ['two of four', [1, 2, 3, 4], [[1, 4]], [1, 4]],
  [
    'of two the one with what is given first',
    [1, 2, 3, 4],
    [
      [3, 4],
      [1, 4],
    ],
    [1, 4],
  ],
  ['not even nothing holds', [1, 2], [[]], []],
])('%s', (_, facts, conflicts, found) => {
  expect(quickXplain(facts, holdsBut(conflicts))).toEqual(found)
})

test('what is found is a contradiction, and any one fact less is none', () => {
  const conflicts = fc.array(fc.uniqueArray(fc.nat(11), { minLength: 1, maxLength: 4 }), { maxLength: 6 })
  fc.assert(
    fc.property(conflicts, (given) => {
      const holds = holdsBut(given)
      const facts = [...Array(12).keys()]
      const found = quickXplain(facts, holds)
      expect(found === null).toBe(holds(facts))
      if (found === null) return
      expect(holds(found)).toBe(false)
      for (const gone of found) expect(holds(found.filter((fact) => fact !== gone))).toBe(true)
    }),
    { numRuns: 300, seed: 1 },
  )
})
