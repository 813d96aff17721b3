import { allMinimalConflicts, leastRepairs } from '../difference/conflicts'
import { type Constraint, type ConstraintGroup, isConsistent } from '../difference/network'
import { shortestConflict } from '../difference/shortest-conflict'
import type { Operation, OrderConflict, OrderReason, OrderRepair } from '../plan/types'
import { type Blocks, blocksOf } from './blocks'
import { heldWithin } from './graph'
import { compareReasons, holds } from './kinds'
import { quickXplain } from './quick-xplain'

/**
 * Contradictions among the wishes that must hold, beside the hard reasons of this kitchen. Time is what is reckoned
 * with: each operation takes its typical minutes, `end(a) + least wait ≤ start(b)`, `start(b) − end(a) ≤ longest wait`.
 * Operations of a held unit are one piece of time, for nothing may come between them.
 */
export interface WishConflicts {
  readonly conflicts: readonly OrderConflict[]
  readonly repairs: readonly OrderRepair[]
}

const none: WishConflicts = { conflicts: [], repairs: [] }

/** Every contradiction with nothing to spare, and every way of giving up as few wishes as possible. */
export function wishConflicts(
  operations: readonly Operation[],
  hard: readonly OrderReason[],
  wishes: readonly OrderReason[],
): WishConflicts {
  const musts = wishes.filter((reason) => reason.hard)
  if (musts.length === 0) return none
  const clock = clockOf(operations, hard)
  const background = hard.filter((reason) => !holds(reason)).flatMap((reason) => constraintsOf(clock, reason))
  const groups = [...new Set(musts.map((reason) => reason.rule))].map(
    (id): ConstraintGroup => ({
      id,
      constraints: musts
        .filter((reason) => reason.rule === id)
        .flatMap((reason) => constraintsOf(clock, reason)),
    }),
  )
  const sets = allMinimalConflicts(groups, background)
  // Reasons that contradict each other without any wish are no matter of the wishes: they are told as loops.
  if (sets.length === 0 || sets.some((set) => set.length === 0)) return none
  const conflicts = sets.map((set): OrderConflict => {
    const its = musts.filter((reason) => set.includes(reason.rule))
    return { wishes: set, reasons: reasonsAgainst(its, hard, background, clock) }
  })
  return { conflicts, repairs: leastRepairs(groups, background).map((drop) => ({ drop })) }
}

/** When each operation starts within its block, and how long blocks take. */
interface Clock {
  readonly blocks: Blocks
  readonly numbers: ReadonlyMap<string, number>
  readonly start: Float64Array
  readonly length: Float64Array
  readonly took: Float64Array
}

function clockOf(operations: readonly Operation[], hard: readonly OrderReason[]): Clock {
  const ids = operations.map((operation) => operation.id)
  const blocks = blocksOf(ids, hard)
  const start = new Float64Array(ids.length)
  const took = Float64Array.from(operations, (operation) => operation.minutes.typical)
  const length = Float64Array.from(blocks.members, (members) => {
    let at = 0
    for (const i of members) {
      start[i] = at
      at += took[i] as number
    }
    return at
  })
  return { blocks, numbers: new Map(ids.map((id, i) => [id, i])), start, length, took }
}

/** A reason on the clock: its whole blocks one after the other, its waits between the operations themselves. */
function constraintsOf(clock: Clock, reason: OrderReason): readonly Constraint[] {
  const { blocks, numbers, start, length, took } = clock
  const a = numbers.get(reason.before)
  const b = numbers.get(reason.after)
  if (a === undefined || b === undefined) return []
  const [A, B] = [blocks.of[a] as number, blocks.of[b] as number]
  const end = (start[a] as number) + (took[a] as number)
  const begin = start[b] as number
  const name = (block: number) => `block-${block}`
  if (A === B) {
    const meets = begin >= end + reason.minLag && (reason.maxLag === null || begin - end <= reason.maxLag)
    return meets ? [] : [{ id: reason.id, from: name(A), to: name(A), most: -1 }]
  }
  const least = Math.max(length[A] as number, end + reason.minLag - begin)
  return [
    { id: reason.id, from: name(B), to: name(A), most: -least },
    ...(reason.maxLag === null
      ? []
      : [{ id: reason.id, from: name(A), to: name(B), most: end + reason.maxLag - begin }]),
  ]
}

/**
 * The hard reasons that contradict some wishes: those on the shortest ring, as few of them as will do, and what holds
 * together the blocks the ring runs through.
 */
function reasonsAgainst(
  wishes: readonly OrderReason[],
  hard: readonly OrderReason[],
  background: readonly Constraint[],
  clock: Clock,
): readonly string[] {
  const wished = wishes.flatMap((reason) => constraintsOf(clock, reason))
  const onRing = ringIn([...background, ...wished], hard)
  const facts = [...onRing].sort(compareReasons)
  const holdsWith = (some: readonly OrderReason[]) =>
    isConsistent([...some.flatMap((reason) => constraintsOf(clock, reason)), ...wished])
  const needed = quickXplain(facts, holdsWith) ?? []
  const its = ringIn([...needed.flatMap((reason) => constraintsOf(clock, reason)), ...wished], wishes)
  const { blocks, numbers } = clock
  const held = heldWithin([...needed, ...its], hard.filter(holds), (id) => blocks.of[numbers.get(id) ?? -1])
  return [...needed, ...held].map((reason) => reason.id)
}

/** Of some reasons, those on the shortest ring of constraints that cannot hold. */
function ringIn(constraints: readonly Constraint[], reasons: readonly OrderReason[]): readonly OrderReason[] {
  const ring = new Set(shortestConflict(constraints)?.constraints ?? [])
  return reasons.filter((reason) => ring.has(reason.id))
}
