import { expect, test } from 'vitest'
import {
  costParts,
  helperCall,
  nextCosts,
  pairCosts,
  pricesOf,
  total,
} from '../../../src/core/order/objective'
import { planOf } from '../../support/kitchens'

test('what the search reckons with for two operations is what the report says of those two', () => {
  const { operations } = planOf('l-shape')
  const places = new Map(operations.map(({ id }, i) => [id, { x: (i * 997) % 4000, y: (i * 613) % 3000 }]))
  const some = operations.map((operation, i) => ({ ...operation, done: i % 9 === 0 }))
  const prices = pricesOf({
    operations: some,
    reasons: [],
    places,
    overridden: new Set(),
    helperIsCalled: true,
  })
  const all = Int32Array.from(some, (_, i) => i)
  const [pair, next] = [new Float64Array(all.length), new Float64Array(all.length)]
  const seen = { stages: 0, done: 0, helper: 0, over: 0, left: 0, tools: 0, walking: 0 }
  for (const a of all) {
    pairCosts(prices, a, all, pair, 0)
    nextCosts(prices, a, all, next, 0)
    for (const b of all) {
      if (a === b) continue
      const parts = costParts(prices, [a, b])
      for (const part of Object.keys(seen) as (keyof typeof seen)[]) if (parts[part] > 0) seen[part]++
      const searched = (pair[b] as number) + (next[b] as number) + helperCall(prices, null, a)
      expect(searched).toBeCloseTo(total(parts), 9)
    }
  }
  // Each part had its say.
  expect(Object.entries(seen).filter(([, times]) => times === 0)).toEqual([])
})
