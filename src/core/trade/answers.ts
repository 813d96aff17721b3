import type { FailureMode } from '../rules/rule'

/**
 * Rules that stand with the work they judge (heights with heights, holes with holes) and not in a file of their own, and
 * the failure modes each of them catches.
 */
export const WOVEN: Readonly<Record<string, readonly FailureMode[]>> = {
  'unit-past-end': ['F01'],
  'leg-out-of-reach': ['F11', 'F12'],
  'leg-near-end': ['F11'],
  'floor-step': ['F16'],
  'heights-clash': ['F11', 'F13', 'F15', 'F58', 'F60', 'F95'],
  'preferred-height-given-up': ['F56', 'F58'],
  'second-fixing-needs-timber': ['F20', 'F21', 'F23'],
  'stud-not-confirmed': ['F21'],
  'screw-too-short': ['F24', 'F25', 'F28', 'F29'],
  'screw-over-hollow': ['F29'],
  'screw-hold-not-known': ['F24', 'F25', 'F28', 'F29'],
  'base-not-known': ['F24', 'F26'],
  'wall-not-known': ['F23', 'F24'],
  'knock-does-not-match': ['F26'],
  'hole-near-band': ['F27', 'F30', 'F31', 'F32', 'F33'],
  'hole-refused': ['F27', 'F30', 'F31', 'F32', 'F33'],
  'band-unknown': ['F30', 'F31', 'F33'],
  'other-face-not-looked-at': ['F33'],
  'cannot-stand-up': ['F50', 'F53'],
  'stand-up-elsewhere': ['F50', 'F51'],
  'stand-up-legs-off': ['F50', 'F53'],
  'stand-up-not-known': ['F50'],
  'no-floor-to-stand-up': ['F52'],
  'tall-not-restrained': ['F54'],
  'cannot-hook-on': ['F58'],
  'capacity-exceeded': ['F94'],
  'no-figure-entered': ['F94'],
}

/** Failure modes that no rule judges but a step of the work asks about or shows, with that step. */
export const STEPS: Readonly<Partial<Record<FailureMode, string>>> = {
  F10: 'check-delivery:room asks for damage to be noted while it can still be reported',
  F71: 'assemble asks for the two diagonals',
  F72: 'join states how thick the two sides are together, which the screw must not reach through',
  F91: 'wishes that cannot all hold are refused with the smallest sets and repairs',
}

/** Failure modes left to a later piece of work, by its name. */
export const LATER: Readonly<Partial<Record<FailureMode, string>>> = {
  F70: 'cutting and buying',
  F73: 'worktops',
  F75: 'worktops',
  F76: 'worktops',
  F78: 'worktops',
  F79: 'worktops',
  F80: 'worktops',
  F81: 'worktops',
  F82: 'worktops',
  F83: 'cutting and buying',
  F86: 'crew schedule',
  F87: 'crew schedule',
  F88: 'crew schedule',
  F90: 'crew schedule',
}

/** Failure modes outside what a tool before the day can know, with the reason. */
export const OUT_OF_SCOPE: Readonly<Partial<Record<FailureMode, string>>> = {}
