import type { Basis, Figure, FigureUnit, InputId, ValueFigure } from '../figure'
import { hasValue, quantise, sortedIds } from '../figure'
import { mergedIds } from '../ids'

/** The figure, resting on these facts too: choices that make it exist. */
export function citing(figure: Figure, facts: readonly InputId[]): Figure {
  const from = mergedIds([figure.from, sortedIds(facts)])
  return from === figure.from ? figure : { ...figure, from }
}

function unknownOf(
  unit: FigureUnit,
  basis: Basis,
  figures: readonly Figure[],
  from: readonly InputId[],
): Figure {
  const missing = sortedIds(figures.flatMap((figure) => (hasValue(figure) ? [] : figure.missing)))
  return { state: 'unknown', unit, basis, from, missing }
}

/**
 * Some figures added up, others taken off. The same as `derive` gives for a sum (unknown if any is unknown, the
 * precisions added), without working it out once for each of them: most of setting out is sums.
 */
export function sum(
  unit: FigureUnit,
  basis: Basis,
  plus: readonly Figure[],
  minus: readonly Figure[] = [],
): Figure {
  const all = [...plus, ...minus]
  const from = mergedIds(all.map((figure) => figure.from))
  if (!all.every(hasValue)) return unknownOf(unit, basis, all, from)
  let value = 0
  let pm = 0
  for (const figure of plus as readonly ValueFigure[]) value += figure.value
  for (const figure of minus as readonly ValueFigure[]) value -= figure.value
  for (const figure of all) pm += figure.pm
  const state = all.some((figure) => figure.state === 'assumed') ? 'assumed' : 'known'
  return { state, value: quantise(value), pm: quantise(pm), unit, basis, from }
}
