/**
 * Something wrong with a file itself, told to whoever typed it: what, where, and how to mend it. A problem stops the
 * file from being read; a risk in the room it describes is a finding, and never a problem.
 */

export type ProblemKind =
  | 'too-large'
  | 'not-json'
  | 'ends-early'
  | 'too-deep'
  | 'repeated-key'
  | 'forbidden-key'
  | 'not-a-number'
  | 'not-this-format'
  | 'newer-version'
  | 'older-version'
  | 'missing'
  | 'unknown-key'
  | 'wrong-type'
  | 'not-a-choice'
  | 'out-of-range'
  | 'bad-text'
  | 'repeated-id'
  | 'missing-reference'
  | 'order'
  | 'contradiction'
  | 'outline'
  | 'more'

export interface Problem {
  readonly kind: ProblemKind
  /** Where, for a person: `walls "b" › studs "s3" › centre › at`, or `line 12, column 7` of a text that is not JSON. */
  readonly path: string
  readonly message: string
  /** To whoever writes the file. */
  readonly mend: string
  /** To whoever types it into the survey, where that is done in another way. */
  readonly onScreen?: string
}

/** The way to a value by keys and positions, as a parser walks it. */
export type JsonPath = readonly PropertyKey[]

const LONGEST_SHOWN = 40

/** A value as it may stand in a sentence: short, on one line, quoted when it is text. */
export function shown(value: unknown): string {
  if (typeof value === 'string') {
    const quoted = JSON.stringify(value.slice(0, LONGEST_SHOWN))
    return value.length > LONGEST_SHOWN ? `${quoted.slice(0, -1)}…"` : quoted
  }
  if (Array.isArray(value)) return 'a list'
  if (typeof value === 'object' && value !== null) return 'an object'
  return String(value)
}

/** Words in a row, as a sentence names them: "a", "b" or "c". */
export function listed(words: readonly string[], joint: 'or' | 'and' = 'and', most = 12): string {
  const named = words.slice(0, most).map(shown)
  if (words.length > most) return `${named.join(', ')} ${joint} ${words.length - most} more`
  return named.length < 2 ? named.join('') : `${named.slice(0, -1).join(', ')} ${joint} ${named.at(-1)}`
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** The value at a path, or undefined; never looks at what an object inherits. */
export function valueAt(root: unknown, path: JsonPath): unknown {
  return path.reduce<unknown>((here, key) => {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return undefined
    return (here as Readonly<Record<PropertyKey, unknown>>)[key]
  }, root)
}

function itemName(item: unknown, index: number): string {
  const id = isRecord(item) && Object.hasOwn(item, 'id') ? item['id'] : undefined
  return typeof id === 'string' && id !== '' ? shown(id) : `#${index + 1}`
}

function keyName(key: string): string {
  return /^[a-z][a-z0-9]*$/i.test(key) && key.length <= LONGEST_SHOWN ? key : shown(key)
}

/** A path for a person: listed things by their id where they have one, else by their number counted from 1. */
export function placeIn(root: unknown, path: JsonPath): string {
  const parts: string[] = []
  path.forEach((key, depth) => {
    if (typeof key !== 'number') {
      parts.push(keyName(String(key)))
      return
    }
    const name = itemName(valueAt(root, path.slice(0, depth + 1)), key)
    const list = parts.pop()
    parts.push(list === undefined ? name : `${list} ${name}`)
  })
  return parts.length === 0 ? 'the file' : parts.join(' › ')
}

/** How many problems are told at once. */
export const MOST_PROBLEMS = 100

/** The first problems, and one more that says how many were left out. `inAll` where more were counted than worked out. */
export function capped(problems: readonly Problem[], inAll: number = problems.length): readonly Problem[] {
  const first = problems.slice(0, MOST_PROBLEMS)
  const left = Math.max(inAll, problems.length) - first.length
  if (left <= 0) return first
  const message = `There ${left === 1 ? 'is 1 more problem' : `are ${left} more problems`}, not listed here.`
  return [
    ...first,
    { kind: 'more', path: 'the file', message, mend: 'Mend these first, then read the file again.' },
  ]
}

/** Letters to change, add, take out or swap to turn one word into another. */
function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, k) => k)]
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let k = 1; k <= b.length; k++) {
      const isSame = a[i - 1] === b[k - 1]
      let least = Math.min(
        (rows[i - 1]?.[k] ?? 0) + 1,
        (row[k - 1] ?? 0) + 1,
        (rows[i - 1]?.[k - 1] ?? 0) + (isSame ? 0 : 1),
      )
      const isSwap = i > 1 && k > 1 && a[i - 1] === b[k - 2] && a[i - 2] === b[k - 1]
      if (isSwap) least = Math.min(least, (rows[i - 2]?.[k - 2] ?? 0) + 1)
      row.push(least)
    }
    rows.push(row)
  }
  return rows[a.length]?.[b.length] ?? 0
}

/** The word most likely meant: one slip, or two in a longer word; ties go to the first listed. */
export function closest(typed: string, words: readonly string[]): string | undefined {
  if (typed.length > LONGEST_SHOWN) return undefined
  let best: { readonly word: string; readonly slips: number } | undefined
  for (const word of words) {
    const most = word.length > 4 ? 2 : word.length > 1 ? 1 : 0
    const slips = distance(typed.toLowerCase(), word.toLowerCase())
    if (slips <= most && (best === undefined || slips < best.slips)) best = { word, slips }
  }
  return best?.word
}
