import type { Standing, StandingUnit } from '../plan/standing-at'
import { extentOf, roomPoint } from '../plan/travel-path'
import type { RoomPoint, UnitPlan } from '../plan/types'
import { ontoPicture } from './covered-by'
import type { View, ViewSubject } from './view'

/** With no wall behind them these would hang in the air. */
const HUNG: ReadonlySet<string> = new Set(['wall', 'corner-wall', 'bridging'])

/**
 * Of the units on walls that are left out of a view, those that stand beside what it is about and not before it: the part
 * in hand wherever it comes by, its place and its fixings.
 */
export function keptIn(
  standing: Standing,
  { bodies, place, fixings }: Pick<ViewSubject, 'bodies' | 'place' | 'fixings'>,
  view: View,
): readonly string[] {
  if (view.hidden.length === 0) return []
  const onto = ontoPicture(view.eye, view.target)
  const around = (points: readonly RoomPoint[]) => {
    const spots = points.map(onto)
    const [xs, ys] = [spots.map((p) => p.x), spots.map((p) => p.y)]
    return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) }
  }
  if (bodies.length === 0) return []
  const about = [...bodies, [...place, ...fixings].map(({ at }) => at)]
    .filter((b) => b.length > 0)
    .map(around)
  return standing.units
    .filter(
      (u) => view.hidden.includes(u.unit.wall) && !u.isInHand && u.tilt === null && !HUNG.has(u.unit.kind),
    )
    .filter((u) => {
      const a = around(cornersOf(u))
      return about.every((b) => a.x1 < b.x0 || b.x1 < a.x0 || a.y1 < b.y0 || b.y1 < a.y0)
    })
    .map((u) => u.unit.unit)
}

function cornersOf(u: StandingUnit): readonly RoomPoint[] {
  const extent = extentOf(u.unit.solid)
  return [0, extent.width].flatMap((x) =>
    [0, extent.depth].flatMap((y) => [0, extent.height].map((z) => roomPoint(u, extent, { x, y, z }))),
  )
}

/** What a picture leaves out: walls, with what is on them; and the units that stay although their wall goes. */
export interface LeftOut {
  readonly walls: ReadonlySet<string>
  readonly kept: ReadonlySet<string>
}
export const nothingLeftOut: LeftOut = { walls: new Set(), kept: new Set() }

export function leftOutOf({ hidden, kept = [] }: Pick<View, 'hidden' | 'kept'>): LeftOut {
  return { walls: new Set(hidden), kept: new Set(kept) }
}

/** Whether a unit goes with its wall. */
export function goesWithWall(unit: UnitPlan, { walls, kept }: LeftOut): boolean {
  return walls.has(unit.wall) && !kept.has(unit.unit) && unit.kind !== 'island'
}
