import { type FactShape, KITCHEN_FACTS } from './fact-shape'
import { at, isRecord, itemsAt, ownId, rootSpot, type Spot } from './json'
import { measureAt } from './measure'

/** What a cited fact turns out to be: in the file with or without a value, or nothing a kitchen file could hold. */
export type FactState = 'known' | 'not known' | 'no such fact'

/** Looks cited facts up in one kitchen file and its day log. */
export type FactBook = (id: string) => FactState

export function factBook(
  kitchen: unknown,
  observed: ReadonlyMap<string, unknown>,
  logEntries: ReadonlySet<string>,
): FactBook {
  const file = rootSpot(kitchen, observed)
  const lists = new Map<string, ReadonlyMap<string, Spot>>()
  const seen = new Map<string, FactState>()
  return (id) => {
    const before = seen.get(id)
    if (before !== undefined) return before
    const state = id.startsWith('log.')
      ? logged(id, logEntries)
      : lookUp(file, KITCHEN_FACTS, id.split('.'), lists)
    seen.set(id, state)
    return state
  }
}

function logged(id: string, entries: ReadonlySet<string>): FactState {
  const [, first = '', second = ''] = id.split('.')
  return entries.has(first === 'entries' ? second : first) ? 'known' : 'no such fact'
}

/** The things of every list looked into so far, by id. */
type Lists = Map<string, ReadonlyMap<string, Spot>>

function lookUp(spot: Spot, shape: FactShape, way: readonly string[], lists: Lists): FactState {
  const [step, ...rest] = way
  if (step === undefined) return stateOf(spot, shape)
  if (typeof shape === 'string') return 'no such fact'
  if ('list' in shape) {
    // The line needs no entry in the file: it is what everything is measured from.
    if (spot.id === 'lines' && step === 'line') return 'known'
    const items = lists.get(spot.id) ?? listed(spot)
    lists.set(spot.id, items)
    const item = items.get(step)
    // A unit whose feet nobody gave stands on assumed ones, which have names of their own.
    if (items.size === 0 && spot.id.endsWith('.feet')) return 'not known'
    return item === undefined ? 'no such fact' : lookUp(item, shape.list, rest, lists)
  }
  const inner = Object.hasOwn(shape.fields, step) ? shape.fields[step] : undefined
  return inner === undefined ? 'no such fact' : lookUp(at(spot, step), inner, rest, lists)
}

function listed(spot: Spot): ReadonlyMap<string, Spot> {
  const things = itemsAt({ ...spot, json: { here: spot.json } }, 'here')
  return new Map(
    things.map((thing) => [ownId(thing), { ...thing, id: `${spot.id}.${ownId(thing)}` }] as const),
  )
}

/** A group of figures (a height, a place, a list of readings) is known when something of it is. */
function stateOf(spot: Spot, shape: FactShape): FactState {
  const known = (yes: boolean): FactState => (yes ? 'known' : 'not known')
  if (shape === 'figure') return known(measureAt({ ...spot, json: { v: spot.json } }, 'v').value !== null)
  if (shape === 'word') {
    const none = Array.isArray(spot.json) && spot.json.length === 0
    return known(spot.json !== undefined && spot.json !== null && !none)
  }
  if ('list' in shape) return known(Array.isArray(spot.json) && spot.json.length > 0)
  const parts = Object.entries(shape.fields)
  return known(isRecord(spot.json) && parts.some(([key, inner]) => stateOf(at(spot, key), inner) === 'known'))
}
