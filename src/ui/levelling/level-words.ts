import { valueOf } from '../../core/figure'
import type { LevelOn } from '../../core/levelling/level-on'
import { type Axis, type Bubble, ENDS, type End, type Vial } from '../../core/levelling/vial'
import { groupedNumber } from '../../core/words/format'

/** To the tenth of a millimetre, as a level with a packer is read: 1.6. */
export const tenths = (mm: number): string => String(Math.round(Math.abs(mm) * 10) / 10)

/** A length that is whole as a rule: 600, 1 000. */
const whole = (mm: number): string => (Math.abs(mm) < 100 ? tenths(mm) : groupedNumber(mm))

const NAMES: Readonly<Record<End, string>> = { left: 'Left', right: 'Right', front: 'Front', back: 'Back' }
/** Where the top of an upright goes when the end that is named is the high one. */
const LEANS: Readonly<Record<End, string>> = {
  left: 'to the right',
  right: 'to the left',
  front: 'back',
  back: 'forward',
}

/** What the level says: "Right end high by 1.6 mm in 600 mm." */
export function readingText(slope: number, axis: Axis, { way, length }: LevelOn): string {
  const off = Math.abs(slope) * length
  if (off < 0.05) return way === 'upright' ? 'Plumb this way.' : 'Level this way.'
  const high = slope > 0 ? ENDS[axis].more : ENDS[axis].less
  const by = byText(slope, { length })
  if (way === 'upright') return `Its top leans ${LEANS[high]} by ${by}: the ${high} is high.`
  return `${NAMES[high]} end high by ${by}.`
}

/** By how much, where there is little room: "1.6 mm in 600 mm"; nothing while it is level. */
export function byText(slope: number, { length }: Pick<LevelOn, 'length'>): string {
  const off = Math.abs(slope) * length
  return off < 0.05 ? '' : `${tenths(off)} mm in ${whole(length)} mm`
}

/** Where the bubble stands: "Bubble 2.7 mm to the right of the middle." */
export function bubbleText({ offset, towards, isAtEnd }: Bubble): string {
  if (towards === null) return 'Bubble in the middle, between the lines.'
  if (isAtEnd) return `Bubble at the ${towards} end of its vial. It no longer says by how much.`
  return `Bubble ${tenths(offset)} mm from the middle, to the ${towards}.`
}

/** How far a bubble goes in a vial of this sort. */
export function vialText({ sensitivity, division }: Vial): string {
  return `${valueOf(sensitivity) ?? ''} mm in a metre moves its bubble by ${valueOf(division) ?? ''} mm`
}

/** How the level is put to a unit. */
export function putText({ way, length }: LevelOn, axis: Axis): string {
  const level = `a level of ${whole(length)} mm`
  if (way === 'upright')
    return axis === 'along'
      ? `Hold ${level} upright against a side.`
      : `Hold ${level} upright against the front edge of a side.`
  const run = axis === 'along' ? 'left to right' : 'back to front'
  return way === 'inside'
    ? `Lay ${level} inside, along the front edge of the bottom panel.`
    : `Lay ${level} on its top edges, ${run}.`
}
