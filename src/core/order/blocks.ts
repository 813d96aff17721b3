import type { OrderReason } from '../plan/types'
import { holds } from './kinds'

/**
 * Operations that follow each other with nothing between, as one block: a unit is held from the first to the last.
 * Everything else is a block of its own. Blocks are what is arranged.
 */
export interface Blocks {
  /** Members by number, in the order they have within the block. */
  readonly members: readonly (readonly number[])[]
  /** By number of the operation, the number of its block. */
  readonly of: Int32Array
}

/** Which operations, by their ids, are tied together. Members of one block are put in the order their reasons ask for. */
export function blocksOf(ids: readonly string[], reasons: readonly OrderReason[]): Blocks {
  const numbers = new Map(ids.map((id, i) => [id, i]))
  const parent = Int32Array.from(ids.keys())
  const root = (i: number): number => {
    let at = i
    while (parent[at] !== at) at = parent[at] as number
    return at
  }
  for (const reason of reasons) {
    if (!holds(reason)) continue
    const a = numbers.get(reason.before)
    const b = numbers.get(reason.after)
    if (a === undefined || b === undefined) continue
    const [low, high] = [root(a), root(b)].sort((x, y) => x - y) as [number, number]
    parent[high] = low
  }
  const groups = new Map<number, number[]>()
  ids.forEach((_, i) => {
    const r = root(i)
    const group = groups.get(r)
    if (group === undefined) groups.set(r, [i])
    else group.push(i)
  })
  const of = new Int32Array(ids.length)
  const members = [...groups.values()].map((group, block) => {
    for (const i of group) of[i] = block
    return group
  })
  return { members: inOrder(members, of, numbers, reasons), of }
}

/** Members of each block of several, first to last by the hard reasons among them; ties by number. */
function inOrder(
  members: readonly (readonly number[])[],
  of: Int32Array,
  numbers: ReadonlyMap<string, number>,
  reasons: readonly OrderReason[],
): readonly (readonly number[])[] {
  const before = new Map<number, Set<number>>()
  for (const reason of reasons) {
    if (!reason.hard) continue
    const a = numbers.get(reason.before)
    const b = numbers.get(reason.after)
    if (a === undefined || b === undefined || of[a] !== of[b]) continue
    before.set(b, (before.get(b) ?? new Set()).add(a))
  }
  return members.map((group) => {
    if (group.length === 1) return group
    const left = new Set(group)
    const order: number[] = []
    while (left.size > 0) {
      const next =
        [...left].find((i) => [...(before.get(i) ?? [])].every((b) => !left.has(b))) ??
        ([...left][0] as number)
      left.delete(next)
      order.push(next)
    }
    return order
  })
}
