import { expect, test } from 'vitest'
import { componentsOf, knotsOf } from '../../../src/core/placing/components'

test.each([
  ['nothing', [], []],
  ['a chain: no knot, the far end first', [[1], [2], []], [[2], [1], [0]]],
  ['a ring is one', [[1], [2], [0]], [[0, 1, 2]]],
  ['a ring with a tail before and after', [[1], [2, 3], [1], []], [[3], [1, 2], [0]]],
  [
    'two rings, one leading to the other',
    [[1], [0, 2], [3], [2]],
    [
      [2, 3],
      [0, 1],
    ],
  ],
  ['an arc to itself is no knot', [[0]], [[0]]],
])('%s', (_, arcs, components) => {
  expect(componentsOf(arcs)).toEqual(components)
  expect(knotsOf(arcs)).toEqual(components.filter((component) => component.length > 1))
})

test('a long chain does not run out of stack', () => {
  const arcs = Array.from({ length: 50_000 }, (_, i) => (i < 49_999 ? [i + 1] : []))
  expect(componentsOf(arcs)).toHaveLength(50_000)
})
