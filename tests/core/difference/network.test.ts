import { expect, test } from 'vitest'
import { tightestRoom } from '../../../src/core/difference/bounds'
import { type Constraint, isConsistent } from '../../../src/core/difference/network'
import { shortestConflict } from '../../../src/core/difference/shortest-conflict'

/** "x to − x from ≤ most", written id:from>to≤most. */
const constraints = (...lines: readonly string[]): readonly Constraint[] =>
  lines.map((line) => {
    const [, id = '', from = '', to = '', most = ''] = /^(\w+):(\w+)>(\w+)≤(.+)$/.exec(line) ?? []
    return { id, from, to, most: Number(most) }
  })

test('a ring that adds up to nothing just holds; a thousandth less does not', () => {
  expect(isConsistent(constraints('p:a>b≤3', 'q:b>c≤-1', 'r:c>a≤-2'))).toBe(true)
  expect(isConsistent(constraints('p:a>b≤3', 'q:b>c≤-1', 'r:c>a≤-2.001'))).toBe(false)
  expect(isConsistent([])).toBe(true)
  expect(isConsistent(constraints('p:a>a≤-1'))).toBe(false)
})

test('tenths add up exactly: 0.1 + 0.2 − 0.3 is nothing', () => {
  expect(isConsistent(constraints('p:a>b≤0.1', 'q:b>c≤0.2', 'r:c>a≤-0.3'))).toBe(true)
})

test('the room of each thing and what sets its ends', () => {
  // o ≤ x ≤ 10 above o; y is 3 to 5 above x, and at most 12 above o.
  const room = tightestRoom(
    constraints('xlow:x>o≤0', 'xhigh:o>x≤10', 'ylow:y>x≤-3', 'yhigh:x>y≤5', 'cap:o>y≤12'),
    'o',
  )
  expect(room?.get('x')).toEqual({
    lowest: { value: 0, by: ['xlow'] },
    // y ≤ 12 and y ≥ x + 3 leave x at most 9.
    highest: { value: 9, by: ['cap', 'ylow'] },
  })
  expect(room?.get('y')).toEqual({
    lowest: { value: 3, by: ['xlow', 'ylow'] },
    highest: { value: 12, by: ['cap'] },
  })
})

test('what nothing holds is open, and a contradiction has no room', () => {
  expect(tightestRoom(constraints('p:o>x≤4'), 'o')?.get('x')).toEqual({
    lowest: null,
    highest: { value: 4, by: ['p'] },
  })
  expect(tightestRoom(constraints('p:o>x≤4', 'q:x>o≤-5'), 'o')).toBeUndefined()
})

test('of equally tight ways the one of fewest constraints is named, then the first', () => {
  const room = tightestRoom(constraints('m:o>y≤2', 'n:y>x≤2', 'z:o>x≤4', 'k:o>x≤4'), 'o')
  expect(room?.get('x')?.highest).toEqual({ value: 4, by: ['k'] })
})

test('the shortest contradiction is told, not the deepest', () => {
  // o → a → b → o misses by 10 in three; o → c → o misses by 1 in two.
  const conflict = shortestConflict(
    constraints('p:o>a≤0', 'q:a>b≤0', 'r:b>o≤-10', 's:o>c≤4', 't:c>o≤-5', 'u:o>d≤9'),
  )
  expect(conflict).toEqual({ constraints: ['s', 't'], by: 1 })
})

test('of equally short ones the deepest is told, by the tightest constraints', () => {
  const conflict = shortestConflict(constraints('s:o>c≤4', 't:c>o≤-5', 'v:o>c≤3', 'w:o>d≤0', 'x:d>o≤-1.5'))
  expect(conflict).toEqual({ constraints: ['t', 'v'], by: 2 })
})

test('no contradiction, none told', () => {
  expect(shortestConflict(constraints('p:a>b≤3', 'q:b>a≤-3'))).toBeUndefined()
  expect(shortestConflict([])).toBeUndefined()
})

test('200 things in a ring that misses by 1 are told whole', () => {
  const ring = Array.from({ length: 200 }, (_, i) => ({
    id: `c${i}`,
    from: `n${i}`,
    to: `n${(i + 1) % 200}`,
    most: i === 0 ? -1 : 0,
  }))
  expect(shortestConflict(ring)?.constraints).toHaveLength(200)
  expect(isConsistent(ring.slice(1))).toBe(true)
})
