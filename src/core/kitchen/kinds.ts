/** The words of the trade that the kitchen file and the plan share. */

export const UNIT_KINDS = [
  'tall',
  'wall',
  'base',
  'corner-base',
  'corner-wall',
  'open-end',
  'bridging',
  'island',
  'appliance-space',
] as const
export type UnitKind = (typeof UNIT_KINDS)[number]

/** Units that hang on their wall, over the worktop. */
export const HUNG_KINDS: readonly UnitKind[] = ['wall', 'corner-wall', 'bridging']
/** Units that reach up past the worktop: those that hang, and talls. */
export const HIGH_KINDS: readonly UnitKind[] = [...HUNG_KINDS, 'tall']

/** What a wish on a height may speak of. */
export const HEIGHT_NAMES = [
  'base-underside',
  'base-top',
  'worktop-top',
  'wall-underside',
  'wall-top',
  'tall-underside',
  'tall-top',
] as const
export type HeightName = (typeof HEIGHT_NAMES)[number]
