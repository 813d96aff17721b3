import type { Constraint } from '../difference/network'
import { type Figure, hasValue, type ValueFigure } from '../figure'
import type { Demand, HeightVariable } from '../plan/types'

/** Which demand, and which end of it, a constraint stands for. */
export interface Limit {
  readonly demand: Demand
  readonly figure: ValueFigure
}

/** Demands on heights as difference constraints: "at least" and "at most" are one each. */
export interface DemandNetwork {
  readonly constraints: readonly Constraint[]
  readonly limits: ReadonlyMap<string, Limit>
}

/** Unknown limits make no constraint: they are told, and what rests on them is unknown. */
export function networkOfDemands(demands: readonly Demand[]): DemandNetwork {
  const constraints: Constraint[] = []
  const limits = new Map<string, Limit>()
  const add = (constraint: Constraint, demand: Demand, figure: ValueFigure) => {
    constraints.push(constraint)
    limits.set(constraint.id, { demand, figure })
  }
  for (const demand of demands) {
    const { id, from, to, min, max } = demand
    if (isValue(min)) add({ id: `${id} min`, from: to, to: from, most: -min.value + 0 }, demand, min)
    if (isValue(max)) add({ id: `${id} max`, from, to, most: max.value }, demand, max)
  }
  return { constraints, limits }
}

function isValue(figure: Figure | null): figure is ValueFigure {
  return figure !== null && hasValue(figure)
}

const FIXED = 'fixed '

/** A height that is not to be moved any more, as constraints. */
export function fixedAt(variable: HeightVariable, value: number): readonly Constraint[] {
  return [
    { id: `${FIXED}${variable} max`, from: 'line', to: variable, most: value },
    { id: `${FIXED}${variable} min`, from: variable, to: 'line', most: -value + 0 },
  ]
}

/** The height a constraint of `fixedAt` fixes; undefined for any other constraint. */
export function fixedBy(constraint: string): HeightVariable | undefined {
  if (!constraint.startsWith(FIXED)) return undefined
  return constraint.slice(FIXED.length, constraint.lastIndexOf(' ')) as HeightVariable
}
