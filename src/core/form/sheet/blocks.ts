import type { Field, OnSheet, Option, Page, Things } from '../field'
import { PAGES } from '../pages'
import { listAt, thingAt } from '../things'
import { placeWritten, written } from './written'

/**
 * The sheet to print, as plain data: what the pages of the survey ask, in their order and under their numbers, with room
 * to write by hand. It is made from those pages and says nothing that they do not.
 */

/** One question on a line of its own. */
export interface Line {
  readonly number: string
  readonly label: string
  /** What is written is in this; empty for words. */
  readonly unit: string
  /** Whether it is asked how far the reading may be off; not of that itself. */
  readonly hasPm: boolean
  readonly ticks: readonly { readonly words: string; readonly isChosen: boolean }[]
  /** Typed already; empty on a blank sheet. */
  readonly text: string
}

export interface Column {
  /** Empty where it goes on with the field before it, and over marks. */
  readonly number: string
  readonly label: string
  readonly unit: string
  /** Takes words, and not a figure or a mark. */
  readonly isWide?: boolean
}

/** A list with a line for each thing. */
export interface Table {
  readonly kind: 'table'
  readonly number: string
  readonly title: string
  readonly how: string
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly string[])[]
  /** What may be written in the columns that take words. */
  readonly words: readonly (readonly [number: string, words: string])[]
}

/** Walls stand side by side, with a line for each question. */
export interface Across {
  readonly kind: 'across'
  readonly number: string
  readonly title: string
  readonly how: string
  readonly marks: readonly string[]
  readonly rows: readonly (Omit<Line, 'text' | 'ticks' | 'hasPm'> & {
    readonly how: string
    readonly words: string
    readonly cells: readonly string[]
  })[]
}

/** Readings along each wall, with the picture of what counts as how far below the line. */
export interface Grid {
  readonly kind: 'grid'
  readonly number: string
  readonly title: string
  readonly how: string
  readonly place: Column
  readonly down: Column
  readonly marks: readonly string[]
  readonly columns: number
}

/** What there may be beside that, by number and name; of what stands on sheets of its own only that it does. */
export interface Rest {
  readonly kind: 'may-be'
  readonly groups: readonly {
    /** What they are asked of: "door or window"; empty where they stand on the page itself. */
    readonly of: string
    readonly items: readonly (readonly [number: string, label: string])[]
  }[]
  readonly ownSheets: readonly (readonly [number: string, what: string])[]
}

type Part =
  | { readonly kind: 'lines'; readonly rows: readonly (readonly Line[])[] }
  | Table
  | Across
  | { readonly kind: 'pair'; readonly tables: readonly Table[] }
  | { readonly kind: 'elevations'; readonly marks: readonly string[] }
  | Grid
  | Rest

/** `page`: the page of the survey that begins with it. */
export type Block = Part & { readonly page?: Page }

type Unit = 'mm' | 'in'

/** All of the sheet: blank, or with what a kitchen file holds already. */
export function sheetBlocks(file: unknown = null): readonly Block[] {
  const unit: Unit = thingAt(file, 'display') === 'inch' ? 'in' : 'mm'
  return PAGES.flatMap((page): readonly Block[] => {
    const parts = partsOf(page, file, unit)
    return parts.map((part, i) => (i === 0 ? { ...part, page } : part))
  })
}

/** What stands at the head of each page of it, so that none is lost. */
export const sheetHead = (file: unknown): readonly Line[] =>
  PAGES.flatMap(({ fields, head }) =>
    fields.filter(({ key }) => head?.includes(key)).map((field) => lineOf(field, file, 'mm')),
  )

function partsOf(page: Page, file: unknown, unit: Unit): readonly Part[] {
  const lines = page.fields.filter(({ key }) => page.lines?.includes(key))
  const tables = page.fields.flatMap((field) => tablesOf(field, field.key, file, unit))
  const rest = mayBe(page)
  return [
    ...(lines.length === 0 ? [] : [{ kind: 'lines' as const, rows: paired(lines, file, unit) }]),
    ...halvesPaired(tables),
    ...(page.id === 'walls' ? [{ kind: 'elevations' as const, marks: wallMarks(file) }] : []),
    ...(rest.groups.length + rest.ownSheets.length === 0 ? [] : [rest]),
  ]
}

const LEAST_WALLS = 4

/** Marks of the walls; blank ones where there are none yet. */
function wallMarks(file: unknown): readonly string[] {
  const marks = listAt(file, 'walls').map((wall) => String(wall['id']))
  return filledUp(marks, LEAST_WALLS, '')
}

function filledUp<T>(these: readonly T[], least: number, blank: T): readonly T[] {
  return [...these, ...Array.from({ length: Math.max(0, least - these.length) }, () => blank)]
}

// ---------------------------------------------------------------- lines

function lineOf(field: Field, file: unknown, unit: Unit): Line {
  const value = thingAt(file, field.key)
  const ticks = ticksOf(field).map(([word, words]) => ({ words, isChosen: value === word }))
  return {
    ...named(field, unit),
    hasPm: field.kind === 'length' && !field.label.endsWith('±'),
    ticks:
      field.kind === 'yes-no'
        ? [
            { words: 'yes', isChosen: value === true },
            { words: 'no', isChosen: value === false },
          ]
        : ticks,
    text: ticks.length > 0 ? '' : written(field, value),
  }
}

const ticksOf = (field: Field): readonly Option[] =>
  field.kind === 'choice' || field.kind === 'choices' ? field.options : []

const named = (field: Field, unit: Unit) => ({
  number: field.number ?? '',
  label: field.label,
  unit: unitOf(field, unit),
})

function unitOf(field: Field, unit: Unit): string {
  switch (field.kind) {
    case 'length':
    case 'along':
    case 'height':
    case 'place':
      return unit
    case 'number':
      return field.unit
    default:
      return ''
  }
}

/** Two to a line, but for those that have many words to tick. */
function paired(fields: readonly Field[], file: unknown, unit: Unit): readonly (readonly Line[])[] {
  const rows: Line[][] = []
  for (const field of fields) {
    const line = lineOf(field, file, unit)
    const before = rows.at(-1)
    const isShort = line.ticks.length <= 2
    if (isShort && before?.length === 1 && (before[0]?.ticks.length ?? 9) <= 2) before.push(line)
    else rows.push([line])
  }
  return rows
}

// ---------------------------------------------------------------- tables

type Listed = { readonly thing: unknown; readonly mark: string; readonly inWall: string }

/** The list, and the lists within it that have room of their own: those of walls stand together, wall by wall. */
function tablesOf(field: Field, path: string, file: unknown, unit: Unit): readonly (Part & Half)[] {
  if (field.kind !== 'list') return []
  const { things } = field
  const within = things.fields.flatMap((inner) =>
    inner.kind === 'list' && inner.things.sheet !== undefined
      ? [tableOf(inner, inner.things.sheet, thingsWithin(file, path, inner.key), unit, true)]
      : [],
  )
  if (things.sheet === undefined || things.sheet.rows === 0) return within
  const own = listAt(file, path).map((thing): Listed => ({ thing, mark: String(thing['id']), inWall: '' }))
  return [ownPart(field, things.sheet, own, file, unit), ...within]
}

type Half = { readonly isHalf?: boolean }

function thingsWithin(file: unknown, path: string, key: string): readonly Listed[] {
  return listAt(file, path).flatMap((wall) =>
    listAt(wall, key).map((thing) => ({ thing, mark: String(thing['id']), inWall: String(wall['id']) })),
  )
}

function ownPart(
  field: Field & { readonly things: Things },
  sheet: OnSheet,
  listed: readonly Listed[],
  file: unknown,
  unit: Unit,
): Part & Half {
  if (sheet.as === 'across') return across(field, sheet, listed, unit)
  // Readings that stand in the file were taken where they were: they are listed, and further ones below them.
  if (sheet.as === 'grid' && listed.length === 0) return grid(field, sheet, file, unit)
  return tableOf(field, sheet, listed, unit, false)
}

type ListField = Field & { readonly things: Things }

const head = (field: ListField) => ({
  number: field.number ?? '',
  title: field.things.many,
  how: field.things.how ?? '',
})

const columnsOf = ({ things }: ListField, sheet: OnSheet): readonly Field[] =>
  things.fields.filter(({ key }) => sheet.columns.includes(key))

function tableOf(
  field: ListField,
  sheet: OnSheet,
  listed: readonly Listed[],
  unit: Unit,
  isInWalls: boolean,
): Table & Half {
  const fields = columnsOf(field, sheet)
  const columns = [
    { number: '', label: isInWalls ? 'Wall · mark' : 'Mark', unit: '' },
    ...fields.flatMap((inner) => columnsFor(inner, unit)),
  ]
  const rows = listed.map(({ thing, mark, inWall }) => [
    isInWalls ? `${inWall} · ${mark}` : mark,
    ...fields.flatMap((inner) => cellsFor(inner, thingAt(thing, inner.key))),
  ])
  const blank = columns.map(() => '')
  return {
    kind: 'table',
    ...head(field),
    columns,
    rows: filledUp(rows, sheet.rows, blank),
    words: fields.flatMap((inner) => wordsFor(inner)),
    isHalf: sheet.as === 'half',
  }
}

function columnsFor(field: Field, unit: Unit): readonly Column[] {
  if (field.kind !== 'place') return [{ ...named(field, unit), isWide: isWords(field) }]
  return [
    { number: field.number ?? '', label: `${field.label}: wall`, unit: '' },
    { number: '', label: 'along it', unit },
    { number: '', label: 'out from it', unit },
  ]
}

/** Marks of walls are short. */
const isWords = (field: Field): boolean =>
  ['choice', 'choices', 'text', 'refs', 'order'].includes(field.kind) ||
  (field.kind === 'ref' && !field.to.includes('walls'))

const cellsFor = (field: Field, value: unknown): readonly string[] =>
  field.kind === 'place' ? placeWritten(value) : [written(field, value)]

/** More words than these are no help between two tables. */
const MOST_WORDS = 6

function wordsFor(field: Field): readonly (readonly [string, string])[] {
  const options = ticksOf(field)
  if (options.length === 0 || options.length > MOST_WORDS) return []
  return [[field.number ?? '', options.map(([, words]) => words).join(', ')]]
}

function across(field: ListField, sheet: OnSheet, listed: readonly Listed[], unit: Unit): Across {
  const walls = filledUp<Listed>(listed, sheet.rows, { thing: null, mark: '', inWall: '' })
  return {
    kind: 'across',
    ...head(field),
    marks: walls.map(({ mark }) => mark),
    rows: columnsOf(field, sheet).map((inner) => ({
      ...named(inner, unit),
      // The words to choose from say what is asked better than how it is found out, and there is room for one.
      how: ticksOf(inner).length > 0 ? '' : (inner.how ?? ''),
      words: ticksOf(inner)
        .map(([, words]) => words)
        .join(', '),
      cells: walls.map(({ thing }) => written(inner, thingAt(thing, inner.key))),
    })),
  }
}

function grid(field: ListField, sheet: OnSheet, file: unknown, unit: Unit): Part {
  const [place, down] = columnsOf(field, sheet).map((inner) => named(inner, unit)) as [Column, Column]
  return { kind: 'grid', ...head(field), place, down, marks: wallMarks(file), columns: sheet.rows }
}

/** Narrow tables, two beside each other. */
function halvesPaired(parts: readonly (Part & Half)[]): readonly Part[] {
  const halves = parts.filter((part): part is Table & Half => part.kind === 'table' && part.isHalf === true)
  const first = halves[0]
  return parts.flatMap((part): readonly Part[] => {
    if (part === first) return [{ kind: 'pair', tables: halves }]
    return part.kind === 'table' && part.isHalf === true ? [] : [part]
  })
}

// ---------------------------------------------------------------- the rest

function mayBe(page: Page): Rest {
  const groups: { of: string; items: (readonly [string, string])[] }[] = []
  const ownSheets: (readonly [string, string])[] = []
  const rest = (fields: readonly Field[], shown: readonly string[], of: string) => {
    const items: (readonly [string, string])[] = []
    groups.push({ of, items })
    for (const field of fields) {
      const isTable = field.kind === 'list' && field.things.sheet !== undefined
      if (isTable) restOf(field, field.things.sheet)
      else if (!shown.includes(field.key)) items.push([field.number ?? '', field.label])
    }
  }
  const restOf = ({ things, number }: ListField, sheet: OnSheet) => {
    if (sheet.hasOwnSheet === true) ownSheets.push([number ?? '', things.many])
    else rest(things.fields, sheet.columns, things.one)
  }
  rest(page.fields, [...(page.lines ?? []), ...(page.head ?? [])], '')
  return { kind: 'may-be', groups: groups.filter(({ items }) => items.length > 0), ownSheets }
}
