import { hasValue } from '../../core/figure'
import type { Operation, Plan, WallId } from '../../core/plan/types'

/** A stretch of wall, mm: along from its left corner, heights from the line. */
interface Span {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** The middle of what an operation does on a wall: of its holes, or its units, or of all of the wall. */
export function middleOf(
  plan: Plan,
  operation: Operation,
  wall: WallId,
  whole: Span,
): { readonly along: number; readonly height: number } {
  const holes = plan.holes.flatMap(({ id, wall: on, along, height }) =>
    on === wall && operation.holes.includes(id) && hasValue(along) && hasValue(height)
      ? [{ left: along.value, right: along.value, bottom: height.value, top: height.value }]
      : [],
  )
  const units = plan.units.flatMap(({ unit, wall: on, left, right, underside, top }) => {
    const isIts = on === wall && operation.on.includes(unit)
    return isIts && hasValue(left) && hasValue(right) && hasValue(underside) && hasValue(top)
      ? [{ left: left.value, right: right.value, bottom: underside.value, top: top.value }]
      : []
  })
  const [first, ...others] = holes.length > 0 ? holes : units.length > 0 ? units : [whole]
  const all = others.reduce(
    (a, b) => ({
      left: Math.min(a.left, b.left),
      right: Math.max(a.right, b.right),
      bottom: Math.min(a.bottom, b.bottom),
      top: Math.max(a.top, b.top),
    }),
    first ?? whole,
  )
  return { along: (all.left + all.right) / 2, height: (all.bottom + all.top) / 2 }
}
