/** One operation tried before another, and the wish that keeps it so. */
import { expect, test } from 'vitest'
import { withEdits } from '../../../src/core/kitchen/edit'
import { orderWishEdits } from '../../../src/core/order/order-wish'
import { tryOrder } from '../../../src/core/order/try-order'
import { against } from '../../../src/core/order/what-if'
import { workThrough } from '../../../src/core/plan/entry'
import type { Plan } from '../../../src/core/plan/types'
import { planOf, sceneFile } from '../../support/kitchens'

const file = sceneFile('l-shape')
const plan = planOf('l-shape')
const placeIn = (made: Plan, id: string) => made.operations.findIndex((o) => o.id === id)

test('what can be done is told with its minutes, what it sets aside, and how many steps move', () => {
  const tried = tryOrder(file, null, plan, { before: 'hang:wall-3', after: 'hang:wall-2' })
  expect(tried.kind).toBe('possible')
  if (tried.kind !== 'possible') return
  expect(tried.costs).toBeGreaterThan(0)
  expect(Object.values(tried.parts).reduce((sum, part) => sum + part, 0)).toBeCloseTo(tried.costs, 1)
  expect(tried.setAside.map((r) => r.rule)).toContain('outward-along-run')
  expect(tried.moved).toBeGreaterThan(0)
})

test('kept as a wish, the plan is the one that was tried', () => {
  const forced = { before: 'hang:wall-3', after: 'hang:wall-2' }
  const tried = tryOrder(file, null, plan, forced)
  const outcome = workThrough(withEdits(file, orderWishEdits(file, forced)))
  if (outcome.kind !== 'plan' || tried.kind !== 'possible') throw new Error(outcome.kind)
  expect(placeIn(outcome.plan, 'hang:wall-3')).toBeLessThan(placeIn(outcome.plan, 'hang:wall-2'))
  expect(outcome.plan.order.cost - plan.order.cost).toBeCloseTo(tried.costs, 2)
})

test('what cannot be done is told with the facts that forbid it, the same that the plan itself gives', () => {
  const tried = tryOrder(file, null, plan, { before: 'level:wall-1', after: 'hang:wall-1' })
  expect(tried.kind).toBe('impossible')
  if (tried.kind !== 'impossible') return
  expect(tried.reasons.length).toBeGreaterThan(0)
  expect(tried.reasons).toEqual(against(plan, 'level:wall-1', 'hang:wall-1'))
})

test('a clash with a wish that is there already names that wish', () => {
  const first = { before: 'hang:wall-3', after: 'hang:wall-2' }
  const wished = withEdits(file, [
    {
      add: 'wishes.order',
      item: { id: 'mine', before: { operation: 'hang:wall-2' }, after: { operation: 'lock:wall-3' } },
    },
  ])
  const outcome = workThrough(wished)
  if (outcome.kind !== 'plan') throw new Error(outcome.kind)
  const tried = tryOrder(wished, null, outcome.plan, first)
  expect(tried.kind).toBe('impossible')
  expect(tried.kind === 'impossible' && tried.reasons.map((r) => r.rule)).toContain('mine')
})

test('a wish takes the place of one that asked the opposite, and is written down once', () => {
  const there = withEdits(file, orderWishEdits(file, { before: 'a', after: 'b' }))
  expect(orderWishEdits(there, { before: 'a', after: 'b' })).toEqual([])
  const turned = withEdits(there, orderWishEdits(there, { before: 'b', after: 'a' })) as {
    readonly wishes: { readonly order: readonly unknown[] }
  }
  expect(turned.wishes.order).toHaveLength(1)
  expect(turned.wishes.order[0]).toMatchObject({ before: { operation: 'b' }, after: { operation: 'a' } })
})
