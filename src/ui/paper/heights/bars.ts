import { hasValue, valueOf } from '../../../core/figure'
import type { Message } from '../../../core/message'
import type { Demand, HeightValue, HeightVariable, Plan } from '../../../core/plan/types'
import { words } from '../../words'

/** One demand on one height, as it bears on it now that the other heights are chosen: from the line, mm. */
interface DemandBar {
  readonly demand: Demand
  readonly min: number | null
  readonly max: number | null
  readonly isMet: boolean
}

/** One line of the drawing: a demand, or several of one kind that come to what all of them leave. */
export interface Bar {
  readonly id: string
  readonly title: string
  /** Of several: those that decide its ends. */
  readonly deciding: readonly Message[]
  readonly min: number | null
  readonly max: number | null
  readonly isMet: boolean
  /** The demands it stands for, one by one. */
  readonly parts: readonly DemandBar[]
}

/** Kinds of demand of which there are many, and what they are called together. */
const TOGETHER: Readonly<Record<string, string>> = {
  'heights.leg-reach': 'Reach of the legs',
  'heights.shim-floor': 'Shims under the units',
  'heights.ceiling': 'Under the ceiling',
  'heights.hook-on': 'Room to hook on',
  'heights.hook-on-mid': 'Room to hook on, the height screws as they will stay',
  'heights.plinth-cover': 'Height of the plinth',
}

/** Everything that wants something from one height, those of one kind together. */
export function barsFor(plan: Plan, value: HeightValue): readonly Bar[] {
  const groups = new Map<string, DemandBar[]>()
  for (const bar of demandBars(plan, value)) {
    const { key } = bar.demand.because
    const name = bar.isMet && TOGETHER[key] !== undefined ? key : bar.demand.id
    groups.set(name, [...(groups.get(name) ?? []), bar])
  }
  return [...groups].map(([name, bars]) =>
    bars.length === 1 ? single(bars[0] as DemandBar) : together(name, bars),
  )
}

function single(bar: DemandBar): Bar {
  const { demand, min, max, isMet } = bar
  return { id: demand.id, title: words(demand.because), deciding: [], min, max, isMet, parts: [bar] }
}

function together(name: string, bars: readonly DemandBar[]): Bar {
  const highestMin = bars.reduce<DemandBar | null>(
    (a, b) => (b.min !== null && b.min > (a?.min ?? Number.NEGATIVE_INFINITY) ? b : a),
    null,
  )
  const lowestMax = bars.reduce<DemandBar | null>(
    (a, b) => (b.max !== null && b.max < (a?.max ?? Number.POSITIVE_INFINITY) ? b : a),
    null,
  )
  const deciding = [...new Set([highestMin, lowestMax])].flatMap((b) =>
    b === null ? [] : [b.demand.because],
  )
  return {
    id: name,
    title: `${TOGETHER[name] ?? name}, at ${bars.length} places`,
    deciding,
    min: highestMin?.min ?? null,
    max: lowestMax?.max ?? null,
    isMet: true,
    parts: bars,
  }
}

/** The demands one by one, in the plan's order. */
function demandBars(plan: Plan, { of }: HeightValue): readonly DemandBar[] {
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
