import type { OrderReason } from '../plan/types'
import type { Blocks } from './blocks'
import { helperCall, nextCosts, type Prices, pairCost, pairCosts } from './objective'

/**
 * The arranging as numbers: n blocks, which must come before which, what each pair costs one way round, and what each
 * costs straight after each other. A full order costs the sum of its pairs and of its neighbours, and a constant.
 */
export interface Problem {
  readonly n: number
  /** [a·n + b] is 1 when block a must come before block b. */
  readonly hard: Uint8Array
  /** [a·n + b]: cost of a anywhere before b. */
  readonly pair: Float64Array
  /** [a·(n+1) + b]: cost of b straight after a; row n: b first of all; column n: nothing after a. */
  readonly next: Float64Array
}

export function problemOf(
  ids: readonly string[],
  reasons: readonly OrderReason[],
  blocks: Blocks,
  prices: Prices,
): Problem {
  const n = blocks.members.length
  return {
    n,
    hard: mustPrecede(n, ids, reasons, blocks),
    pair: pairsOf(n, blocks, prices),
    next: nextOf(n, blocks, prices),
  }
}

function mustPrecede(
  n: number,
  ids: readonly string[],
  reasons: readonly OrderReason[],
  blocks: Blocks,
): Uint8Array {
  const numbers = new Map(ids.map((id, i) => [id, i]))
  const hard = new Uint8Array(n * n)
  for (const reason of reasons) {
    const a = numbers.get(reason.before)
    const b = numbers.get(reason.after)
    if (!reason.hard || a === undefined || b === undefined) continue
    const [from, to] = [blocks.of[a] as number, blocks.of[b] as number]
    if (from !== to) hard[from * n + to] = 1
  }
  return hard
}

function pairsOf(n: number, { members, of }: Blocks, prices: Prices): Float64Array {
  const pair = new Float64Array(n * n)
  const firsts = Int32Array.from(members, (block) => block[0] as number)
  const sizes = Int32Array.from(members, (block) => block.length)
  for (let a = 0; a < n; a++) {
    pairCosts(prices, firsts[a] as number, firsts, pair, a * n)
    const size = sizes[a] as number
    for (let b = 0; b < n; b++) pair[a * n + b] = (pair[a * n + b] as number) * size * (sizes[b] as number)
    pair[a * n + a] = 0
  }
  // Nearly all blocks are of one stage, done or not done throughout, and cost alike for each pair of members; not these.
  members.forEach((block, a) => {
    if (isEven(block, prices)) return
    members.forEach((other, b) => {
      if (a === b) return
      pair[a * n + b] = sumOfPairs(prices, block, other)
      pair[b * n + a] = sumOfPairs(prices, other, block)
    })
  })
  for (const { first, then, cost } of prices.preferred) {
    const [a, b] = [of[then] as number, of[first] as number]
    if (a !== b) pair[a * n + b] = (pair[a * n + b] as number) + cost
  }
  return pair
}

function isEven(block: readonly number[], { stage, done }: Prices): boolean {
  const first = block[0] as number
  return block.every((i) => stage[i] === stage[first] && done[i] === done[first])
}

function sumOfPairs(prices: Prices, first: readonly number[], second: readonly number[]): number {
  let sum = 0
  for (const x of first) for (const y of second) sum += pairCost(prices, x, y)
  return sum
}

function nextOf(n: number, { members }: Blocks, prices: Prices): Float64Array {
  const next = new Float64Array((n + 1) * (n + 1))
  const firsts = Int32Array.from(members, (block) => block[0] as number)
  const lasts = Int32Array.from(members, (block) => block.at(-1) as number)
  for (let b = 0; b < n; b++) next[n * (n + 1) + b] = helperCall(prices, null, firsts[b] as number)
  for (let a = 0; a < n; a++) nextCosts(prices, lasts[a] as number, firsts, next, a * (n + 1))
  return next
}

/** Pairs and neighbours of an order of blocks; what lies within blocks is the same in every order, and left out. */
export function costOf({ n, pair, next }: Problem, order: Int32Array): number {
  let cost = 0
  let before = n
  for (let i = 0; i < n; i++) {
    const a = order[i] as number
    cost += next[before * (n + 1) + a] as number
    before = a
    for (let k = i + 1; k < n; k++) cost += pair[a * n + (order[k] as number)] as number
  }
  return cost
}

/** What no order can go below, of the pairs alone: each pair at its cheaper way round, or at the one it must have. */
export function leastOfPairs({ n, hard, pair }: Problem): number {
  const after = closure(n, hard)
  let least = 0
  for (let a = 0; a < n; a++) {
    for (let b = a + 1; b < n; b++) {
      const there = pair[a * n + b] as number
      const back = pair[b * n + a] as number
      if (has(after, n, a, b)) least += there
      else if (has(after, n, b, a)) least += back
      else least += Math.min(there, back)
    }
  }
  return least
}

/** By block, as bits, every block that must come somewhere after it. */
function closure(n: number, hard: Uint8Array): Uint32Array {
  const words = Math.ceil(n / 32)
  const after = new Uint32Array(n * words)
  const left = new Int32Array(n)
  for (let a = 0; a < n; a++)
    for (let b = 0; b < n; b++) left[a] = (left[a] as number) + (hard[a * n + b] as number)
  const ready = [...left.keys()].filter((a) => left[a] === 0)
  for (let b = ready.pop(); b !== undefined; b = ready.pop()) {
    for (let a = 0; a < n; a++) {
      if (hard[a * n + b] !== 1) continue
      for (let w = 0; w < words; w++) {
        after[a * words + w] = (after[a * words + w] as number) | (after[b * words + w] as number)
      }
      const bit = a * words + (b >> 5)
      after[bit] = (after[bit] as number) | (1 << (b & 31))
      left[a] = (left[a] as number) - 1
      if (left[a] === 0) ready.push(a)
    }
  }
  return after
}

function has(after: Uint32Array, n: number, a: number, b: number): boolean {
  return ((after[a * Math.ceil(n / 32) + (b >> 5)] as number) & (1 << (b & 31))) !== 0
}
