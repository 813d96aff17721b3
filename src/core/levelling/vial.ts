import { type Figure, known, valueOf } from '../figure'

/** Which way the tube of the vial runs along the unit: from its left side to its right, or from its back to its front. */
export type Axis = 'along' | 'out'
export type End = 'left' | 'right' | 'front' | 'back'

/** The end that counts as more, and the one that counts as less: as `x` and `y` of the unit's own frame do. */
export const ENDS: Readonly<Record<Axis, { readonly more: End; readonly less: End }>> = {
  along: { more: 'right', less: 'left' },
  out: { more: 'front', less: 'back' },
}

/**
 * A vial is a tube bent to an arc; its bubble stands at the arc's highest place, so it goes to the high end.
 *
 * `sensitivity`: how far one end of a level a metre long is lifted for the bubble to go one division of 2 mm. It is not
 * what a level is true to (0.5 mm in a metre for most): that says where the lines are, not how far the bubble goes.
 */
export interface Vial {
  readonly name: 'usual' | 'fine'
  /** mm in a metre for one division. */
  readonly sensitivity: Figure
  /** mm of bubble. */
  readonly division: Figure
  /** How far the middle of the bubble can go from the middle of the vial, mm. */
  readonly reach: number
}

/** As makers of levels and of vials publish it, with no standard behind it for levels of this trade. */
const published = (why: string) => ({ kind: 'common-practice', why }) as const

function vial(name: Vial['name'], sensitivity: number): Vial {
  return {
    name,
    sensitivity: known(
      sensitivity,
      0,
      'mm',
      [],
      published('what makers of levels publish: 10 mm in a metre for most, 2 or 1 for finer ones'),
    ),
    division: known(2, 0, 'mm', [], published('makers of vials give their sensitivity for 2 mm of bubble')),
    reach: 7,
  }
}

export const VIALS: Readonly<Record<Vial['name'], Vial>> = { usual: vial('usual', 10), fine: vial('fine', 2) }

export interface Bubble {
  /** From the middle of the vial to the middle of the bubble, mm; + to the end that counts as more. */
  readonly offset: number
  /** The same in divisions, always positive. */
  readonly divisions: number
  readonly towards: End | null
  /** It stands at the end of its tube: the level says which end is high and no longer how much. */
  readonly isAtEnd: boolean
}

/** Less than this off the middle, mm, is not seen with the eye. */
const UNSEEN = 0.05

/** Where the bubble stands. `slope`: rise of the unit in its length, + where the end that counts as more is high. */
export function bubbleAt(slope: number, axis: Axis, { sensitivity, division, reach }: Vial): Bubble {
  const step = valueOf(division) ?? 2
  const wanted = (slope * 1000 * step) / (valueOf(sensitivity) ?? 10)
  const isAtEnd = Math.abs(wanted) >= reach
  const offset = isAtEnd ? Math.sign(wanted) * reach : wanted
  const { more, less } = ENDS[axis]
  const towards = Math.abs(offset) < UNSEEN ? null : offset > 0 ? more : less
  return { offset, divisions: Math.abs(offset) / step, towards, isAtEnd }
}
