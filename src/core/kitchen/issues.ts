import { z } from 'zod'
import {
  capped,
  closest,
  type JsonPath,
  listed,
  MOST_PROBLEMS,
  type Problem,
  placeIn,
  shown,
  valueAt,
} from './problem'

/** Turns what the schema says against a value into problems: place, words, and what to write instead. */

type Issue = z.core.$ZodIssue
type Words = Omit<Problem, 'path'>

const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: 'a text in double quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list in [ ]',
  object: 'an object in { }',
  record: 'an object in { }',
  null: 'null',
}

const typeWords = (expected: string): string => TYPE_WORDS[expected] ?? expected

/** What a schema is inside its wrappers of default, null and transform. */
function core(schema: unknown): unknown {
  if (schema instanceof z.ZodPipe) return core(schema.in)
  if (
    schema instanceof z.ZodDefault ||
    schema instanceof z.ZodPrefault ||
    schema instanceof z.ZodNullable ||
    schema instanceof z.ZodOptional
  )
    return core(schema.unwrap())
  return schema
}

/** The keys the schema knows for the object at a path; none when there is no object there. */
function keysAt(schema: unknown, path: JsonPath): readonly string[] {
  const here = core(schema)
  const [key, ...rest] = path
  if (here instanceof z.ZodUnion) return here.options.flatMap((option) => keysAt(option, path))
  if (here instanceof z.ZodArray && key !== undefined) return keysAt(here.element, rest)
  if (!(here instanceof z.ZodObject)) return []
  return key === undefined ? Object.keys(here.shape) : keysAt(here.shape[String(key)], rest)
}

function wrongType(expected: string, value: unknown): Words {
  if (value === undefined) {
    return { kind: 'missing', message: 'This is missing.', mend: `Write ${typeWords(expected)} here.` }
  }
  const message = `This is ${shown(value)}; it must be ${typeWords(expected)}.`
  return { kind: 'wrong-type', message, mend: `Write ${typeWords(expected)} here.` }
}

function notAChoice(values: readonly unknown[], value: unknown): Words {
  const words = values.map(String)
  const choices = listed(words, 'or', 30)
  if (value === undefined) return { kind: 'missing', message: 'This is missing.', mend: `Write ${choices}.` }
  const meant = typeof value === 'string' ? closest(value, words) : undefined
  const message = `This is ${shown(value)}; it must be ${choices}.`
  const mend = meant === undefined ? 'Write one of these words.' : `Did you mean ${shown(meant)}?`
  return { kind: 'not-a-choice', message, mend }
}

/** Bounds of figures carry their own words and unit from the schema; bounds of texts and lists are worded here. */
function outOfRange(issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall, value: unknown): Words {
  const kind = 'out-of-range'
  const bound = issue.code === 'too_big' ? `at most ${issue.maximum}` : `at least ${issue.minimum}`
  if (issue.origin === 'string' && typeof value === 'string') {
    const message = `This text is ${value.length} characters long; it may be ${bound}.`
    return { kind, message, mend: 'Write less.' }
  }
  if (issue.origin === 'array' && Array.isArray(value)) {
    const message = `This list holds ${value.length} things; it may hold ${bound}.`
    return { kind, message, mend: 'Take out what is not needed.' }
  }
  const mend = 'Look at the unit and the figure; if it is not known, write null.'
  const onScreen = 'Look at the unit and the figure; if you do not know it yet, leave it open.'
  return { kind, message: `This is ${shown(value)}; it ${issue.message}.`, mend, onScreen }
}

function unknownKeys(issue: z.core.$ZodIssueUnrecognizedKeys, path: JsonPath, schema: z.ZodType): Words[] {
  const known = keysAt(schema, path)
  return issue.keys.slice(0, MOST_PROBLEMS).map((key) => {
    const meant = closest(key, known)
    const mend =
      meant === undefined ? 'Take it out, or look at its spelling.' : `Did you mean ${shown(meant)}?`
    return { kind: 'unknown-key', message: `The key ${shown(key)} is not known here.`, mend }
  })
}

function notFitting(message: string, value: unknown): Words {
  const mend = 'Write it as said; if it is not known, write null.'
  const onScreen = 'Type it as said; if you do not know it yet, leave it open.'
  if (value === undefined) return { kind: 'missing', message: 'This is missing.', mend: `It ${message}.` }
  return { kind: 'wrong-type', message: `This is ${shown(value)}; it ${message}.`, mend, onScreen }
}

/** Whether a branch of a union was refused only because the value is of another type altogether. */
function isOtherType(branch: readonly Issue[]): boolean {
  return branch.every((issue) => issue.code === 'invalid_type' && issue.path.length === 0)
}

/** A figure may be typed in several ways: the fault of the way it was nearly typed in helps, the others are noise. */
function union(issue: z.core.$ZodIssueInvalidUnion, schema: z.ZodType, root: unknown): Problem[] {
  const near = issue.errors.find((branch) => branch.length > 0 && !isOtherType(branch))
  if (near === undefined) {
    return [{ ...notFitting(issue.message, valueAt(root, issue.path)), path: placeIn(root, issue.path) }]
  }
  return near.flatMap((inner) =>
    problemsOfIssue({ ...inner, path: [...issue.path, ...inner.path] }, schema, root),
  )
}

function wordsOf(issue: Issue, schema: z.ZodType, root: unknown): Words[] {
  const value = valueAt(root, issue.path)
  switch (issue.code) {
    case 'invalid_type':
      return [wrongType(issue.expected, value)]
    case 'invalid_value':
      return [notAChoice(issue.values, value)]
    case 'too_big':
    case 'too_small':
      return [outOfRange(issue, value)]
    case 'unrecognized_keys':
      return unknownKeys(issue, issue.path, schema)
    default: {
      const mend = 'Write it in the form said.'
      return [{ kind: 'bad-text', message: `This is ${shown(value)}; it ${issue.message}.`, mend }]
    }
  }
}

function problemsOfIssue(issue: Issue, schema: z.ZodType, root: unknown): Problem[] {
  if (issue.code === 'invalid_union') return union(issue, schema, root)
  return wordsOf(issue, schema, root).map((words) => ({ ...words, path: placeIn(root, issue.path) }))
}

/** How many problems an issue stands for. */
const weight = (issue: Issue): number => (issue.code === 'unrecognized_keys' ? issue.keys.length : 1)

/** Every issue as a problem, up to the cap; `root` is the value as it was typed. */
export function problemsFrom(issues: readonly Issue[], schema: z.ZodType, root: unknown): readonly Problem[] {
  const first = issues.slice(0, MOST_PROBLEMS).flatMap((issue) => problemsOfIssue(issue, schema, root))
  return capped(
    first,
    issues.reduce((sum, issue) => sum + weight(issue), 0),
  )
}
