import { HUNG_KINDS } from '../../kitchen/kinds'
import { shown } from '../../kitchen/problem'
import type { Edit } from '../../plan/types'
import type { Things } from '../field'
import { askedOf, furtherThing, listAt, neededFirst, nextMark, thingAt, withField } from '../things'
import { isUnread } from '../typed'
import { type CellMeans, cellRead, cellWritten, type Pointable } from './cells'
import { type Column, columnNamed, columnsOf, type Headed } from './columns'
import { fromCsv } from './csv'

/**
 * A table as it was pasted or opened, and the things of a list that it holds: what would be added, what would be
 * changed, and everything in it that could not be understood. Nothing is guessed: what cannot be read stays open.
 */

/** Something of the table that is not understood: lines and columns are counted from 1, the head is a line too. */
export interface TableTrouble {
  readonly row: number
  readonly column?: number
  /** What stands at the head of its column. */
  readonly head?: string
  readonly typed?: string
  readonly why: string
}

export interface TableRead {
  /** Why nothing at all can be taken from it. */
  readonly refused: string | null
  readonly added: readonly string[]
  readonly changed: readonly string[]
  /** Heads of columns that are not taken over. */
  readonly notUnderstood: readonly TableTrouble[]
  /** Cells that are left open. */
  readonly cells: readonly TableTrouble[]
  /** Lines that are left out. */
  readonly lines: readonly TableTrouble[]
  /** All of it, to be made as one. */
  readonly edits: readonly Edit[]
}

/** Most things a list of the kitchen file holds. */
const MOST_THINGS = 500
const MOST_COLUMNS = 200

type Thing = Readonly<Record<string, unknown>>
type Rows = readonly (readonly string[])[]

/** One column of the table at hand. */
interface At extends Headed {
  readonly index: number
  readonly head: string
}

interface Cell extends At {
  readonly text: string
}

/** One line: what its cells say. */
interface Line {
  readonly row: number
  readonly cells: readonly Cell[]
}

/** What has been made of the lines so far. */
interface Made {
  readonly list: readonly Thing[]
  readonly edits: readonly Edit[]
  readonly added: readonly string[]
  readonly changed: readonly string[]
  readonly cells: readonly TableTrouble[]
  readonly lines: readonly TableTrouble[]
}

const nothing = { added: [], changed: [], notUnderstood: [], cells: [], lines: [], edits: [] }
const refused = (why: string): TableRead => ({ ...nothing, refused: why })

/**
 * Reads a table.
 *
 * @param rows its cells as text, the head first
 * @param path of the list, by keys and ids
 */
export function tableRead(rows: Rows, things: Things, file: unknown, path: string): TableRead {
  const needed = neededFirst(things, file)
  if (needed !== undefined) return refused(`First the ${needed} have to be listed.`)
  const top = rows.findIndex((row) => row.some((cell) => cell.trim() !== ''))
  const head = rows[top]
  if (head === undefined) return refused('There is nothing in it.')
  if (head.length > MOST_COLUMNS) return refused(`It has more than ${MOST_COLUMNS} columns.`)
  const { columns, notUnderstood } = headRead(head, top, things)
  if (columns.length === 0) {
    return {
      ...refused('Its first line has to name the columns, and names none that is asked.'),
      notUnderstood,
    }
  }
  const lines = linesOf(rows, top, columns)
  if (lines.length + listAt(file, path).length > MOST_THINGS) {
    return refused(`A list holds at most ${MOST_THINGS} things.`)
  }
  const made = madeOf(lines, things, file, path)
  const isNothing = made.edits.length === 0 && made.lines.length === 0
  return { ...made, notUnderstood, refused: isNothing ? 'There is nothing new in it.' : null }
}

/** How many names at the head of a table are names of columns: by this the sign between its cells is told. */
export function columnsNamed(head: readonly string[], things: Things): number {
  return headRead(head.slice(0, MOST_COLUMNS), 0, things).columns.length
}

function headRead(head: readonly string[], top: number, things: Things) {
  const all = columnsOf(things)
  const columns: At[] = []
  const notUnderstood: TableTrouble[] = []
  head.forEach((typed, index) => {
    const name = typed.trim()
    const headed = columnNamed(all, name)
    const isTwice = headed !== undefined && columns.some(({ column }) => column.key === headed.column.key)
    if (headed !== undefined && !isTwice) columns.push({ ...headed, index, head: shortened(name) })
    else if (name !== '') {
      const why = isTwice ? 'It is named twice.' : 'It is none that is asked.'
      notUnderstood.push({ row: top + 1, column: index + 1, head: shortened(name), why })
    }
  })
  return { columns, notUnderstood }
}

const LONGEST_SHOWN = 60
const shortened = (text: string): string =>
  text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text

function linesOf(rows: Rows, top: number, columns: readonly At[]): readonly Line[] {
  return rows
    .map((row, at): Line => {
      const cells = columns.map((one): Cell => ({ ...one, text: fromCsv(row[one.index] ?? '').trim() }))
      return { row: at + 1, cells: cells.filter(({ text }) => text !== '') }
    })
    .filter(({ row, cells }) => row > top + 1 && cells.length > 0)
}

function madeOf(lines: readonly Line[], things: Things, file: unknown, path: string): Made {
  const before = listAt(file, path)
  const marked = marksOf(lines, before)
  // Lines may point at each other, the first at the last.
  const inTable = marked.flatMap(({ mark, line }): readonly Pointable[] =>
    mark === null ? [] : [{ mark, name: textAt(line, 'name') }],
  )
  const own = path.split('.').length === 1 ? path : null
  const listed = (lists: readonly string[]): readonly Pointable[] => [
    ...lists.flatMap((list) => listAt(file, list).map(pointable)),
    ...(own !== null && lists.includes(own) ? inTable : []),
  ]
  const unit = thingAt(file, 'display') === 'inch' ? 'in' : 'mm'
  const means = (cell: Cell): CellMeans => ({ unit: cell.unit ?? unit, things: listed })
  const start = startOf(things, file, path)
  const must = mustHave(things, start, file)
  const none: Made = { list: before, edits: [], added: [], changed: [], cells: [], lines: [] }
  const marks = marked.flatMap(({ why }) => (why === undefined ? [] : [why]))
  return marked.reduce<Made>(
    (made, { line, mark }) => withLine(made, { line, mark, things, path, means, start, must }),
    { ...none, cells: marks },
  )
}

const pointable = (thing: Thing): Pointable => ({
  mark: String(thing['id']),
  name: typeof thing['name'] === 'string' ? thing['name'] : '',
})

const textAt = (line: Line, key: string): string =>
  line.cells.find(({ column }) => column.key === key)?.text ?? ''

interface Marked {
  readonly line: Line
  /** Null: it has none of its own and is given the next that is free. */
  readonly mark: string | null
  readonly why?: TableTrouble
}

/** The mark each line has. One that a line before it has is numbered on: a code of a maker stands for several units. */
function marksOf(lines: readonly Line[], before: readonly Thing[]): readonly Marked[] {
  const seen = new Set<string>()
  const numbered = new Map<string, number>()
  const there = new Set(before.map((thing) => String(thing['id'])))
  return lines.map((line): Marked => {
    const cell = line.cells.find(({ column }) => column.key === 'id')
    if (cell === undefined) return { line, mark: null }
    const mark = cellRead(cell.column, cell.text, { unit: 'mm', things: () => [] })
    if (isUnread(mark)) return { line, mark: null, why: trouble(line, cell, mark.why) }
    const free = seen.has(String(mark)) ? further(String(mark)) : String(mark)
    seen.add(free)
    return { line, mark: free }
  })

  function further(mark: string): string {
    const stem = mark.slice(0, 36).replace(/-+$/, '')
    let number = numbered.get(stem) ?? 2
    while (seen.has(`${stem}-${number}`) || there.has(`${stem}-${number}`)) number += 1
    numbered.set(stem, number + 1)
    return `${stem}-${number}`
  }
}

const trouble = (line: Line, cell: Cell, why: string): TableTrouble => ({
  row: line.row,
  column: cell.index + 1,
  head: cell.head,
  typed: shown(cell.text),
  why,
})

interface ToDo {
  readonly line: Line
  readonly mark: string | null
  readonly things: Things
  readonly path: string
  readonly means: (cell: Cell) => CellMeans
  /** What a new one begins with. */
  readonly start: Thing
  /** Facts without which there is none. */
  readonly must: readonly string[]
}

/** One line more: a thing added, or the one that has its mark changed in what the line says. */
function withLine(made: Made, todo: ToDo): Made {
  const { line, mark, things, path } = todo
  const there = mark === null ? undefined : made.list.find((thing) => thing['id'] === mark)
  const { thing, troubles, given } = filled(there ?? todo.start, todo, there)
  const told = { ...made, cells: [...made.cells, ...troubles] }
  const must = there === undefined ? todo.must.filter((key) => !given.has(key)) : []
  const missing = [...must, ...placesWithoutWall(things, thing)]
  if (missing.length > 0) {
    const labels = columnsOf(things).filter(({ key }) => missing.includes(key))
    const why = `It does not say: ${labels.map(({ label }) => label.toLowerCase()).join(', ')}.`
    return { ...told, lines: [...told.lines, { row: line.row, why }] }
  }
  if (there === undefined) {
    const id = mark ?? freeMark(things, made.list, thing)
    const whole = placed(id, withPlaces(things, thing), line, things, made.list)
    const edits: readonly Edit[] = [...made.edits, { add: path, item: whole }]
    return { ...told, list: [...made.list, whole], edits, added: [...made.added, id] }
  }
  if (thing === there) return told
  const id = String(there['id'])
  const whole = withPlaces(things, thing)
  const list = made.list.map((one) => (one === there ? whole : one))
  const edits: readonly Edit[] = [...made.edits, { set: `${path}.${id}`, to: whole }]
  return { ...told, list, edits, changed: [...made.changed, id] }
}

function freeMark(things: Things, list: readonly Thing[], thing: Thing): string {
  const kind = thing['kind']
  return nextMark(things, list, typeof kind === 'string' ? kind : things.mark)
}

/** A new thing with what the file cannot do without, and with nothing taken over from any other. */
function startOf(things: Things, file: unknown, path: string): Thing {
  const { id: _id, order: _order, ...bare } = furtherThing({ ...things, copied: [] }, file, path) as Thing
  return bare
}

/** Facts a line has to give for a new thing: what it is, and what it is fixed to where that could be several. */
function mustHave(things: Things, start: Thing, file: unknown): readonly string[] {
  return columnsOf(things)
    .filter(({ key, sort, field }) => {
      if (sort.kind === 'choice') return field.kind === 'choice' && field.always === true && key !== 'face'
      if (sort.kind !== 'ref' || thingAt(start, key) === undefined) return false
      return sort.to.flatMap((list) => listAt(file, list)).length > 1
    })
    .map(({ key }) => key)
}

const placesOf = (things: Things, thing: Thing): readonly string[] =>
  things.fields.filter(({ kind, key }) => kind === 'place' && thing[key] !== undefined).map(({ key }) => key)

/** A place of which only part is given: it is nowhere. */
const placesWithoutWall = (things: Things, thing: Thing): readonly string[] =>
  placesOf(things, thing)
    .filter((key) => thingAt(thing, `${key}.wall`) === undefined)
    .map((key) => `${key}.wall`)

const withPlaces = (things: Things, thing: Thing): Thing =>
  placesOf(things, thing).reduce(
    (now, key) => withField(now, `${key}.along`, thingAt(now, `${key}.along`) ?? {}),
    thing,
  )

interface Filled {
  readonly thing: Thing
  readonly troubles: readonly TableTrouble[]
  /** Keys of the facts that were read. */
  readonly given: ReadonlySet<string>
}

/** Puts what the cells of a line say into a thing; what decides whether another fact is asked goes first. */
function filled(start: Thing, { line, things, means }: ToDo, there: Thing | undefined): Filled {
  const troubles: TableTrouble[] = []
  const given = new Set<string>()
  const ways = new Set<string>()
  let thing = start
  const facts = line.cells.filter(({ column }) => column.key !== 'id')
  const ordered = [
    ...facts.filter(({ column }) => column.field.only === undefined),
    ...facts.filter(({ column }) => column.field.only !== undefined),
  ]
  for (const cell of ordered) {
    const { column, text } = cell
    const value = cellRead(column, text, means(cell))
    const why = isUnread(value) ? value.why : whyNot(column, thing, things, ways)
    if (why !== undefined) {
      troubles.push(trouble(line, cell, why))
      continue
    }
    given.add(column.key)
    if (column.oneOf !== undefined) ways.add(column.oneOf)
    if (there !== undefined && isSame(column, text, value, thingAt(there, column.key))) continue
    thing = withField(column.oneOf === undefined ? thing : otherWaysOut(thing, column), column.key, value)
  }
  return { thing, troubles, given }
}

/** Whether a cell says what already stands there, in whichever letters. */
function isSame(column: Column, text: string, value: unknown, now: unknown): boolean {
  const written = cellWritten(column, now)
  return text === written || (now !== undefined && cellWritten(column, value) === written)
}

function whyNot(column: Column, thing: Thing, things: Things, ways: ReadonlySet<string>): string | undefined {
  if (column.oneOf !== undefined && ways.has(column.oneOf)) return 'It is given in another column already.'
  return askedOf(things.fields, thing).includes(column.field) || column.field.key === 'id'
    ? undefined
    : 'It is not asked of one like this.'
}

/** A height that was up and is now given down is down alone. */
function otherWaysOut(thing: Thing, { key, oneOf = '' }: Column): Thing {
  const now = thingAt(thing, oneOf)
  if (typeof now !== 'object' || now === null) return thing
  const own = key.slice(oneOf.length + 1).split('.')[0]
  const ways = ['up', 'down', 'aboveFloor', ...WAYS_TO_STAND]
  const left = Object.entries(now).filter(([way]) => way === own || !ways.includes(way))
  return withField(thing, oneOf, Object.fromEntries(left))
}

const WAYS_TO_STAND = ['rightOf', 'leftOf', 'left']

/**
 * A unit of which nobody says where it stands follows the one before it: a delivery list goes along each wall from the
 * left. The first on its wall has a place that is not known yet.
 */
function placed(
  id: string,
  bare: Thing,
  line: Line,
  things: Things,
  list: readonly Thing[],
): Thing & { readonly id: string } {
  const thing: Thing & { readonly id: string } = { ...bare, id }
  const order = thingAt(thing, 'order')
  const given = typeof order === 'object' && order !== null ? order : {}
  if (things.mark !== 'unit' || WAYS_TO_STAND.some((way) => Object.hasOwn(given, way))) return thing
  const isTold = line.cells.some(({ column }) => column.field.kind === 'order')
  const beside = list.filter((one) => one['wall'] === thing['wall'] && isHung(one) === isHung(thing))
  const taken = new Set(beside.map((one) => String(thingAt(one, 'order.rightOf'))))
  const free = beside.filter((one) => !taken.has(String(one['id'])) && !leadsTo(one, id, list))
  const last = isTold ? undefined : free.at(-1)
  return { ...thing, order: { ...given, ...(last === undefined ? { left: {} } : { rightOf: last['id'] }) } }
}

/** Whether its place comes, from neighbour to neighbour, of that of another. */
function leadsTo(thing: Thing, mark: string, list: readonly Thing[]): boolean {
  const seen = new Set<unknown>()
  let here: Thing | undefined = thing
  while (here !== undefined && !seen.has(here['id'])) {
    seen.add(here['id'])
    const beside: unknown = thingAt(here, 'order.rightOf') ?? thingAt(here, 'order.leftOf')
    if (beside === mark) return true
    here = list.find((one) => one['id'] === beside)
  }
  return false
}

const isHung = (thing: Thing): boolean => HUNG_KINDS.some((kind) => kind === thing['kind'])
