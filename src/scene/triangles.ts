import { ShapeUtils, Vector2 } from 'three'
import type { PlanPoint } from '../core/plan/types'

/** A plan polygon of any shape, cut into triangles. */
export function trianglesOf(polygon: readonly PlanPoint[]): readonly (readonly PlanPoint[])[] {
  if (polygon.length < 3) return []
  const contour = polygon.map((p) => new Vector2(p.x, p.y))
  return ShapeUtils.triangulateShape(contour, []).map((triangle) =>
    triangle.flatMap((i) => {
      const p = polygon[i]
      return p === undefined ? [] : [p]
    }),
  )
}
