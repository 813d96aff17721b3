import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readLength } from '../../../src/core/kitchen/read-length'

test.each<[string, number]>([
  ['2400', 2400],
  ['0', 0],
  ['-12', -12],
  ['+12', 12],
  ['− 12', -12],
  ['2 400', 2400],
  ['12 400,5', 12400.5],
  ['2400 mm', 2400],
  ['2400mm', 2400],
  ['  2400 MM ', 2400],
  ['2\u202f400', 2400],
  ['2\u202f400\u00a0mm', 2400],
  ['2,4 m', 2400],
  ['2.4m', 2400],
  ['2,400 m', 2400],
  ['240 cm', 2400],
  ['0.125', 0.125],
  ['12.25', 12.25],
  ['.5 in', 12.7],
  ['34 1/2 in', 876.3],
  ['34-1/2 in', 876.3],
  ['34½ in', 876.3],
  ['34 1/2"', 876.3],
  ['34 1/2″', 876.3],
  ['34.5"', 876.3],
  ['34.125 in', 866.775],
  ['34 inch', 863.6],
  ['1/2"', 12.7],
  ['-1/2"', -12.7],
  ['7\' 6 1/2"', 2298.7],
  ['7′6½″', 2298.7],
  ["7'6", 2286],
  ['7 ft 6 in', 2286],
  ['7ft 6', 2286],
  ['7\' 0"', 2133.6],
  ['7 ft', 2133.6],
  ['7.5 ft', 2286],
  ["7'", 2133.6],
  ['1 1/2 ft', 457.2],
])('%j is %d mm', (text, mm) => {
  expect(readLength(text)).toBeCloseTo(mm, 9)
})

test.each([
  ['', 'nothing'],
  ['   ', 'nothing'],
  ['mm', 'no number'],
  ['341/2', 'thirty-four and a half, or three hundred and forty-one halves?'],
  ['341/2 in', 'the same'],
  ['1/0', 'divided by nothing'],
  ['1/0 in', 'divided by nothing'],
  ['34 1/2', 'a fraction without its unit: mm or inches?'],
  ['34 3/2 in', 'not a proper fraction'],
  ['34.5 1/2 in', 'two fractions'],
  ['NaN', 'no number'],
  ['Infinity', 'no number'],
  ['1e5', 'not how lengths are typed'],
  ['0x10', 'not how lengths are typed'],
  ['--2', 'two signs'],
  ['+-2', 'two signs'],
  ['2-', 'a sign behind'],
  ['2,400', '2.4 or 2400?'],
  ['2.400 mm', '2.4 or 2400?'],
  ['2,400.5', 'two marks'],
  ['2 40', 'grouped wrongly'],
  ['24 00', 'grouped wrongly'],
  ['5.', 'ends in a mark'],
  ['7\' 12"', 'twelve inches are a foot'],
  ["7' 6' ", 'feet twice'],
  ["7' -6", 'a sign inside'],
  ['7.5 ft 6 in', 'feet that are not whole, then inches'],
  ['2400 mm mm', 'two units'],
  ['2400 yd', 'a unit not known here'],
  ['2 m 40', 'two parts'],
  ['٢٤٠٠', 'other figures'],
  ['1'.repeat(400), 'too long'],
])('%j is refused: %s', (text) => {
  expect(readLength(text)).toBeUndefined()
})

test('whole and tenth millimetres come back however they are written', () => {
  const tenths = fc.integer({ min: -1_000_000, max: 1_000_000 })
  fc.assert(
    fc.property(
      tenths,
      fc.constantFrom('.', ','),
      fc.boolean(),
      fc.boolean(),
      (value, mark, isGrouped, hasUnit) => {
        const [whole = '', rest = ''] = String(Math.abs(value) / 10).split('.')
        const grouped = isGrouped ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole
        const text = `${value < 0 ? '-' : ''}${grouped}${rest === '' ? '' : mark + rest}${hasUnit ? ' mm' : ''}`
        expect(readLength(text)).toBeCloseTo(value / 10, 6)
      },
    ),
  )
})

test('feet, inches and sixteenths come back', () => {
  fc.assert(
    fc.property(fc.nat(300), fc.nat(11), fc.integer({ min: 1, max: 15 }), (feet, inches, top) => {
      const mm = feet * 304.8 + (inches + top / 16) * 25.4
      expect(readLength(`${feet}' ${inches} ${top}/16"`)).toBeCloseTo(mm, 6)
      expect(readLength(`${feet * 12 + inches}-${top}/16 in`)).toBeCloseTo(mm, 6)
    }),
  )
})

test('any text is either refused or a finite length', () => {
  const nearly = fc
    .array(fc.constantFrom(...'0123456789.,/-+ \'"mcint½'.split('')), { maxLength: 20 })
    .map((s) => s.join(''))
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary' }), nearly), (text) => {
      const value = readLength(text)
      expect(value === undefined || Number.isFinite(value)).toBe(true)
    }),
    { numRuns: 2000 },
  )
})
