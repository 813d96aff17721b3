import type { Standing } from '../../core/plan/standing-at'
import type { PlanPoint, WallFrame } from '../../core/plan/types'
import type { RoomShape } from '../../core/views/room-shape'
import { palette } from '../palette'
import { type Pen, ring, type Sketch } from '../sketch'

const pen: Pen = { weight: 'fine', colour: palette.pencil, dashes: [90, 60] }

/** Floor nobody stands on now, in pencil dashes. */
export function sketchKeepClear(sketch: Sketch, standing: Standing, room: RoomShape): void {
  for (const [i, area] of clearRings(standing, room).entries()) {
    ring(
      sketch,
      `keep-clear:${i}`,
      pen,
      area.map((p) => [p.x, p.y, room.floorOr(p) + 2] as const),
    )
  }
}

/** The areas, cut off at the walls they touch. */
export function clearRings(standing: Standing, room: RoomShape): readonly (readonly PlanPoint[])[] {
  return standing.keepClear
    .map((area) => room.walls.reduce<readonly PlanPoint[]>((ring, wall) => cutAt(ring, wall), area))
    .filter((area) => area.length >= 3)
}

/** What lies on the room side of a wall; a wall that the area lies wholly beyond (round a corner) doesn't cut it. */
function cutAt(area: readonly PlanPoint[], wall: WallFrame): readonly PlanPoint[] {
  const outOf = (p: PlanPoint) =>
    (p.x - wall.origin.x) * wall.outDir.x + (p.y - wall.origin.y) * wall.outDir.y
  const middle = area.reduce((sum, p) => sum + outOf(p), 0) / Math.max(1, area.length)
  if (middle < 0) return area
  return area.flatMap((p, i): readonly PlanPoint[] => {
    const q = area[(i + 1) % area.length] ?? p
    const [a, b] = [outOf(p), outOf(q)]
    const kept = a >= 0 ? [p] : []
    if (a >= 0 === b >= 0) return kept
    const f = a / (a - b)
    return [...kept, { x: p.x + f * (q.x - p.x), y: p.y + f * (q.y - p.y) }]
  })
}
