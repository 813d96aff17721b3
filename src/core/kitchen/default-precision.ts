import type { PrecisionClass } from './quantity'

/** The usual precision (±) of a figure whose own is not typed, in the figure's unit, and what it stands on. */
export interface UsualPrecision {
  readonly pm: number
  /** Common practice, all of it: none of these has a published source. */
  readonly why: string
}

export const USUAL_PRECISION: Readonly<Record<PrecisionClass, UsualPrecision>> = {
  tape: {
    pm: 2,
    why: 'common practice: a room read with a tape is good to 1 or 2 mm (hook, sag, reading); the coarser is taken',
  },
  level: {
    pm: 1,
    why: 'common practice: a level line should close on itself, and be read, within 1 mm',
  },
  angle: { pm: 0.1, why: 'common practice: a corner is worth taking to a tenth of a degree' },
  sheet: { pm: 0.5, why: 'common practice: a sheet prints whole millimetres' },
  exact: { pm: 0, why: 'taken as it is typed' },
}
