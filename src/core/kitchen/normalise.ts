/**
 * Lists whose order means something; every other list in the kitchen file and the day log is a set, and is put into
 * one order here so that shuffling it changes nothing in the plan, not even a byte.
 */
const ORDERED: ReadonlySet<string> = new Set([
  'lines',
  'walls',
  'layers',
  'layersToCome',
  'points',
  'route',
  'keptOrder',
  'entries',
])

/** A text that sorts as people count: "base-10" after "base-2". Digits compare as numbers, all else by code unit. */
function countingKey(id: string): string {
  return id.replace(/\d+/g, (digits) => digits.padStart(12, '0'))
}

export function compareIds(a: string, b: string): number {
  const [x, y] = [countingKey(a), countingKey(b)]
  if (x !== y) return x < y ? -1 : 1
  return a < b ? -1 : a > b ? 1 : 0
}

function sortKey(item: unknown): string {
  if (typeof item === 'string') return item
  if (item !== null && typeof item === 'object' && 'id' in item) return String((item as { id: unknown }).id)
  return JSON.stringify(item)
}

/** The same value with every set-like list in order of its ids. */
export function normalise<T>(value: T, key = ''): T {
  if (Array.isArray(value)) {
    const items = value.map((v) => normalise(v, key))
    return (ORDERED.has(key) ? items : inOrderOfIds(items)) as T
  }
  if (value !== null && typeof value === 'object') {
    const out: Record<string, unknown> = {}
    for (const k of Object.keys(value)) out[k] = normalise((value as Record<string, unknown>)[k], k)
    return out as T
  }
  return value
}

function inOrderOfIds(items: readonly unknown[]): readonly unknown[] {
  if (items.length < 2) return items
  const keyed = items.map((item) => {
    const id = sortKey(item)
    return { item, id, key: countingKey(id) }
  })
  keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  return keyed.map((k) => k.item)
}
