import { beforeAll, describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { loopsIn } from '../../../src/core/order/graph'
import { against, type Forced, type Replan, whatIf } from '../../../src/core/order/what-if'
import { why, whyBefore, whyNotFirst } from '../../../src/core/order/why'
import { workThrough } from '../../../src/core/plan/entry'
import type { OrderReason, Plan } from '../../../src/core/plan/types'
import { err, ok } from '../../../src/core/result'
import { held, must, rather, work } from '../../support/some-work'
import { planOf, workKitchen } from '../../support/work-kitchen'

const some = (
  ids: readonly string[],
  reasons: readonly OrderReason[],
): Pick<Plan, 'operations' | 'reasons'> => ({
  operations: ids.map((id) => work(id)),
  reasons,
})

describe('why now', () => {
  const plan = some(
    ['a', 'b', 'c', 'd'],
    [
      must('a', 'b'),
      must('b', 'd', { kind: 'datum' }),
      must('a', 'd', { kind: 'safety' }),
      rather('c', 'd', 5),
    ],
  )

  test('is what was waited for last, and how it came to that', () => {
    const answer = why(plan, 'd')
    expect(answer?.because?.before).toBe('b')
    expect(answer?.chain.map((r) => r.before)).toEqual(['a', 'b'])
    expect(answer?.into.map((r) => r.kind)).toEqual(['safety', 'datum', 'practice'])
  })

  test('is nothing for what waits for nothing, and no answer for what is not there', () => {
    expect(why(plan, 'a')?.because).toBeNull()
    expect(why(plan, 'z')).toBeUndefined()
  })
})

describe('why before', () => {
  test('is the shortest chain; of equally short ones safety before geometry before support before datum', () => {
    const plan = some(
      ['a', 'b', 'c', 'd', 'e'],
      [
        must('a', 'b', { kind: 'datum' }),
        must('b', 'e', { kind: 'datum' }),
        must('a', 'c', { kind: 'safety' }),
        must('c', 'e', { kind: 'geometry' }),
        must('a', 'd'),
        must('d', 'c'),
      ],
    )
    const answer = whyBefore(plan, 'a', 'e')
    expect(answer.kind === 'must' && answer.reasons.map((r) => r.kind)).toEqual(['safety', 'geometry'])
    expect(whyBefore(plan, 'e', 'a').kind).toBe('must-not')
    expect(whyBefore(plan, 'b', 'c')).toEqual({ kind: 'free' })
  })

  test('runs through a held unit from its end to its beginning: nothing comes between', () => {
    const plan = some(['hang', 'lock', 'x'], [held('hang', 'lock'), must('hang', 'x')])
    const answer = whyBefore(plan, 'lock', 'x')
    expect(answer.kind === 'must' && answer.reasons.map((r) => r.rule)).toEqual([
      'held-until-secured',
      'test',
    ])
    expect(whyBefore(plan, 'lock', 'hang').kind).toBe('must-not')
  })

  test('tells what is only preferred as that', () => {
    const plan = some(['a', 'b'], [rather('a', 'b', 5)])
    expect(whyBefore(plan, 'a', 'b').kind).toBe('preferred')
  })
})

describe('why not first', () => {
  test('is all that must come before, and the fewest reasons that hold it back', () => {
    const plan = some(
      ['a', 'b', 'c', 'd'],
      [
        must('a', 'b'),
        must('b', 'd'),
        must('a', 'd'),
        must('c', 'd', { kind: 'datum' }),
        must('c', 'd', { kind: 'safety' }),
      ],
    )
    const answer = whyNotFirst(plan, 'd')
    expect(answer?.first).toEqual(['a', 'b', 'c'])
    expect(answer?.blocking.map((r) => `${r.before} ${r.kind}`).sort()).toEqual(['b support', 'c safety'])
  })

  test('leaves out what is done', () => {
    const plan = some(['a', 'b'], [must('a', 'b')])
    const done = { ...plan, operations: plan.operations.map((o) => ({ ...o, done: o.id === 'a' })) }
    expect(whyNotFirst(done, 'b')?.blocking).toEqual([])
  })
})

describe('a whole kitchen', () => {
  let plan: Plan
  let ids: readonly string[]
  beforeAll(() => {
    plan = planOf(workKitchen())
    ids = plan.operations.map((o) => o.id)
  })

  const forced = (before: string, after: string) => must(before, after, { kind: 'wish', rule: 'forced' })
  const hard = () => plan.reasons.filter((r) => r.hard)

  test('every pair is answered as planning it the other way round does', () => {
    let pairs = 0
    ids.forEach((a, i) => {
      ids.forEach((b, k) => {
        if (a === b || (i * 31 + k * 17) % 9 !== 0) return
        pairs++
        const answer = whyBefore(plan, a, b)
        const reversed = loopsIn(ids, [...hard(), forced(b, a)]).length === 0
        expect([a, b, answer.kind === 'must']).toEqual([a, b, !reversed])
      })
    })
    expect(pairs).toBeGreaterThan(1000)
  })

  test('every contradiction is as small as it can be', () => {
    const sizes: number[] = []
    ids.forEach((a, i) => {
      ids.forEach((b, k) => {
        if (i >= k || (i * 13 + k * 7) % 23 !== 0 || whyBefore(plan, a, b).kind !== 'must') return
        const facts = against(plan, b, a)
        expect(loopsIn(ids, [...facts, forced(b, a)]).length).toBeGreaterThan(0)
        for (const gone of facts) {
          const rest = facts.filter((r) => r.id !== gone.id)
          expect(loopsIn(ids, [...rest, forced(b, a)])).toEqual([])
        }
        sizes.push(facts.length)
      })
    })
    expect(sizes.length).toBeGreaterThan(50)
    // What was aimed at: three facts on average. Chains through a held unit take a few more.
    expect(sizes.reduce((sum, n) => sum + n, 0) / sizes.length).toBeLessThan(4.5)
  })

  const replan: Replan = ({ before, after }: Forced) => {
    const file: KitchenFile = {
      ...workKitchen(),
      wishes: { order: [{ id: 'forced', before: { operation: before }, after: { operation: after } }] },
    }
    const outcome = workThrough(file)
    if (outcome.kind === 'plan') return ok(outcome.plan)
    if (outcome.kind === 'no-order') return err(outcome.noPlan)
    throw new Error('refused')
  }

  test('the other way round may be impossible: the facts are told', () => {
    const answer = whatIf(replan, plan, 'fix:b1', 'place:b1')
    expect(answer.kind).toBe('impossible')
    expect(answer.kind === 'impossible' && answer.reasons.map((r) => r.rule).sort()).toEqual([
      'levelled-before-fixed',
      'placed-before-levelled',
    ])
  })

  test('or possible at a cost: the minutes and what is set aside are told', () => {
    const answer = whatIf(replan, plan, 'place:b1', 'hang:w1')
    expect(answer.kind).toBe('possible')
    if (answer.kind !== 'possible') return
    expect(answer.costs).toBeGreaterThan(0)
    expect(answer.setAside.map((r) => r.rule)).toContain('wall-before-base')
    const parts = Object.values(answer.parts).reduce((sum, part) => sum + part, 0)
    expect(parts).toBeCloseTo(answer.costs, 1)
    expect(answer.moved).toBeGreaterThan(0)
  })

  test('or no different at all', () => {
    const [a, b] = ['trace:a', 'trace:b']
    const [first, then] = ids.indexOf(a) < ids.indexOf(b) ? [a, b] : [b, a]
    expect(whatIf(replan, plan, first, then).kind).toBe('equal')
  })
})
