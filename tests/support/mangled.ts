import { deflateRawSync } from 'node:zlib'
import type { Random } from './prng'

/** Files, tables and links as they come from slips, broken disks and ill will: mutated from sound ones, by chance. */

type Json = Record<string, unknown>

const NAMES = ['constructor', '__proto__', 'prototype', 'toString', 'hasOwnProperty', 'id', 'at', 'walls']

/** What people never type, and programs do. */
function nasty(random: Random): unknown {
  return random.pick<() => unknown>([
    () => null,
    () => random.pick([0, -0, -1, 1, 2, 1e-9, 1e308, -1e308, 1e21, 2 ** 53, 0.1 + 0.2]),
    () => random.int(-5000, 50_000),
    () => random.pick([true, false]),
    () => '',
    () => random.pick(NAMES),
    () =>
      random.pick(['34 1/2 in', '1.200', '2,4 m', `7' 6 1/2"`, '-3', '½', '1/0 in', '٣٤', 'NaN', 'Infinity']),
    () => random.pick(['<img src=x onerror=alert(1)>', '"><script>alert(1)</script>', 'javascript:alert(1)']),
    () => random.pick(['\ud800', '\u0000', '\u202egnilioc', '👩‍🔧', 'İ', 'ß'.repeat(50), ' ', '\n']),
    () => 'x'.repeat(random.pick([41, 201, 5000])),
    () => [],
    () => ({}),
    () => Array.from({ length: random.int(1, 600) }, (_, i) => i),
    () => ({
      value: random.pick([null, 'x', 12, {}]),
      pm: random.pick([null, -1, 1e9, 'x']),
      assumed: random.pick([true, 1]),
    }),
    () => deep(random.int(2, 60)),
  ])()
}

function deep(levels: number): unknown {
  let value: unknown = 1
  for (let i = 0; i < levels; i++) value = i % 2 === 0 ? [value] : { at: value }
  return value
}

/** Every object and list of a value, with the way to reach what it holds. */
function holders(value: unknown, found: (Json | unknown[])[] = []): (Json | unknown[])[] {
  if (typeof value !== 'object' || value === null) return found
  found.push(value as Json | unknown[])
  for (const inner of Object.values(value)) holders(inner, found)
  return found
}

/** Changes one thing in a value of its own. */
function changeWithin(file: unknown, random: Random): void {
  const all = holders(file)
  const holder = random.pick(all)
  if (Array.isArray(holder)) {
    changeList(holder, random)
    return
  }
  const keys = Object.keys(holder)
  const key = keys.length === 0 ? 'id' : random.pick(keys)
  const now = holder[key]
  random.pick<() => void>([
    () => {
      holder[key] = nasty(random)
    },
    () => {
      delete holder[key]
    },
    () => {
      holder[key] =
        typeof now === 'number' ? now * random.pick([-1, 0, 0.1, 0.5, 1.01, 2, 10, 1000]) : nasty(random)
    },
    () => {
      holder[key] = typeof now === 'number' ? now + random.pick([-300, -40, -1, 1, 40, 300]) : nasty(random)
    },
    () => {
      Object.defineProperty(holder, random.pick(NAMES), {
        value: nasty(random),
        enumerable: true,
        configurable: true,
        writable: true,
      })
    },
    () => {
      // One thing of the file in place of another: a position where a name is wanted, a name of another thing.
      holder[key] = structuredClone(random.pick(Object.values(random.pick(all)).concat(null)))
    },
  ])()
}

function changeList(list: unknown[], random: Random): void {
  const at = random.int(0, Math.max(0, list.length - 1))
  random.pick<() => void>([
    () => list.splice(at, 1),
    () => list.splice(at, 0, structuredClone(list[at])),
    () => list.splice(at, 0, nasty(random)),
    () => list.reverse(),
    () => {
      for (let i = 0; i < random.pick([3, 40, 700]); i++) list.push(structuredClone(list[at] ?? null))
    },
  ])()
}

const LETTERS = [
  '"',
  '{',
  '}',
  '[',
  ']',
  ',',
  ':',
  '\\',
  ' ',
  '\n',
  '\t',
  ';',
  '\u0000',
  '\ufeff',
  '-',
  '.',
  '9',
  'e',
  'ü',
  '=',
  '\r',
  "'",
  '_',
]

/** Changes letters of a text: taken out, put in, doubled, cut off. */
export function changeLetters(text: string, random: Random, letters: readonly string[] = LETTERS): string {
  const at = random.int(0, text.length)
  const some = random.int(1, random.pick([1, 3, 40, 400]))
  const put = Array.from({ length: random.int(1, random.pick([1, 4, 30])) }, () => random.pick(letters)).join(
    '',
  )
  return random.pick<() => string>([
    () => text.slice(0, at) + put + text.slice(at),
    () => text.slice(0, at) + text.slice(at + some),
    () => text.slice(0, at) + put + text.slice(at + put.length),
    () =>
      text.slice(0, at) + text.slice(at, at + some).repeat(random.pick([2, 3, 50])) + text.slice(at + some),
    () => text.slice(0, at),
    () => text.slice(at),
  ])()
}

/** A kitchen file changed in a few places, as the text of a file. */
export function mangledFile(kitchen: unknown, random: Random): string {
  const file = structuredClone(kitchen)
  for (
    let i = random.weighted([
      [0, 1],
      [1, 5],
      [2, 3],
      [5, 1],
    ]);
    i > 0;
    i--
  )
    changeWithin(file, random)
  const text = JSON.stringify(file)
  if (random.chance(0.08)) {
    return text.replace('{', `{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},`)
  }
  return random.chance(0.3) ? changeLetters(text, random) : text
}

/** A table changed in a few places: cells, heads, what stands between them, and letters of its text. */
export function mangledTable(table: readonly (readonly string[])[], random: Random): string {
  const rows = table.map((row) => [...row])
  for (let i = random.int(0, 6); i > 0; i--) {
    const row = random.pick(rows)
    const at = random.int(0, row.length)
    row[Math.min(at, row.length - 1)] = cellText(random)
    if (random.chance(0.1)) row.splice(at, random.int(0, 3))
    if (random.chance(0.1)) rows.splice(random.int(0, rows.length), 0, ...rows.slice(0, random.int(0, 3)))
    if (random.chance(0.05)) rows.shift()
    if (rows.length === 0) rows.push([])
    if (random.chance(0.02)) for (let k = 0; k < 400; k++) rows.push([...random.pick(rows)])
  }
  const between = random.pick([',', ';', '\t', ', ', '|'])
  const quote = random.pick(['"', '"', '"', "'", ''])
  const cell = (text: string): string =>
    text.includes(between) || text.includes('\n') || random.chance(0.05)
      ? quote + text.replaceAll('"', random.chance(0.9) ? '""' : '"') + quote
      : text
  const text = rows.map((row) => row.map(cell).join(between)).join(random.pick(['\n', '\r\n', '\r', '\n\n']))
  const once = random.chance(0.4) ? changeLetters(text, random) : text
  return random.chance(0.02) ? once + '"'.repeat(random.pick([1, 101, 20_000])) : once
}

function cellText(random: Random): string {
  const value = nasty(random)
  return random.pick([
    String(random.int(-100, 4000)),
    typeof value === 'string' ? value : JSON.stringify(value),
    `${random.int(1, 90)},${random.int(0, 999)}`,
    `${random.int(1, 900)} ± ${random.int(0, 9)}`,
    '600 (assumed: usual)',
    '=cmd|1',
    'base unit',
    'a',
    'b',
  ])
}

const LINK_LETTERS = ['-', '_', 'A', 'z', '9', '+', '/', '=', '%', ' ', '#', '.', 'é']

/** A link broken on its way, or one made to harm: letters lost, what it holds mangled, or far more than it seems. */
export function mangledLink(link: string, kitchen: unknown, random: Random): string {
  const pack = (bytes: string | Uint8Array): string =>
    `kitchen=${deflateRawSync(bytes).toString('base64url')}`
  return random.pick<() => string>([
    () => `kitchen=${changeLetters(link.slice('kitchen='.length), random, LINK_LETTERS)}`,
    () => `kitchen=${changeLetters(link.slice('kitchen='.length), random, LINK_LETTERS)}`,
    () => pack(mangledFile(kitchen, random)),
    () => pack(Uint8Array.from({ length: random.int(0, 400) }, () => random.int(0, 255))),
    () =>
      `kitchen=${Buffer.from(Uint8Array.from({ length: random.int(0, 400) }, () => random.int(0, 255))).toString('base64url')}`,
    () =>
      pack(
        random.pick(['', '[]', 'null', '{}', '"x"', '1', '[[[[', '{"format":"dryrun-kitchen","version":2}']),
      ),
    () =>
      random.chance(0.1)
        ? pack('['.repeat(random.pick([1000, 3_000_000])))
        : pack(deepText(random.int(1, 5000))),
  ])()
}

const deepText = (levels: number): string => `${'{"a":'.repeat(levels)}1${'}'.repeat(levels)}`
