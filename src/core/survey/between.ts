import { type Figure, hasValue } from '../figure'

/**
 * Whether a place lies between two others, with `beyond` mm more at either side: `perhaps` when the readings are too near
 * an end to tell, or one of the three is not known. Without a lower end all below the higher one lies between.
 */
export function liesBetween(
  at: Figure,
  low: Figure | null,
  high: Figure,
  beyond = 0,
): 'yes' | 'no' | 'perhaps' {
  return both(low === null ? 'yes' : isPast(at, low, beyond), isPast(high, at, beyond))
}

/** Whether a place is past another, or short of it by less than `beyond` mm. */
function isPast(at: Figure, other: Figure, beyond: number): 'yes' | 'no' | 'perhaps' {
  if (!hasValue(at) || !hasValue(other)) return 'perhaps'
  const by = at.value - other.value + beyond
  const pm = at.pm + other.pm
  return by < -pm ? 'no' : by > pm ? 'yes' : 'perhaps'
}

/** Both of two answers: `no` if either is. */
export function both(a: 'yes' | 'no' | 'perhaps', b: 'yes' | 'no' | 'perhaps'): 'yes' | 'no' | 'perhaps' {
  if (a === 'no' || b === 'no') return 'no'
  return a === 'yes' && b === 'yes' ? 'yes' : 'perhaps'
}
