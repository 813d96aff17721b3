import { type Figure, hasValue } from '../figure'

/**
 * Whether a place lies between two others, with `beyond` mm more at either side: `perhaps` when the readings are too near
 * an end to tell, or one of the three is not known.
 */
export function liesBetween(at: Figure, low: Figure, high: Figure, beyond = 0): 'yes' | 'no' | 'perhaps' {
  if (!hasValue(at) || !hasValue(low) || !hasValue(high)) return 'perhaps'
  const fromLow = at.value - low.value + beyond
  const fromHigh = high.value + beyond - at.value
  const [pmLow, pmHigh] = [at.pm + low.pm, at.pm + high.pm]
  if (fromLow < -pmLow || fromHigh < -pmHigh) return 'no'
  return fromLow > pmLow && fromHigh > pmHigh ? 'yes' : 'perhaps'
}

/** Both of two answers: `no` if either is. */
export function both(a: 'yes' | 'no' | 'perhaps', b: 'yes' | 'no' | 'perhaps'): 'yes' | 'no' | 'perhaps' {
  if (a === 'no' || b === 'no') return 'no'
  return a === 'yes' && b === 'yes' ? 'yes' : 'perhaps'
}
