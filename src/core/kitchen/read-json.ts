import { err, ok, type Result } from '../result'
import { DEEPEST, jsonFault, lineAndColumn } from './json-syntax'
import { isRecord, type JsonPath, type Problem, placeIn, shown } from './problem'

/** The longest text read, in characters. A kitchen of a hundred units is about a tenth of it. */
export const LONGEST_FILE = 2_000_000
const LONGEST_LIST = 5000
const MOST_VALUES = 200_000
/** Keys that mean something to the language itself, so that no reader of the file can be led astray by them. */
const FORBIDDEN_KEYS = new Set(['__proto__', 'constructor', 'prototype'])

const group = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, '\u202f')

function tooLarge(length: number): Problem {
  return {
    kind: 'too-large',
    path: 'the file',
    message: `The file is ${group(length)} characters long; at most ${group(LONGEST_FILE)} (2 MB) are read.`,
    mend: 'Take out what is not a part of this kitchen, such as pictures pasted in as text.',
  }
}

/** A text read as JSON: size, byte order mark, nesting and syntax are looked at before anything is made of it. */
export function readJson(text: string): Result<unknown, Problem> {
  if (text.length > LONGEST_FILE) return err(tooLarge(text.length))
  const plain = text.startsWith('\ufeff') ? text.slice(1) : text
  const fault = jsonFault(plain)
  if (fault === undefined) return ok(JSON.parse(plain) as unknown)
  const { kind, message, mend } = fault
  return err({ kind, path: lineAndColumn(plain, fault.at), message, mend })
}

interface Walk {
  readonly root: unknown
  readonly problems: Problem[]
  values: number
}

function refuse(walk: Walk, path: JsonPath, problem: Omit<Problem, 'path'>): void {
  walk.problems.push({ ...problem, path: placeIn(walk.root, path) })
}

function lookAtList(walk: Walk, list: readonly unknown[], path: JsonPath): void {
  if (list.length > LONGEST_LIST) {
    const message = `This list holds ${group(list.length)} things; no list holds more than ${group(LONGEST_LIST)}.`
    refuse(walk, path, { kind: 'too-large', message, mend: 'Take out what is not a part of this kitchen.' })
    return
  }
  list.forEach((item, index) => {
    lookAt(walk, item, [...path, index])
  })
}

function lookAtObject(walk: Walk, object: Readonly<Record<string, unknown>>, path: JsonPath): void {
  for (const key of Object.keys(object)) {
    if (FORBIDDEN_KEYS.has(key)) {
      const message = `The key ${shown(key)} is refused wherever it stands.`
      refuse(walk, [...path, key], { kind: 'forbidden-key', message, mend: 'Take the key out.' })
    } else lookAt(walk, object[key], [...path, key])
  }
}

function lookAt(walk: Walk, value: unknown, path: JsonPath): void {
  walk.values++
  if (walk.values > MOST_VALUES) return
  if (typeof value === 'number' && !Number.isFinite(value)) {
    const message = `${value} is not a number that can be measured.`
    refuse(walk, path, { kind: 'not-a-number', message, mend: 'Write null if the figure is not known.' })
  }
  if (typeof value !== 'object' || value === null) return
  if (path.length >= DEEPEST) {
    const message = `Lists and objects stand within each other more than ${DEEPEST} deep here.`
    refuse(walk, path, {
      kind: 'too-deep',
      message,
      mend: 'A kitchen file never needs this: take a sound copy.',
    })
    return
  }
  if (Array.isArray(value)) lookAtList(walk, value, path)
  else if (isRecord(value)) lookAtObject(walk, value, path)
}

/** What makes a value unfit to be looked at further: forbidden keys, NaN, nesting, sheer number. Empty when fit. */
export function unfit(root: unknown): readonly Problem[] {
  const walk: Walk = { root, problems: [], values: 0 }
  lookAt(walk, root, [])
  if (walk.values > MOST_VALUES) {
    const message = `The file holds more than ${group(MOST_VALUES)} values.`
    refuse(walk, [], { kind: 'too-large', message, mend: 'Take out what is not a part of this kitchen.' })
  }
  return walk.problems
}
