import { type Basis, derive, type Figure, hasValue } from '../figure'

const sharedLength: Basis = { kind: 'geometry', why: 'how far two stretches lie over one another' }

/** A stretch along a wall, up it or out from it. */
export interface Stretch {
  readonly from: Figure
  readonly to: Figure
}

/** How far two stretches lie over one another; less than nothing: the gap between them. */
export function lapOf(a: Stretch, b: Stretch): Figure {
  return derive('mm', sharedLength, [a.from, a.to, b.from, b.to], (a0, a1, b0, b1) =>
    Math.min((a1 as number) - (b0 as number), (b1 as number) - (a0 as number)),
  )
}

/**
 * Whether two things are in one another, by how far they lie over one another each way: `no` as soon as they are surely
 * apart one way, `yes` when they surely are not in any, `perhaps` when readings cannot tell, `not-known` when one is lacking.
 */
export function meeting(laps: readonly Figure[]): 'yes' | 'no' | 'perhaps' | 'not-known' {
  const known = laps.filter(hasValue)
  if (known.some(({ value, pm }) => value <= -pm)) return 'no'
  if (known.length < laps.length) return 'not-known'
  return known.every(({ value, pm }) => value > pm) ? 'yes' : 'perhaps'
}
