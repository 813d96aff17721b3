import { describe, expect, test } from 'vitest'
import type { Plan } from '../../src/core/plan/types'
import { emptyLog, goTo, indexOf, initialState, logged, received } from '../../src/state/store'

const plan = (...ids: readonly string[]) => ({ operations: ids.map((id) => ({ id })) }) as unknown as Plan
const before = {
  ...initialState,
  kitchen: 'old',
  plan: plan('a', 'b', 'c'),
  at: 'b',
  pending: { kitchen: 'new', log: emptyLog },
  working: true,
}

describe('what came of the documents asked for', () => {
  test('a plan makes them the open ones, and the hook stays at its operation wherever that went', () => {
    const after = { ...before, ...received(before, { kind: 'plan', plan: plan('x', 'b') }, 'new') }
    expect(after.kitchen).toBe('new')
    expect(indexOf(after)).toBe(1)
    expect(after).toMatchObject({ working: false, pending: null, problems: [] })
  })

  test('an operation that has gone leaves the hook at the first', () => {
    const after = { ...before, ...received(before, { kind: 'plan', plan: plan('x', 'y') }, 'new') }
    expect(after.at).toBe('x')
  })

  test('a refusal changes nothing but the reasons beside it', () => {
    const problem = { kind: 'missing', path: 'name', message: 'It is missing.', mend: 'Give it.' } as const
    const after = { ...before, ...received(before, { kind: 'refused', problems: [problem] }, null) }
    expect(after).toEqual({ ...before, working: false, pending: null, problems: [problem] })
  })

  test('a kitchen that does not go together yet is open to be mended, where nothing else is', () => {
    const problem = (kind: 'missing' | 'newer-version') =>
      ({ kind, path: 'name', message: 'It is missing.', mend: 'Give it.' }) as const
    const atStart = { ...before, kitchen: null, plan: null, pending: { kitchen: { name: 1 }, log: emptyLog } }
    const mended = received(atStart, { kind: 'refused', problems: [problem('missing')] }, null)
    expect(mended).toMatchObject({ kitchen: { name: 1 }, isBehind: true, problems: [problem('missing')] })
    const newer = received(atStart, { kind: 'refused', problems: [problem('newer-version')] }, null)
    expect(newer).not.toHaveProperty('kitchen')
  })

  test('no order takes the old plan away, for it is not of what is open now', () => {
    const noPlan = {
      kind: 'no-order' as const,
      conflicts: [],
      repairs: [],
      loops: [],
      trapped: [],
      reasons: [],
      findings: [],
    }
    const after = { ...before, ...received(before, { kind: 'no-order', noPlan }, 'new') }
    expect(after.plan).toBeNull()
    expect(after.kitchen).toBe('new')
  })
})

test('the hook stops at both ends', () => {
  expect(goTo(before, -3)).toEqual({ at: 'a', finding: null })
  expect(goTo(before, 99)).toEqual({ at: 'c', finding: null })
  expect(goTo({ ...before, plan: null }, 1)).toEqual({})
})

test('entries are only ever added, each under an id of its own', () => {
  const one = logged(emptyLog, { kind: 'done', operation: 'a' })
  const opened = { ...emptyLog, entries: [{ id: 'e2', kind: 'done', operation: 'a' }] }
  expect(one.entries).toEqual([{ id: 'e1', kind: 'done', operation: 'a' }])
  expect(logged(opened, { kind: 'done', operation: 'b' }).entries.map((e) => e.id)).toEqual(['e2', 'e3'])
  expect(emptyLog.entries).toEqual([])
})
