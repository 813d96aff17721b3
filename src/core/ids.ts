/** The id of one input: the path to a fact in the kitchen file or day log, by ids and never by position. */
export type InputId = string

type Ids = readonly InputId[]

/** Input ids once each, in code-unit order, so that the same facts always print the same bytes; a list in order itself. */
export function sortedIds(ids: Iterable<string>): readonly string[] {
  const all: readonly string[] = Array.isArray(ids) ? ids : [...ids]
  for (let i = 1; i < all.length; i++) {
    if ((all[i - 1] as string) >= (all[i] as string)) return [...new Set(all)].sort()
  }
  return all
}

/** Place of the first id from `start` on that does not come before this one: in growing strides, then halving. */
function firstNotBefore(ids: Ids, id: InputId, start: number): number {
  let [low, high] = [start, start]
  for (let stride = 1; high < ids.length && (ids[high] as InputId) < id; stride *= 2) {
    low = high + 1
    high = low + stride
  }
  high = Math.min(high, ids.length)
  while (low < high) {
    const middle = (low + high) >> 1
    if ((ids[middle] as InputId) < id) low = middle + 1
    else high = middle
  }
  return low
}

/**
 * Ids of two lists that are each in order and without repeats, the longer first; that one itself where it holds both.
 * Most lists that meet are nearly alike, or one of them is short: whole stretches of the longer are passed over at once.
 */
function merged(longer: Ids, shorter: Ids): Ids {
  const added: InputId[] = []
  const places: number[] = []
  let at = 0
  for (const id of shorter) {
    if (longer[at] !== id) at = firstNotBefore(longer, id, at)
    if (longer[at] === id) at++
    else {
      added.push(id)
      places.push(at)
    }
  }
  return added.length === 0 ? longer : withAdded(longer, added, places)
}

/** A list with further ids let in before these places of it. */
function withAdded(ids: Ids, added: Ids, places: readonly number[]): Ids {
  const all = ids.concat(added)
  let to = all.length
  let from = ids.length
  // From the end backwards, so that each id is moved once.
  for (let k = added.length - 1; k >= 0; k--) {
    while (from > (places[k] as number)) all[--to] = ids[--from] as InputId
    all[--to] = added[k] as InputId
  }
  return all
}

function mergedPair(a: Ids, b: Ids): Ids {
  if (a === b || b.length === 0) return a
  if (a.length === 0) return b
  return a.length < b.length ? merged(b, a) : merged(a, b)
}

/** Input ids of several figures, once each and in order; shares the longest list where it holds all the others. */
export function mergedIds(lists: readonly Ids[]): Ids {
  if (lists.length === 2) return mergedPair(lists[0] as Ids, lists[1] as Ids)
  const apart = [...new Set(lists)]
  let longest: Ids = []
  for (const list of apart) if (list.length > longest.length) longest = list
  return apart.reduce((all, list) => (list === longest ? all : mergedPair(all, list)), longest)
}
