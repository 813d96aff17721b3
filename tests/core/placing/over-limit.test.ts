import { expect, test } from 'vitest'
import { known, unknown } from '../../../src/core/figure'
import { overLimit } from '../../../src/core/placing/over-limit'

test.each([
  [2, 1, 'over'],
  [1, 1, 'near'],
  [0, 1, 'near'],
  [-0.9, 1, 'near'],
  [-1, 1, 'within'],
  [0, 0, 'within'],
  [0.001, 0, 'over'],
])('%d ± %d past the limit is %s', (by, pm, stands) => {
  expect(overLimit(known(by, pm, 'mm', []))).toBe(stands)
})

test('what is not known is neither', () => {
  expect(overLimit(unknown('mm', ['units.a.width']))).toBe('not-known')
})
