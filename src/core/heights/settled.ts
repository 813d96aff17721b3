import { type Basis, type Figure, hasValue, quantise, type ValueFigure } from '../figure'
import { mergedIds } from '../ids'
import type { Demand, HeightConflict, HeightVariable } from '../plan/types'
import { sum } from '../survey/sum'
import { ruleOf } from './demands/demand'

/** Heights that stand already, and what follows from them by the size of carcass and worktop. */
export interface Settled {
  readonly heights: ReadonlyMap<HeightVariable, Figure>
  /** For each of them the demands it stands on: `achieved:<unit>`. */
  readonly by: ReadonlyMap<HeightVariable, readonly string[]>
  /** What was read of units of one group that cannot all be true of one height. */
  readonly conflicts: readonly HeightConflict[]
}

const reached: Basis = { kind: 'achieved' }
const follows: Basis = { kind: 'geometry', why: 'follows from a height that stands already' }
/** Sizes that carry a height on to another; wishes and preferences do not. */
const SIZES = new Set(['carcass-height', 'worktop-thickness'])

/** Reads off what was achieved on the day: those heights are no longer chosen. */
export function settle(demands: readonly Demand[]): Settled {
  const heights = new Map<HeightVariable, Figure>()
  const by = new Map<HeightVariable, readonly string[]>()
  const conflicts: HeightConflict[] = []
  const achieved = demands.filter((demand) => ruleOf(demand) === 'achieved')
  for (const variable of new Set(achieved.map(({ to }) => to))) {
    const agreed = agreeing(achieved.filter(({ to }) => to === variable))
    heights.set(variable, agreed.height)
    by.set(variable, agreed.by)
    conflicts.push(...agreed.conflicts)
  }
  carryOn(demands, heights, by)
  return { heights, by, conflicts }
}

/** The height that all readings of one underside allow, in order of their units; one that does not fit is left out. */
function agreeing(readings: readonly Demand[]) {
  let [lowest, highest] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  const kept: Demand[] = []
  const conflicts: HeightConflict[] = []
  for (const reading of [...readings].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    const [min, max] = [valueIn(reading.min), valueIn(reading.max)]
    const apart = quantise(Math.max(min - highest, lowest - max))
    if (apart > 0) {
      conflicts.push({ demands: [...kept.map(({ id }) => id), reading.id], by: apart })
      continue
    }
    lowest = Math.max(lowest, min)
    highest = Math.min(highest, max)
    kept.push(reading)
  }
  const from = mergedIds(kept.map(({ min }) => (min as Figure).from))
  const height: ValueFigure = {
    state: 'known',
    value: quantise((lowest + highest) / 2),
    pm: quantise((highest - lowest) / 2),
    unit: 'mm',
    basis: reached,
    from,
  }
  return { height, by: kept.map(({ id }) => id), conflicts }
}

function valueIn(limit: Figure | null): number {
  return limit !== null && hasValue(limit) ? limit.value : Number.NaN
}

/** From a height that stands to the next by a known size, until nothing more follows. */
function carryOn(
  demands: readonly Demand[],
  heights: Map<HeightVariable, Figure>,
  by: Map<HeightVariable, readonly string[]>,
): void {
  const sizes = demands.filter(
    (demand) =>
      SIZES.has(ruleOf(demand)) && demand.min === demand.max && demand.min !== null && hasValue(demand.min),
  )
  let moved = heights.size > 0
  while (moved) {
    moved = false
    for (const { from, to, min } of sizes) {
      const size = min as Figure
      const [below, above] = [heights.get(from), heights.get(to)]
      if ((below === undefined) === (above === undefined)) continue
      moved = true
      if (below !== undefined) {
        heights.set(to, sum('mm', follows, [below, size]))
        by.set(to, by.get(from) ?? [])
      } else if (above !== undefined) {
        heights.set(from, sum('mm', follows, [above], [size]))
        by.set(from, by.get(to) ?? [])
      }
    }
  }
}
