import { describe, expect, test } from 'vitest'
import { assumedBecause, isUnread, lengthTyped, numberTyped, shownTyped } from '../../../src/core/form/typed'

describe('a length as it is typed', () => {
  test.each([
    ['', null],
    ['  ', null],
    ['2400', 2400],
    ['2400.5', 2400.5],
    ['12,5', 12.5],
    ['-3', -3],
    ['− 3', -3],
    ['2.4 m', '2.4 m'],
    ['2,4 m', '2,4 m'],
    ['34 1/2 in', '34 1/2 in'],
    ['34 1/2"', '34 1/2"'],
    ['7\' 6"', '7\' 6"'],
    ['12.5 ± 0.5', { value: 12.5, pm: 0.5 }],
    ['1200 +/- 3', { value: 1200, pm: 3 }],
    ['34 1/2 in ± 1/8 in', { value: '34 1/2 in', pm: '1/8 in' }],
  ])('%j', (typed, entered) => {
    expect(lengthTyped(typed)).toEqual(entered)
  })

  test('in a kitchen shown in inches a bare figure is inches, and is kept with its unit', () => {
    expect(lengthTyped('34 1/2', 'inch')).toBe('34 1/2 in')
    expect(lengthTyped('34.5', 'inch')).toBe('34.5 in')
    expect(lengthTyped('876 mm', 'inch')).toBe('876 mm')
  })

  test.each(['2.', '34 1/', '2,400', 'abc', '12 ±', '12 ± x', '± 3', '1 ± 2 ± 3', '--', '1e9'])(
    '%j cannot be kept yet, and says why',
    (typed) => {
      expect(isUnread(lengthTyped(typed))).toBe(true)
    },
  )

  test('what could be read in two ways says so', () => {
    expect(lengthTyped('2,400')).toEqual({ unread: true, why: expect.stringContaining('two ways') })
  })
})

describe('a number as it is typed', () => {
  test.each([
    ['', null],
    ['12', 12],
    ['12,5', 12.5],
    ['.5', 0.5],
    ['10 ± 0.5', { value: 10, pm: 0.5 }],
  ])('%j', (typed, entered) => {
    expect(numberTyped(typed)).toEqual(entered)
  })
  test.each(['twelve', '1e3', '12 kg', 'NaN', 'Infinity', '0x10'])('%j is none', (typed) => {
    expect(isUnread(numberTyped(typed))).toBe(true)
  })
})

test('what stands in the file is shown as it was typed, and typed again gives the same', () => {
  for (const value of [2400, '34 1/2 in', null, 12.5, { value: 12.5, pm: 0.5 }]) {
    expect(lengthTyped(shownTyped(value))).toEqual(value)
  }
})

test('an assumed figure says why, and one typed over it is no longer assumed', () => {
  const assumed = { value: 720, assumed: true, because: 'usual height' }
  expect(shownTyped(assumed)).toBe('720')
  expect(assumedBecause(assumed)).toBe('usual height')
  expect(assumedBecause(lengthTyped(shownTyped(assumed)))).toBeUndefined()
})
