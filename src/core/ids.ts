/** The id of one input: the path to a fact in the kitchen file or day log, by ids and never by position. */
export type InputId = string

/** Input ids once each, in code-unit order, so that the same facts always print the same bytes. */
export function sortedIds(ids: Iterable<string>): readonly string[] {
  const all = [...ids]
  for (let i = 1; i < all.length; i++) {
    if ((all[i - 1] as string) >= (all[i] as string)) {
      return [...new Set(all)].sort((x, y) => (x < y ? -1 : x > y ? 1 : 0))
    }
  }
  return all
}

/** Place of the first id from `start` on that does not come before this one: in growing strides, then halving. */
function firstNotBefore(ids: readonly InputId[], id: InputId, start: number): number {
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
function merged(a: readonly InputId[], b: readonly InputId[]): readonly InputId[] {
  let all: InputId[] | undefined
  let [copied, at] = [0, 0]
  for (const id of b) {
    at = firstNotBefore(a, id, at)
    if (a[at] === id) continue
    all ??= []
    while (copied < at) all.push(a[copied++] as InputId)
    all.push(id)
  }
  if (all === undefined) return a
  while (copied < a.length) all.push(a[copied++] as InputId)
  return all
}

/** Merges of long lists already made: the same few meet again and again. Held only as long as the lists themselves. */
const made = new WeakMap<readonly InputId[], WeakMap<readonly InputId[], readonly InputId[]>>()
const LONG = 24

function mergedPair(a: readonly InputId[], b: readonly InputId[]): readonly InputId[] {
  if (a === b || b.length === 0) return a
  if (a.length === 0) return b
  if (a.length < LONG || b.length < LONG) return a.length < b.length ? merged(b, a) : merged(a, b)
  let with_ = made.get(a)
  if (with_ === undefined) {
    with_ = new WeakMap()
    made.set(a, with_)
  }
  let both = with_.get(b)
  if (both === undefined) {
    both = a.length < b.length ? merged(b, a) : merged(a, b)
    with_.set(b, both)
  }
  return both
}

/** With more lists than this it is quicker to sort them all together than to take them in one after another. */
const FEW = 6

/** Input ids of several figures, once each and in order; shares the longest list where it holds all the others. */
export function mergedIds(lists: readonly (readonly InputId[])[]): readonly InputId[] {
  if (lists.length === 2) return mergedPair(lists[0] as readonly InputId[], lists[1] as readonly InputId[])
  let longest: readonly InputId[] = []
  for (const list of lists) if (list.length > longest.length) longest = list
  if (lists.length <= FEW) {
    return lists.reduce((all, list) => (list === longest ? all : mergedPair(all, list)), longest)
  }
  const all = new Set(longest)
  let before: readonly InputId[] = longest
  for (const list of lists) {
    if (list !== before && list !== longest) for (const id of list) all.add(id)
    before = list
  }
  return all.size === longest.length ? longest : sortedIds(all)
}
