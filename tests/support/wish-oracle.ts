import type { Operation, OrderReason } from '../../src/core/plan/types'

/**
 * Whether wishes on the order can hold together, worked out from nothing but the operations and the hard reasons of a
 * plan: all shortest ways between the starts of operations, in whole thousandths of a minute. Slow, plain, and shares
 * no line with the planner.
 */
export interface Wish {
  readonly id: string
  readonly pairs: readonly (readonly [before: string, after: string])[]
  readonly minLag: number | null
  readonly maxLag: number | null
}

interface Limit {
  readonly from: number
  readonly to: number
  /** start(to) − start(from) ≤ most. */
  readonly most: number
}

const T = (minutes: number) => Math.round(minutes * 1000)

/** The work as the oracle sees it: operations by number, how long each takes, and which hang together. */
interface Clock {
  readonly at: ReadonlyMap<string, number>
  readonly took: readonly number[]
  /** By operation: first and last of those that follow each other with nothing between. */
  readonly first: readonly number[]
  readonly last: readonly number[]
  readonly rigid: readonly Limit[]
}

function isHeld(reason: OrderReason): boolean {
  return reason.hard && reason.maxLag === 0 && reason.kind !== 'wish'
}

function clockOf(operations: readonly Operation[], hard: readonly OrderReason[]): Clock {
  const at = new Map(operations.map((o, i) => [o.id, i]))
  const took = operations.map((o) => T(o.minutes.typical))
  const next = new Map<number, number>()
  const previous = new Map<number, number>()
  for (const reason of hard.filter(isHeld)) {
    const [a, b] = [at.get(reason.before), at.get(reason.after)]
    if (a === undefined || b === undefined) continue
    if ((next.get(a) ?? b) !== b || (previous.get(b) ?? a) !== a)
      throw new Error(`held twice over: ${reason.id}`)
    next.set(a, b)
    previous.set(b, a)
  }
  const along = (step: ReadonlyMap<number, number>) => (i: number) => {
    let here = i
    for (let on = step.get(here); on !== undefined; on = step.get(here)) here = on
    return here
  }
  const rigid = [...next].flatMap(([a, b]): Limit[] => [
    { from: a, to: b, most: took[a] as number },
    { from: b, to: a, most: -(took[a] as number) },
  ])
  const all = operations.map((_, i) => i)
  return { at, took, first: all.map(along(previous)), last: all.map(along(next)), rigid }
}

/** One pair, with its waits: whole held stretches come one after the other. */
function limitsOf(
  clock: Clock,
  before: string,
  after: string,
  minLag: number | null,
  maxLag: number | null,
): readonly Limit[] {
  const [a, b] = [clock.at.get(before), clock.at.get(after)]
  if (a === undefined || b === undefined) return []
  const took = clock.took[a] as number
  const limits: Limit[] = [{ from: b, to: a, most: -(took + T(minLag ?? 0)) }]
  if (maxLag !== null) limits.push({ from: a, to: b, most: took + T(maxLag) })
  const [lastOfA, firstOfB] = [clock.last[a] as number, clock.first[b] as number]
  if (clock.first[a] !== firstOfB) {
    limits.push({ from: firstOfB, to: lastOfA, most: -(clock.took[lastOfA] as number) })
  }
  return limits
}

/** Floyd and Warshall: no way back to where it began may be shorter than nothing. */
function holdsTogether(n: number, limits: readonly Limit[]): boolean {
  const far = new Float64Array(n * n).fill(Number.POSITIVE_INFINITY)
  for (let i = 0; i < n; i++) far[i * n + i] = 0
  for (const { from, to, most } of limits) {
    far[from * n + to] = Math.min(far[from * n + to] as number, most)
  }
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) {
      const first = far[i * n + k] as number
      if (first === Number.POSITIVE_INFINITY) continue
      for (let j = 0; j < n; j++) {
        const sum = first + (far[k * n + j] as number)
        if (sum < (far[i * n + j] as number)) far[i * n + j] = sum
      }
    }
    for (let i = 0; i < n; i++) if ((far[i * n + i] as number) < 0) return false
  }
  return true
}

export interface Oracle {
  /** Whether these wishes can hold beside these hard reasons; all of the plan's if left out. */
  readonly can: (wishes: readonly Wish[], reasons?: readonly OrderReason[]) => boolean
}

export function wishOracle(operations: readonly Operation[], hard: readonly OrderReason[]): Oracle {
  const clock = clockOf(operations, hard)
  const ofReasons = (reasons: readonly OrderReason[]) =>
    reasons.filter((r) => !isHeld(r)).flatMap((r) => limitsOf(clock, r.before, r.after, r.minLag, r.maxLag))
  const whole = ofReasons(hard)
  return {
    can: (wishes, reasons) =>
      holdsTogether(operations.length, [
        ...clock.rigid,
        ...(reasons === undefined ? whole : ofReasons(reasons)),
        ...wishes.flatMap((w) => w.pairs.flatMap(([a, b]) => limitsOf(clock, a, b, w.minLag, w.maxLag))),
      ]),
  }
}

/** By trying every subset: the contradictions of which nothing can be left out, and the least that mends all. */
export function enumerate(
  wishes: readonly Wish[],
  { can }: Oracle,
): { readonly conflicts: readonly string[]; readonly repairs: readonly string[] } {
  const full = 2 ** wishes.length
  const chosen = (bits: number) => wishes.filter((_, i) => bits & (1 << i))
  const feasible = new Uint8Array(full)
  for (let bits = 0; bits < full; bits++) {
    // What a part cannot, the whole cannot.
    const parts = wishes.flatMap((_, i) => (bits & (1 << i) ? [bits & ~(1 << i)] : []))
    feasible[bits] = parts.every((part) => feasible[part] === 1) && can(chosen(bits)) ? 1 : 0
  }
  const names = (bits: number) =>
    chosen(bits)
      .map((w) => w.id)
      .sort()
      .join(' + ')
  const all = [...feasible.keys()]
  const conflicts = all.filter(
    (bits) =>
      feasible[bits] === 0 && wishes.every((_, i) => !(bits & (1 << i)) || feasible[bits & ~(1 << i)] === 1),
  )
  const size = (bits: number) => chosen(bits).length
  const mends = all.filter((bits) => feasible[full - 1 - bits] === 1)
  const least = Math.min(...mends.map(size))
  return {
    conflicts: conflicts.map(names).sort(),
    repairs: mends
      .filter((bits) => size(bits) === least)
      .map(names)
      .sort(),
  }
}
