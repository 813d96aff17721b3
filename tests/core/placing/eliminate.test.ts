import { describe, expect, test } from 'vitest'
import { choosePaths } from '../../../src/core/placing/eliminate'
import type { PlacingPath } from '../../../src/core/plan/types'

/** Ways by the units in them, best first: `a: [['b'], []]`. */
function ways(
  table: Readonly<Record<string, readonly (readonly string[])[]>>,
): ReadonlyMap<string, readonly PlacingPath[]> {
  return new Map(
    Object.entries(table).map(([unit, all]) => [
      unit,
      all.map((blockedBy, i) => ({
        unit,
        approach: 'front' as const,
        segments: [],
        blockedBy,
        clearance: i,
      })),
    ]),
  )
}
const wayOf = (result: ReturnType<typeof choosePaths>, unit: string): number | undefined =>
  result.ok ? result.chosen.get(unit)?.clearance : undefined

describe('there is an order', () => {
  test('nobody in the way', () => {
    const result = choosePaths(['b', 'a'], ways({ a: [[]], b: [[]] }), [])
    expect(result).toMatchObject({ ok: true, arcs: [] })
    expect(result.ok && [...result.chosen.keys()]).toEqual(['a', 'b'])
  })
  test('a chain of blockers gives its arcs', () => {
    const result = choosePaths(['a', 'b', 'c'], ways({ a: [['b', 'c']], b: [['c']], c: [[]] }), [])
    expect(result.ok && result.arcs).toEqual([
      ['a', 'b'],
      ['a', 'c'],
      ['b', 'c'],
    ])
  })
  test('two that block each other the best way: only one takes a lesser one', () => {
    const result = choosePaths(['a', 'b'], ways({ a: [['b'], []], b: [['a'], []] }), [])
    expect([wayOf(result, 'a'), wayOf(result, 'b')]).toEqual([1, 0])
    expect(result.ok && result.arcs).toEqual([['b', 'a']])
  })
  test('a wish that the first come later turns that round', () => {
    const result = choosePaths(['a', 'b'], ways({ a: [['b'], []], b: [['a'], []] }), [['a', 'b']])
    expect([wayOf(result, 'a'), wayOf(result, 'b')]).toEqual([0, 1])
    expect(result.ok && result.arcs).toEqual([['a', 'b']])
  })
  test('a better way that opens later is waited for', () => {
    const result = choosePaths(['a', 'b'], ways({ a: [['b'], []], b: [[]] }), [])
    expect(wayOf(result, 'a')).toBe(0)
  })
  test('blockers and wishes about units that are not there do not count', () => {
    const result = choosePaths(['a'], ways({ a: [['gone']] }), [['a', 'gone']])
    expect(result).toMatchObject({ ok: true, arcs: [] })
  })
})

test('a mere space, which has no entry, is left aside', () => {
  const result = choosePaths(['a', 'space'], ways({ a: [['space']] }), [['space', 'a']])
  expect(result.ok && [...result.chosen.keys()]).toEqual(['a'])
  expect(result.ok && result.arcs).toEqual([])
})

describe('there is none', () => {
  test('a knot is told whole, with the least bad ways of each; who waits for it is stuck but not in it', () => {
    const result = choosePaths(
      ['a', 'b', 'c', 'd', 'free'],
      ways({ a: [['b', 'c'], ['b']], b: [['c']], c: [['a'], ['b']], d: [['a']], free: [[]] }),
      [],
    )
    expect(result).toMatchObject({ ok: false, components: [['a', 'b', 'c']] })
    if (result.ok) throw new Error('stuck')
    expect(result.stuck.map(({ unit }) => unit)).toEqual(['a', 'b', 'c', 'd'])
    expect(result.stuck[0]?.leastBad.map(({ blockedBy }) => blockedBy)).toEqual([['b']])
    expect(result.stuck[2]?.leastBad.map(({ blockedBy }) => blockedBy)).toEqual([['a'], ['b']])
  })
  test('a wish against the only way there is', () => {
    const result = choosePaths(['a', 'b'], ways({ a: [['b']], b: [[]] }), [['b', 'a']])
    expect(result).toMatchObject({ ok: false, components: [['a', 'b']] })
    expect(result.ok ? [] : result.stuck.map(({ before }) => before)).toEqual([[], ['a']])
  })
  test('wishes that go round in a ring', () => {
    const result = choosePaths(['a', 'b', 'c'], ways({ a: [[]], b: [[]], c: [[]] }), [
      ['a', 'b'],
      ['b', 'c'],
      ['c', 'a'],
    ])
    expect(result).toMatchObject({ ok: false, components: [['a', 'b', 'c']] })
  })
  test('a unit without any way is stuck alone, in no knot', () => {
    const result = choosePaths(['a', 'b'], ways({ a: [], b: [[]] }), [])
    expect(result).toMatchObject({ ok: false, components: [], stuck: [{ unit: 'a', leastBad: [] }] })
  })
})
