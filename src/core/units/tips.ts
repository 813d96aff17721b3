import { hasValue, type InputId } from '../figure'
import { convexHull } from '../geometry/convex-hull'
import { distanceToEdges, pointInPolygon, signedArea } from '../geometry/polygon'
import { factId } from '../kitchen/fact-id'
import type { Unit } from '../kitchen/schema'
import type { LocalBox, PlanPoint, UnitPlan } from '../plan/types'

/** Nearer the line between two feet than this its weight is not over them: fronts and hands shift it. Common practice. */
const LEAST_INSIDE = 10

/**
 * Whether a unit set down on its legs and let go may tip: its weight, taken as spread evenly through its carcass, does not
 * lie over the area between its feet. False where a foot has no place, and for a unit that does not stand on legs.
 */
export function tipsOnItsFeet(unit: Pick<Unit, 'stands' | 'feet'>, plan: Pick<UnitPlan, 'solid'>): boolean {
  if (unit.stands !== 'legs' || unit.feet.length === 0 || plan.solid.length === 0) return false
  const feet = unit.feet.flatMap(({ x, y }) =>
    hasValue(x) && hasValue(y) ? [{ x: x.value, y: y.value }] : [],
  )
  if (feet.length < unit.feet.length) return false
  const between = convexHull(feet)
  const weight = middleOf(plan.solid)
  if (between.length < 3 || signedArea(between) < 1) return true
  return !pointInPolygon(between, weight) || distanceToEdges(between, weight) < LEAST_INSIDE
}

function middleOf(boxes: readonly LocalBox[]): PlanPoint {
  const size = (b: LocalBox) => (b.x1 - b.x0) * (b.y1 - b.y0) * (b.z1 - b.z0)
  const total = boxes.reduce((sum, b) => sum + size(b), 0)
  const mean = (of: (b: LocalBox) => number) => boxes.reduce((sum, b) => sum + size(b) * of(b), 0) / total
  return { x: mean((b) => (b.x0 + b.x1) / 2), y: mean((b) => (b.y0 + b.y1) / 2) }
}

/** The facts that make it tip. */
export function tippingFacts({ id, feet }: Pick<Unit, 'id' | 'feet'>): readonly InputId[] {
  return [
    factId('units', id, 'stands'),
    factId('units', id, 'feet'),
    ...feet.flatMap((foot) => [...foot.x.from, ...foot.y.from]),
  ]
}
