/** A stream of chance that is the same for the same seed, so that a failing case can be called up again by its number. */
export interface Random {
  /** From 0 up to, not including, 1. */
  readonly next: () => number
  /** A whole number from `low` to `high`, both included. */
  readonly int: (low: number, high: number) => number
  /** A number from `low` to `high` in steps of `step`. */
  readonly step: (low: number, high: number, step: number) => number
  readonly chance: (likelihood: number) => boolean
  readonly pick: <T>(from: readonly T[]) => T
  /** Each item by its weight. */
  readonly weighted: <T>(from: readonly (readonly [T, number])[]) => T
  readonly shuffled: <T>(list: readonly T[]) => T[]
  /** So many of the list, each at most once, in the list's order. */
  readonly some: <T>(list: readonly T[], count: number) => T[]
}

/** Mulberry32: a 32-bit generator, plenty for drawing test cases. */
function mulberry32(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296
  }
}

export function randomFrom(seed: number): Random {
  const next = mulberry32(Math.imul(seed + 1, 2_654_435_761))
  const int = (low: number, high: number) => low + Math.floor(next() * (high - low + 1))
  const pick = <T>(from: readonly T[]): T => {
    if (from.length === 0) throw new Error('nothing to pick from')
    return from[int(0, from.length - 1)] as T
  }
  const weighted = <T>(from: readonly (readonly [T, number])[]): T => {
    let left = next() * from.reduce((sum, [, weight]) => sum + weight, 0)
    for (const [item, weight] of from) {
      left -= weight
      if (left < 0) return item
    }
    return pick(from)[0]
  }
  const shuffled = <T>(list: readonly T[]): T[] => {
    const out = [...list]
    for (let i = out.length - 1; i > 0; i--) {
      const k = int(0, i)
      ;[out[i], out[k]] = [out[k] as T, out[i] as T]
    }
    return out
  }
  const some = <T>(list: readonly T[], count: number): T[] => {
    const chosen = new Set(shuffled(list.map((_, i) => i)).slice(0, count))
    return list.filter((_, i) => chosen.has(i))
  }
  return {
    next,
    int,
    step: (low, high, step) => low + step * int(0, Math.floor((high - low) / step)),
    chance: (likelihood) => next() < likelihood,
    pick,
    weighted,
    shuffled,
    some,
  }
}
