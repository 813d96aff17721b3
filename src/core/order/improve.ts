import type { Problem } from './problem'

/** Longest stretch moved at once, in blocks. */
const LONGEST = 3
/** A bound on the rounds, far above what is ever needed: the work must end. */
const MOST_ROUNDS = 60
/** Gains below this are rounding. */
const NOTHING = 1e-9

/** Whether a block may be moved at all; left out: all may. */
export type MayMove = (block: number) => boolean

/**
 * Improves an order in place by moving stretches of one to three blocks to wherever they cost least, keeping every hard
 * reason, until no such move helps. Every move lowers the cost, so it ends. Places are tried from front to back and
 * the nearest of equally good ones is taken, so the same order always comes out.
 */
export function improve(problem: Problem, order: Int32Array, mayMove: MayMove = () => true): void {
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let moved = false
    for (let length = 1; length <= LONGEST; length++) {
      for (let at = 0; at + length <= problem.n; at++) {
        if (!allMayMove(order, at, length, mayMove)) continue
        const to = bestPlace(problem, order, at, length)
        if (to === at) continue
        shift(order, at, length, to)
        moved = true
      }
    }
    if (!moved) return
  }
}

function allMayMove(order: Int32Array, at: number, length: number, mayMove: MayMove): boolean {
  for (let i = at; i < at + length; i++) if (!mayMove(order[i] as number)) return false
  return true
}

/** Where the stretch of `length` blocks from `at` costs least, as the place of its first block. */
function bestPlace(problem: Problem, order: Int32Array, at: number, length: number): number {
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
  let best = at
  let least = -NOTHING
  for (const step of [1, -1] as const) {
    let pairs = 0
    for (let k = step === 1 ? at + length : at - 1; k >= 0 && k < n; k += step) {
      const passed = order[k] as number
      let stop = false
      for (let i = at; i < at + length; i++) {
        const block = order[i] as number
        const ahead = step === 1 ? block * n + passed : passed * n + block
        const behind = step === 1 ? passed * n + block : block * n + passed
        if (hard[ahead] === 1) {
          stop = true
          break
        }
        pairs += (pair[behind] as number) - (pair[ahead] as number)
      }
      if (stop) break
      const left = step === 1 ? passed : k === 0 ? n : (order[k - 1] as number)
      const right = step === 1 ? (k + 1 === n ? n : (order[k + 1] as number)) : passed
      const put =
        (next[left * w + first] as number) +
        (next[last * w + right] as number) -
        (next[left * w + right] as number)
      const gain = pairs + taken + put
      if (gain < least) {
        least = gain
        best = step === 1 ? k - length + 1 : k
      }
    }
  }
  return best
}

function shift(order: Int32Array, at: number, length: number, to: number): void {
  const stretch = order.slice(at, at + length)
  if (to > at) order.copyWithin(at, at + length, to + length)
  else order.copyWithin(to + length, to, at)
  order.set(stretch, to)
}
