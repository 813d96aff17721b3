import type { PlanPoint } from '../plan/types'
import { convexHull } from './convex-hull'
import { add, direction, scale } from './point'

/**
 * A leaf that turns about one edge: a door of a room, of a unit or of an appliance, a sash, a flap of a meter box. On the
 * plan, mm and degrees.
 *
 * It turns about the hinge edge of the face that goes in front as it opens. So a leaf hung on the front corner of its
 * carcass (an overlay door, common practice) ends square with its outer face in line with where its edge was, as a
 * concealed hinge holds it.
 */
export interface Leaf {
  readonly pivot: PlanPoint
  /** Which way it lies when shut, from the pivot to its free edge: degrees anticlockwise from +x. */
  readonly shut: number
  /** Which way it turns as it opens, seen from above. */
  readonly opens: 'clockwise' | 'anticlockwise'
  readonly width: number
  readonly thickness: number
  /** How far a handle stands out from the face that goes in front; 0: none. */
  readonly handle: number
  /** How far back from the free edge the handle may reach. */
  readonly handleBack: number
  /** How far in from the free edge it begins; 0: at the edge. */
  readonly handleEdge: number
}

/** What a leaf passes through between two angles of its opening: convex, anticlockwise, never smaller than the truth. */
export interface LeafSlice {
  readonly from: number
  readonly to: number
  readonly polygon: readonly PlanPoint[]
}

/** Degrees of one slice. A leaf 900 wide is overstated at its free edge by less than 0.04 mm. */
const SLICE = 1

/** A corner of the leaf or its handle: along the leaf from the pivot, and ahead of the face that goes in front. */
type Corner = readonly [along: number, ahead: number]

/** Leaf and handle as they lie in their own plan. */
function partsOf({ width, thickness, handle, handleBack, handleEdge }: Leaf): readonly (readonly Corner[])[] {
  const back = Math.max(0, width - handleBack)
  const box = (a0: number, a1: number, n0: number, n1: number): readonly Corner[] => [
    [a0, n0],
    [a1, n0],
    [a1, n1],
    [a0, n1],
  ]
  const leaf = box(0, width, -thickness, 0)
  return handle > 0 ? [leaf, box(back, Math.max(back, width - handleEdge), 0, handle)] : [leaf]
}

/** A corner when the leaf has opened by `angle`, `stretched` times as far from the pivot. */
function placed(
  { pivot, shut, opens }: Leaf,
  [along, ahead]: Corner,
  angle: number,
  stretched = 1,
): PlanPoint {
  const way = opens === 'anticlockwise' ? 1 : -1
  const out = scale(direction(shut + way * angle), along * stretched)
  return add(pivot, add(out, scale(direction(shut + way * (angle + 90)), ahead * stretched)))
}

/** The leaf, and its handle if it has one, opened by `angle`: convex, anticlockwise. */
export function leafAt(leaf: Leaf, angle: number): readonly (readonly PlanPoint[])[] {
  return partsOf(leaf).map((part) => convexHull(part.map((corner) => placed(leaf, corner, angle))))
}

/**
 * What leaf and handle pass through while they turn from one angle to another, slice by slice in that order.
 *
 * In a slice every corner runs along an arc, which lies within the triangle of its two ends and the point where the
 * tangents there meet: half-way round, 1/cos(half the slice) as far out. The hull of those points of all corners
 * therefore holds the part at every angle between.
 */
export function sweptLeaf(leaf: Leaf, from: number, to: number): readonly LeafSlice[] {
  const count = Math.max(1, Math.ceil((to - from) / SLICE))
  const step = (to - from) / count
  const stretched = 1 / Math.cos((step * Math.PI) / 360)
  return Array.from({ length: count }, (_, i) => from + i * step).flatMap((start) =>
    partsOf(leaf).map((part): LeafSlice => {
      const points = part.flatMap((corner) => [
        placed(leaf, corner, start),
        placed(leaf, corner, start + step),
        placed(leaf, corner, start + step / 2, stretched),
      ])
      return { from: start, to: start + step, polygon: convexHull(points) }
    }),
  )
}

/** The furthest any corner of leaf and handle is from the pivot: the radius of the opening leaf. */
export function reachOf({
  width,
  handle,
  handleEdge,
}: Pick<Leaf, 'width' | 'handle' | 'handleEdge'>): number {
  return Math.max(width, Math.hypot(width - handleEdge, handle))
}
