import type { Unit } from '../kitchen/schema'

/** How a unit is held to its wall, or why it is not. */
export type Held =
  | 'plates'
  | 'rail'
  | 'back-rail-screws'
  | 'cleat'
  | 'base-brackets'
  | 'tall-restraint'
  | 'not-said'
  | 'not-fixed'

const BASES: readonly Unit['kind'][] = ['base', 'corner-base', 'open-end', 'bridging']

/**
 * What holds a unit to the wall. Hung ones by what they hang on; tall ones are held back at the top; base units are
 * held by brackets once they are level. Islands and appliance spaces are not fixed to a wall. A wall unit that stands
 * on nothing anybody has named is asked about.
 */
export function heldBy({ kind, stands }: Unit): Held {
  if (kind === 'appliance-space' || kind === 'island') return 'not-fixed'
  if (stands === 'plates' || stands === 'rail' || stands === 'back-rail-screws' || stands === 'cleat')
    return stands
  if (kind === 'tall') return 'tall-restraint'
  if (kind === 'wall' || kind === 'corner-wall') return 'not-said'
  if (kind === 'base' || kind === 'corner-base') return 'base-brackets'
  if (!BASES.includes(kind)) return 'not-fixed'
  return stands === null || stands === 'nothing' ? 'not-said' : 'base-brackets'
}

export function isHung(unit: Unit): boolean {
  const held = heldBy(unit)
  return held === 'plates' || held === 'rail' || held === 'back-rail-screws' || held === 'cleat'
}
