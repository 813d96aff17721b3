import { hasValue, valueOf } from '../../../core/figure'
import type { Demand, HeightValue, HeightVariable, Plan } from '../../../core/plan/types'

/** One demand on one height, as it bears on it now that the other heights are chosen: from the line, mm. */
export interface Bar {
  readonly demand: Demand
  readonly min: number | null
  readonly max: number | null
  readonly isMet: boolean
}

/** Everything that wants something from one height: unmet ones among them, in the plan's order. */
export function barsFor(plan: Plan, { of }: HeightValue): readonly Bar[] {
  const at = (variable: HeightVariable): number | undefined => heightOf(plan, variable)
  return plan.heights.demands.flatMap((demand) => {
    const isMet = !plan.heights.unmet.includes(demand.id)
    const min = demand.min === null ? null : valueOf(demand.min)
    const max = demand.max === null ? null : valueOf(demand.max)
    if (min === undefined || max === undefined || (min === null && max === null)) return []
    if (demand.to === of) {
      const other = at(demand.from)
      return other === undefined
        ? []
        : [{ demand, isMet, min: min === null ? null : other + min, max: max === null ? null : other + max }]
    }
    if (demand.from === of) {
      const other = at(demand.to)
      return other === undefined
        ? []
        : [{ demand, isMet, min: max === null ? null : other - max, max: min === null ? null : other - min }]
    }
    return []
  })
}

function heightOf(plan: Plan, variable: HeightVariable): number | undefined {
  if (variable === 'line') return 0
  const value = plan.heights.values.find((v) => v.of === variable)
  if (value !== undefined) return valueOf(value.height)
  const unit = plan.units.find((u) => `unit:${u.unit}` === variable)
  return unit !== undefined && hasValue(unit.underside) ? unit.underside.value : undefined
}

/** The stretch of heights to draw: every end that matters, the chosen height, and some air. */
export function reachOf(bars: readonly Bar[], chosen: number): readonly [number, number] {
  const ends = [chosen, ...bars.flatMap((b) => [b.min, b.max].filter((v) => v !== null))].filter(
    (v) => Math.abs(v - chosen) < 400,
  )
  const [low, high] = [Math.min(...ends), Math.max(...ends)]
  const air = Math.max(5, (high - low) * 0.12)
  return [low - air, high + air]
}

/** A round step that gives about `wanted` marks along a stretch. */
export function roundStep(length: number, wanted: number): number {
  return [1, 2, 5, 10, 20, 50, 100, 200].find((step) => length / step <= wanted) ?? 500
}
