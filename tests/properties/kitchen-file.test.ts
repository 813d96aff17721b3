import fc from 'fast-check'
import { expect, test } from 'vitest'
import { parseKitchen, parseKitchenText } from '../../src/core/kitchen/parse-kitchen'
import { MOST_PROBLEMS } from '../../src/core/kitchen/problem'
import { kitchenSchema } from '../../src/core/kitchen/schema'
import { exampleFile } from '../core/kitchen/example-file'

/** Whatever comes of a file, it comes as a kitchen or as problems that each say what, where and how to mend it. */
function isWellTold(read: ReturnType<typeof parseKitchen>): void {
  if (read.ok) return
  expect(read.error.length).toBeGreaterThan(0)
  expect(read.error.length).toBeLessThanOrEqual(MOST_PROBLEMS + 1)
  for (const { path, message, mend } of read.error) {
    for (const words of [path, message, mend]) expect(words).not.toBe('')
    expect(path.length + message.length + mend.length).toBeLessThan(2000)
  }
}

/** JSON whose keys are mostly the file's own, so that it goes deep before it goes wrong. */
const keys = [
  ...Object.keys(kitchenSchema.shape),
  'id',
  'at',
  'value',
  'width',
  'order',
  'studs',
  '__proto__',
]
const likely = fc.letrec((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    fc.constantFrom<unknown>(null, true, 0, -1, 2400, 1e308, '34 1/2 in', 'a', 'left', 'base', ''),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(fc.constantFrom(...keys), tie('value'), { maxKeys: 6 }),
  ),
})).value

test('any JSON is read or refused, never thrown at', () => {
  fc.assert(
    fc.property(fc.oneof(fc.jsonValue(), likely), (value) => {
      isWellTold(parseKitchen(value))
    }),
    { numRuns: 500 },
  )
})

test('any JSON within a kitchen file is read or refused, never thrown at', () => {
  const part = fc.constantFrom(
    ...Object.keys(kitchenSchema.shape).filter((key) => key !== 'format' && key !== 'version'),
  )
  fc.assert(
    fc.property(part, fc.oneof(fc.jsonValue(), likely, fc.array(likely)), (key, value) => {
      isWellTold(parseKitchen({ ...exampleFile(), [key]: value }))
    }),
    { numRuns: 1000 },
  )
})

test('any text is read or refused, never thrown at', () => {
  const whole = JSON.stringify(exampleFile())
  const damaged = fc
    .tuple(fc.nat(whole.length), fc.nat(40), fc.string({ maxLength: 5 }))
    .map(([at, cut, put]) => whole.slice(0, at) + put + whole.slice(at + cut))
  fc.assert(
    fc.property(fc.oneof(fc.string(), damaged), (text) => {
      isWellTold(parseKitchenText(text))
    }),
    { numRuns: 1000 },
  )
})

const START = '{"format":"dryrun-kitchen","version":1,"name":""'

/** Files as large as may be, each made to be as much work as it can. */
const heavy: readonly (readonly [string, string])[] = [
  ['one list of nothings', `[${'1,'.repeat(900_000)}1]`],
  ['many empty units', `${START},"units":[${'{},'.repeat(499)}{}]}`],
  [
    'many walls of many empty studs',
    `${START},"walls":[${`{"studs":[${'{},'.repeat(499)}{}]},`.repeat(59)}{}]}`,
  ],
  [
    'many units of many wrong feet',
    `${START},"units":[${`{"feet":[${'{"x":{"value":"q"}},'.repeat(90)}{}]},`.repeat(499)}{}]}`,
  ],
  ['many unknown keys', `{${Array.from({ length: 150_000 }, (_, i) => `"k${i}":1`).join()}}`],
  [
    'many unknown keys in a kitchen',
    `${START},${Array.from({ length: 150_000 }, (_, i) => `"k${i}":1`).join()}}`,
  ],
  ['one long text', JSON.stringify('"\\'.repeat(480_000))],
  ['one long number', '1'.repeat(1_900_000)],
  ['one long word', 'n'.repeat(1_900_000)],
  ['many lines', `${'\n'.repeat(1_900_000)}[`],
  ['many spaces', ' '.repeat(1_900_000)],
]

/** Far more than it takes, even where four other programs run, and far less than anything that grows without bound. */
const WELL_BOUNDED_MS = 15_000

test.each(heavy)('%s: an answer comes within bounded time', (_, text) => {
  const start = performance.now()
  isWellTold(parseKitchenText(text))
  expect(performance.now() - start).toBeLessThan(WELL_BOUNDED_MS)
})

test('the order of keys makes no difference', () => {
  const reversed = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(reversed)
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([key, inner]) => [key, reversed(inner)]),
    )
  }
  const [read, again] = [parseKitchen(exampleFile()), parseKitchen(reversed(exampleFile()))]
  expect(read.ok && again.ok && again.value.kitchen).toEqual(read.ok && read.value.kitchen)
})
