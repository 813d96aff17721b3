import type { Operation, OrderReason } from '../plan/types'
import { blocksOf } from './blocks'

/**
 * Brings operations that must follow each other within a time close together. Whatever lies between the two and need
 * not is moved out: before the first what the second waits for, after the second the rest. What is left between, done
 * one after the other by one crew, is the shortest wait there is.
 */
export function pullTogether(
  ids: readonly string[],
  operations: readonly Operation[],
  reasons: readonly OrderReason[],
  order: Int32Array,
): { readonly order: Int32Array; readonly late: readonly string[] } {
  const limited = reasons.filter((reason) => reason.hard && reason.maxLag !== null)
  const timed = limited.filter((reason) => reason.maxLag !== 0)
  const numbers = new Map(ids.map((id, i) => [id, i]))
  const blocks = blocksOf(ids, reasons).of
  const reach = reachOver(numbers, timed.length === 0 ? [] : reasons, blocks, ids.length)
  let now = [...order]
  for (const reason of timed) {
    const a = numbers.get(reason.before)
    const b = numbers.get(reason.after)
    const apart = a !== undefined && b !== undefined && blocks[a] !== blocks[b]
    if (apart) now = closer(now, a, b, blocks, reach)
  }
  return {
    order: Int32Array.from(now),
    late: timed
      .filter((reason) => waitIn(now, numbers, operations, reason) > (reason.maxLag ?? 0))
      .map((r) => r.id),
  }
}

/** Minutes of work between the end of one and the start of the other. */
function waitIn(
  order: readonly number[],
  numbers: ReadonlyMap<string, number>,
  operations: readonly Operation[],
  reason: OrderReason,
): number {
  const from = order.indexOf(numbers.get(reason.before) ?? -1)
  const to = order.indexOf(numbers.get(reason.after) ?? -1)
  if (from < 0 || to < 0) return 0
  return order.slice(from + 1, to).reduce((sum, i) => sum + (operations[i]?.minutes.typical ?? 0), 0)
}

type Reach = (from: number, to: number) => boolean

/** Whether one must come before another, by whatever way; blocks count whole. */
function reachOver(
  numbers: ReadonlyMap<string, number>,
  reasons: readonly OrderReason[],
  blocks: Int32Array,
  n: number,
): Reach {
  const out: number[][] = Array.from({ length: n }, () => [])
  for (const reason of reasons) {
    const a = numbers.get(reason.before)
    const b = numbers.get(reason.after)
    if (!reason.hard || a === undefined || b === undefined) continue
    const [from, to] = [blocks[a] as number, blocks[b] as number]
    if (from !== to) out[from]?.push(to)
  }
  const known = new Map<number, ReadonlySet<number>>()
  const after = (block: number): ReadonlySet<number> => {
    const before = known.get(block)
    if (before !== undefined) return before
    const found = new Set<number>()
    const open = [block]
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      for (const to of out[at] ?? []) {
        if (!found.has(to)) {
          found.add(to)
          open.push(to)
        }
      }
    }
    known.set(block, found)
    return found
  }
  return (from, to) => after(blocks[from] as number).has(blocks[to] as number)
}

function closer(order: readonly number[], a: number, b: number, blocks: Int32Array, reach: Reach): number[] {
  const inA = (i: number) => blocks[i] === blocks[a]
  const inB = (i: number) => blocks[i] === blocks[b]
  const from = order.findIndex(inA)
  const to = order.length - [...order].reverse().findIndex(inB)
  const stretch = order.slice(from, to)
  const others = stretch.filter((i) => !inA(i) && !inB(i))
  const between = others.filter((i) => reach(a, i) && reach(i, b))
  const early = others.filter((i) => !reach(a, i) && reach(i, b))
  const late = others.filter((i) => !reach(i, b))
  return [
    ...order.slice(0, from),
    ...early,
    ...stretch.filter(inA),
    ...between,
    ...stretch.filter(inB),
    ...late,
    ...order.slice(to),
  ]
}
