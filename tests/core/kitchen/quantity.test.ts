import { expect, test } from 'vitest'
import { count, degrees, level, perTurn, sheet, tape } from '../../../src/core/kitchen/quantity'

const plain = { quantity: 'mm', cls: 'tape', value: null, pm: null, assumed: false, because: null }

test.each<[unknown, object]>([
  [2400, { value: 2400 }],
  ['34 1/2 in', { value: 876.3 }],
  [null, {}],
  [undefined, {}],
  [
    { value: 2400, pm: 3 },
    { value: 2400, pm: 3 },
  ],
  [
    { value: '2,4 m', pm: '1/4 in' },
    { value: 2400, pm: 6.35 },
  ],
  [{ value: null, pm: 3 }, { pm: 3 }],
  [{ value: 720, pm: null }, { value: 720 }],
  [
    { value: 720, assumed: true, because: 'usual' },
    { value: 720, assumed: true, because: 'usual' },
  ],
])('%j as typed', (typed, expected) => {
  const read = tape().parse(typed) as { readonly value: number | null }
  expect({ ...read, value: read.value === null ? null : Math.round(read.value * 1000) / 1000 }).toEqual({
    ...plain,
    ...expected,
  })
})

test.each<[string, unknown]>([
  ['a negative tape', -1],
  ['a negative precision', { value: 1, pm: -1 }],
  ['a negative precision in text', { value: 1, pm: '-1 mm' }],
  ['assumed: false', { value: 1, assumed: false }],
  ['an object with nothing in it', {}],
  ['a key too many', { value: 1, unit: 'mm' }],
  ['not a number', Number.NaN],
  ['an infinite number', Number.POSITIVE_INFINITY],
  ['an empty text', ''],
  ['a list', [1]],
  ['yes', true],
])('%s is refused', (_, typed) => {
  expect(tape().safeParse(typed).success).toBe(false)
})

test('bounds are kept at both ends, for numbers and texts alike', () => {
  const width = sheet({ min: 10, max: 5000 })
  const isFit = (typed: unknown) => width.safeParse(typed).success
  expect([10, 5000, '10', '5 m', { value: 10 }].map(isFit)).toEqual([true, true, true, true, true])
  expect([9.9, 5000.1, '9', '5001 mm', { value: 9 }].map(isFit)).toEqual([false, false, false, false, false])
})

test('a reading off the line may be negative; lengths in text are for lengths only', () => {
  expect(level().parse(-12)).toMatchObject({ value: -12, cls: 'level' })
  expect(degrees().parse(90)).toMatchObject({ value: 90, quantity: 'deg', cls: 'angle' })
  expect(perTurn().parse(1.5)).toMatchObject({ quantity: 'mm/turn', cls: 'exact' })
  expect(degrees().safeParse('90').success).toBe(false)
  expect(count().safeParse('2 in').success).toBe(false)
})
