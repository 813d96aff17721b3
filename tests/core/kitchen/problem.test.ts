import { expect, test } from 'vitest'
import { parseKitchen } from '../../../src/core/kitchen/parse-kitchen'
import { capped, closest, listed, type Problem, placeIn, shown } from '../../../src/core/kitchen/problem'

const file = {
  walls: [{ id: 'a' }, { id: 'b', studs: [{ id: 's3', centre: { at: 1 } }, { width: 38 }] }],
  'odd key': [[1]],
}

test.each([
  [[], 'the file'],
  [['walls'], 'walls'],
  [['walls', 1, 'studs', 0, 'centre', 'at'], 'walls "b" › studs "s3" › centre › at'],
  [['walls', 1, 'studs', 1, 'width'], 'walls "b" › studs #2 › width'],
  [['walls', 7, 'name'], 'walls #8 › name'],
  [['odd key', 0, 0], '"odd key" #1 #1'],
  [['__proto__', 'x'], '"__proto__" › x'],
])('the place of %j is %s', (path, place) => {
  expect(placeIn(file, path)).toBe(place)
})

test('a value is shown short and on one line', () => {
  expect(shown('a\n"b"')).toBe('"a\\n\\"b\\""')
  expect(shown('x'.repeat(50))).toBe(`"${'x'.repeat(40)}…"`)
  expect([shown([1]), shown({}), shown(null), shown(1.5)]).toEqual(['a list', 'an object', 'null', '1.5'])
})

test('words in a row', () => {
  expect(listed(['a'])).toBe('"a"')
  expect(listed(['a', 'b'], 'or')).toBe('"a" or "b"')
  expect(listed(['a', 'b', 'c', 'd'], 'and', 2)).toBe('"a", "b" and 2 more')
})

test.each([
  ['widht', ['height', 'width'], 'width'],
  ['Width', ['height', 'width'], 'width'],
  ['pn', ['value', 'pm'], 'pm'],
  ['colour', ['width', 'height'], undefined],
  ['z', ['x', 'y'], undefined],
  ['left', ['legs', 'rail'], undefined],
])('%s of %j may mean %s', (typed, words, meant) => {
  expect(closest(typed, words)).toBe(meant)
})

test('problems past the cap are counted', () => {
  const problem: Problem = { kind: 'order', path: 'x', message: 'm', mend: 'n' }
  const many = (count: number) => Array.from({ length: count }, () => problem)
  expect(capped(many(100))).toHaveLength(100)
  expect(capped(many(101)).at(-1)?.message).toBe('There is 1 more problem, not listed here.')
  expect(capped(many(2), 5).at(-1)?.message).toBe('There are 3 more problems, not listed here.')
})

test('what is mended in a field is not told in the words of the file', () => {
  const walls = [
    { id: 'a', length: 3000 },
    { id: 'b', length: 2000 },
  ]
  const unit = (id: string, order: unknown, wall = 'a') => ({ id, kind: 'base', wall, order })
  const slips: Readonly<Record<string, unknown>> = {
    'no length': { walls: [{ id: 'a', length: 'three metres' }] },
    'too long': { walls: [{ id: 'a', length: -5 }] },
    'two angles': {
      walls: [
        { id: 'a', length: 3000, cornerRight: { thisLeg: 900, nextLeg: 1200, across: 1500, angle: 70 } },
      ],
    },
    'two heights': {
      walls: [
        {
          id: 'a',
          length: 3000,
          accessories: [{ id: 's', kind: 'socket', along: {}, height: { up: 1, down: 2 } }],
        },
      ],
    },
    'nowhere said': { walls, units: [unit('u', {})] },
    'beside one on another wall': {
      walls,
      units: [unit('u', { left: {} }), unit('v', { rightOf: 'u' }, 'b')],
    },
    'a ring': { walls, units: [unit('u', { rightOf: 'v' }), unit('v', { rightOf: 'u' })] },
    'one mark for two': { walls, units: [unit('u', { left: {} })], appliances: [{ id: 'u', kind: 'hob' }] },
  }
  for (const [slip, parts] of Object.entries(slips)) {
    const read = parseKitchen({ format: 'dryrun-kitchen', version: 1, name: 'Slip', ...(parts as object) })
    const told = read.ok ? [] : read.error.map(({ mend, onScreen }) => onScreen ?? mend)
    expect(told.length, slip).toBeGreaterThan(0)
    expect(
      told.filter((words) => /\b(null|rightOf|leftOf|ids?|key)\b/.test(words)),
      slip,
    ).toEqual([])
  }
})
