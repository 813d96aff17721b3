import { type Figure, hasValue } from '../figure'

/** How a figure that may not be more than nothing stands to it: over, too near for its readings to tell, or within. */
type Standing = 'over' | 'near' | 'within' | 'not-known'

/**
 * Judges what something is too long, too high or too low by. Over only by more than its own precision; nearer to
 * nothing than that, from either side, it wants measuring again.
 */
export function overLimit(by: Figure): Standing {
  if (!hasValue(by)) return 'not-known'
  if (by.value > by.pm) return 'over'
  return by.value > -by.pm ? 'near' : 'within'
}
