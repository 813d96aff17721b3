/** A reading on a surface: where it was taken, and how far out it stands there (a height, for a floor). */
export interface Spot {
  readonly x: number
  readonly y: number
  readonly z: number
}

/** One reading under or over the straight line between two others. */
export interface Gap {
  /** Places of the three in the list: the two ends, and the one between. */
  readonly from: number
  readonly to: number
  readonly at: number
  readonly distance: number
  /** Under the line: +, a hollow; over it: −, a hump. */
  readonly gap: number
}

/** A reading nearer the line than this lies under the straightedge. Common practice: a straightedge is as wide. */
const UNDER_EDGE = 50

/**
 * Gaps under a straightedge laid from reading to reading. A hollow counts between two readings on which it can lie:
 * nothing between them stands higher than the line, and the deepest is the gap. A hump is judged between its two
 * neighbours alone, on which it rocks by as much either way.
 */
export function gapsAmong(spots: readonly Spot[]): readonly Gap[] {
  const gaps: Gap[] = []
  for (let from = 0; from < spots.length; from++) {
    for (let to = from + 1; to < spots.length; to++) {
      const gap = gapBetween(spots, from, to)
      if (gap !== null) gaps.push(gap)
    }
  }
  return gaps
}

function gapBetween(spots: readonly Spot[], from: number, to: number): Gap | null {
  const [a, b] = [spots[from] as Spot, spots[to] as Spot]
  const distance = Math.hypot(b.x - a.x, b.y - a.y)
  if (distance === 0) return null
  const between = spots.flatMap((spot, at) => {
    const share = shareOf(a, b, spot)
    const off = Math.abs((b.x - a.x) * (spot.y - a.y) - (b.y - a.y) * (spot.x - a.x)) / distance
    if (at === from || at === to || off > UNDER_EDGE || share <= 0 || share >= 1) return []
    return [{ at, gap: a.z + share * (b.z - a.z) - spot.z }]
  })
  const deepest = [...between].sort((s, t) => t.gap - s.gap || s.at - t.at)[0]
  if (deepest === undefined) return null
  const isHump = between.length === 1 && deepest.gap < 0
  const canLie = between.every(({ gap }) => gap >= 0)
  return canLie || isHump ? { from, to, distance, ...deepest } : null
}

/** How far along from a to b a spot lies: 0 at a, 1 at b. */
export function shareOf(
  a: Pick<Spot, 'x' | 'y'>,
  b: Pick<Spot, 'x' | 'y'>,
  spot: Pick<Spot, 'x' | 'y'>,
): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  return ((spot.x - a.x) * dx + (spot.y - a.y) * dy) / (dx * dx + dy * dy)
}
