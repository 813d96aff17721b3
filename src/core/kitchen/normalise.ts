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

/** "base-10" after "base-2": digits compare as numbers, everything else by code unit. */
export function compareIds(a: string, b: string): number {
  const pa = a.match(/\d+|\D+/g) ?? []
  const pb = b.match(/\d+|\D+/g) ?? []
  for (let i = 0; i < Math.min(pa.length, pb.length); i++) {
    const x = pa[i] as string
    const y = pb[i] as string
    if (x === y) continue
    const bothNumbers = /^\d/.test(x) && /^\d/.test(y)
    if (bothNumbers && Number(x) !== Number(y)) return Number(x) - Number(y)
    return x < y ? -1 : 1
  }
  return pa.length - pb.length || (a < b ? -1 : a > b ? 1 : 0)
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
    if (!ORDERED.has(key)) items.sort((a, b) => compareIds(sortKey(a), sortKey(b)))
    return items as T
  }
  if (value !== null && typeof value === 'object') {
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, normalise(v, k)])) as T
  }
  return value
}
