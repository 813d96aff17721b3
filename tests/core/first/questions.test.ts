/** Where the answers to the first questions are put, and that what is put there is read and planned. */
import { describe, expect, test } from 'vitest'
import { ANSWERS, isLineOfUnits, type Question, readAnswer } from '../../../src/core/first/questions'
import { thingAt } from '../../../src/core/form/things'
import { isUnread } from '../../../src/core/form/typed'
import { withEdits } from '../../../src/core/kitchen/edit'
import { parseKitchen } from '../../../src/core/kitchen/parse-kitchen'
import { workThrough } from '../../../src/core/plan/entry'

const EMPTY = { format: 'dryrun-kitchen', version: 1, name: 'Own' }

function answered(file: unknown, question: Question, value: unknown): unknown {
  const next = withEdits(file, ANSWERS[question].edits(file, value))
  if (next === undefined) throw new Error(`${question} names what is not there`)
  return next
}
const typed = (file: unknown, question: Question, text: string): unknown =>
  answered(file, question, readAnswer(question, text, 'mm'))

const EACH: readonly (readonly [Question, unknown, string])[] = [
  ['region', 'uk', 'uk'],
  ['width', 2250, '2250'],
  ['units', readAnswer('units', '600 600t 600s 1000', 'mm'), '600 600t 600s 1000'],
  ['construction', 'masonry', 'masonry'],
  ['knock', 'solid', 'solid'],
  ['year', 1965, '1965'],
  ['gas', false, 'no'],
  ['people', '2', '2'],
  ['tall', 2100, '2100'],
  ['ceiling', 2400, '2400'],
  ['dishwasher', 820, '820'],
  ['fall', 25, '25'],
]

describe('an answer', () => {
  test.each(EACH)(
    '%s stands alone in an empty file: it is read, planned and shown again',
    (question, value, shown) => {
      const file = answered(EMPTY, question, value)
      expect(parseKitchen(file).ok).toBe(true)
      expect(workThrough(file).kind).toBe('plan')
      expect(ANSWERS[question].shown(file)).toBe(shown)
    },
  )

  test('all of them together, in either order, are read, planned and shown', () => {
    for (const order of [EACH, [...EACH].reverse()]) {
      const file = order.reduce<unknown>((now, [question, value]) => answered(now, question, value), EMPTY)
      expect(workThrough(file).kind).toBe('plan')
      for (const [question, , shown] of EACH) expect(ANSWERS[question].shown(file)).toBe(shown)
    }
  })

  test.each(EACH)('%s not known any more is gone again', (question, value) => {
    const file = answered(answered(EMPTY, question, value), question, null)
    expect(ANSWERS[question].shown(file)).toBe('')
    expect(workThrough(file).kind).toBe('plan')
  })

  test('puts no place in with it that nobody said', () => {
    const file = typed(typed(typed(EMPTY, 'width', '2250'), 'ceiling', '2400'), 'units', '600 600')
    expect(thingAt(file, 'walls.a.widths.smallest')).toEqual({ id: 'smallest', width: 2250 })
    expect(thingAt(file, 'ceiling.lowest')).toEqual({
      id: 'lowest',
      at: { wall: 'a', along: {} },
      height: { aboveFloor: 2400 },
    })
    expect(thingAt(file, 'units')).toEqual([
      { id: 'base-1', kind: 'base', wall: 'a', order: { left: {} }, width: 600 },
      { id: 'base-2', kind: 'base', wall: 'a', order: { rightOf: 'base-1' }, width: 600 },
    ])
  })
})

describe('the line of widths', () => {
  test('changed in the middle keeps the units it had; a shorter one takes the last away', () => {
    const named = withEdits(typed(EMPTY, 'units', '600 600 1000'), [{ set: 'units.base-2.height', to: 720 }])
    const file = typed(named, 'units', '600 500')
    expect(thingAt(file, 'units.base-2')).toEqual({
      id: 'base-2',
      kind: 'base',
      wall: 'a',
      order: { rightOf: 'base-1' },
      width: 500,
      height: 720,
    })
    expect(thingAt(file, 'units.base-3')).toBeUndefined()
  })

  test('takes in the tall unit whose height was said before', () => {
    const file = typed(typed(EMPTY, 'tall', '2100'), 'units', '600 600t')
    expect(thingAt(file, 'units.tall-1')).toEqual({
      id: 'tall-1',
      kind: 'tall',
      wall: 'a',
      order: { rightOf: 'base-1' },
      width: 600,
      height: 2100,
    })
    expect((thingAt(file, 'units') as readonly unknown[]).length).toBe(2)
  })

  test('is read with commas, plus signs, and inches and fractions between commas', () => {
    const widths = (text: string, unit: 'mm' | 'inch') => {
      const read = readAnswer('units', text, unit)
      return isUnread(read) ? read.why : (read as readonly { width: unknown }[]).map(({ width }) => width)
    }
    expect(widths('600, 600t + 1000', 'mm')).toEqual([600, 600, 1000])
    expect(widths('23 5/8, 36', 'inch')).toEqual(['23 5/8 in', '36 in'])
    expect(widths('600 about', 'mm')).toContain('“about” is no width yet')
  })

  test('a kitchen whose units are placed from both ends has no such line', () => {
    const apart = [
      { add: 'units', item: { id: 'b', kind: 'base', wall: 'a', order: { left: { at: 1200 } }, width: 600 } },
    ]
    const file = typed(EMPTY, 'units', '600')
    expect(isLineOfUnits(file)).toBe(true)
    expect(isLineOfUnits(withEdits(file, apart))).toBe(false)
  })
})

describe('a tall unit is taller than 1300 mm, whatever it is typed in', () => {
  // 51 in = 1295.4; 51 1/4 in = 1301.75; 4 ft 3 in = 1295.4
  test.each([
    ['720', 'mm', true],
    ['1.2 m', 'mm', true],
    ['51 in', 'mm', true],
    ['51', 'inch', true],
    ['4 ft 3 in', 'inch', true],
    ['1200 ± 5', 'mm', true],
    ['51 1/4', 'inch', false],
    ['2100', 'mm', false],
    ['84', 'inch', false],
  ] as const)('%s (%s) is refused: %s', (text, unit, isLow) => {
    expect(isUnread(readAnswer('tall', text, unit))).toBe(isLow)
  })
})
