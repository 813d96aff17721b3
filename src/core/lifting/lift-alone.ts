import { type Basis, derive, type Figure, hasValue, known, restingOn } from '../figure'
import type { LiftPlan } from '../plan/types'
import { couplingOfBox, horizontalFromDepth, INFREQUENT, recommendedWeight } from './niosh'

/** What is lifted, mm: its front from side to side, its height, and how far it reaches from front to back. */
export interface Load {
  readonly width: Figure
  readonly height: Figure
  readonly depth: Figure
}

/** Its underside above the floor where it is picked up, and where it is set down, mm. */
export interface FromTo {
  readonly from: Figure
  readonly to: Figure
}

export type Alone = NonNullable<LiftPlan['alone']>

const MM_IN_CM = 10

/** Everything stands on the floor before it is lifted. */
export const FROM_THE_FLOOR: Figure = known(0, 0, 'mm', [], {
  kind: 'geometry',
  why: 'it stands on the floor',
})

/**
 * What one person is recommended to lift of a box that stands on the floor and goes to its place. Fingers under it, so the
 * hands are at its underside; feet turned, not the trunk (both common practice). It has to be placed, not dropped, so both
 * ends are worked out and the lower one holds.
 */
export function recommendedAlone(load: Load, fromTo: FromTo, basis: Basis): Alone {
  const lifting = atEnd('from', load, fromTo, basis)
  const placing = atEnd('to', load, fromTo, basis)
  return {
    lifting,
    placing,
    lower: derive('kg', basis, [lifting, placing], (...both) => Math.min(...both)),
  }
}

function atEnd(
  end: 'from' | 'to',
  { width, height, depth }: Load,
  { from, to }: FromTo,
  basis: Basis,
): Figure {
  const isMeasured = hasValue(width) && hasValue(height)
  const coupling = isMeasured ? couplingOfBox(width.value / MM_IN_CM, height.value / MM_IN_CM) : 'poor'
  const weight = derive('kg', basis, [depth, from, to], (d = 0, a = 0, b = 0) => {
    const vertical = (end === 'from' ? a : b) / MM_IN_CM
    return recommendedWeight({
      horizontal: horizontalFromDepth(d / MM_IN_CM, vertical),
      vertical,
      travel: Math.abs(b - a) / MM_IN_CM,
      turned: 0,
      often: INFREQUENT,
      coupling,
    })
  })
  return restingOn(weight, [...width.from, ...height.from])
}
