import { type Figure, hasValue, type InputId, sortedIds } from '../figure'
import { mergedIds } from '../ids'
import type { Demand, HeightVariable } from '../plan/types'
import { ruleOf } from './demands/demand'
import { MUST_BE_KNOWN } from './demands/index'
import type { Settled } from './settled'

/** Heights that hang together through demands: each may be moved by any demand on any of them. */
export interface Component {
  readonly heights: readonly HeightVariable[]
  /** Every input of every demand on them: change one, and the heights may change. */
  readonly from: readonly InputId[]
  /** Facts without which these heights cannot be chosen; empty when they can. */
  readonly missing: readonly InputId[]
}

/** Facts measured in the room, as against sizes, wishes and choices. */
const SURVEYED = ['walls.', 'floor.', 'ceiling', 'lines.'] as const

/**
 * Splits the heights still to be chosen into those that hang together. The line, and heights that stand already, part
 * them: they are not moved by anything.
 */
export function componentsOf(demands: readonly Demand[], settled: Settled): readonly Component[] {
  const isFixed = (variable: HeightVariable) => variable === 'line' || settled.heights.has(variable)
  const root = new Map<HeightVariable, HeightVariable>()
  const rootOf = (variable: HeightVariable): HeightVariable => {
    const up = root.get(variable) ?? variable
    return up === variable ? up : rootOf(up)
  }
  for (const { from, to } of demands) {
    const ends = [from, to].filter((variable) => !isFixed(variable))
    for (const variable of ends) if (!root.has(variable)) root.set(variable, variable)
    const [a, b] = ends
    if (a !== undefined && b !== undefined) root.set(rootOf(a), rootOf(b))
  }
  const roots = [...new Set([...root.keys()].map(rootOf))]
  return roots.map((of) => {
    const heights = [...root.keys()].filter((variable) => rootOf(variable) === of)
    return componentOf(heights, demands, settled)
  })
}

function componentOf(
  heights: readonly HeightVariable[],
  demands: readonly Demand[],
  settled: Settled,
): Component {
  const on = demands.filter(({ from, to }) => heights.includes(from) || heights.includes(to))
  const figures = on.flatMap(({ from, to, min, max }) => [
    ...(min === null ? [] : [min]),
    ...(max === null || max === min ? [] : [max]),
    ...[from, to].flatMap((end) => settled.heights.get(end) ?? []),
  ])
  return {
    heights,
    from: mergedIds(figures.map((figure) => figure.from)),
    missing: sortedIds(on.filter(mustBeKnown).flatMap(missingIn)),
  }
}

export function missingIn({ min, max }: Demand): readonly InputId[] {
  return [min, max].flatMap((limit: Figure | null) =>
    limit !== null && !hasValue(limit) ? limit.missing : [],
  )
}

export function isUnknown({ min, max }: Demand): boolean {
  return [min, max].some((limit) => limit !== null && !hasValue(limit))
}

/**
 * Whether a demand has to be known before a height can be chosen: those that say whether the units can stand, and any
 * hard demand for which something in the room was not measured. A wish without its figure is only asked about.
 */
function mustBeKnown(demand: Demand): boolean {
  if (!demand.hard || !isUnknown(demand)) return false
  const isSurveyed = (id: InputId) => SURVEYED.some((part) => id.startsWith(part))
  return MUST_BE_KNOWN.has(ruleOf(demand)) || missingIn(demand).some(isSurveyed)
}
