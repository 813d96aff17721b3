import type { Plan, PlanPoint } from '../../core/plan/types'
import type { RoomShape } from '../../core/views/room-shape'
import { palette, roomShade } from '../palette'
import { face, type Pen, type Point, ring, type Sketch, stroke } from '../sketch'
import { trianglesOf } from '../triangles'

const pen: Pen = { weight: 'fine', colour: palette.pencil }

/** Boxings, beams, chimney breasts: whatever fixed stands in the room. What lies beyond its walls isn't drawn. */
export function sketchObstacles(sketch: Sketch, plan: Plan, room: RoomShape): void {
  const ceiling = Math.max(0, ...room.walls.map((w) => room.topOf(w).z))
  for (const { id, polygon, bottom, top } of plan.obstacles) {
    if (polygon.length < 3 || !isInside(middle(polygon), room.outline)) continue
    const part = `obstacle:${id}`
    const low = (p: PlanPoint): Point => [p.x, p.y, bottom ?? room.floorOr(p)]
    const high = (p: PlanPoint): Point => [p.x, p.y, top ?? ceiling]
    for (const t of trianglesOf(polygon)) {
      face(sketch, part, roomShade.wallLit, t.map(high))
      face(sketch, part, roomShade.boxing, t.map(low))
    }
    for (const [i, p] of polygon.entries()) {
      const q = polygon[(i + 1) % polygon.length] ?? p
      const isAcross = Math.abs(q.x - p.x) > Math.abs(q.y - p.y)
      face(sketch, part, isAcross ? roomShade.boxing : roomShade.wallLit, [low(p), low(q), high(q), high(p)])
      stroke(sketch, part, pen, low(p), high(p))
    }
    ring(sketch, part, pen, polygon.map(low))
    ring(sketch, part, pen, polygon.map(high))
  }
}

function middle(polygon: readonly PlanPoint[]): PlanPoint {
  const n = polygon.length
  return {
    x: polygon.reduce((s, p) => s + p.x, 0) / n,
    y: polygon.reduce((s, p) => s + p.y, 0) / n,
  }
}

function isInside(p: PlanPoint, polygon: readonly PlanPoint[]): boolean {
  let isIn = false
  for (const [i, a] of polygon.entries()) {
    const b = polygon[(i + 1) % polygon.length] ?? a
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) isIn = !isIn
  }
  return isIn
}
