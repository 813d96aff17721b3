import { type Constraint, isConsistent } from '../difference/network'
import { type Conflict, shortestConflict } from '../difference/shortest-conflict'
import { derive, type Figure, hasValue, quantise } from '../figure'
import type { Demand, HeightConflict, HeightVariable } from '../plan/types'
import { type DemandNetwork, fixedAt, fixedBy, networkOfDemands } from './demand-network'
import { ruleOf } from './demands/demand'
import { YIELDS_FIRST } from './demands/index'
import { USUAL_RULES } from './demands/usual-worktop'
import type { Settled } from './settled'

/** Which demands can be met together, and what had to give. */
export interface Kept {
  readonly demands: readonly Demand[]
  readonly conflicts: readonly HeightConflict[]
  /** Hard demands that are not met. */
  readonly dropped: readonly Demand[]
  /** Preferred demands that are not met. */
  readonly givenUp: readonly Demand[]
}

/**
 * Sorts out which demands are kept: hard ones as far as they can hold together, then preferred ones as long as each
 * still fits, the first in the list first, so that the latest is the first to be given up.
 */
export function keepWhatHolds(demands: readonly Demand[], settled: Settled): Kept {
  const free = demands.filter((demand) => !isBetweenSettled(demand, settled))
  const overruled = demands.flatMap((demand) => againstSettled(demand, settled))
  const fixed = [...settled.heights].flatMap(([variable, height]) =>
    hasValue(height) ? fixedAt(variable, height.value) : [],
  )
  const hard = free.filter((demand) => demand.hard)
  const conflicts = [
    ...settled.conflicts,
    ...overruled.map(({ conflict }) => conflict),
    ...disjointConflicts(hard, fixed, settled),
  ]
  const dropped = dropUntilConsistent(hard, fixed)
  const kept = hard.filter((demand) => !dropped.includes(demand))
  const givenUp: Demand[] = []
  for (const preferred of free.filter((demand) => !demand.hard)) {
    const tried = [...kept, toItsMiddle(preferred)]
    if (isConsistent([...networkOfDemands(tried).constraints, ...fixed])) kept.push(preferred)
    else givenUp.push(preferred)
  }
  const lost = overruled.map(({ demand }) => demand)
  return {
    demands: kept,
    conflicts,
    dropped: [...lost.filter(({ hard }) => hard), ...dropped],
    givenUp: [...lost.filter(({ hard }) => !hard), ...givenUp],
  }
}

/**
 * What is only usual is kept where its middle itself can be: then it leaves a good part of its room, and never pushes a
 * height against the end of what must be.
 */
function toItsMiddle(preferred: Demand): Demand {
  const { min, max } = preferred
  if (!USUAL_RULES.has(ruleOf(preferred)) || min === null || max === null) return preferred
  const middle = derive('mm', preferred.basis, [min, max], (a, b) => (a + b) / 2)
  return { ...preferred, min: middle, max: middle }
}

function heightOf(variable: HeightVariable, settled: Settled): Figure | 'line' | undefined {
  return variable === 'line' ? 'line' : settled.heights.get(variable)
}

/** Nothing is left to choose between two heights that stand: such a demand is met or it is not. */
function isBetweenSettled({ from, to }: Demand, settled: Settled): boolean {
  return heightOf(from, settled) !== undefined && heightOf(to, settled) !== undefined
}

/** A demand that heights which stand already miss, by more than the precision they were read with. */
function againstSettled(demand: Demand, settled: Settled) {
  if (!isBetweenSettled(demand, settled) || ruleOf(demand) === 'achieved') return []
  const figureAt = (variable: HeightVariable) => {
    const height = heightOf(variable, settled)
    return height === 'line' || height === undefined || !hasValue(height) ? undefined : height
  }
  const [from, to] = [figureAt(demand.from), figureAt(demand.to)]
  const lies = (to?.value ?? 0) - (from?.value ?? 0)
  const slack = (to?.pm ?? 0) + (from?.pm ?? 0)
  const { min, max } = demand
  const under = min !== null && hasValue(min) ? min.value - lies : 0
  const over = max !== null && hasValue(max) ? lies - max.value : 0
  const by = quantise(Math.max(under, over))
  if (by <= slack) return []
  const standing = [...(settled.by.get(demand.from) ?? []), ...(settled.by.get(demand.to) ?? [])]
  const demands = [...new Set([...standing, demand.id])].sort()
  return [{ demand, conflict: { demands, by } }]
}

/** The demands a contradiction runs through, those that a fixed height stands on among them. */
function demandsIn({ constraints }: Conflict, network: DemandNetwork): readonly Demand[] {
  return constraints.flatMap((id) => {
    const limit = network.limits.get(id)
    return limit === undefined ? [] : [limit.demand]
  })
}

/** The shortest contradictions that share no demand, shortest first. */
function disjointConflicts(
  hard: readonly Demand[],
  fixed: readonly Constraint[],
  settled: Settled,
): readonly HeightConflict[] {
  const conflicts: HeightConflict[] = []
  let left = hard
  for (;;) {
    const network = networkOfDemands(left)
    const conflict = shortestConflict([...network.constraints, ...fixed])
    if (conflict === undefined) return conflicts
    const within = demandsIn(conflict, network)
    const standing = conflict.constraints.flatMap((id) => {
      const variable = fixedBy(id)
      return variable === undefined ? [] : (settled.by.get(variable) ?? [])
    })
    const ids = [...new Set([...within.map(({ id }) => id), ...standing])].sort()
    conflicts.push({ demands: ids, by: conflict.by })
    left = left.filter((demand) => !within.includes(demand))
  }
}

/**
 * Hard demands dropped to go on: from each contradiction one whose leaving mends everything, if there is one, else the
 * one that yields first.
 */
function dropUntilConsistent(hard: readonly Demand[], fixed: readonly Constraint[]): readonly Demand[] {
  const dropped: Demand[] = []
  let left = hard
  for (;;) {
    const network = networkOfDemands(left)
    const conflict = shortestConflict([...network.constraints, ...fixed])
    if (conflict === undefined) return dropped
    const candidates = [...demandsIn(conflict, network)].sort(byYielding)
    const without = (one: Demand) => left.filter((demand) => demand !== one)
    const mends = (one: Demand) => isConsistent([...networkOfDemands(without(one)).constraints, ...fixed])
    const yields = candidates.find(mends) ?? (candidates[0] as Demand)
    dropped.push(yields)
    left = without(yields)
  }
}

function byYielding(a: Demand, b: Demand): number {
  const rank = (demand: Demand) => YIELDS_FIRST.indexOf(ruleOf(demand))
  return rank(a) - rank(b) || (a.id < b.id ? -1 : 1)
}
