import type { PlacingPath, UnitId } from '../plan/types'
import { knotsOf } from './components'

/**
 * Which way each unit comes in, so that all of them can: by taking the finished kitchen apart again.
 *
 * A unit can be taken out when on one of its ways no unit that is still there is in the way, and none that must come
 * after it is still there. Taking one out never shuts in another, so taking out whatever can be taken, in any order,
 * finds out for certain whether there is an order at all. Put back the other way round, that is the order.
 *
 * Blocked by Q on its way, P must come before Q: those are the arcs. With the `before` pairs they have no loop, and any
 * order that keeps them works.
 */
export interface ChosenPaths {
  readonly ok: true
  readonly chosen: ReadonlyMap<UnitId, PlacingPath>
  /** [first, then]: the second, in place, would be in the way of the first. Sorted; each once. */
  readonly arcs: readonly (readonly [UnitId, UnitId])[]
}

export interface StuckUnit {
  readonly unit: UnitId
  /** Its ways with the fewest stuck units in them, and those units. Empty: nothing fixed lets it in at all. */
  readonly leastBad: readonly { readonly path: PlacingPath; readonly blockedBy: readonly UnitId[] }[]
  /** Stuck units that are wanted after this one by a `before` pair. */
  readonly before: readonly UnitId[]
}

export interface StuckUnits {
  readonly ok: false
  readonly stuck: readonly StuckUnit[]
  /** Knots of units that all wait for one another, each whole. Stuck units in none of them wait for those that are. */
  readonly components: readonly (readonly UnitId[])[]
}

/**
 * Chooses a path for every unit, or says which cannot be ordered. `before`: [a, b] when a must be placed before b; pairs
 * of units not given are left aside, and so are units without an entry in `candidates`: mere spaces, which nothing is
 * brought to. A unit with an empty entry is trapped, and everything is stuck with it: leave those out to order the rest.
 *
 * Preference: a unit is taken out on a lesser way only when no unit can be taken out on a better one; ties by id.
 */
export function choosePaths(
  units: readonly UnitId[],
  candidates: ReadonlyMap<UnitId, readonly PlacingPath[]>,
  before: readonly (readonly [UnitId, UnitId])[],
): ChosenPaths | StuckUnits {
  const there = new Set(units.filter((unit) => candidates.has(unit)).sort(byId))
  const waiting = followersOf(there, before)
  const chosen = new Map<UnitId, PlacingPath>()
  while (there.size > 0) {
    const next = nextOut(there, candidates, waiting)
    if (next === null) return stuckUnits(there, candidates, waiting)
    chosen.set(next.unit, next.path)
    there.delete(next.unit)
  }
  return { ok: true, chosen: sortedById(chosen), arcs: arcsOf(chosen) }
}

function byId(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

function sortedById(chosen: ReadonlyMap<UnitId, PlacingPath>): ReadonlyMap<UnitId, PlacingPath> {
  return new Map([...chosen].sort(([a], [b]) => byId(a, b)))
}

/** By unit, those that must come after it. */
function followersOf(
  units: ReadonlySet<UnitId>,
  before: readonly (readonly [UnitId, UnitId])[],
): ReadonlyMap<UnitId, readonly UnitId[]> {
  const followers = new Map<UnitId, UnitId[]>()
  for (const [first, then] of before) {
    if (!units.has(first) || !units.has(then)) continue
    followers.set(first, [...(followers.get(first) ?? []), then])
  }
  return followers
}

/** The unit to be taken out next: on the best way open to any, ties by id; null when none can be. */
function nextOut(
  there: ReadonlySet<UnitId>,
  candidates: ReadonlyMap<UnitId, readonly PlacingPath[]>,
  waiting: ReadonlyMap<UnitId, readonly UnitId[]>,
): { readonly unit: UnitId; readonly path: PlacingPath } | null {
  let best: { readonly unit: UnitId; readonly path: PlacingPath; readonly rank: number } | null = null
  for (const unit of there) {
    if (waiting.get(unit)?.some((follower) => there.has(follower))) continue
    const ways = candidates.get(unit) ?? []
    const rank = ways.findIndex((path) => isOpen(path, there))
    const path = ways[rank]
    if (path === undefined || (best !== null && best.rank <= rank)) continue
    best = { unit, path, rank }
    if (rank === 0) break
  }
  return best
}

function isOpen(path: PlacingPath, there: ReadonlySet<UnitId>): boolean {
  return path.blockedBy.every((unit) => unit === path.unit || !there.has(unit))
}

function arcsOf(chosen: ReadonlyMap<UnitId, PlacingPath>): ChosenPaths['arcs'] {
  return [...chosen.values()]
    .flatMap((path) => path.blockedBy.map((blocker) => [path.unit, blocker] as const))
    .filter(([first, then]) => first !== then && chosen.has(then))
    .sort(([a, b], [c, d]) => byId(a, c) || byId(b, d))
}

function stuckUnits(
  there: ReadonlySet<UnitId>,
  candidates: ReadonlyMap<UnitId, readonly PlacingPath[]>,
  waiting: ReadonlyMap<UnitId, readonly UnitId[]>,
): StuckUnits {
  const stuck = [...there].map((unit) =>
    stuckUnit(unit, there, candidates.get(unit) ?? [], waiting.get(unit) ?? []),
  )
  const number = new Map(stuck.map(({ unit }, i) => [unit, i]))
  const arcs = stuck.map(({ before, unit }) => {
    const blockers = (candidates.get(unit) ?? []).flatMap((path) => path.blockedBy)
    return [...new Set([...blockers, ...before])].flatMap((other) => number.get(other) ?? [])
  })
  const names = stuck.map(({ unit }) => unit)
  const components = knotsOf(arcs).map((knot) => knot.flatMap((i) => names[i] ?? []))
  return { ok: false, stuck, components }
}

function stuckUnit(
  unit: UnitId,
  there: ReadonlySet<UnitId>,
  ways: readonly PlacingPath[],
  followers: readonly UnitId[],
): StuckUnit {
  const blocked = ways.map((path) => ({
    path,
    blockedBy: path.blockedBy.filter((other) => other !== unit && there.has(other)),
  }))
  const fewest = Math.min(...blocked.map(({ blockedBy }) => blockedBy.length))
  return {
    unit,
    leastBad: blocked.filter(({ blockedBy }) => blockedBy.length === fewest),
    before: followers.filter((other) => there.has(other)).sort(byId),
  }
}
