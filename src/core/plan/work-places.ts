import { valueOf } from '../figure'
import type { Operation, PlanPoint, UnitPlan, WallFrame } from './types'

/** Where each operation is done on the plan of the room: at its unit, else in the middle of its wall; else anywhere. */
export function workPlaces(
  operations: readonly Operation[],
  units: readonly UnitPlan[],
  walls: readonly WallFrame[],
): ReadonlyMap<string, PlanPoint> {
  const unitAt = new Map(
    units.flatMap((u) => (u.pose === null ? [] : ([[u.unit, { x: u.pose.x, y: u.pose.y }]] as const))),
  )
  const wallAt = new Map(walls.flatMap((w) => middleOf(w)))
  const places = new Map<string, PlanPoint>()
  for (const { id, on, wall } of operations) {
    const unit = on.find((o) => unitAt.has(o))
    const at = unit !== undefined ? unitAt.get(unit) : wall === null ? undefined : wallAt.get(wall)
    if (at !== undefined) places.set(id, at)
  }
  return places
}

function middleOf({
  wall,
  origin,
  alongDir,
  length,
  placed,
}: WallFrame): readonly (readonly [string, PlanPoint])[] {
  const along = valueOf(length)
  if (!placed || along === undefined) return []
  return [[wall, { x: origin.x + (alongDir.x * along) / 2, y: origin.y + (alongDir.y * along) / 2 }]]
}
