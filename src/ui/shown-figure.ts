import type { ValueFigure } from '../core/figure'
import { numberText } from '../core/words/format'

/** Names of figures that are heights from the line, and so always carry their sign. */
const FROM_LINE = new Set([
  'underside',
  'top',
  'height',
  'edge',
  'base-top',
  'worktop-top',
  'high-point',
  'base-underside',
  'wall-underside',
  'wall-top',
  'tall-underside',
  'tall-top',
])

const UNITS: Readonly<Partial<Record<ValueFigure['unit'], string>>> = {
  mm: 'mm',
  kg: 'kg',
  N: 'N',
  min: 'min',
  deg: '°',
  'mm/turn': 'mm a turn',
}

/** A named figure as it stands on a slip: the number, signed where it is a height from the line, and its unit. */
export function shownFigure(
  name: string,
  figure: ValueFigure,
): { readonly number: string; readonly unit: string } {
  const signed = FROM_LINE.has(name.split('.')[0] as string)
  const number = numberText(figure, { signed }) ?? ''
  if (figure.unit === 'turn') return { number, unit: figure.value > 1.125 ? 'turns' : 'turn' }
  return { number, unit: UNITS[figure.unit] ?? '' }
}
