import type { Field, Option, Things } from '../field'

/**
 * A list of the survey as a table: one line for each thing, one column for each fact of it. A position takes several
 * columns, one for each way in which it is measured.
 */

/** How the letters in a cell are read. */
export type Sort =
  | { readonly kind: 'mark' | 'length' | 'text' | 'yes-no' }
  | { readonly kind: 'number'; readonly unit: string }
  | { readonly kind: 'choice' | 'choices'; readonly options: readonly Option[] }
  | { readonly kind: 'ref' | 'refs'; readonly to: readonly string[] }

export interface Column {
  /** The fact within the thing: `legs.min`, `at.along.at`. */
  readonly key: string
  readonly label: string
  /** Other names it is known by at the head of a table. */
  readonly also: readonly string[]
  readonly sort: Sort
  /** The field of the form that it is a part of. */
  readonly field: Field
  /** Of facts with the same word here only one may be given: a height is up, down, or above the floor. */
  readonly oneOf?: string
}

const ENDS: readonly Option[] = [
  ['left', 'left end'],
  ['right', 'right end'],
]
const SIDES: readonly Option[] = [
  ['room', 'this side'],
  ['other', 'the other side'],
]
const NEIGHBOURS = ['units', 'finishing']

type Made = Omit<Column, 'field'>

const column = (key: string, label: string, sort: Sort, also: readonly string[] = []): Made => ({
  key,
  label,
  also,
  sort,
})

function alongColumns(
  key: string,
  label: string,
  also: readonly string[],
  about: string = label,
): readonly Made[] {
  return [
    column(`${key}.at`, label, { kind: 'length' }, also),
    column(`${key}.from`, `${about}: from which end`, { kind: 'choice', options: ENDS }),
    column(`${key}.face`, `${about}: on which side`, { kind: 'choice', options: SIDES }),
  ]
}

function heightColumns(key: string, label: string): readonly Made[] {
  const way = (name: string, words: string, also: readonly string[] = []): Made => ({
    ...column(`${key}.${name}`, `${label}: ${words}`, { kind: 'length' }, also),
    oneOf: key,
  })
  return [
    way('up', 'above the line', [label, key]),
    way('down', 'below the line'),
    way('aboveFloor', 'above the floor'),
    column(`${key}.line`, `${label}: which line`, { kind: 'ref', to: ['lines'] }),
  ]
}

function placeColumns(key: string, label: string): readonly Made[] {
  return [
    column(`${key}.wall`, `${label}: wall`, { kind: 'ref', to: ['walls'] }, ['wall']),
    ...alongColumns(`${key}.along`, `${label}: along the wall`, ['along', 'along the wall'], label),
    column(`${key}.out`, `${label}: out from the wall`, { kind: 'length' }, ['out', 'out from the wall']),
  ]
}

function orderColumns(key: string, label: string, hasGap: boolean): readonly Made[] {
  const beside = (name: string, words: string): Made => ({
    ...column(`${key}.${name}`, `${label}: ${words}`, { kind: 'ref', to: NEIGHBOURS }, [words]),
    oneOf: key,
  })
  const [left, ...leftFrom] = alongColumns(`${key}.left`, `${label}: its left side at`, ['left side'], label)
  return [
    beside('rightOf', 'to the right of'),
    beside('leftOf', 'to the left of'),
    ...(left === undefined ? [] : [{ ...left, oneOf: key }]),
    ...leftFrom,
    ...(hasGap ? [column(`${key}.gap`, `${label}: gap to that`, { kind: 'length' }, ['gap'])] : []),
  ]
}

function columnsOfField(field: Field, things: Things): readonly Made[] {
  const { key, label } = field
  switch (field.kind) {
    case 'along':
      return alongColumns(key, label, [key])
    case 'height':
      return heightColumns(key, label)
    case 'place':
      return placeColumns(key, label)
    case 'order':
      return orderColumns(key, label, things.mark === 'unit')
    case 'list':
      return []
    case 'number':
      return [column(key, label, { kind: 'number', unit: field.unit })]
    case 'choice':
    case 'choices':
      return [column(key, label, { kind: field.kind, options: field.options })]
    case 'ref':
    case 'refs':
      return [column(key, label, { kind: field.kind, to: field.to })]
    default:
      return [column(key, label, { kind: field.kind })]
  }
}

const MARK_FIELD: Field = { key: 'id', label: 'Mark', kind: 'text' }

/** Every column a table of such things can have. Lists within a thing have none: they are typed in the form. */
export function columnsOf(things: Things): readonly Column[] {
  return [
    { ...column('id', 'Mark', { kind: 'mark' }, [things.one]), field: MARK_FIELD },
    ...things.fields.flatMap((field) => columnsOfField(field, things).map((made) => ({ ...made, field }))),
  ]
}

/** The letters and figures of a name, by which names are compared. */
export const plainName = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '')

const UNIT_AT_END = /^(.*?)\s*[([]\s*([^()[\]]{1,12})\s*[)\]]\s*$/

const LENGTH_UNITS: Readonly<Record<string, string>> = {
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  ft: 'ft',
  feet: 'ft',
}

/** The column that a name at the head of a table means, and the unit it gives to bare figures under it. */
export interface Headed {
  readonly column: Column
  readonly unit?: string
}

/** @returns undefined where the name is none of the columns', or its unit is not one they can be read in */
export function columnNamed(columns: readonly Column[], name: string): Headed | undefined {
  const plain = named(columns, name)
  if (plain !== undefined) return { column: plain }
  const [, bare = '', typed = ''] = UNIT_AT_END.exec(name.slice(0, LONGEST_NAME)) ?? []
  const column = bare === '' ? undefined : named(columns, bare)
  if (column === undefined) return undefined
  if (column.sort.kind === 'length') {
    const key = typed.toLowerCase()
    const unit = Object.hasOwn(LENGTH_UNITS, key) ? LENGTH_UNITS[key] : undefined
    return unit === undefined ? undefined : { column, unit }
  }
  const isItsOwn = column.sort.kind === 'number' && typed.toLowerCase() === column.sort.unit.toLowerCase()
  return isItsOwn ? { column } : undefined
}

const LONGEST_NAME = 200

function named(columns: readonly Column[], name: string): Column | undefined {
  if (name.length > LONGEST_NAME) return undefined
  const plain = plainName(name)
  if (plain === '') return undefined
  const by = (names: (column: Column) => readonly string[]): Column | undefined =>
    columns.find((column) => names(column).some((one) => plainName(one) === plain))
  return by(({ key }) => [key]) ?? by(({ label }) => [label]) ?? by(({ also }) => also)
}
