import { expect, test } from 'vitest'
import { allMinimalConflicts, leastRepairs } from '../../../src/core/difference/conflicts'
import type { Constraint, ConstraintGroup } from '../../../src/core/difference/network'

/** b starts at least `least` after a; or at most `most` after it. */
const atLeast = (a: string, b: string, least: number): Constraint => ({
  id: `${a} ${b} least`,
  from: b,
  to: a,
  most: -least,
})
const atMost = (a: string, b: string, most: number): Constraint => ({
  id: `${a} ${b} most`,
  from: a,
  to: b,
  most,
})
const group = (id: string, ...constraints: readonly Constraint[]): ConstraintGroup => ({ id, constraints })

test('two wishes against each other: either may go', () => {
  const wishes = [group('late', atLeast('a', 'b', 60)), group('soon', atMost('a', 'b', 30))]
  expect(allMinimalConflicts(wishes, [])).toEqual([['late', 'soon']])
  expect(leastRepairs(wishes, [])).toEqual([['late'], ['soon']])
})

test('a loop through the background, and a wish in two contradictions is the one to drop', () => {
  // Tiles before paint, a day between (background). Paint before tiles; tiles and paint within the hour.
  const background = [atLeast('tile', 'paint', 1440)]
  const wishes = [
    group('paint-first', atLeast('paint', 'tile', 0)),
    group('same-hour', atMost('tile', 'paint', 60)),
    group('idle', atLeast('tile', 'sink', 5)),
  ]
  expect(allMinimalConflicts(wishes, background)).toEqual([['paint-first'], ['same-hour']])
  expect(leastRepairs(wishes, background)).toEqual([['paint-first', 'same-hour']])
})

test('overlapping contradictions: every one is told, and the wish in all of them is the least repair', () => {
  const wishes = [
    group('hub', atLeast('a', 'b', 10), atLeast('a', 'c', 10)),
    group('left', atMost('a', 'b', 5)),
    group('right', atMost('a', 'c', 5)),
  ]
  expect(allMinimalConflicts(wishes, [])).toEqual([
    ['hub', 'left'],
    ['hub', 'right'],
  ])
  expect(leastRepairs(wishes, [])).toEqual([['hub']])
})

test('three that only clash together', () => {
  const wishes = [
    group('p', atLeast('a', 'b', 10)),
    group('q', atLeast('b', 'c', 10)),
    group('r', atMost('a', 'c', 19)),
  ]
  expect(allMinimalConflicts(wishes, [])).toEqual([['p', 'q', 'r']])
  expect(leastRepairs(wishes, [])).toEqual([['p'], ['q'], ['r']])
})

test('nothing to mend, and nothing that can be mended', () => {
  const fine = [group('p', atLeast('a', 'b', 10))]
  expect(allMinimalConflicts(fine, [])).toEqual([])
  expect(leastRepairs(fine, [])).toEqual([[]])
  const broken = [atLeast('a', 'b', 1), atLeast('b', 'a', 1)]
  expect(allMinimalConflicts(fine, broken)).toEqual([[]])
  expect(leastRepairs(fine, broken)).toEqual([])
})
