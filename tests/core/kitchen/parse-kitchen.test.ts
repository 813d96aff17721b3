import { expect, test } from 'vitest'
import { parseKitchen, parseKitchenText } from '../../../src/core/kitchen/parse-kitchen'
import { MOST_PROBLEMS } from '../../../src/core/kitchen/problem'
import { exampleFile, linesOf, problemsOf } from './example-file'

function refusals(text: string) {
  const read = parseKitchenText(text)
  return read.ok ? [] : read.error
}

test('a sound file is read, and kept as typed', () => {
  const file = exampleFile()
  const read = parseKitchen(file)
  expect(read.ok ? [] : linesOf(read.error)).toEqual([])
  expect(read.ok && read.value.file).toBe(file)
  expect(file).toEqual(exampleFile())

  const again = parseKitchenText(JSON.stringify(file))
  expect(again.ok && again.value.file).toEqual(file)
  expect(again.ok && read.ok && again.value.kitchen).toEqual(read.ok && read.value.kitchen)
})

test('a byte order mark before the text does no harm', () => {
  expect(parseKitchenText(`\ufeff${JSON.stringify(exampleFile())}`).ok).toBe(true)
})

test('the least file is a kitchen of which nothing is known', () => {
  const read = parseKitchen({ format: 'dryrun-kitchen', version: 1, name: 'Empty' })
  expect(read.ok && read.value.kitchen.walls).toEqual([])
  expect(read.ok && read.value.kitchen.region).toBeNull()
})

test.each<[string, unknown, string, string, string]>([
  [
    'no object',
    [],
    'not-this-format',
    'the file',
    'This is a list, not a kitchen file: it must be an object in { }.',
  ],
  [
    'null',
    null,
    'not-this-format',
    'the file',
    'This is null, not a kitchen file: it must be an object in { }.',
  ],
  [
    'no format',
    { version: 1 },
    'not-this-format',
    'format',
    'This is not a kitchen file: it does not say what it is.',
  ],
  [
    'another format',
    { format: 'dryrun-daylog', version: 1 },
    'not-this-format',
    'format',
    'This is not a kitchen file: it says it is "dryrun-daylog".',
  ],
  [
    'no version',
    { format: 'dryrun-kitchen' },
    'not-this-format',
    'version',
    'The version is missing; it must be a whole number.',
  ],
  [
    'half a version',
    { format: 'dryrun-kitchen', version: 1.5 },
    'not-this-format',
    'version',
    'The version is 1.5; it must be a whole number.',
  ],
  [
    'a newer version',
    { ...exampleFile(), version: 2, anything: 'new' },
    'newer-version',
    'version',
    'This file was made by a newer version (2; this one reads up to 1). Nothing was changed.',
  ],
  [
    'an older version without a way up',
    { ...exampleFile(), version: 0 },
    'older-version',
    'version',
    'This file is of version 0, and there is no way from version 0 to 1.',
  ],
])('%s', (_, value, kind, path, message) => {
  const [first, ...more] = problemsOf(value)
  expect(first).toMatchObject({ kind, path, message })
  expect(first?.mend).not.toBe('')
  expect(more).toEqual([])
})

const inUnit = (change: object) =>
  exampleFile({ units: [{ ...exampleFile().units?.[0], ...change } as never] })

test.each<[string, unknown, string, string, string]>([
  [
    'a negative width',
    inUnit({ width: -600 }),
    'units "base-1" › width',
    'This is -600; it must be from 10 to 5000 mm.',
    'Look at the unit and the figure; if it is not known, write null.',
  ],
  [
    'a width in words',
    inUnit({ width: 'wide' }),
    'units "base-1" › width',
    'This is "wide"; it is not a length that can be read in one way only: write 2400, "34 1/2 in" or "2.4 m".',
    'Write it in the form said.',
  ],
  [
    'a width out of range in inches',
    inUnit({ width: '900 in' }),
    'units "base-1" › width',
    'This is "900 in"; it must be from 10 to 5000 mm.',
    'Write it in the form said.',
  ],
  [
    'a width that is yes or no',
    inUnit({ width: true }),
    'units "base-1" › width',
    'This is true; it must be a number of mm, text such as "34 1/2 in", an object such as { "value": 1 }, or null if it is not known.',
    'Write it as said; if it is not known, write null.',
  ],
  [
    'a list for a width',
    inUnit({ width: [600] }),
    'units "base-1" › width',
    'This is a list; it must be a number of mm, text such as "34 1/2 in", an object such as { "value": 1 }, or null if it is not known.',
    'Write it as said; if it is not known, write null.',
  ],
  [
    'a figure without a value',
    inUnit({ width: { pm: 3 } }),
    'units "base-1" › width › value',
    'This is missing.',
    'It must be a number of mm, text such as "34 1/2 in", an object such as { "value": 1 }, or null if it is not known.',
  ],
  [
    'a slip in a figure',
    inUnit({ width: { value: 600, pn: 3 } }),
    'units "base-1" › width',
    'The key "pn" is not known here.',
    'Did you mean "pm"?',
  ],
  [
    'a value out of range within a figure',
    inUnit({ width: { value: 9000 } }),
    'units "base-1" › width › value',
    'This is 9000; it must be from 10 to 5000 mm.',
    'Look at the unit and the figure; if it is not known, write null.',
  ],
  [
    'a slip in a key',
    inUnit({ widht: 600 }),
    'units "base-1"',
    'The key "widht" is not known here.',
    'Did you mean "width"?',
  ],
  [
    'a key from nowhere',
    { ...exampleFile(), price: 12 },
    'the file',
    'The key "price" is not known here.',
    'Take it out, or look at its spelling.',
  ],
  [
    'a slip in a word',
    inUnit({ stands: 'leg' }),
    'units "base-1" › stands',
    'This is "leg"; it must be "legs", "shims", "plinth-frame", "floor-cleat", "plates", "rail", "back-rail-screws", "cleat" or "nothing".',
    'Did you mean "legs"?',
  ],
  [
    'a kind left out',
    inUnit({ kind: undefined }),
    'units "base-1" › kind',
    'This is missing.',
    'Write "tall", "wall", "base", "corner-base", "corner-wall", "open-end", "bridging", "island" or "appliance-space".',
  ],
  [
    'an id left out: the unit is counted',
    inUnit({ id: undefined }),
    'units #1 › id',
    'This is missing.',
    'Write a text in double quotes here.',
  ],
  [
    'an id with a space',
    inUnit({ id: 'base 1' }),
    'units "base 1" › id',
    'This is "base 1"; it must be small letters, figures and hyphens, beginning with a letter or figure, at most 40 long.',
    'Write it in the form said.',
  ],
  [
    'a name of a million letters',
    inUnit({ name: 'x'.repeat(1_000_000) }),
    'units "base-1" › name',
    'This text is 1000000 characters long; it may be at most 200.',
    'Write less.',
  ],
  [
    'a text of a million letters for a length',
    inUnit({ width: '1'.repeat(1_000_000) }),
    'units "base-1" › width',
    'This text is 1000000 characters long; it may be at most 40.',
    'Write less.',
  ],
  [
    'not a number',
    inUnit({ width: Number.NaN }),
    'units "base-1" › width',
    'NaN is not a number that can be measured.',
    'Write null if the figure is not known.',
  ],
  [
    'an infinite number',
    inUnit({ width: { value: 1, pm: Number.POSITIVE_INFINITY } }),
    'units "base-1" › width › pm',
    'Infinity is not a number that can be measured.',
    'Write null if the figure is not known.',
  ],
  [
    'a year that is none',
    exampleFile({ survey: { houseBuilt: 12 } }),
    'survey › houseBuilt',
    'This is 12; it must be a year from 1000 to 2200.',
    'Look at the unit and the figure; if it is not known, write null.',
  ],
  [
    'a wrong type deep down',
    exampleFile({
      walls: [{ id: 'b', studs: [{ id: 's3', centre: { at: 'left' } }] }],
      units: [],
      rails: [],
    } as never),
    'walls "b" › studs "s3" › centre › at',
    'This is "left"; it is not a length that can be read in one way only: write 2400, "34 1/2 in" or "2.4 m".',
    'Write it in the form said.',
  ],
  [
    'a stretch of too many things',
    exampleFile({ keptOrder: Array.from({ length: 2001 }, () => 'x') }),
    'keptOrder',
    'This list holds 2001 things; it may hold at most 2000.',
    'Take out what is not needed.',
  ],
])('%s is refused with its place and how to mend it', (_, value, path, message, mend) => {
  const problems = problemsOf(value)
  const here = problems.find((problem) => problem.path === path && problem.message === message)
  expect(linesOf(problems)).toContain(`${path}: ${message}`)
  expect(here?.mend).toBe(mend)
})

test('only one thing is said of one wrong figure', () => {
  for (const width of [-600, 'wide', true, [600], { pm: 3 }, { value: 9000 }, Number.NaN]) {
    expect(linesOf(problemsOf(inUnit({ width })))).toHaveLength(1)
  }
})

test('every problem is told, not only the first', () => {
  const file = inUnit({ width: -1, height: 'tall', kind: 'bases', colour: 'red' })
  expect(problemsOf(file).map(({ kind, path }) => `${kind} ${path}`)).toEqual([
    'not-a-choice units "base-1" › kind',
    'out-of-range units "base-1" › width',
    'bad-text units "base-1" › height',
    'unknown-key units "base-1"',
  ])
})

test('past a hundred problems, the rest are counted', () => {
  const units = Array.from({ length: 130 }, (_, i) => ({
    id: `u${i}`,
    kind: 'base',
    wall: 'a',
    order: {},
    width: -1,
  }))
  const problems = problemsOf(exampleFile({ units: units as never }))
  expect(problems).toHaveLength(MOST_PROBLEMS + 1)
  expect(problems.at(-1)).toMatchObject({
    kind: 'more',
    message: 'There are 30 more problems, not listed here.',
  })
})

test('unknown keys are counted one by one past the cap', () => {
  const extra = Object.fromEntries(Array.from({ length: 250 }, (_, i) => [`key${i}`, i]))
  expect(problemsOf({ ...exampleFile(), ...extra }).at(-1)?.message).toBe(
    'There are 150 more problems, not listed here.',
  )
})

test('a truncated file says that it ends early, and what is open', () => {
  const text = JSON.stringify(exampleFile(), null, 2)
  const cut = text.slice(0, text.indexOf('"studs"') + 60)
  const [problem, ...more] = refusals(cut)
  expect(more).toEqual([])
  expect(problem?.kind).toBe('ends-early')
  expect(problem?.path).toMatch(/^line \d+, column \d+$/)
  expect(problem?.message).toMatch(
    /^The file ends early: the [{[] of line \d+, column \d+ is never closed\.$/,
  )
  expect(problem?.mend).toContain('cut off')
})

test('every way of cutting a file short is told as such', () => {
  const text = JSON.stringify(exampleFile())
  for (let end = 0; end < text.length; end += 7) {
    expect(refusals(text.slice(0, end)).map(({ kind }) => kind)).toEqual(['ends-early'])
  }
})

test('200 000 nested brackets are refused at once, with their place', () => {
  const start = performance.now()
  const problems = refusals('['.repeat(200_000))
  expect(performance.now() - start).toBeLessThan(200)
  expect(problems).toEqual([
    {
      kind: 'too-deep',
      path: 'line 1, column 65',
      message: 'Lists and objects stand within each other more than 64 deep here.',
      mend: 'A kitchen file never needs this: take a sound copy.',
    },
  ])
  expect(refusals('{"a":'.repeat(200_000))[0]).toMatchObject({ kind: 'too-deep', path: 'line 1, column 321' })
  expect(refusals(JSON.stringify(exampleFile({ name: '['.repeat(150) })))).toEqual([])
})

test('a value nested without end is refused', () => {
  const ring: Record<string, unknown> = { format: 'dryrun-kitchen', version: 1 }
  ring['a'] = ring
  expect(problemsOf(ring)).toMatchObject([{ kind: 'too-deep' }])
})

test('a value that repeats itself without end is refused', () => {
  let value: unknown = 1
  for (let depth = 0; depth < 40; depth++) value = [value, value]
  expect(problemsOf(value)).toMatchObject([{ kind: 'too-large', path: 'the file' }])
})

test('keys that mean something to the language are refused anywhere', () => {
  const text = JSON.stringify(exampleFile()).replace('"id":"s1"', '"id":"s1","__proto__":{"x":1}')
  expect(refusals(text)).toEqual([
    {
      kind: 'forbidden-key',
      path: 'walls "b" › studs "s1" › "__proto__"',
      message: 'The key "__proto__" is refused wherever it stands.',
      mend: 'Take the key out.',
    },
  ])
  for (const key of ['constructor', 'prototype']) {
    expect(problemsOf({ ...exampleFile(), [key]: {} })).toMatchObject([{ kind: 'forbidden-key', path: key }])
  }
  expect(({} as Record<string, unknown>)['x']).toBeUndefined()
})

test('a file too long to be a kitchen is refused before it is read', () => {
  const [problem] = refusals(JSON.stringify(exampleFile({ name: 'x'.repeat(2_100_000) })))
  expect(problem).toMatchObject({ kind: 'too-large', path: 'the file' })
  expect(problem?.message).toContain('2 MB')
  expect(problemsOf(exampleFile({ keptOrder: Array.from({ length: 6000 }, () => 'x') }))).toMatchObject([
    { kind: 'too-large', path: 'keptOrder' },
  ])
})

test('a number too big for a number is refused', () => {
  const text = JSON.stringify(exampleFile()).replace('"width":600', '"width":1e999')
  expect(refusals(text)).toMatchObject([{ kind: 'not-a-number', path: 'units "base-1" › width' }])
})

test('what was refused is not changed', () => {
  const file = inUnit({ width: -1 })
  const before = structuredClone(file)
  problemsOf(file)
  expect(file).toEqual(before)
})
