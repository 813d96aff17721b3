import type { Operation, OperationId, OrderReason, OrderReport } from '../plan/types'
import { err, ok, type Result } from '../result'
import { type Blocks, blocksOf } from './blocks'
import { byPlace, listSchedule } from './construct'
import { type Loop, loopsIn } from './graph'
import { improve } from './improve'
import { keepOrder } from './keep'
import { costParts, type Priced, pricesOf, total } from './objective'
import { costOf, leastOfPairs, type Problem, problemOf } from './problem'
import { pullTogether } from './pull-together'

/**
 * The rehearsed order: an order of all operations that keeps every hard reason and every hold, at as little cost as
 * found under one objective, in minutes (its parts and their prices stand in `objective.ts`): stages gone back on,
 * preferred reasons set aside, calls for a helper, metres walked, tools changed. Outward from the corners is among the
 * preferred reasons.
 *
 * Method: operations of a held unit are one block. List scheduling gives a first order, then stretches of one to three
 * blocks are moved to where they cost least until no move helps. It is a local optimum; that nothing is better is not
 * proved, and the report says how far below no order can go. Same inputs, in whatever order they are given: same
 * order. An order last accepted is kept, but for what must move and what is new.
 */
export interface ArrangeInput extends Priced {
  /** Operation ids of the order last accepted, first to last; empty: none. */
  readonly kept: readonly OperationId[]
}

export interface Arrangement {
  readonly order: readonly OperationId[]
  readonly report: OrderReport
  /** Wishes on waits that one crew, one operation after another, does not meet in this order: reasons, by id. */
  readonly late: readonly string[]
}

/** An order, or the loops of hard reasons that leave none. */
export function arrange(input: ArrangeInput): Result<Arrangement, readonly Loop[]> {
  const operations = [...input.operations]
    .map(keyed)
    .sort(byKey)
    .map((k) => k.operation)
  const ids = operations.map((operation) => operation.id)
  const reasons = [...input.reasons].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  const loops = loopsIn(ids, reasons)
  if (loops.length > 0) return err(loops)
  const sorted: Priced = { ...input, operations, reasons }
  const prices = pricesOf(sorted)
  const blocks = blocksOf(ids, reasons)
  const problem = problemOf(ids, reasons, blocks, prices)
  const stages = Int32Array.from(blocks.members, (block) => prices.stage[block[0] ?? 0] ?? 0)
  const found = arrangeBlocks(problem, stages, keptPlaces(operations, blocks, input.kept))
  const flat = Int32Array.from([...found].flatMap((block) => blocks.members[block] ?? []))
  const { order, late } = pullTogether(ids, operations, reasons, flat)
  const parts = costParts(prices, order)
  const names = [...order].map((i) => ids[i] as OperationId)
  return ok({
    order: names,
    late,
    report: {
      cost: tidy(total(parts)),
      parts: Object.fromEntries(Object.entries(parts).map(([name, cost]) => [name, tidy(cost)])),
      setAside: setAsideBy(names, reasons),
      method: methodOf(problem, found, input.kept.length > 0),
    },
  })
}

/** Digits compare as numbers: base-2 comes before base-10. */
function keyed(operation: Operation) {
  return { operation, key: operation.id.replace(/\d+/g, (digits) => digits.padStart(12, '0')) }
}

function byKey(a: ReturnType<typeof keyed>, b: ReturnType<typeof keyed>): number {
  if (a.key !== b.key) return a.key < b.key ? -1 : 1
  return a.operation.id < b.operation.id ? -1 : 1
}

function arrangeBlocks(problem: Problem, stages: Int32Array, kept: Int32Array | null): Int32Array {
  const fresh = freshOrder(problem, stages)
  return kept === null ? fresh : keepOrder(problem, kept, fresh)
}

/** The local optimum reached from the list schedule; should plain stage order beat it, the one reached from there. */
function freshOrder(problem: Problem, stages: Int32Array): Int32Array {
  const order = listSchedule(problem)
  improve(problem, order)
  const plain = byPlace(problem, stages)
  if (costOf(problem, plain) >= costOf(problem, order)) return order
  improve(problem, plain)
  return plain
}

/**
 * By block, the place of its first member in the accepted order, those that are done before all others; null when
 * nothing was accepted.
 */
function keptPlaces(
  operations: readonly Operation[],
  blocks: Blocks,
  accepted: readonly OperationId[],
): Int32Array | null {
  if (accepted.length === 0) return null
  const numbers = new Map(operations.map((operation, i) => [operation.id, i]))
  const kept = new Int32Array(blocks.members.length).fill(-1)
  accepted.forEach((id, place) => {
    const number = numbers.get(id)
    if (number === undefined) return
    const block = blocks.of[number] as number
    const done = (blocks.members[block] ?? []).every((i) => operations[i]?.done === true)
    if (kept[block] === -1) kept[block] = done ? place : place + accepted.length
  })
  return kept.some((place) => place !== -1) ? kept : null
}

function setAsideBy(order: readonly OperationId[], reasons: readonly OrderReason[]): readonly string[] {
  const at = new Map(order.map((id, i) => [id, i]))
  return reasons.flatMap((reason) => {
    const before = at.get(reason.before)
    const after = at.get(reason.after)
    const kept = reason.hard || before === undefined || after === undefined || before < after
    return kept ? [] : [reason.id]
  })
}

const tidy = (minutes: number) => Math.round(minutes * 100) / 100 + 0

function methodOf(problem: Problem, order: Int32Array, wasKept: boolean): string {
  const least = tidy(leastOfPairs(problem))
  const found = wasKept
    ? 'the order last accepted, changed only where it must be, and what is new put in where it costs least'
    : 'list scheduling, then local search: stretches of one to three blocks moved until no move helps'
  const cost = tidy(costOf(problem, order))
  return `${found}; not proved to be the best: of ${cost} min reckoned, no order of these operations is below ${least} min`
}
