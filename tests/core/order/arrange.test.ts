import { describe, expect, test } from 'vitest'
import { type ArrangeInput, arrange } from '../../../src/core/order/arrange'
import { atStage, held, input, must, rather, work } from '../../support/some-work'

function orderOf(given: ArrangeInput): readonly string[] {
  const result = arrange(given)
  if (!result.ok) throw new Error('loops')
  return result.value.order
}

describe('an order', () => {
  test('goes by stages where nothing else speaks', () => {
    const operations = [atStage('c:1', 'snag'), atStage('b:1', 'talls'), atStage('a:1', 'survey')]
    expect(orderOf(input(operations, []))).toEqual(['a:1', 'b:1', 'c:1'])
  })

  test('goes by ids in their own order where nothing at all speaks', () => {
    const operations = ['a:10', 'a:2', 'a:1'].map((id) => work(id))
    expect(orderOf(input(operations, []))).toEqual(['a:1', 'a:2', 'a:10'])
  })

  test('goes back on stages for a hard reason, and no further than it must', () => {
    const operations = [atStage('late:1', 'snag'), atStage('early:1', 'survey'), atStage('early:2', 'talls')]
    expect(orderOf(input(operations, [must('late:1', 'early:2')]))).toEqual(['early:1', 'late:1', 'early:2'])
  })

  test('keeps a held unit together whatever it costs', () => {
    const operations = [
      work('hang:1', { people: 2, tools: ['lifter'] }),
      work('lock:1', { tools: ['screwdriver'] }),
      work('other:1', { people: 2, tools: ['lifter'] }),
    ]
    const order = orderOf(input(operations, [held('hang:1', 'lock:1')]))
    expect(order.indexOf('lock:1')).toBe(order.indexOf('hang:1') + 1)
    // Without the hold the two-person work would stand together.
    const free = orderOf(input(operations, [must('hang:1', 'other:1'), must('hang:1', 'lock:1')]))
    expect(free).toEqual(['hang:1', 'other:1', 'lock:1'])
  })

  test('puts two-person work together when the helper has to be called, and not else', () => {
    const operations = [work('a:1', { people: 2 }), work('b:1'), work('c:1', { people: 2 }), work('d:1')]
    const reasons = [rather('a:1', 'b:1', 3), rather('b:1', 'c:1', 3), rather('c:1', 'd:1', 3)]
    const order = orderOf(input(operations, reasons))
    expect(Math.abs(order.indexOf('a:1') - order.indexOf('c:1'))).toBe(1)
    expect(orderOf(input(operations, reasons, { helperIsCalled: false }))).toEqual([
      'a:1',
      'b:1',
      'c:1',
      'd:1',
    ])
  })

  test('walks from one end to the other and not to and fro', () => {
    const operations = ['a:1', 'a:2', 'a:3'].map((id) => work(id))
    const places = new Map([
      ['a:1', { x: 0, y: 0 }],
      ['a:2', { x: 9000, y: 0 }],
      ['a:3', { x: 100, y: 0 }],
    ])
    expect(orderOf(input(operations, [], { places }))).toEqual(['a:1', 'a:3', 'a:2'])
  })

  test('sets the cheapest preferred reason aside, says so, and spends nothing on one the user has set aside', () => {
    const operations = ['a:1', 'b:1', 'c:1'].map((id) => work(id))
    const ring = [rather('a:1', 'b:1', 30), rather('b:1', 'c:1', 20), rather('c:1', 'a:1', 10)]
    const made = arrange(input(operations, ring))
    expect(made.ok && made.value.order).toEqual(['a:1', 'b:1', 'c:1'])
    expect(made.ok && made.value.report.setAside).toEqual(['c:1 < a:1: practice.rather'])
    expect(made.ok && made.value.report.parts['set-aside']).toBe(10)
    const freed = arrange(input(operations, ring, { overridden: new Set(['a:1 < b:1: practice.rather']) }))
    expect(freed.ok && freed.value.report.cost).toBe(0)
  })

  test('has what is done before what is not', () => {
    const operations = [atStage('a:1', 'survey'), atStage('b:1', 'snag', { done: true })]
    expect(orderOf(input(operations, []))).toEqual(['b:1', 'a:1'])
  })

  test('says what no order can go below', () => {
    const operations = [atStage('late:1', 'snag'), atStage('early:1', 'survey')]
    const made = arrange(input(operations, [must('late:1', 'early:1')]))
    expect(made.ok && made.value.report.cost).toBe(10)
    expect(made.ok && made.value.report.method).toMatch(/no order of these operations is below 10 min/)
    expect(made.ok && made.value.report.method).toMatch(/not proved/)
  })

  test('is none where hard reasons run in a ring, and the ring is told', () => {
    const operations = ['a:1', 'b:1', 'c:1', 'd:1'].map((id) => work(id))
    const made = arrange(
      input(operations, [must('a:1', 'b:1'), must('b:1', 'c:1'), must('c:1', 'a:1'), must('a:1', 'd:1')]),
    )
    expect(made.ok).toBe(false)
    if (made.ok) return
    expect(made.error).toHaveLength(1)
    expect(made.error[0]?.operations).toEqual(['a:1', 'b:1', 'c:1'])
    expect(made.error[0]?.reasons.map((r) => r.id)).toHaveLength(3)
  })

  test('is none where something must come into a held stretch, and what holds it is told too', () => {
    const operations = ['hang:1', 'lock:1', 'x:1'].map((id) => work(id))
    const made = arrange(
      input(operations, [held('hang:1', 'lock:1'), must('hang:1', 'x:1'), must('x:1', 'lock:1')]),
    )
    expect(made.ok).toBe(false)
    if (made.ok) return
    expect(made.error[0]?.reasons.map((r) => r.id).sort()).toEqual([
      'hang:1 < lock:1: safety.held-until-secured',
      'hang:1 < x:1: support.test',
      'x:1 < lock:1: support.test',
    ])
  })
})

describe('waits', () => {
  const glue = (maxLag: number) => must('a:1', 'b:1', { kind: 'wish', rule: 'glue', maxLag })
  const fillers = ['m:1', 'm:2', 'm:3'].map((id) => work(id))

  test('what need not come between two that must be close is moved out', () => {
    const operations = [atStage('a:1', 'survey'), ...fillers, atStage('b:1', 'snag')]
    const made = arrange(input(operations, [glue(5)]))
    expect(made.ok && made.value.late).toEqual([])
    const order = made.ok ? made.value.order : []
    expect(order.indexOf('b:1') - order.indexOf('a:1')).toBe(1)
  })

  test('what must come between stays, and is said to be too long', () => {
    const between = [must('a:1', 'm:1'), must('m:1', 'b:1')]
    const operations = [work('a:1'), ...fillers, work('b:1')]
    const made = arrange(input(operations, [...between, glue(5)]))
    expect(made.ok && made.value.late).toEqual(['a:1 < b:1: wish.glue'])
    const enough = arrange(input(operations, [...between, glue(10)]))
    expect(enough.ok && enough.value.late).toEqual([])
  })
})

describe('an order kept from before', () => {
  const operations = ['a:1', 'b:1', 'c:1', 'd:1', 'e:1'].map((id) => work(id))
  const kept = ['e:1', 'd:1', 'c:1', 'b:1', 'a:1']

  test('stands, though another would be as good', () => {
    expect(orderOf(input(operations, [], { kept }))).toEqual(kept)
  })

  test('moves one step for one new reason', () => {
    expect(orderOf(input(operations, [must('a:1', 'e:1')], { kept }))).toEqual([
      'd:1',
      'c:1',
      'b:1',
      'a:1',
      'e:1',
    ])
    expect(orderOf(input(operations, [must('b:1', 'c:1')], { kept }))).toEqual([
      'e:1',
      'd:1',
      'b:1',
      'c:1',
      'a:1',
    ])
  })

  test('has what has been done in the meantime at its head', () => {
    const later = operations.map((o) => ({ ...o, done: o.id === 'b:1' || o.id === 'd:1' }))
    expect(orderOf(input(later, [], { kept }))).toEqual(['d:1', 'b:1', 'e:1', 'c:1', 'a:1'])
  })

  test('takes in what is new where it costs least', () => {
    const more = [...operations, work('n:1', { tools: ['saw'] })]
    const sawing = more.map((o) => (o.id === 'c:1' ? { ...o, tools: ['saw'] } : o))
    const order = orderOf(input(sawing, [], { kept }))
    expect(order.filter((id) => id !== 'n:1')).toEqual(kept)
    expect(Math.abs(order.indexOf('n:1') - order.indexOf('c:1'))).toBe(1)
  })
})
