import { listAt, thingAt } from '../form/things'
import { isUnread, lengthTyped, mmTyped, numberTyped, shownTyped, type Unread } from '../form/typed'
import type { Edit } from '../plan/types'

/**
 * The ten first questions: where each answer stands in the kitchen file, and the edit that puts it there. What nobody
 * said is not put in with it: a width has no height, a ceiling reading no place, the first unit no distance from its corner.
 */

type File = unknown
type Typed = ReturnType<typeof lengthTyped>
const isUnknown = (value: unknown): boolean => value === null || value === undefined || value === ''

/** The wall that is asked about: the first of the file, or the one that begins it. */
export const firstWall = (file: File): string => String(listAt(file, 'walls')[0]?.['id'] ?? 'a')

const wallFirst = (file: File): readonly Edit[] =>
  listAt(file, 'walls').length > 0 ? [] : [{ add: 'walls', item: { id: firstWall(file) } }]

/** Sets one fact of a listed thing, which is added where it is not there yet; not known: the fact is left out. */
function onThing(
  file: File,
  list: string,
  thing: Readonly<Record<string, unknown>> & { readonly id: string },
  key: string,
  value: unknown,
): readonly Edit[] {
  const path = `${list}.${thing.id}`
  const isThere = thingAt(file, path) !== undefined
  if (isUnknown(value)) return isThere ? [{ set: `${path}.${key}`, to: undefined }] : []
  return [...(isThere ? [] : [{ add: list, item: thing } as Edit]), { set: `${path}.${key}`, to: value }]
}

/** One question: what stands in the file as its answer, as it is shown, and the edits of another one. */
export interface Answered {
  readonly shown: (file: File) => string
  readonly edits: (file: File, value: unknown) => readonly Edit[]
}

const fact = (path: string): Answered => ({
  shown: (file) => wordOf(thingAt(file, path)),
  edits: (_, value) => [{ set: path, to: isUnknown(value) ? undefined : value }],
})

const wordOf = (value: unknown): string =>
  typeof value === 'boolean' ? (value ? 'yes' : 'no') : shownTyped(value)

const ofWall = (key: string): Answered => ({
  shown: (file) => wordOf(thingAt(file, `walls.${firstWall(file)}.${key}`)),
  edits: (file, value) => onThing(file, 'walls', { id: firstWall(file) }, key, value),
})

const SMALLEST = 'smallest'

const smallestWidth: Answered = {
  shown: (file) => wordOf(thingAt(file, `walls.${firstWall(file)}.widths.${SMALLEST}.width`)),
  edits: (file, value) => {
    const list = `walls.${firstWall(file)}.widths`
    const isThere = thingAt(file, `${list}.${SMALLEST}`) !== undefined
    if (isUnknown(value)) return isThere ? [{ remove: `${list}.${SMALLEST}` }] : []
    return [...wallFirst(file), ...onThing(file, list, { id: SMALLEST }, 'width', value)]
  },
}

const dishwasher: Answered = {
  shown: (file) => wordOf(dishwasherOf(file)['heightMin']),
  edits: (file, value) =>
    onThing(
      file,
      'appliances',
      { id: String(dishwasherOf(file)['id']), kind: 'dishwasher' },
      'heightMin',
      value,
    ),
}

const dishwasherOf = (file: File): Readonly<Record<string, unknown>> =>
  listAt(file, 'appliances').find(({ kind }) => kind === 'dishwasher') ?? { id: 'dishwasher' }

const LOWEST = 'lowest'

const ceiling: Answered = {
  shown: (file) => wordOf(thingAt(file, `ceiling.${LOWEST}.height.aboveFloor`)),
  edits: (file, value) => {
    const isThere = thingAt(file, `ceiling.${LOWEST}`) !== undefined
    if (isUnknown(value)) return isThere ? [{ remove: `ceiling.${LOWEST}` }] : []
    const reading = { id: LOWEST, at: { wall: firstWall(file), along: {} }, height: {} }
    return [...wallFirst(file), ...onThing(file, 'ceiling', reading, 'height.aboveFloor', value)]
  },
}

/** The tallest of the tall units, or the first while no height is known. */
function tallOf(file: File): Readonly<Record<string, unknown>> | undefined {
  const mm = (unit: Readonly<Record<string, unknown>>): number => mmTyped(unit['height']) ?? 0
  return listAt(file, 'units')
    .filter(({ kind }) => kind === 'tall')
    .reduce<Readonly<Record<string, unknown>> | undefined>(
      (a, b) => (a === undefined || mm(b) > mm(a) ? b : a),
      undefined,
    )
}

const tallest: Answered = {
  shown: (file) => wordOf(tallOf(file)?.['height']),
  edits: (file, value) => {
    const found = tallOf(file)
    const id = found === undefined ? freeId(file, 'tall') : String(found['id'])
    if (found === undefined && isUnknown(value)) return []
    // Taken back, the unit that came with the answer goes again, unless more has been said of it since.
    if (isUnknown(value) && found !== undefined && isLoose(found)) return [{ remove: `units.${id}` }]
    const unit = { id, kind: 'tall', wall: firstWall(file), order: { left: {} } }
    return [...wallFirst(file), ...onThing(file, 'units', unit, 'height', value)]
  },
}

function freeId(file: File, stem: string, taken: readonly string[] = []): string {
  const ids = new Set([
    ...['units', 'finishing'].flatMap((l) => listAt(file, l).map(({ id }) => id)),
    ...taken,
  ])
  let number = 1
  while (ids.has(`${stem}-${number}`)) number += 1
  return `${stem}-${number}`
}

/** Who is there: the user, and those who help. */
const HANDS = ['you', 'helper', 'helper-2'] as const

const people: Answered = {
  shown: (file) => {
    const there = listAt(file, 'crew.people').length
    return there === 0 ? '' : String(Math.min(there, HANDS.length))
  },
  edits: (file, value) => {
    const there = listAt(file, 'crew.people').map(({ id }) => String(id))
    const wanted = Number(value ?? 0)
    const gone = there.slice(wanted)
    const free = HANDS.filter((id) => !there.includes(id))
    return [
      ...gone.map((id): Edit => ({ remove: `crew.people.${id}` })),
      ...free
        .slice(0, Math.max(0, wanted - there.length))
        .map((id): Edit => ({ add: 'crew.people', item: { id } })),
    ]
  },
}

/** What one piece of the line of widths says: a width, and which sort of unit it is. */
interface Piece {
  readonly width: Exclude<Typed, Unread>
  readonly kind: 'base' | 'tall' | 'appliance-space'
}

const KINDS = { '': 'base', t: 'tall', s: 'appliance-space' } as const
const LETTER: Readonly<Record<string, string>> = { tall: 't', 'appliance-space': 's' }

/** Widths as they stand from left to right: `600 600t 600s 1000`; inches and fractions with commas between. */
export function widthsTyped(text: string, unit: 'mm' | 'inch'): readonly Piece[] | Unread {
  const between = /[;,+]\s|[;+]/.test(text) ? /\s*(?:[;+]|,(?=\s|$))\s*/ : /\s+/
  const parts = text
    .trim()
    .split(between)
    .filter((part) => part !== '')
  const pieces = parts.map((part): Piece | Unread => {
    const [, figure = '', letter = ''] = /^(.*?\d\s*(?:mm|cm|m|in|")?)\s*([ts])?$/i.exec(part) ?? []
    const width = lengthTyped(figure, unit)
    if (isUnread(width) || width === null) {
      return {
        unread: true,
        why: `“${part}” is no width yet: write 600 600 1000, with t after a tall unit and s after a space.`,
      }
    }
    return { width, kind: KINDS[letter.toLowerCase() as '' | 't' | 's'] }
  })
  return pieces.find((piece): piece is Unread => isUnread(piece)) ?? (pieces as readonly Piece[])
}

type Thing = Readonly<Record<string, unknown>>

/**
 * The units on the first wall as one chain, each to the right of the one before it; null where they are placed in another
 * way, and are then no line to type.
 */
function chainOf(file: File): readonly Thing[] | null {
  const wall = firstWall(file)
  const low = listAt(file, 'units').filter(
    (unit) =>
      unit['wall'] === wall && !['wall', 'corner-wall', 'bridging', 'island'].includes(String(unit['kind'])),
  )
  const placed = low.filter((unit) => !isLoose(unit))
  const starts = placed.filter((unit) => thingAt(unit, 'order.left') !== undefined)
  if (placed.length === 0) return []
  if (starts.length !== 1) return null
  const chain: Thing[] = []
  let here: Thing | undefined = starts[0]
  while (here !== undefined && !chain.includes(here)) {
    chain.push(here)
    const { id } = here
    here = placed.find((unit) => thingAt(unit, 'order.rightOf') === id)
  }
  return chain.length === placed.length ? chain : null
}

/** A tall unit of which only the height has been said: it has no place in the line yet. */
const isLoose = (unit: Thing): boolean =>
  unit['kind'] === 'tall' &&
  isUnknown(unit['width']) &&
  isUnknown(thingAt(unit, 'order.left.at')) &&
  thingAt(unit, 'order.left') !== undefined

const looseTalls = (file: File): readonly Thing[] =>
  listAt(file, 'units').filter((unit) => unit['wall'] === firstWall(file) && isLoose(unit))

export const isLineOfUnits = (file: File): boolean => chainOf(file) !== null

const unitWidths: Answered = {
  shown: (file) => {
    const shown = (chainOf(file) ?? []).map((unit) => ({
      width: shownTyped(unit['width']),
      letter: LETTER[String(unit['kind'])] ?? '',
    }))
    const between = shown.some(({ width }) => /\s/.test(width)) ? ', ' : ' '
    return shown.map(({ width, letter }) => `${width === '' ? '?' : width}${letter}`).join(between)
  },
  edits: (file, value) => {
    const pieces = isUnknown(value) ? [] : (value as readonly Piece[])
    const chain = chainOf(file) ?? []
    const loose = [...looseTalls(file)]
    const edits: Edit[] = [...(pieces.length > 0 ? wallFirst(file) : [])]
    const given: string[] = []
    pieces.forEach(({ width, kind }, i) => {
      const before = given.at(-1)
      const order = before === undefined ? { left: {} } : { rightOf: before }
      const old = chain[i]
      const adopted = old === undefined && kind === 'tall' ? loose.shift() : undefined
      const kept = old ?? adopted
      const id = kept === undefined ? freeId(file, kind, given) : String(kept['id'])
      given.push(id)
      if (kept === undefined) {
        edits.push({ add: 'units', item: { id, kind, wall: firstWall(file), order, width } })
        return
      }
      if (kept['width'] !== width) edits.push({ set: `units.${id}.width`, to: width })
      if (adopted !== undefined) edits.push({ set: `units.${id}.order`, to: order })
      if (KEPT_KINDS.includes(String(kept['kind'])) && kept['kind'] !== kind)
        edits.push({ set: `units.${id}.kind`, to: kind })
    })
    const gone = chain.slice(pieces.length).reverse()
    return [...edits, ...gone.map(({ id }): Edit => ({ remove: `units.${id}` }))]
  },
}

/** Sorts that the line tells apart; a corner unit in it stays one. */
const KEPT_KINDS: readonly string[] = ['base', 'tall', 'appliance-space']

export const ANSWERS = {
  region: fact('region'),
  width: smallestWidth,
  units: unitWidths,
  construction: ofWall('construction'),
  knock: ofWall('knock'),
  year: fact('survey.houseBuilt'),
  gas: fact('survey.gas'),
  people,
  tall: tallest,
  ceiling,
  dishwasher,
  fall: fact('floor.worstDrop'),
} as const

export type Question = keyof typeof ANSWERS

/** What is typed for a question, read: what goes into the file, null for not known, or why it is nothing yet. */
export function readAnswer(question: Question, text: string, unit: 'mm' | 'inch'): unknown {
  if (text.trim() === '') return null
  if (question === 'units') return widthsTyped(text, unit)
  const read = question === 'year' ? numberTyped(text) : lengthTyped(text, unit)
  return question === 'tall' && isLow(read) ? NOT_TALL : read
}

/** Lower than this, mm, a unit is none that has to be stood up: common practice, talls begin well above it. */
const LOWEST_TALL = 1300

const NOT_TALL: Unread = {
  unread: true,
  why: 'Under 1300 mm it is no tall unit. Where none is taller, leave this open.',
}

const isLow = (read: Typed): boolean => !isUnread(read) && (mmTyped(read) ?? LOWEST_TALL) < LOWEST_TALL
