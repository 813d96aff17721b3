import type { Operation, OrderReason, PlanPoint } from '../plan/types'
import { STAGES } from '../plan/types'

/**
 * What one order of work costs against another, in minutes. All of it is reckoned, not measured; common practice.
 *
 *   stages     10 for every pair of operations of which the one of the later stage comes first
 *   set-aside  the cost of every preferred reason the order does not keep (corners before neighbours, outwards along
 *              a run, talls before wall units, …); none for one the user has set aside
 *   done       60 for every pair of which one is done and comes after one that is not
 *   helper     8 each time a second pair of hands is called in, where they are not there all the time
 *   walking    0.05 for every metre from the place of one operation to that of the next
 *   over       1 each time the work goes over to another wall: steps, tools and level are carried along, and the line and
 *              the marks of that wall are taken up again
 *   left       1 each time a unit that has been set in its place is left before it is levelled
 *   tools      0.5 for every tool of an operation that was not in hand at the one before
 */
export const MINUTES = { stage: 10, done: 60, helper: 8, metre: 0.05, over: 1, left: 1, tool: 0.5 } as const

const MM_PER_METRE = 1000

export interface Priced {
  readonly operations: readonly Operation[]
  readonly reasons: readonly OrderReason[]
  /** Where each is done on the plan of the room; left out: anywhere. */
  readonly places: ReadonlyMap<string, PlanPoint>
  /** Preferred reasons the user has set aside, by id. */
  readonly overridden: ReadonlySet<string>
  /** Somebody has to be called in for work that needs two. */
  readonly helperIsCalled: boolean
}

/** All that the cost of an order is reckoned from, by number of the operation. */
export interface Prices {
  readonly stage: Int32Array
  readonly done: Uint8Array
  readonly people: Int32Array
  readonly x: Float64Array
  readonly y: Float64Array
  readonly placed: Uint8Array
  /** Which wall each is done at, by number; 0: at none, or at more than one. */
  readonly wall: Int32Array
  /** Of the setting of a unit: the number of its levelling; -1 for all else. */
  readonly levelling: Int32Array
  /** Which set of tools each needs, by number, and by two of those numbers what is fetched from the one to the other. */
  readonly toolSet: Int32Array
  readonly toolSets: number
  readonly fetched: Float64Array
  readonly helper: number
  /** Preferred reasons: the number that should come first, the other, the cost. */
  readonly preferred: readonly { readonly first: number; readonly then: number; readonly cost: number }[]
}

export function pricesOf(priced: Priced): Prices {
  const { operations } = priced
  const n = operations.length
  const numbers = new Map(operations.map((operation, i) => [operation.id, i]))
  const prices = {
    stage: new Int32Array(n),
    done: new Uint8Array(n),
    people: new Int32Array(n),
    x: new Float64Array(n),
    y: new Float64Array(n),
    placed: new Uint8Array(n),
    wall: new Int32Array(n),
    levelling: Int32Array.from(operations, (o) => levellingOf(o, numbers)),
    ...toolSetsOf(operations),
    helper: priced.helperIsCalled ? MINUTES.helper : 0,
    preferred: preferredOf(priced, numbers),
  }
  const stages = new Map(STAGES.map((stage, i) => [stage, i]))
  const walls = [...new Set(operations.flatMap(({ wall }) => (wall === null ? [] : [wall])))]
  operations.forEach((operation, i) => {
    prices.stage[i] = stages.get(operation.stage) ?? 0
    prices.done[i] = operation.done ? 1 : 0
    prices.people[i] = operation.people
    prices.wall[i] = operation.wall === null ? 0 : walls.indexOf(operation.wall) + 1
    const at = priced.places.get(operation.id)
    if (at === undefined) return
    prices.placed[i] = 1
    prices.x[i] = at.x
    prices.y[i] = at.y
  })
  return prices
}

function levellingOf({ kind, changes }: Operation, numbers: ReadonlyMap<string, number>): number {
  if (kind !== 'place') return -1
  return Math.max(-1, ...changes.map(({ unit }) => numbers.get(`level:${unit}`) ?? -1))
}

/** Few sets of tools are used again and again: what is fetched from one to another is worked out once for each two. */
function toolSetsOf(operations: readonly Operation[]): Pick<Prices, 'toolSet' | 'toolSets' | 'fetched'> {
  const sets = new Map<string, { readonly number: number; readonly tools: ReadonlySet<string> }>()
  const toolSet = Int32Array.from(operations, ({ tools }) => {
    const key = tools.join()
    const known = sets.get(key) ?? { number: sets.size, tools: new Set(tools) }
    sets.set(key, known)
    return known.number
  })
  const all = [...sets.values()]
  const fetched = new Float64Array(all.length * all.length)
  for (const had of all) {
    for (const needed of all) {
      const missing = [...needed.tools].filter((tool) => !had.tools.has(tool)).length
      fetched[had.number * all.length + needed.number] = missing * MINUTES.tool
    }
  }
  return { toolSet, toolSets: all.length, fetched }
}

function preferredOf(priced: Priced, numbers: ReadonlyMap<string, number>): Prices['preferred'] {
  return priced.reasons.flatMap((reason) => {
    const first = numbers.get(reason.before)
    const then = numbers.get(reason.after)
    if (reason.hard || first === undefined || then === undefined) return []
    return [{ first, then, cost: priced.overridden.has(reason.id) ? 0 : reason.cost }]
  })
}

function stageBehind(p: Prices, a: number, b: number): number {
  return (p.stage[a] as number) > (p.stage[b] as number) ? MINUTES.stage : 0
}

function doneBehind(p: Prices, a: number, b: number): number {
  return p.done[a] === 0 && p.done[b] === 1 ? MINUTES.done : 0
}

/** Cost of `a` somewhere before `b`, but for preferred reasons. */
export function pairCost(p: Prices, a: number, b: number): number {
  return stageBehind(p, a, b) + doneBehind(p, a, b)
}

/** Cost of `a` somewhere before each of `all`, but for preferred reasons. */
export function pairCosts(p: Prices, a: number, all: Int32Array, into: Float64Array, offset: number): void {
  for (let i = 0; i < all.length; i++) into[offset + i] = pairCost(p, a, all[i] as number)
}

function walking(p: Prices, a: number, b: number): number {
  if (p.placed[a] === 0 || p.placed[b] === 0) return 0
  const dx = (p.x[a] as number) - (p.x[b] as number)
  const dy = (p.y[a] as number) - (p.y[b] as number)
  return (Math.sqrt(dx * dx + dy * dy) / MM_PER_METRE) * MINUTES.metre
}

function goingOver(p: Prices, a: number, b: number): number {
  const [from, to] = [p.wall[a] as number, p.wall[b] as number]
  return from > 0 && to > 0 && from !== to ? MINUTES.over : 0
}

function leaving(p: Prices, a: number, b: number): number {
  const levelling = p.levelling[a] as number
  return levelling >= 0 && levelling !== b ? MINUTES.left : 0
}

function toolChange(p: Prices, a: number, b: number): number {
  return p.fetched[(p.toolSet[a] as number) * p.toolSets + (p.toolSet[b] as number)] as number
}

/** A second pair of hands called in for `b`, coming from `a`; from nothing: for the first of all. */
export function helperCall(p: Prices, a: number | null, b: number): number {
  const had = a === null ? 1 : (p.people[a] as number)
  return (p.people[b] as number) > 1 && had < 2 ? p.helper : 0
}

/** Cost of each of `all` straight after `a`. */
export function nextCosts(p: Prices, a: number, all: Int32Array, into: Float64Array, offset: number): void {
  for (let i = 0; i < all.length; i++) {
    const b = all[i] as number
    into[offset + i] =
      walking(p, a, b) + goingOver(p, a, b) + leaving(p, a, b) + toolChange(p, a, b) + helperCall(p, a, b)
  }
}

export type CostParts = Readonly<
  Record<'stages' | 'set-aside' | 'done' | 'helper' | 'walking' | 'over' | 'left' | 'tools', number>
>

/** The cost of a whole order, part by part, straight from the definition above. */
export function costParts(p: Prices, order: ArrayLike<number>): CostParts {
  const at = new Int32Array(order.length)
  const parts = { stages: 0, 'set-aside': 0, done: 0, helper: 0, walking: 0, over: 0, left: 0, tools: 0 }
  for (let i = 0; i < order.length; i++) {
    const a = order[i] as number
    at[a] = i
    for (let k = i + 1; k < order.length; k++) {
      const b = order[k] as number
      parts.stages += stageBehind(p, a, b)
      parts.done += doneBehind(p, a, b)
    }
    const before = i === 0 ? null : (order[i - 1] as number)
    parts.helper += helperCall(p, before, a)
    if (before === null) continue
    parts.walking += walking(p, before, a)
    parts.over += goingOver(p, before, a)
    parts.left += leaving(p, before, a)
    parts.tools += toolChange(p, before, a)
  }
  for (const { first, then, cost } of p.preferred) {
    if ((at[first] as number) > (at[then] as number)) parts['set-aside'] += cost
  }
  return parts
}

export function total(parts: CostParts): number {
  return Object.values(parts).reduce((sum, part) => sum + part, 0)
}
