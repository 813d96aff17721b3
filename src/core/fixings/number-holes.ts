import { valueOf } from '../figure'
import type { Hole } from '../plan/types'

/**
 * Numbers the holes of each wall for its drawing: along the wall, then up it, from 1; refused ones have none, so that
 * nobody drills by counting. Holes whose place is not known come last.
 */
export function numberHoles(holes: readonly Hole[]): readonly Hole[] {
  const numbers = new Map<string, number>()
  for (const wall of new Set(holes.map((hole) => hole.wall))) {
    const its = holes.filter((hole) => hole.wall === wall && hole.verdict !== 'refused')
    ;[...its].sort(byPlace).forEach((hole, i) => {
      numbers.set(hole.id, i + 1)
    })
  }
  return holes.map((hole) => ({ ...hole, number: numbers.get(hole.id) ?? null }))
}

function byPlace(a: Hole, b: Hole): number {
  const far = Number.MAX_VALUE
  const [ax, bx] = [valueOf(a.along) ?? far, valueOf(b.along) ?? far]
  const [az, bz] = [valueOf(a.height) ?? far, valueOf(b.height) ?? far]
  if (ax !== bx) return ax < bx ? -1 : 1
  if (az !== bz) return az < bz ? -1 : 1
  return a.id < b.id ? -1 : 1
}
