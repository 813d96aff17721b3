import { hasValue } from '../../../core/figure'
import type { HeightValue } from '../../../core/plan/types'
import { signedNumber } from '../../../core/words/format'

/** Nearer the middle than this, mm, and it is said to be in the middle: heights are chosen in whole millimetres. */
const MIDDLE = 1

/** What the demands on one height leave, and where in it the chosen height lies, in plain words. */
export function heightWords(value: HeightValue, demands: number, unmet: number): string {
  return [asked(demands, unmet), left(value, unmet), doubt(value)].filter((s) => s !== '').join(' ')
}

function asked(demands: number, unmet: number): string {
  if (unmet > 0)
    return `${unmet === demands ? 'None' : `Only ${demands - unmet}`} of the ${demands} lines below ${demands - unmet === 1 ? 'is' : 'are'} met.`
  return demands === 1 ? 'The one line below is met.' : `All ${demands} lines below are met.`
}

function left({ lowest, highest, height, achieved }: HeightValue, unmet: number): string {
  if (lowest === null || highest === null || highest < lowest) return ''
  const room = tenths(highest - lowest)
  const who =
    unmet > 0
      ? 'Those that are met, with what the other heights ask,'
      : 'With what the other heights ask, they'
  if (room === '0') return `${who} leave one height only, ${signedNumber(lowest)}.`
  const range = `${who} leave a range of ${room} mm, the blue strip: from ${signedNumber(lowest)} to ${signedNumber(highest)}.`
  return hasValue(height) && !achieved ? `${range} ${place(height.value, lowest, highest)}` : range
}

function place(chosen: number, lowest: number, highest: number): string {
  if (chosen < lowest || chosen > highest) return `${signedNumber(chosen)} lies outside it.`
  if (Math.abs(chosen - (lowest + highest) / 2) <= MIDDLE)
    return `${signedNumber(chosen)} is chosen, in the middle: as far as can be from both ends.`
  const [end, away] =
    chosen - lowest < highest - chosen ? ['lower', chosen - lowest] : ['upper', highest - chosen]
  return Math.round(away) === 0
    ? `${signedNumber(chosen)} is chosen, at its ${end} end.`
    : `${signedNumber(chosen)} is chosen, ${tenths(away)} mm from its ${end} end, kept clear of both by what the readings are worth.`
}

const doubt = ({ marginal }: HeightValue): string =>
  marginal ? 'The range is narrower than the readings can tell: measure again, more closely.' : ''

const tenths = (mm: number): string => `${Math.round(mm * 10) / 10}`
