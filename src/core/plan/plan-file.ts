/**
 * A plan as it is written out. Most figures rest on the same few lists of inputs, and a list may hold hundreds of ids, so
 * each list is written once, under `lists`, and cited by its name (`L12`). Nothing else differs from the plan itself.
 */

/** Keys under which a list of input ids may stand. */
const CITING: ReadonlySet<string> = new Set(['from', 'missing', 'unknownBecause'])

type Json = Readonly<Record<string, unknown>>

export interface WrittenPlan extends Json {
  readonly lists: Readonly<Record<string, readonly string[]>>
}

/** The plan, or the answer why there is none, with its lists of inputs written once. Same plan, same text. */
export function writtenPlan(plan: object): WrittenPlan {
  const lists: Record<string, readonly string[]> = {}
  const byArray = new Map<readonly string[], string>()
  const byText = new Map<string, string>()
  const nameOf = (list: readonly string[]): string => {
    const known = byArray.get(list)
    if (known !== undefined) return known
    const text = list.join('\n')
    let name = byText.get(text)
    if (name === undefined) {
      name = `L${byText.size + 1}`
      byText.set(text, name)
      lists[name] = list
    }
    byArray.set(list, name)
    return name
  }
  const written = (value: unknown, key: string): unknown => {
    if (Array.isArray(value)) {
      return CITING.has(key) ? nameOf(value as readonly string[]) : value.map((item) => written(item, ''))
    }
    if (value === null || typeof value !== 'object') return value
    return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, written(v, k)]))
  }
  return { ...(written(plan, '') as Json), lists }
}

/** What was written, whole again; undefined when it cites a list that it does not hold. */
export function readWrittenPlan(value: unknown): unknown {
  if (value === null || typeof value !== 'object' || !Object.hasOwn(value, 'lists')) return value
  const { lists, ...plan } = value as WrittenPlan
  let whole = true
  const read = (item: unknown, key: string): unknown => {
    if (typeof item === 'string' && CITING.has(key) && /^L\d+$/.test(item)) {
      if (!Object.hasOwn(lists, item)) whole = false
      return lists[item]
    }
    if (Array.isArray(item)) return item.map((i) => read(i, ''))
    if (item === null || typeof item !== 'object') return item
    return Object.fromEntries(Object.entries(item).map(([k, v]) => [k, read(v, k)]))
  }
  const out = read(plan, '')
  return whole ? out : undefined
}
