import { type Figure, hasValue } from '../figure'
import type { Verdict } from './line'

/**
 * Whether there is something left over: yes only where it is more than the readings can be out by, no where even at their
 * very best nothing is left to push a thing in with; in between they cannot tell.
 */
export function verdictOf(left: Figure): Verdict {
  if (!hasValue(left)) return 'open'
  if (left.value > left.pm) return 'yes'
  return left.value < 0 && -left.value >= left.pm ? 'no' : 'near'
}
