import type { Basis, Figure, FigureUnit, InputId, ValueFigure } from '../figure'
import { hasValue, quantise, sortedIds } from '../figure'
import { mergedIds } from '../ids'

/**
 * The highest (or lowest) of several figures. It rests on all of them, for any of them might have been the one: unknown
 * if any is unknown. Its precision is as far as it could move if each lay at its own end: no more than the widest, and
 * not the sum, since only one of them is the highest at a time.
 */
function extreme(
  unit: FigureUnit,
  basis: Basis,
  figures: readonly Figure[],
  sign: 1 | -1,
  from: readonly InputId[] = mergedIds(figures.map((figure) => figure.from)),
): Figure {
  if (figures.length === 0 || !figures.every(hasValue)) {
    const missing = sortedIds(figures.flatMap((figure) => (hasValue(figure) ? [] : figure.missing)))
    return { state: 'unknown', unit, basis, from, missing }
  }
  const reach = (of: (figure: ValueFigure) => number) => Math.max(...figures.map(of))
  const value = reach((figure) => sign * figure.value)
  const up = reach((figure) => sign * figure.value + figure.pm) - value
  const down = value - reach((figure) => sign * figure.value - figure.pm)
  const state = figures.some((figure) => figure.state === 'assumed') ? 'assumed' : 'known'
  return { state, value: quantise(sign * value), pm: quantise(Math.max(up, down)), unit, basis, from }
}

export function highestOf(unit: FigureUnit, basis: Basis, figures: readonly Figure[]): Figure {
  return extreme(unit, basis, figures, 1)
}

export function lowestOf(unit: FigureUnit, basis: Basis, figures: readonly Figure[]): Figure {
  return extreme(unit, basis, figures, -1)
}

/** Both ends at once. */
export function rangeOf(
  unit: FigureUnit,
  basis: Basis,
  figures: readonly Figure[],
): { readonly lowest: Figure; readonly highest: Figure } {
  const highest = extreme(unit, basis, figures, 1)
  return { highest, lowest: extreme(unit, basis, figures, -1, highest.from) }
}
