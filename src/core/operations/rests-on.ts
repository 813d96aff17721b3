import { type Figure, type InputId, mergedIds, sortedIds } from '../figure'

type Ids = readonly InputId[]

/**
 * Lists that were put together before, by the lists they were made of. Figures of one kitchen come from the same few
 * long lists again and again; giving the same list back saves most of the time and memory they would take. What is
 * given back is the same either way.
 */
const together = new WeakMap<Ids, WeakMap<Ids, Ids>>()
const withFacts = new WeakMap<Ids, Map<string, Ids>>()

/** All inputs that facts and figures rest on, once each, in order. */
export function restsOn(facts: Ids, figures: readonly Figure[]): Ids {
  const [first, ...rest] = figures
  if (first === undefined) return sortedIds(facts)
  return factsAnd(
    facts,
    rest.reduce((all, figure) => both(all, figure.from), first.from),
  )
}

function both(a: Ids, b: Ids): Ids {
  if (a === b) return a
  const known = together.get(a)?.get(b)
  if (known !== undefined) return known
  const made = mergedIds([a, b])
  const of = together.get(a) ?? new WeakMap<Ids, Ids>()
  together.set(a, of.set(b, made))
  return made
}

function factsAnd(facts: Ids, ids: Ids): Ids {
  const sorted = sortedIds(facts)
  const key = sorted.join(' ')
  const known = withFacts.get(ids)?.get(key)
  if (known !== undefined) return known
  const made = mergedIds([sorted, ids])
  const of = withFacts.get(ids) ?? new Map<string, Ids>()
  withFacts.set(ids, of.set(key, made))
  return made
}
