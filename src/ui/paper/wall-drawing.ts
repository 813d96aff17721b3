import { hasValue, valueOf } from '../../core/figure'
import type { Plan, UnitPlan, WallFrame } from '../../core/plan/types'

/** What a wall drawing spans, mm: along the wall, and heights re the line. */
export interface Span {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** The span of one wall: its length, its ceiling if read, and everything drawn on it. Null: its length is not known. */
export function spanOf(plan: Plan, frame: WallFrame): Span | null {
  const length = valueOf(frame.length)
  if (length === undefined) return null
  const units = unitsOn(plan, frame.wall)
  const tops = units.map((u) => valueOf(u.top)).filter((v) => v !== undefined)
  const floors = plan.floor.points.flatMap((p) => (hasValue(p.z) ? [p.z.value] : []))
  return {
    left: 0,
    right: length,
    bottom: Math.min(-950, ...floors) - 20,
    top: valueOf(frame.ceiling) ?? Math.max(1200, ...tops) + 120,
  }
}

export function unitsOn(plan: Plan, wall: string): readonly UnitPlan[] {
  return plan.units.filter((u) => u.wall === wall)
}

/** Labels in one column, moved down just far enough that none touches the next. Input and output are screen heights. */
export function spread(wanted: readonly number[], apart: number): readonly number[] {
  const order = wanted.map((y, i) => ({ y, i })).sort((a, b) => a.y - b.y || a.i - b.i)
  const out = new Array<number>(wanted.length)
  let last = Number.NEGATIVE_INFINITY
  for (const { y, i } of order) {
    last = Math.max(y, last + apart)
    out[i] = last
  }
  return out
}
