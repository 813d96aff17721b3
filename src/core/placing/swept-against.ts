import { type Leaf, type LeafSlice, sweptLeaf } from '../geometry/swept-leaf'
import { CONTACT, convexHull, extentsMeet, extentsOf, type Prism, planOverlap } from './solid'

/** Where a turning leaf meets something that stands. */
export interface LeafMeets {
  /** The opening at which they first touch, degrees: never more than the truth, and less by no more than a slice. */
  readonly angle: number
  /** How far they would have to be pushed apart for the leaf to pass, mm: never less than the truth. */
  readonly by: number
}

/** A leaf's sweep, made ready for asking about many things. */
export interface Sweep {
  readonly slices: readonly (LeafSlice & { readonly extents: ReturnType<typeof extentsOf> })[]
  readonly hull: ReturnType<typeof convexHull>
  readonly bottom: number
  readonly top: number
}

/** What a leaf passes through from shut to `to`, between two heights. */
export function sweepOfLeaf(leaf: Leaf, to: number, bottom: number, top: number): Sweep {
  const slices = sweptLeaf(leaf, 0, to).map((slice) => ({ ...slice, extents: extentsOf(slice.polygon) }))
  return { slices, hull: convexHull(slices.flatMap(({ polygon }) => polygon)), bottom, top }
}

/** Whether a sweep meets an upright prism by more than contact; null: it passes it, or is not at its height. */
export function meets(sweep: Sweep, prism: Prism): LeafMeets | null {
  if (prism.top - sweep.bottom <= CONTACT || sweep.top - prism.bottom <= CONTACT) return null
  const first = sweep.slices.find(
    ({ extents, polygon }) => extentsMeet(extents, prism) && planOverlap(polygon, prism.polygon) > CONTACT,
  )
  return first === undefined ? null : { angle: first.from, by: planOverlap(sweep.hull, prism.polygon) }
}

/** Whether a prism at its height comes within so many mm of a sweep: too near for its readings to tell, if they are worse. */
export function nearTo(sweep: Sweep, prism: Prism, within: number): boolean {
  if (prism.top <= sweep.bottom || prism.bottom >= sweep.top) return false
  return sweep.slices.some(
    ({ extents, polygon }) =>
      extentsMeet(extents, prism, -within) && planOverlap(polygon, prism.polygon) > -within,
  )
}
