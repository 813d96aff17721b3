import type { OperationId, OrderReason } from '../plan/types'
import { blocksOf } from './blocks'
import { compareReasons, holds, kindRank } from './kinds'

/** The hard reasons of a plan as ways from one operation to another. */
export interface Reach {
  /** The hard chain a → … → b that is told first; null when nothing makes a come before b. */
  readonly chain: (a: OperationId, b: OperationId) => readonly OrderReason[] | null
  /** Everything that must come before an operation, blocks whole. */
  readonly before: (id: OperationId) => ReadonlySet<OperationId>
}

interface Step {
  readonly to: OperationId
  readonly reason: OrderReason
}

/** One more reason in a chain outweighs any better kind: chains are short first, then of what is told first. */
const PER_STEP = 100

/**
 * Ways over hard reasons. A held unit counts whole: what must come after any of its operations comes after all of them,
 * so a chain may run through it against its own order, by the reasons that hold it together.
 */
export function reachOf(ids: readonly OperationId[], reasons: readonly OrderReason[]): Reach {
  const hard = reasons.filter((reason) => reason.hard)
  const blocks = blocksOf(ids, hard)
  const blockOf = new Map(ids.map((id, i) => [id, blocks.of[i] as number]))
  const out = new Map<OperationId, Step[]>()
  const add = (from: OperationId, step: Step) => {
    const steps = out.get(from)
    if (steps === undefined) out.set(from, [step])
    else steps.push(step)
  }
  for (const reason of [...hard].sort(compareReasons)) {
    add(reason.before, { to: reason.after, reason })
    if (holds(reason)) add(reason.after, { to: reason.before, reason })
  }
  return {
    chain: (a, b) => {
      const sameBlock = blockOf.get(a) === blockOf.get(b)
      return shortest(out, a, b, sameBlock)
    },
    before: (id) => ancestors(ids, hard, blockOf, id),
  }
}

/** Dijkstra over few nodes: the cheapest open one is looked for each time. */
function shortest(
  out: ReadonlyMap<OperationId, readonly Step[]>,
  a: OperationId,
  b: OperationId,
  forwardOnly: boolean,
): readonly OrderReason[] | null {
  if (a === b) return null
  const cost = new Map<OperationId, number>([[a, 0]])
  const by = new Map<OperationId, { readonly from: OperationId; readonly reason: OrderReason }>()
  const open = new Set([a])
  const closed = new Set<OperationId>()
  while (open.size > 0) {
    let at: OperationId | null = null
    for (const id of open) {
      const cheaper = at === null || (cost.get(id) as number) < (cost.get(at) as number)
      if (cheaper || (cost.get(id) === cost.get(at ?? id) && at !== null && id < at)) at = id
    }
    if (at === null) break
    if (at === b) return trace(by, b)
    open.delete(at)
    closed.add(at)
    for (const { to, reason } of out.get(at) ?? []) {
      if (closed.has(to) || (forwardOnly && reason.after !== to)) continue
      const through = (cost.get(at) as number) + PER_STEP + kindRank(reason.kind)
      if (through >= (cost.get(to) ?? Number.POSITIVE_INFINITY)) continue
      cost.set(to, through)
      by.set(to, { from: at, reason })
      open.add(to)
    }
  }
  return null
}

function trace(
  by: ReadonlyMap<OperationId, { readonly from: OperationId; readonly reason: OrderReason }>,
  end: OperationId,
): readonly OrderReason[] {
  const chain: OrderReason[] = []
  for (let at = by.get(end); at !== undefined; at = by.get(at.from)) chain.unshift(at.reason)
  return chain
}

function ancestors(
  ids: readonly OperationId[],
  hard: readonly OrderReason[],
  blockOf: ReadonlyMap<OperationId, number>,
  id: OperationId,
): ReadonlySet<OperationId> {
  const into = new Map<number, number[]>()
  for (const reason of hard) {
    const [a, b] = [blockOf.get(reason.before), blockOf.get(reason.after)]
    if (a === undefined || b === undefined || a === b) continue
    const list = into.get(b)
    if (list === undefined) into.set(b, [a])
    else list.push(a)
  }
  const own = blockOf.get(id)
  const seen = new Set<number>()
  const open = own === undefined ? [] : [own]
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const before of into.get(at) ?? []) {
      if (!seen.has(before)) {
        seen.add(before)
        open.push(before)
      }
    }
  }
  const earlier = inBlockBefore(hard, blockOf, id)
  return new Set(ids.filter((other) => seen.has(blockOf.get(other) ?? -1) || earlier.has(other)))
}

/** Those of the same held unit that come before it. */
function inBlockBefore(
  hard: readonly OrderReason[],
  blockOf: ReadonlyMap<OperationId, number>,
  id: OperationId,
): ReadonlySet<OperationId> {
  const found = new Set<OperationId>()
  const open = [id]
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const { before, after } of hard) {
      if (after !== at || found.has(before) || blockOf.get(before) !== blockOf.get(id)) continue
      found.add(before)
      open.push(before)
    }
  }
  return found
}
