import type { FloorSurface, PlanPoint } from '../plan/types'

/** Height of the floor at a place; null when nobody has read enough of it. */
export type FloorAt = (at: PlanPoint) => number | null

/**
 * The floor as read, for drawing: flat between three readings, the best plane outside them. It decides nothing; what a
 * leg stands on is in the plan.
 */
export function floorAt(floor: FloorSurface): FloorAt {
  const by = new Map(floor.points.map((p) => [p.id, p]))
  const triangles = floor.triangles.flatMap(({ readings }) => {
    const corners = readings.flatMap((id) => {
      const p = by.get(id)
      return p === undefined || p.z.state === 'unknown' ? [] : [{ x: p.at.x, y: p.at.y, z: p.z.value }]
    })
    return corners.length === 3 ? [corners] : []
  })
  const { plane, highPoint } = floor
  return (at) => {
    for (const corners of triangles) {
      const z = inside(corners, at)
      if (z !== null) return z
    }
    if (plane !== null) return plane.a + plane.b * at.x + plane.c * at.y
    return highPoint.z.state === 'unknown' ? null : highPoint.z.value
  }
}

type Corner = PlanPoint & { readonly z: number }

function inside(corners: readonly Corner[], p: PlanPoint): number | null {
  const [a, b, c] = corners
  if (a === undefined || b === undefined || c === undefined) return null
  const area = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)
  if (area === 0) return null
  const v = ((p.x - a.x) * (c.y - a.y) - (c.x - a.x) * (p.y - a.y)) / area
  const w = ((b.x - a.x) * (p.y - a.y) - (p.x - a.x) * (b.y - a.y)) / area
  if (v < -1e-9 || w < -1e-9 || v + w > 1 + 1e-9) return null
  return a.z + v * (b.z - a.z) + w * (c.z - a.z)
}
