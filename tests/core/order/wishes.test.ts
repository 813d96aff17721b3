import { beforeAll, describe, expect, test } from 'vitest'
import type { Kitchen, KitchenFile } from '../../../src/core/kitchen/schema'
import { workOutOperations } from '../../../src/core/operations/operations'
import { workOutReasons } from '../../../src/core/order/reasons'
import { answerWishes } from '../../../src/core/order/wishes'
import { workThrough } from '../../../src/core/plan/entry'
import type { Operation, OrderReason } from '../../../src/core/plan/types'
import { say } from '../../../src/core/words/say'
import { kitchenOf } from '../../support/facts'
import { contextOf, workKitchen } from '../../support/work-kitchen'

type Wish = NonNullable<NonNullable<KitchenFile['wishes']>['order']>[number]

let operations: readonly Operation[]
let reasons: readonly OrderReason[]
beforeAll(() => {
  const { context } = contextOf(workKitchen())
  operations = workOutOperations(context)
  reasons = workOutReasons(context, operations)
})

const file = (...order: readonly Wish[]): KitchenFile => ({ ...workKitchen(), wishes: { order: [...order] } })
const kitchen = (...order: readonly Wish[]): Kitchen => kitchenOf(file(...order))
const answer = (...order: readonly Wish[]) => answerWishes(kitchen(...order), operations, reasons)
const wish = (id: string, before: string, after: string, more: Partial<Wish> = {}): Wish => ({
  id,
  before: { operation: before },
  after: { operation: after },
  ...more,
})

describe('a wish', () => {
  test('names one operation, all of a kind, or all of a kind on one unit or wall', () => {
    const made = answer({ id: 'x', before: { kind: 'hang' }, after: { kind: 'place', on: 'b1' } })
    expect(made.reasons.map((r) => r.id).sort()).toEqual(
      ['w1', 'w2', 'w3', 'w4'].map((w) => `hang:${w} < place:b1: wish.x`),
    )
    const onWall = answer({ id: 'x', before: { kind: 'fix', on: 'b' }, after: { operation: 'panel:end' } })
    expect(onWall.reasons.map((r) => r.before).sort()).toEqual(['fix:b4', 'fix:b5'])
  })

  test('that must hold is hard, one that need not costs', () => {
    const [must] = answer(wish('x', 'place:b1', 'hang:w1')).reasons
    const [rather] = answer(wish('x', 'place:b1', 'hang:w1', { hard: false })).reasons
    expect([must?.hard, must?.cost, rather?.hard]).toEqual([true, 0, false])
    expect(rather?.cost).toBeGreaterThan(0)
    expect(must?.from).toEqual(['wishes.order.x'])
  })

  test('that names nothing is asked about, not passed over', () => {
    const made = answer(wish('x', 'paint:room', 'hang:w1'), wish('y', 'hang:w1', 'hang:w1'))
    expect(made.findings.map((f) => [f.id, f.weight])).toEqual([
      ['wish-names-nothing:x', 'ask'],
      ['wish-names-nothing:y', 'ask'],
    ])
    expect(say(made.findings[0]?.say ?? { key: '', values: {} })).toContain('paint:room')
  })

  test('that can be had is had', () => {
    const outcome = workThrough(file(wish('x', 'place:b1', 'hang:w1')))
    expect(outcome.kind).toBe('plan')
    if (outcome.kind !== 'plan') return
    const ids = outcome.plan.operations.map((o) => o.id)
    expect(ids.indexOf('place:b1')).toBeLessThan(ids.indexOf('hang:w1'))
    expect(outcome.plan.order.setAside).toContain('hang:w1 < place:b1: practice.wall-before-base')
  })
})

describe('contradictions', () => {
  test('of two wishes: both, and either way out', () => {
    const made = answer(
      wish('x', 'place:b1', 'hang:w1'),
      wish('y', 'hang:w1', 'place:b1'),
      wish('z', 'hang:w2', 'place:b1'),
    )
    expect(made.conflicts).toEqual([{ wishes: ['x', 'y'], reasons: [] }])
    expect(made.repairs).toEqual([{ drop: ['x'] }, { drop: ['y'] }])
  })

  test('of one wish and the hard reasons on the way round', () => {
    const made = answer(wish('x', 'fix:b1', 'place:b1'))
    expect(made.conflicts).toHaveLength(1)
    expect(made.conflicts[0]?.wishes).toEqual(['x'])
    const named = (made.conflicts[0]?.reasons ?? []).map((id) => reasons.find((r) => r.id === id))
    expect(named.every((r) => r?.hard === true)).toBe(true)
    expect(named.map((r) => `${r?.before} ${r?.after}`).sort()).toEqual([
      'level:b1 fix:b1',
      'place:b1 level:b1',
    ])
    expect(made.repairs).toEqual([{ drop: ['x'] }])
  })

  test('several at once are all told, with the fewest wishes to give up', () => {
    const made = answer(
      wish('a', 'place:b1', 'hang:w1'),
      wish('b', 'hang:w1', 'place:b1'),
      wish('c', 'hang:w1', 'place:b1'),
      wish('d', 'fix:b2', 'level:b2'),
    )
    expect(made.conflicts.map((c) => c.wishes)).toEqual([['d'], ['a', 'b'], ['a', 'c']])
    expect(made.repairs).toEqual([{ drop: ['a', 'd'] }])
  })

  test('with waits: at least two hours, and no more than one', () => {
    const made = answer(
      wish('x', 'worktop:top', 'connect:sink', { minLag: 120 }),
      wish('y', 'worktop:top', 'connect:sink', { maxLag: 60 }),
    )
    expect(made.conflicts).toEqual([{ wishes: ['x', 'y'], reasons: [] }])
  })

  test('with waits shorter than the work that must lie between', () => {
    const between = operations.find((o) => o.id === 'level:b1')?.minutes.typical ?? 0
    const tight = answer(wish('x', 'place:b1', 'fix:b1', { maxLag: between - 1 }))
    expect(tight.conflicts.map((c) => c.wishes)).toEqual([['x']])
    expect(tight.conflicts[0]?.reasons.length).toBeGreaterThan(0)
    expect(answer(wish('x', 'place:b1', 'fix:b1', { maxLag: between })).conflicts).toEqual([])
  })

  test('nothing may come into the time a unit is held, however short it is', () => {
    const made = answer(wish('x', 'hang:w1', 'strike:line'))
    expect(made.conflicts.map((c) => c.wishes)).toEqual([['x']])
    const split = answer(wish('x', 'hang:w1', 'place:b1'), wish('y', 'place:b1', 'lock:w1'))
    expect(split.conflicts.map((c) => c.wishes)).toEqual([['x', 'y']])
    expect(split.conflicts[0]?.reasons.every((id) => id.includes('held-until-secured'))).toBe(true)
    expect(split.conflicts[0]?.reasons.length).toBeGreaterThan(0)
  })

  test('leave the kitchen without a plan, and say why', () => {
    const outcome = workThrough(file(wish('x', 'fix:b1', 'place:b1')))
    expect(outcome.kind).toBe('no-order')
    if (outcome.kind !== 'no-order') return
    expect(outcome.noPlan.conflicts.map((c) => c.wishes)).toEqual([['x']])
    const ids = new Set(outcome.noPlan.reasons.map((r) => r.id))
    for (const id of outcome.noPlan.conflicts.flatMap((c) => c.reasons)) expect(ids).toContain(id)
  })

  test('wishes that need not hold never contradict', () => {
    const made = answer(
      wish('x', 'place:b1', 'hang:w1', { hard: false }),
      wish('y', 'hang:w1', 'place:b1', { hard: false }),
    )
    expect(made.conflicts).toEqual([])
  })
})
