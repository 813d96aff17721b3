import type { Plan, PlanPoint, WallFrame } from '../plan/types'
import { type FloorAt, floorAt } from './floor'
import { lengthOf } from './wall-place'

/** The room as far as it can be drawn: walls with a place, the floor between them, and how high the walls go. */
export interface RoomShape {
  readonly walls: readonly WallFrame[]
  /** Corners of the floor in order; empty without a placed wall. */
  readonly outline: readonly PlanPoint[]
  readonly floorAt: FloorAt
  /** Floor where it was read; where it wasn't, a level to draw at. */
  readonly floorOr: (at: PlanPoint) => number
  readonly isFloorKnown: boolean
  /** Whether a wall that faces this way lies in the light. */
  readonly isLit: (outDir: PlanPoint) => boolean
  /** Top of a wall to draw, and whether anybody read it. */
  readonly topOf: (wall: WallFrame) => { readonly z: number; readonly isKnown: boolean }
}

/** Depth of floor shown in front of a single wall, mm. */
const SHOWN_FLOOR = 2600
/** Wall shown above the highest thing on it when no ceiling was read, mm. */
const OVERHEAD = 250

const endOf = (w: WallFrame): PlanPoint => ({
  x: w.origin.x + lengthOf(w) * w.alongDir.x,
  y: w.origin.y + lengthOf(w) * w.alongDir.y,
})
const beyond = (p: PlanPoint, dir: PlanPoint, by: number): PlanPoint => ({
  x: p.x + dir.x * by,
  y: p.y + dir.y * by,
})

function outlineOf(walls: readonly WallFrame[]): readonly PlanPoint[] {
  const [first] = walls
  const last = walls[walls.length - 1]
  if (first === undefined || last === undefined) return []
  const corners = [...walls.map((w) => w.origin), endOf(last)]
  if (walls.length === 1) {
    return [
      ...corners,
      beyond(endOf(last), last.outDir, SHOWN_FLOOR),
      beyond(first.origin, first.outDir, SHOWN_FLOOR),
    ]
  }
  if (walls.length === 2) return [...corners, beyond(first.origin, last.alongDir, lengthOf(last))]
  const gap = Math.hypot(endOf(last).x - first.origin.x, endOf(last).y - first.origin.y)
  return gap < 50 ? corners.slice(0, -1) : corners
}

export function roomShape(plan: Plan): RoomShape {
  const walls = plan.walls.filter((w) => w.placed && w.length.state !== 'unknown')
  const at = floorAt(plan.floor)
  const tops = plan.units.flatMap((u) => (u.top.state === 'unknown' ? [] : [u.top.value]))
  const ceilings = walls.flatMap((w) => (w.ceiling.state === 'unknown' ? [] : [w.ceiling.value]))
  const unread = ceilings.length > 0 ? Math.max(...ceilings) : Math.max(1200, ...tops) + OVERHEAD
  const [origin] = walls
  const unitsOn = (w: WallFrame) => plan.units.filter((u) => u.wall === w.wall).length
  const main = walls.reduce<WallFrame | undefined>(
    (best, w) => (best === undefined || unitsOn(w) > unitsOn(best) ? w : best),
    undefined,
  )
  const undersides = plan.units.flatMap((u) => (u.underside.state === 'unknown' ? [] : [u.underside.value]))
  const guess = Math.min(-900, ...undersides) - 100
  return {
    walls,
    outline: outlineOf(walls),
    floorAt: at,
    floorOr: (p) => at(p) ?? guess,
    isFloorKnown: origin !== undefined && at(origin.origin) !== null,
    isLit: (d) => main === undefined || Math.abs(d.x * main.outDir.x + d.y * main.outDir.y) > Math.SQRT1_2,
    topOf: (w) =>
      w.ceiling.state === 'unknown' ? { z: unread, isKnown: false } : { z: w.ceiling.value, isKnown: true },
  }
}
