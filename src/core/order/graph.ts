import type { OperationId, OrderReason } from '../plan/types'
import { blocksOf } from './blocks'
import { compareReasons, holds } from './kinds'

/** Operations that all wait for one another, and the shortest ring of reasons that shows it. */
export interface Loop {
  readonly operations: readonly OperationId[]
  readonly reasons: readonly OrderReason[]
}

type Arcs = readonly (readonly { readonly to: number; readonly reason: OrderReason }[])[]

/** Sets of nodes each of which can be reached from every other of its set, as numbers; only those of more than one. */
export function components(arcs: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const n = arcs.length
  const index = new Int32Array(n).fill(-1)
  const low = new Int32Array(n)
  const open = new Uint8Array(n)
  const path: number[] = []
  const found: number[][] = []
  let count = 0
  for (let start = 0; start < n; start++) {
    if (index[start] !== -1) continue
    const calls: { node: number; next: number }[] = [{ node: start, next: 0 }]
    while (calls.length > 0) {
      const call = calls[calls.length - 1] as { node: number; next: number }
      const { node } = call
      if (call.next === 0) {
        index[node] = count
        low[node] = count++
        path.push(node)
        open[node] = 1
      }
      const to = arcs[node]?.[call.next]
      if (to !== undefined) {
        call.next++
        if (index[to] === -1) calls.push({ node: to, next: 0 })
        else if (open[to] === 1) low[node] = Math.min(low[node] as number, index[to] as number)
        continue
      }
      calls.pop()
      const above = calls[calls.length - 1]
      if (above !== undefined) low[above.node] = Math.min(low[above.node] as number, low[node] as number)
      if (low[node] !== index[node]) continue
      const component: number[] = []
      for (;;) {
        const top = path.pop() as number
        open[top] = 0
        component.push(top)
        if (top === node) break
      }
      if (component.length > 1) found.push(component.sort((a, b) => a - b))
    }
  }
  return found
}

/**
 * All loops of hard reasons. Operations of one held unit count as one, for nothing may come between them: what must come
 * after its first and before its last cannot come at all.
 */
export function loopsIn(ids: readonly OperationId[], reasons: readonly OrderReason[]): readonly Loop[] {
  const hard = reasons.filter((reason) => reason.hard)
  const single = loopsAmong(ids, hard, Int32Array.from(ids.keys()), ids.length, [])
  if (single.length > 0) return single
  const blocks = blocksOf(ids, hard)
  return loopsAmong(ids, hard, blocks.of, blocks.members.length, hard.filter(holds))
}

function loopsAmong(
  ids: readonly OperationId[],
  reasons: readonly OrderReason[],
  of: Int32Array,
  size: number,
  held: readonly OrderReason[],
): readonly Loop[] {
  const numbers = new Map(ids.map((id, i) => [id, i]))
  const blockOf = (id: OperationId) => of[numbers.get(id) ?? -1]
  const arcs: { to: number; reason: OrderReason }[][] = Array.from({ length: size }, () => [])
  for (const reason of reasons) {
    const a = blockOf(reason.before)
    const b = blockOf(reason.after)
    if (a !== undefined && b !== undefined && a !== b) arcs[a]?.push({ to: b, reason })
  }
  return components(arcs.map((out) => out.map(({ to }) => to))).map((component) => {
    const inside = new Set(component)
    const ring = shortestRing(arcs, inside)
    const within = heldWithin(ring, held, blockOf)
    return { operations: ids.filter((_, i) => inside.has(of[i] as number)), reasons: [...ring, ...within] }
  })
}

/** The shortest way round, of several equally short ones that of the better reasons. */
function shortestRing(arcs: Arcs, inside: ReadonlySet<number>): readonly OrderReason[] {
  let best: readonly OrderReason[] | null = null
  for (const start of inside) {
    const ring = ringThrough(arcs, inside, start, best?.length ?? Number.POSITIVE_INFINITY)
    if (ring !== null && (best === null || ring.length < best.length)) best = ring
  }
  return best ?? []
}

function ringThrough(
  arcs: Arcs,
  inside: ReadonlySet<number>,
  start: number,
  shorterThan: number,
): readonly OrderReason[] | null {
  const by = new Map<number, { from: number; reason: OrderReason }>()
  let front = [start]
  for (let steps = 1; front.length > 0 && steps < shorterThan; steps++) {
    const next: number[] = []
    for (const node of front) {
      const out = [...(arcs[node] ?? [])].sort((a, b) => compareReasons(a.reason, b.reason))
      for (const { to, reason } of out) {
        if (to === start) return [...trace(by, node), reason]
        if (!inside.has(to) || by.has(to)) continue
        by.set(to, { from: node, reason })
        next.push(to)
      }
    }
    front = next
  }
  return null
}

function trace(
  by: ReadonlyMap<number, { readonly from: number; readonly reason: OrderReason }>,
  end: number,
): readonly OrderReason[] {
  const reasons: OrderReason[] = []
  for (let at = by.get(end); at !== undefined; at = by.get(at.from)) reasons.unshift(at.reason)
  return reasons
}

/** Of the blocks a ring enters at one operation and leaves by another: what holds them together. */
export function heldWithin(
  ring: readonly OrderReason[],
  held: readonly OrderReason[],
  blockOf: (id: OperationId) => number | undefined,
): readonly OrderReason[] {
  const touched = new Map<number, Set<OperationId>>()
  for (const reason of ring) {
    for (const id of [reason.before, reason.after]) {
      const block = blockOf(id)
      if (block !== undefined) touched.set(block, (touched.get(block) ?? new Set()).add(id))
    }
  }
  return held.filter((reason) => (touched.get(blockOf(reason.before) ?? -1)?.size ?? 0) > 1)
}
