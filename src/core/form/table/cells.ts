import type { Option } from '../field'
import { MARK } from '../rename'
import { type Entered, isUnread, lengthTyped, numberTyped, type Unread } from '../typed'
import { type Column, plainName } from './columns'

/** One cell of a table: the letters in it, and the fact they are. */

/** What can be pointed at by a mark or by the name somebody gave it. */
export interface Pointable {
  readonly mark: string
  readonly name: string
}

export interface CellMeans {
  /** What bare lengths are in. */
  readonly unit: string
  /** The things of a list that may be pointed at. */
  readonly things: (lists: readonly string[]) => readonly Pointable[]
}

const unread = (why: string): Unread => ({ unread: true, why })

const LONGEST_TEXT = 200
const LONGEST_REASON = 400

/**
 * Reads a cell. An empty one says nothing and is not asked here.
 *
 * @returns the fact as the kitchen file has it, or why it cannot be read
 */
export function cellRead({ sort }: Column, typed: string, means: CellMeans): unknown {
  switch (sort.kind) {
    case 'mark':
      return markRead(typed)
    case 'text':
      return typed.length > LONGEST_TEXT ? unread(`At most ${LONGEST_TEXT} letters.`) : typed
    case 'length':
      return withReason(typed, (text) => lengthIn(text, means.unit))
    case 'number':
      return withReason(typed, numberTyped)
    case 'yes-no':
      return yesNoRead(typed)
    case 'choice':
      return choiceRead(sort.options, typed)
    case 'choices':
      return eachRead(typed, (one) => choiceRead(sort.options, one))
    case 'ref':
      return pointed(means.things(sort.to), typed)
    case 'refs':
      return eachRead(typed, (one) => pointed(means.things(sort.to), one))
  }
}

/** A mark as the kitchen file wants it: what is written at the head of a sheet becomes small letters and hyphens. */
function markRead(typed: string): string | Unread {
  const mark = typed
    .slice(0, LONGEST_TEXT)
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40)
    .replace(/-+$/, '')
  const isOne = MARK.test(mark) && mark !== 'constructor' && mark !== 'prototype'
  return isOne ? mark : unread('Not a mark: write letters and figures.')
}

const PM = /\s*(?:±|\+\/?-)\s*/
const BARE = /^[-+−]?[\d\s.,/½¼¾⅛⅜⅝⅞]+$/

/** A length; a bare figure is in the unit named. Millimetres stay figures, the others are kept as they are written. */
function lengthIn(text: string, unit: string): Entered | Unread {
  if (text.length > LONGEST_TEXT) return unread('Not a length.')
  if (unit === 'mm') return lengthTyped(text)
  if (unit === 'in') return lengthTyped(text, 'inch')
  const parts = text.split(PM)
  return lengthTyped(parts.map((part) => (BARE.test(part) ? `${part.trim()} ${unit}` : part)).join(' ± '))
}

/** `720 (assumed: usual height)`: a figure nobody has measured, and why it is taken for now. */
function withReason(text: string, read: (text: string) => Entered | Unread): unknown {
  const [, figure, why] = /^([^(]*)\(\s*assumed\s*(?::(.*))?\)$/is.exec(text) ?? []
  const entered = read((figure ?? text).trim())
  if (figure === undefined || isUnread(entered) || entered === null) {
    return entered === null ? unread('A figure is missing.') : entered
  }
  const reason = (why ?? '').trim()
  if (reason.length > LONGEST_REASON) return unread(`At most ${LONGEST_REASON} letters say why.`)
  const value = typeof entered === 'object' ? entered : { value: entered }
  return { ...value, assumed: true, ...(reason === '' ? {} : { because: reason }) }
}

const YES = ['yes', 'y', 'true', '1', 'x', '✓', '✔']
const NO = ['no', 'n', 'false', '0']

function yesNoRead(typed: string): boolean | Unread {
  const word = typed.toLowerCase()
  if (YES.includes(word)) return true
  return NO.includes(word) ? false : unread('Write yes or no.')
}

function choiceRead(options: readonly Option[], typed: string): string | Unread {
  // The page says “from the left end”, a table mostly “left end”, or “left”.
  const plain = typed.length > LONGEST_TEXT ? '' : plainName(typed.replace(/^\s*from the\s+/i, ''))
  const found = options.find((option) => option.some((word) => word === typed || plainName(word) === plain))
  return found?.[0] ?? unread(`Write one of: ${options.map(([, words]) => words).join(', ')}.`)
}

function pointed(things: readonly Pointable[], typed: string): string | Unread {
  const plain = typed.length > LONGEST_TEXT ? '' : plainName(typed)
  const byMark = things.find(({ mark }) => mark === typed || plainName(mark) === plain)
  if (byMark !== undefined && plain !== '') return byMark.mark
  const byName = things.filter(({ name }) => plain !== '' && plainName(name) === plain)
  const [only] = byName
  if (only !== undefined && byName.length === 1) return only.mark
  if (byName.length > 1) return unread('Several are called so: give its mark.')
  return unread(
    things.length === 0 ? 'Nothing of the kind is listed yet.' : 'Nothing listed has this mark or name.',
  )
}

function eachRead(typed: string, read: (one: string) => string | Unread): readonly string[] | Unread {
  if (typed.length > LONGEST_TEXT * 20) return unread('Too long.')
  const each = typed
    .split(/[;,|\n]/)
    .map((one) => one.trim())
    .filter((one) => one !== '')
    .map(read)
  const wrong = each.find(isUnread)
  return wrong ?? [...new Set(each as readonly string[])]
}

/** A fact as it is written into a cell: what `cellRead` makes the same fact of again. */
export function cellWritten({ sort }: Column, value: unknown): string {
  switch (sort.kind) {
    case 'length':
    case 'number':
      return figureWritten(value)
    case 'yes-no':
      return value === true ? 'yes' : value === false ? 'no' : ''
    case 'choice':
      return wordsOf(sort.options, value)
    case 'choices':
      return Array.isArray(value) ? value.map((one) => wordsOf(sort.options, one)).join('; ') : ''
    case 'refs':
      return Array.isArray(value) ? value.map(String).join('; ') : ''
    default:
      return typeof value === 'string' ? value : ''
  }
}

const wordsOf = (options: readonly Option[], value: unknown): string =>
  options.find(([word]) => word === value)?.[1] ?? (typeof value === 'string' ? value : '')

function figureWritten(value: unknown): string {
  if (typeof value !== 'object' || value === null) return oneFigure(value)
  const { value: inner, pm, assumed, because } = value as Readonly<Record<string, unknown>>
  const figure = oneFigure(inner)
  if (figure === '') return ''
  const whole = oneFigure(pm) === '' ? figure : `${figure} ± ${oneFigure(pm)}`
  if (assumed !== true) return whole
  return typeof because === 'string' && because !== ''
    ? `${whole} (assumed: ${because})`
    : `${whole} (assumed)`
}

/** Three figures after the point could be read as thousands: a fourth says that they are not. */
function oneFigure(value: unknown): string {
  if (typeof value === 'string') return value
  if (typeof value !== 'number') return ''
  const plain = /e/.test(String(value)) ? value.toFixed(9) : String(value)
  return /\.\d{3}$/.test(plain) ? `${plain}0` : plain
}
