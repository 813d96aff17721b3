import type { Problem } from './problem'

/** By block, how many blocks must still come before it. */
function waitingFor({ n, hard }: Problem): Int32Array {
  const waiting = new Int32Array(n)
  for (let a = 0; a < n; a++) {
    for (let b = 0; b < n; b++) waiting[b] = (waiting[b] as number) + (hard[a * n + b] as number)
  }
  return waiting
}

/**
 * A first order by list scheduling: of the blocks that wait for nothing, the one that costs least to take now, that is
 * before all that are left and straight after the last. Ties: the lower number. There must be no loop.
 */
export function listSchedule(problem: Problem): Int32Array {
  const { n, hard, pair, next } = problem
  const waiting = waitingFor(problem)
  const beforeRest = new Float64Array(n)
  for (let a = 0; a < n; a++) {
    let sum = 0
    for (let b = 0; b < n; b++) sum += pair[a * n + b] as number
    beforeRest[a] = sum
  }
  const taken = new Uint8Array(n)
  const order = new Int32Array(n)
  let last = n
  for (let i = 0; i < n; i++) {
    let best = -1
    let least = Number.POSITIVE_INFINITY
    for (let a = 0; a < n; a++) {
      if (taken[a] === 1 || waiting[a] !== 0) continue
      const cost = (beforeRest[a] as number) + (next[last * (n + 1) + a] as number)
      if (cost < least) {
        least = cost
        best = a
      }
    }
    order[i] = best
    taken[best] = 1
    last = best
    for (let b = 0; b < n; b++) {
      waiting[b] = (waiting[b] as number) - (hard[best * n + b] as number)
      beforeRest[b] = (beforeRest[b] as number) - (pair[b * n + best] as number)
    }
  }
  return order
}

/**
 * The order that goes by given places as far as hard reasons let it: the block with the lowest place that waits for
 * nothing comes next. A block that must wait is put off, and those that wait for it.
 */
export function byPlace(problem: Problem, place: ArrayLike<number>): Int32Array {
  const { n, hard } = problem
  const waiting = waitingFor(problem)
  const order = new Int32Array(n)
  for (let i = 0; i < n; i++) {
    let best = -1
    for (let a = 0; a < n; a++) {
      if (waiting[a] !== 0) continue
      if (best < 0 || (place[a] as number) < (place[best] as number)) best = a
    }
    order[i] = best
    waiting[best] = -1
    for (let b = 0; b < n; b++) {
      if (hard[best * n + b] === 1) waiting[b] = (waiting[b] as number) - 1
    }
  }
  return order
}

/** The same from the end: what is waited for is brought forward instead, and what it waits for. */
export function byPlaceFromEnd(problem: Problem, place: ArrayLike<number>): Int32Array {
  const { n, hard } = problem
  const turned = new Uint8Array(n * n)
  for (let a = 0; a < n; a++) for (let b = 0; b < n; b++) turned[b * n + a] = hard[a * n + b] as number
  const from = Float64Array.from({ length: n }, (_, a) => -(place[a] as number))
  return byPlace({ ...problem, hard: turned }, from).reverse()
}
