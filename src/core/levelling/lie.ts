import { hasValue } from '../figure'
import { extentOf } from '../plan/travel-path'
import type { UnitPlan } from '../plan/types'

/** Where something bears on a unit, in the unit's own frame: from its left side and from its back, mm. */
export interface Bearing {
  readonly id: string
  readonly x: number
  readonly y: number
}

/** How far each adjuster holds the unit over (+) or under (−) one level plane, mm, by its id. */
export type Heights = Readonly<Record<string, number>>

/** How a unit lies: a plane, and what bears it. */
export interface Lie {
  /** Rise in its length: + the right side is high; + the front is high. */
  readonly along: number
  readonly out: number
  /** Height of the plane at the unit's back left corner. */
  readonly corner: number
  readonly carrying: readonly string[]
  /** Those that bear nothing, and how far they are from it, mm. */
  readonly hanging: readonly { readonly id: string; readonly gap: number }[]
}

/** An empty carcass is heavier behind: an 8 mm back in a depth of 560 brings its middle about this far back, mm. */
const BACK_HEAVY = 30
/** Nearer to the plane than this, mm, a leg bears: what a hand doesn't turn freely. */
const TOUCHING = 0.02
/** What rounding leaves of 0, mm. */
const NOTHING = 1e-6

/** A unit a little out of level can't be seen to lean: a picture draws it so many times as far, and says so. */
export const LEAN_DRAWN = 5

/** Where the adjusters of a unit bear on it; null while the place of one is not known, or it has too few. */
export function bearingsOf(unit: UnitPlan): readonly Bearing[] | null {
  const bearings = unit.adjusters.flatMap(({ id, x, y }) =>
    hasValue(x) && hasValue(y) ? [{ id, x: x.value, y: y.value }] : [],
  )
  const needed = isHung(unit) ? 2 : 3
  return bearings.length < Math.max(needed, unit.adjusters.length) ? null : bearings
}

export const isHung = (unit: UnitPlan): boolean => !unit.adjusters.some((a) => a.kind === 'leg')

/** How a unit lies on its adjusters; null where that can't be said. */
export function lieOf(unit: UnitPlan, heights: Heights): Lie | null {
  const bearings = bearingsOf(unit)
  if (bearings === null) return null
  if (isHung(unit)) return hungOn(bearings, heights)
  const { width, depth } = extentOf(unit.solid)
  return standingOn(bearings, heights, { x: width / 2, y: depth / 2 - BACK_HEAVY })
}

const heightOf = (heights: Heights, { id }: Bearing): number => heights[id] ?? 0

/** On two hangers it hangs by both; what it does out from the wall is set by its packing, not by them. */
export function hungOn(bearings: readonly Bearing[], heights: Heights): Lie | null {
  const [left, right] = [...bearings].sort((a, b) => a.x - b.x)
  if (left === undefined || right === undefined || left.x === right.x) return null
  const along = (heightOf(heights, right) - heightOf(heights, left)) / (right.x - left.x)
  const corner = heightOf(heights, left) - along * left.x
  return { along, out: 0, corner, carrying: [left.id, right.id], hanging: [] }
}

/**
 * On legs it stands on the three that hold it up highest with its middle between them: no other leg may reach over the
 * plane through those three. A leg that ends short of the plane turns freely by hand.
 */
export function standingOn(
  feet: readonly Bearing[],
  heights: Heights,
  middle: { readonly x: number; readonly y: number },
): Lie | null {
  for (const three of triplesOf(feet)) {
    const plane = planeThrough(three, heights)
    if (plane === null || !isBetween(middle, three)) continue
    const gaps = feet.map((foot) => ({
      id: foot.id,
      gap: plane.corner + plane.along * foot.x + plane.out * foot.y - heightOf(heights, foot),
    }))
    if (gaps.some(({ gap }) => gap < -NOTHING)) continue
    return {
      ...plane,
      carrying: gaps.filter(({ gap }) => gap <= TOUCHING).map(({ id }) => id),
      hanging: gaps.filter(({ gap }) => gap > TOUCHING),
    }
  }
  return null
}

type Three = readonly [Bearing, Bearing, Bearing]

function triplesOf(feet: readonly Bearing[]): readonly Three[] {
  return feet.flatMap((a, i) =>
    feet.slice(i + 1).flatMap((b, j) => feet.slice(i + j + 2).map((c): Three => [a, b, c])),
  )
}

function planeThrough([a, b, c]: Three, heights: Heights): Pick<Lie, 'along' | 'out' | 'corner'> | null {
  const [bx, by, cx, cy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y]
  const area = bx * cy - cx * by
  if (Math.abs(area) < 1) return null
  const [za, zb, zc] = [heightOf(heights, a), heightOf(heights, b), heightOf(heights, c)]
  const along = ((zb - za) * cy - (zc - za) * by) / area
  const out = (bx * (zc - za) - cx * (zb - za)) / area
  return { along, out, corner: za - along * a.x - out * a.y }
}

/** Whether a point lies in the triangle, its edges included. */
function isBetween(p: { readonly x: number; readonly y: number }, [a, b, c]: Three): boolean {
  const side = (from: Bearing, to: Bearing) =>
    (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x)
  const sides = [side(a, b), side(b, c), side(c, a)]
  return sides.every((s) => s >= 0) || sides.every((s) => s <= 0)
}
