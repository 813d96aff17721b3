import type { Hole } from '../plan/types'
import { listed } from '../words/listed'

/** "hole 3", "holes 1 and 2", "holes 3, 6 and 10", by their numbers on the drawing of their wall. */
export function holesSaid(holes: readonly Hole[]): string {
  const named = [...holes]
    .sort((a, b) => (a.number ?? Number.POSITIVE_INFINITY) - (b.number ?? Number.POSITIVE_INFINITY))
    .map((hole) => String(hole.number ?? hole.id))
  return `${named.length === 1 ? 'hole' : 'holes'} ${listed(named)}`
}
