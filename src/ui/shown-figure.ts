import type { ValueFigure } from '../core/figure'
import { isFromLine, numberText, unitText } from '../core/words/format'

/** A figure as it stands on a slip under its label: the number, signed where it is a height from the line, and its unit. */
export function shownFigure(
  label: string,
  figure: ValueFigure,
): { readonly number: string; readonly unit: string } {
  return { number: numberText(figure, { signed: isFromLine(label) }) ?? '', unit: unitText(figure) }
}
