import { withEdits } from '../kitchen/edit'
import type { Edit } from '../plan/types'
import type { Field, Things } from './field'
import { PAGES } from './pages'
import { isOwnMark, listAt, markStem, nextMark } from './things'

/** Marks of listed things, and everything that points at them. */

type Thing = Readonly<Record<string, unknown>>

const isThing = (value: unknown): value is Thing =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Changes what a field points at; `list` is the list the renamed thing stands in. */
function pointed(field: Field, value: unknown, list: string, from: string, to: string): unknown {
  const swap = (one: unknown): unknown => (one === from ? to : one)
  switch (field.kind) {
    case 'ref':
      return field.to.includes(list) ? swap(value) : value
    case 'refs':
      return field.to.includes(list) && Array.isArray(value) ? value.map(swap) : value
    case 'place':
      return list === 'walls' && isThing(value) ? { ...value, wall: swap(value['wall']) } : value
    case 'height':
      return list === 'lines' && isThing(value) && 'line' in value
        ? { ...value, line: swap(value['line']) }
        : value
    case 'order':
      return (list === 'units' || list === 'finishing') && isThing(value) ? neighbours(value, swap) : value
    case 'list':
      return Array.isArray(value)
        ? value.map((thing) => within(field.things.fields, thing, list, from, to))
        : value
    default:
      return value
  }
}

function neighbours(order: Thing, swap: (one: unknown) => unknown): Thing {
  return Object.fromEntries(
    Object.entries(order).map(([key, value]) => [
      key,
      key === 'rightOf' || key === 'leftOf' ? swap(value) : value,
    ]),
  )
}

function changedAt(thing: Thing, key: string, change: (value: unknown) => unknown): Thing {
  const [head = '', ...rest] = key.split('.')
  if (!Object.hasOwn(thing, head)) return thing
  const inner = thing[head]
  if (rest.length === 0) return { ...thing, [head]: change(inner) }
  return isThing(inner) ? { ...thing, [head]: changedAt(inner, rest.join('.'), change) } : thing
}

function within(fields: readonly Field[], thing: unknown, list: string, from: string, to: string): unknown {
  if (!isThing(thing)) return thing
  return fields.reduce(
    (now, field) => changedAt(now, field.key, (value) => pointed(field, value, list, from, to)),
    thing,
  )
}

/** What may be a mark: as the kitchen file wants its ids. */
export const MARK = /^[a-z0-9][a-z0-9-]{0,39}$/

/**
 * The file with a thing called by another mark, and everything that points at it with it.
 *
 * @param path of its list, by keys and ids
 * @returns undefined where the mark is taken or cannot be one
 */
export function renamed(file: unknown, path: string, from: string, to: string): unknown {
  if (!MARK.test(to) || to === 'constructor' || to === 'prototype') return undefined
  const isTaken = { found: false }
  const next = markedAt(file, path.split('.'), from, to, isTaken)
  if (isTaken.found) return undefined
  // Only things of the file's own lists are pointed at; a door or a foot is named by nobody.
  const everything = PAGES.flatMap((page) => page.fields)
  return path.includes('.') ? next : within(everything, next, path, from, to)
}

/**
 * The file with the sort of a thing chosen, and its mark gone along with it where that mark was given and not typed: what
 * was begun as a base unit and is a tall one is not marked base.
 *
 * @param path of its sort, by keys and ids
 * @param edits that choose it
 * @returns undefined where its mark stays
 */
export function markGoneAlong(
  file: unknown,
  path: string,
  edits: readonly Edit[],
): { readonly file: unknown; readonly list: string; readonly mark: string } | undefined {
  const [, list = '', from = ''] = /^(.+)\.([^.]+)\.kind$/.exec(path) ?? []
  const things = thingsAt(list)
  const thing = listAt(file, list).find(({ id }) => id === from)
  if (things === undefined || thing === undefined || !isOwnMark(things, thing)) return undefined
  const changed = withEdits(file, edits)
  const others = listAt(changed, list).filter(({ id }) => id !== from)
  const mark = nextMark(things, others, markStem(things, thingIn(changed, list, from)))
  const next = mark === from ? undefined : renamed(changed, list, from, mark)
  return next === undefined ? undefined : { file: next, list, mark }
}

const thingIn = (file: unknown, list: string, mark: string): Thing =>
  listAt(file, list).find(({ id }) => id === mark) ?? {}

function markedAt(
  here: unknown,
  path: readonly string[],
  from: string,
  to: string,
  isTaken: { found: boolean },
): unknown {
  const [head, ...rest] = path
  if (Array.isArray(here)) {
    if (head === undefined) {
      if (here.some((thing) => isThing(thing) && thing['id'] === to)) isTaken.found = true
      return here.map((thing) => (isThing(thing) && thing['id'] === from ? { ...thing, id: to } : thing))
    }
    return here.map((thing) =>
      isThing(thing) && thing['id'] === head ? markedAt(thing, rest, from, to, isTaken) : thing,
    )
  }
  if (head === undefined || !isThing(here) || !Object.hasOwn(here, head)) return here
  return { ...here, [head]: markedAt(here[head], rest, from, to, isTaken) }
}

/** A list of the file by its path, however deep: what is asked of the things in it. */
export function thingsAt(path: string): Things | undefined {
  const keys = path.split('.')
  let fields: readonly Field[] = PAGES.flatMap((page) => page.fields)
  let found: Things | undefined
  while (keys.length > 0) {
    const field = fields.find(
      (f) => f.kind === 'list' && (keys.join('.') === f.key || keys.join('.').startsWith(`${f.key}.`)),
    )
    if (field?.kind !== 'list') return undefined
    found = field.things
    fields = field.things.fields
    keys.splice(0, field.key.split('.').length + 1)
  }
  return found
}
