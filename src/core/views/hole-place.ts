import type { Standing, StandingUnit } from '../plan/standing-at'
import type { Hole, Plan, RoomPoint } from '../plan/types'
import { insideFace } from './carcass'
import { onWall, placedWall } from './wall-place'

/** The rail or plate a hole goes through stands out this far at most. */
const ON_RAIL = 12

/** Where a hole is seen, and what it is seen on. */
export interface HolePlace {
  readonly at: RoomPoint
  /** The unit it is drilled through, when that stands there; or one that stands before it. */
  readonly inside: StandingUnit | null
  readonly behind: StandingUnit | null
}

/** Where a hole shows: on the wall, on its rail, or on the back of the unit it goes through. Null: no place known. */
export function holePlace(plan: Plan, standing: Standing, hole: Hole): HolePlace | null {
  const wall = placedWall(plan, hole.wall)
  const { along, height } = hole
  if (wall === undefined || along.state === 'unknown' || height.state === 'unknown') return null
  const before = standing.units.filter((u) => covers(u, hole, along.value, height.value))
  const inside = before.find((u) => hole.for.includes(u.unit.unit) && isThroughUnit(hole)) ?? null
  const behind = before.find((u) => u !== inside) ?? null
  const stands = inside === null ? 0 : outOf(inside, wall.origin, wall.outDir)
  const onMetal = hole.purpose === 'rail' || hole.purpose === 'plate' ? ON_RAIL : 3
  const out = inside === null ? onMetal : stands + insideFace(inside.unit, height.value - inside.pose.z)
  const [x, y, z] = onWall(wall)(along.value, out, height.value)
  return { at: { x, y, z }, inside, behind }
}

const isThroughUnit = (hole: Hole) =>
  hole.purpose !== 'rail' && hole.purpose !== 'plate' && hole.purpose !== 'cleat'

function outOf(
  { pose }: StandingUnit,
  origin: { x: number; y: number },
  out: { x: number; y: number },
): number {
  return (pose.x - origin.x) * out.x + (pose.y - origin.y) * out.y
}

/** Whether a unit stands or hangs where it is meant to be. */
export function isInPlace({ unit, pose, tilt }: StandingUnit): boolean {
  if (tilt !== null || unit.pose === null) return false
  return Math.hypot(pose.x - unit.pose.x, pose.y - unit.pose.y, pose.z - unit.pose.z) <= 1
}

/** A unit that is in its place in front of that spot of its wall. */
function covers(u: StandingUnit, hole: Hole, along: number, height: number): boolean {
  const { unit } = u
  if (unit.wall !== hole.wall || unit.kind === 'island' || !isInPlace(u)) return false
  const { left, right, underside, top } = unit
  if (left.state === 'unknown' || right.state === 'unknown') return false
  if (underside.state === 'unknown' || top.state === 'unknown') return false
  return left.value <= along && along <= right.value && underside.value <= height && height <= top.value
}
