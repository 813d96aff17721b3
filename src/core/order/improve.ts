import type { Problem } from './problem'

/** Longest stretch moved at once, in blocks. */
const LONGEST = 3
/** A bound on the rounds, far above what is ever needed: the work must end. */
const MOST_ROUNDS = 200
/** Gains below this are rounding. */
const NOTHING = 1e-9

/** Whether a block may be moved at all; left out: all may. */
export type MayMove = (block: number) => boolean

/** What the search knows beside the order itself, kept up as blocks are moved. */
interface Search {
  readonly problem: Problem
  readonly order: Int32Array
  /** By block, what its pairs with all others cost as they stand now. */
  readonly incurred: Float64Array
  /** The dearest neighbour there is. */
  readonly dearest: number
  /** By block, 1 when nothing near it has changed since it was last looked at and left. */
  readonly quiet: Uint8Array
}

/**
 * Improves an order in place by moving stretches of one to three blocks to wherever they cost least, keeping every hard
 * reason, until no such move helps. Every move lowers the cost, so it ends. Places are tried from near to far and the
 * nearest of equally good ones is taken, so the same order always comes out.
 *
 * Stretches about which nothing has changed are passed over, until all are; then all are looked at once more, for a place
 * far away may have become better in the meantime.
 */
export function improve(problem: Problem, order: Int32Array, mayMove: MayMove = () => true): void {
  const search: Search = {
    problem,
    order,
    incurred: incurredIn(problem, order),
    dearest: problem.next.reduce((most, cost) => Math.max(most, cost), 0),
    quiet: new Uint8Array(problem.n),
  }
  for (let all = true, round = 0; round < MOST_ROUNDS; round++) {
    if (all) search.quiet.fill(0)
    const moved = oneRound(search, mayMove)
    if (!moved && all) return
    all = !moved
  }
}

/** Looks at every stretch that is not quiet, and moves those that gain by it. Whether any did. */
function oneRound(search: Search, mayMove: MayMove): boolean {
  const { problem, order, quiet } = search
  const seen = new Uint8Array(problem.n).fill(1)
  let moved = false
  for (let length = 1; length <= LONGEST; length++) {
    for (let at = 0; at + length <= problem.n; at++) {
      if (isQuiet(search, at, length) || !allMayMove(order, at, length, mayMove)) continue
      const to = bestPlace(search, at, length)
      if (to === at) continue
      const [from, end] = [Math.min(at, to) - 1, Math.max(at, to) + length]
      shift(search, at, length, to)
      for (let i = Math.max(0, from); i <= Math.min(end, problem.n - 1); i++) {
        seen[order[i] as number] = 0
        quiet[order[i] as number] = 0
      }
      moved = true
    }
  }
  quiet.set(seen)
  return moved
}

function isQuiet({ order, quiet }: Search, at: number, length: number): boolean {
  for (let i = at; i < at + length; i++) if (quiet[order[i] as number] === 0) return false
  return true
}

function incurredIn({ n, pair }: Problem, order: Int32Array): Float64Array {
  const incurred = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    const a = order[i] as number
    for (let k = i + 1; k < n; k++) {
      const b = order[k] as number
      const cost = pair[a * n + b] as number
      incurred[a] = (incurred[a] as number) + cost
      incurred[b] = (incurred[b] as number) + cost
    }
  }
  return incurred
}

function allMayMove(order: Int32Array, at: number, length: number, mayMove: MayMove): boolean {
  for (let i = at; i < at + length; i++) if (!mayMove(order[i] as number)) return false
  return true
}

/**
 * Where the stretch of `length` blocks from `at` costs least, as the place of its first block. A side is given up when
 * what was passed has cost more than all that could still be won: what its pairs cost now, and the dearest neighbour.
 */
function bestPlace({ problem, order, incurred, dearest }: Search, at: number, length: number): number {
  const { n, hard, pair, next } = problem
  const w = n + 1
  const first = order[at] as number
  const last = order[at + length - 1] as number
  const before = at === 0 ? n : (order[at - 1] as number)
  const after = at + length === n ? n : (order[at + length] as number)
  const taken =
    (next[before * w + after] as number) -
    (next[before * w + first] as number) -
    (next[last * w + after] as number)
  let mostWon = dearest + NOTHING
  for (let i = at; i < at + length; i++) mostWon += incurred[order[i] as number] as number
  let best = at
  let least = -NOTHING
  for (let k = at + length, pairs = 0; k < n; k++) {
    const passed = order[k] as number
    const step = passing(hard, pair, n, order, at, length, passed, true)
    pairs += step
    if (pairs + taken - mostWon >= least) break
    const right = k + 1 === n ? n : (order[k + 1] as number)
    const gain =
      pairs +
      taken +
      (next[passed * w + first] as number) +
      (next[last * w + right] as number) -
      (next[passed * w + right] as number)
    if (gain < least) {
      least = gain
      best = k - length + 1
    }
  }
  for (let k = at - 1, pairs = 0; k >= 0; k--) {
    const passed = order[k] as number
    pairs += passing(hard, pair, n, order, at, length, passed, false)
    if (pairs + taken - mostWon >= least) break
    const left = k === 0 ? n : (order[k - 1] as number)
    const gain =
      pairs +
      taken +
      (next[left * w + first] as number) +
      (next[last * w + passed] as number) -
      (next[left * w + passed] as number)
    if (gain < least) {
      least = gain
      best = k
    }
  }
  return best
}

/** What it costs the stretch to be put the other side of one block; infinite where a hard reason forbids it. */
function passing(
  hard: Uint8Array,
  pair: Float64Array,
  n: number,
  order: Int32Array,
  at: number,
  length: number,
  passed: number,
  forward: boolean,
): number {
  let cost = 0
  for (let i = at; i < at + length; i++) {
    const block = order[i] as number
    const ahead = forward ? block * n + passed : passed * n + block
    if (hard[ahead] === 1) return Number.POSITIVE_INFINITY
    cost += (pair[forward ? passed * n + block : block * n + passed] as number) - (pair[ahead] as number)
  }
  return cost
}

function shift({ problem, order, incurred }: Search, at: number, length: number, to: number): void {
  const { n, pair } = problem
  const stretch = order.slice(at, at + length)
  const forward = to > at
  const passed = forward ? order.slice(at + length, to + length) : order.slice(to, at)
  for (const block of stretch) {
    for (const other of passed) {
      const there = pair[block * n + other] as number
      const back = pair[other * n + block] as number
      const change = forward ? back - there : there - back
      incurred[block] = (incurred[block] as number) + change
      incurred[other] = (incurred[other] as number) + change
    }
  }
  if (forward) order.copyWithin(at, at + length, to + length)
  else order.copyWithin(to + length, to, at)
  order.set(stretch, to)
}
