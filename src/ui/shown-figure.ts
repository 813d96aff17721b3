import type { ValueFigure } from '../core/figure'
import { numberText } from '../core/words/format'

/** Labels of figures that are heights from the line, and so always carry their sign. */
const FROM_LINE = /^label\.(height\..+|high-point|hole-height|timber-height|underside|top|rail-edge)$/

const UNITS: Readonly<Partial<Record<ValueFigure['unit'], string>>> = {
  mm: 'mm',
  kg: 'kg',
  N: 'N',
  min: 'min',
  deg: '°',
  'mm/turn': 'mm a turn',
}

/** A figure as it stands on a slip under its label: the number, signed where it is a height from the line, and its unit. */
export function shownFigure(
  label: string,
  figure: ValueFigure,
): { readonly number: string; readonly unit: string } {
  const number = numberText(figure, { signed: FROM_LINE.test(label) }) ?? ''
  if (figure.unit === 'turn') return { number, unit: Math.abs(figure.value) >= 1.125 ? 'turns' : 'turn' }
  return { number, unit: UNITS[figure.unit] ?? '' }
}
