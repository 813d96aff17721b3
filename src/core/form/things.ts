import type { Edit } from '../plan/types'
import { saidOnce } from '../words/said-once'
import { upperFirst } from '../words/upper-first'
import { copiedValue } from './copied-value'
import type { Field, Things } from './field'

/** Listed things of a kitchen file: what a further one begins with, and what it is called. */

type Thing = Readonly<Record<string, unknown>>

const isThing = (value: unknown): value is Thing =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** What stands at a path of keys and ids; undefined where nothing does. */
export function thingAt(file: unknown, path: string): unknown {
  if (path === '') return file
  return path.split('.').reduce<unknown>((here, key) => {
    if (Array.isArray(here)) return here.find((item) => isThing(item) && item['id'] === key)
    return isThing(here) && Object.hasOwn(here, key) ? here[key] : undefined
  }, file)
}

/** The things of a list, as they stand. */
export function listAt(file: unknown, path: string): readonly Thing[] {
  const list = thingAt(file, path)
  return Array.isArray(list) ? list.filter(isThing) : []
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz'

/** What the marks of such a thing begin with: its own sort where it always has one ("base", "socket"), else the list's. */
export function markStem(things: Things, thing: Thing): string {
  const kind = things.fields.find((f) => f.key === 'kind')
  const value = thing['kind']
  return kind?.kind === 'choice' && kind.always === true && typeof value === 'string' ? value : things.mark
}

/** The next free mark: walls have letters, everything else its sort and a number. */
export function nextMark(things: Things, list: readonly Thing[], stem: string): string {
  const taken = new Set(list.map((thing) => thing['id']))
  if (things.mark === 'wall') {
    const letter = [...LETTERS].find((l) => !taken.has(l))
    if (letter !== undefined) return letter
  }
  if (stem === 'line' && list.length === 0) return 'line'
  let number = 1
  while (taken.has(`${stem}-${number}`)) number += 1
  return `${stem}-${number}`
}

/** Whether a mark was given by itself and not by the user: it may follow the sort of its thing. */
export function isOwnMark(things: Things, thing: Thing): boolean {
  const id = String(thing['id'])
  return id.startsWith(`${markStem(things, thing)}-`) && /-\d+$/.test(id)
}

/** What a thing is called over its fields: its sort and its mark, and no word of them twice. */
export const calledIn = ({ one }: Pick<Things, 'one'>, mark: string): string =>
  upperFirst(saidOnce(one, mark) ?? `${one} ${mark}`)

/** What has been taken out of a list, and where it stood. */
export interface TakenOut {
  readonly list: string
  readonly at: number
  readonly thing: Thing & { readonly id: string }
}

/** @returns undefined where there is no such thing */
export function takenOut(file: unknown, list: string, mark: string): TakenOut | undefined {
  const things = listAt(file, list)
  const at = things.findIndex(({ id }) => id === mark)
  const thing = things[at]
  return thing === undefined ? undefined : { list, at, thing: { ...thing, id: mark } }
}

/** Puts it back where it stood; nothing where its mark is another's by now. */
export function putBack(file: unknown, { list, at, thing }: TakenOut): readonly Edit[] {
  const there = thingAt(file, list)
  const things: readonly unknown[] = Array.isArray(there) ? there : []
  if (listAt(file, list).some(({ id }) => id === thing.id)) return []
  return [{ set: list, to: [...things.slice(0, at), thing, ...things.slice(at)] }]
}

const EMPTY_ALONG = {}

/** What a field must hold for the file to be read, if anything; refs point at the first thing there is. */
function atFirst(field: Field, file: unknown, list: readonly Thing[]): unknown {
  const first = (lists: readonly string[]): unknown =>
    lists.flatMap((name) => listAt(file, name)).at(0)?.['id']
  switch (field.kind) {
    case 'choice':
      // A side of the wall is this one where nothing is said of it.
      return field.always === true && field.key !== 'face' ? field.options[0]?.[0] : undefined
    case 'ref':
      return MUST_POINT.includes(field.key) ? first(field.to) : undefined
    case 'along':
    case 'height':
      return EMPTY_ALONG
    case 'place':
      return { wall: first(['walls']), along: EMPTY_ALONG }
    case 'order': {
      const last = list.at(-1)?.['id']
      return last === undefined ? { left: { at: 0 } } : { rightOf: last }
    }
    default:
      return undefined
  }
}

/** References that the file does not do without. */
const MUST_POINT: readonly string[] = ['wall', 'for']

/** Positions the file may leave out altogether. */
const MAY_BE_LEFT_OUT: readonly string[] = [
  'min',
  'max',
  'place',
  'underside',
  'boardLeft',
  'boardRight',
  'sashBottom',
]

/** Lists in which a thing may have no wall and no place. */
const LOOSE: readonly string[] = ['part']

/** Sets a field of a thing, inside it where its key has dots. */
export function withField(thing: Thing, key: string, value: unknown): Thing {
  const [head = '', ...rest] = key.split('.')
  const inner = thing[head]
  return {
    ...thing,
    [head]: rest.length === 0 ? value : withField(isThing(inner) ? inner : {}, rest.join('.'), value),
  }
}

/**
 * A further thing for a list: with what it cannot do without, and with what the one before it is copied for.
 *
 * @param path of the list, by keys and ids
 */
export function furtherThing(things: Things, file: unknown, path: string): Thing & { readonly id: string } {
  const list = listAt(file, path)
  const before = list.at(-1)
  const fresh = things.fields.reduce<Thing>((thing, field) => {
    if (MAY_BE_LEFT_OUT.includes(field.key) || LOOSE.includes(things.mark)) {
      if (field.kind !== 'choice') return thing
    }
    const value = atFirst(field, file, list)
    return value === undefined ? thing : withField(thing, field.key, value)
  }, things.starts ?? {})
  const filled = (things.copied ?? []).reduce<Thing>((thing, key) => {
    const value = before === undefined ? undefined : copiedValue(key, thingAt(before, key), before, thing)
    return value === undefined ? thing : withField(thing, key, value)
  }, fresh)
  return { id: nextMark(things, list, markStem(things, filled)), ...filled }
}

/** What has to be listed before such a thing can be; undefined when nothing is missing. */
export function neededFirst(things: Things, file: unknown): string | undefined {
  const missing = things.fields.find((field) => {
    if (LOOSE.includes(things.mark) || MAY_BE_LEFT_OUT.includes(field.key)) return false
    if (field.kind === 'place') return listAt(file, 'walls').length === 0
    return (
      field.kind === 'ref' &&
      MUST_POINT.includes(field.key) &&
      field.to.every((name) => listAt(file, name).length === 0)
    )
  })
  if (missing === undefined) return undefined
  return missing.kind === 'ref' && missing.key === 'for' ? 'appliances' : 'walls'
}

/** The fields that are asked of a thing as it stands. */
export function askedOf(fields: readonly Field[], thing: unknown): readonly Field[] {
  return fields.filter(({ only }) => only === undefined || only.is.includes(wordAt(thing, only.when)))
}

function wordAt(thing: unknown, key: string): string {
  const word = thingAt(thing, key)
  return typeof word === 'string' ? word : ''
}

/**
 * What has to be left out of a thing when a word of it changes: what is then no longer asked. A base unit's feet do not
 * stay behind in a wall unit.
 *
 * @returns keys of the thing
 */
export function droppedBy(
  fields: readonly Field[],
  thing: unknown,
  key: string,
  to: string,
): readonly string[] {
  const changed = withField(isThing(thing) ? thing : {}, key, to)
  const [before, after] = [askedOf(fields, thing), askedOf(fields, changed)]
  const left = new Set(after.map((field) => topOf(field.key)))
  return [...new Set(before.map((field) => topOf(field.key)))].filter((top) => !left.has(top))
}

const topOf = (key: string): string => key.split('.')[0] as string
