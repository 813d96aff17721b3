import fc from 'fast-check'
import { expect, test } from 'vitest'
import { jsonFault, lineAndColumn } from '../../../src/core/kitchen/json-syntax'

function told(text: string): string {
  const fault = jsonFault(text)
  return fault === undefined ? 'sound' : `${fault.kind} at ${lineAndColumn(text, fault.at)}: ${fault.message}`
}

test.each([
  ['{ "a": [1, -2.5e+3, true, false, null, "x\\u00e9\\n"], "b": {} }', 'sound'],
  [' [ ] ', 'sound'],
  ['"["', 'sound'],
  ['', 'ends-early at line 1, column 1: The file ends early.'],
  [' \n', 'ends-early at line 2, column 1: The file ends early.'],
  [
    '{\n "a": [1,',
    'ends-early at line 2, column 10: The file ends early: the [ of line 2, column 7 is never closed.',
  ],
  [
    '{"a": "half',
    'ends-early at line 1, column 12: The file ends early: the { of line 1, column 1 is never closed.',
  ],
  [
    '{"a": tr',
    'ends-early at line 1, column 9: The file ends early: the { of line 1, column 1 is never closed.',
  ],
  ['[1.', 'ends-early at line 1, column 4: The file ends early: the [ of line 1, column 1 is never closed.'],
  [
    '["\\u00',
    'ends-early at line 1, column 7: The file ends early: the [ of line 1, column 1 is never closed.',
  ],
  ['[1, 2,]', 'not-json at line 1, column 6: This comma has nothing after it before the ].'],
  ['{"a": 1,\r\n}', 'not-json at line 1, column 8: This comma has nothing after it before the }.'],
  ['{\n  "a": 1\n  "b": 2\n}', 'not-json at line 3, column 3: A comma is missing before this.'],
  ['[1 2]', 'not-json at line 1, column 4: A comma is missing before this.'],
  ["{'a': 1}", "not-json at line 1, column 2: Here stands ', which does not open a text."],
  ['{“a”: 1}', 'not-json at line 1, column 2: Here stands “, which does not open a text.'],
  ['{a: 1}', 'not-json at line 1, column 2: Here stands a, where a key in double quotes should be.'],
  ['{"a" 1}', 'not-json at line 1, column 6: Here stands "1", where a colon should be.'],
  ['[NaN]', 'not-json at line 1, column 2: NaN is not a value.'],
  ['[undefined]', 'not-json at line 1, column 2: undefined is not a value.'],
  ['[True]', 'not-json at line 1, column 2: Here stands True, where a value should be.'],
  ['[1, // two\n 2]', 'not-json at line 1, column 5: Here stands a comment; JSON has none.'],
  ['[01]', 'not-json at line 1, column 2: 01 is not a number.'],
  ['[.5]', 'not-json at line 1, column 2: .5 is not a number.'],
  ['[2400mm]', 'not-json at line 1, column 2: 2400mm is not a number.'],
  ['[1,5.]', 'not-json at line 1, column 4: 5. is not a number.'],
  ['["a\nb"]', 'not-json at line 1, column 2: The text that starts here runs past the end of its line.'],
  ['["a\tb"]', 'not-json at line 1, column 4: A tab or other control sign stands inside a text.'],
  ['["a\\x"]', 'not-json at line 1, column 4: A backslash here starts nothing that JSON knows.'],
  ['{} {}', 'not-json at line 1, column 4: The file goes on after its end.'],
  ['[}', 'not-json at line 1, column 2: Here stands "}", where a value should be.'],
  [
    '{"a": 1, "b": 2, "a": 3}',
    'repeated-key at line 1, column 18: The key "a" stands twice in the same object.',
  ],
  [
    '{"a": 1, "\\u0061": 3}',
    'repeated-key at line 1, column 10: The key "\\u0061" stands twice in the same object.',
  ],
  ['[{"a": 1}, {"a": 2}]', 'sound'],
])('%j: %s', (text, expected) => {
  expect(told(text)).toBe(expected)
})

test('nesting is counted outside texts only, up to 64', () => {
  expect(told('['.repeat(64) + ']'.repeat(64))).toBe('sound')
  expect(told('['.repeat(65) + ']'.repeat(65))).toContain('too-deep at line 1, column 65')
  expect(told(JSON.stringify(['['.repeat(100), '{'.repeat(100)]))).toBe('sound')
})

function isJson(text: string): boolean {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}

/** JSON with a few signs put in, taken out or changed: near enough to be wrong in every way. */
const nearlyJson = fc
  .tuple(
    fc.json({ maxDepth: 4 }),
    fc.array(
      fc.tuple(fc.nat(), fc.nat(2), fc.constantFrom(...'[]{},:"\\\'-+.eE01u tfn\n\u0001é'.split(''))),
      {
        maxLength: 3,
      },
    ),
  )
  .map(([json, changes]) =>
    changes.reduce((text, [where, cut, sign]) => {
      const at = where % (text.length + 1)
      return text.slice(0, at) + sign + text.slice(at + cut)
    }, json),
  )

test('what it finds sound is JSON, and what is JSON it finds sound, but for repeated keys and depth', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), nearlyJson), (text) => {
      const fault = jsonFault(text)
      if (fault === undefined || fault.kind === 'not-json' || fault.kind === 'ends-early') {
        expect(isJson(text)).toBe(fault === undefined)
      }
      if (fault !== undefined) expect(fault.at).toBeLessThanOrEqual(text.length)
    }),
    { numRuns: 5000 },
  )
})
