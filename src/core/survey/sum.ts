import type { Basis, Figure, FigureUnit, InputId, ValueFigure } from '../figure'
import { hasValue, quantise, sortedIds } from '../figure'

/** Ids of two lists that are each in order and without repeats. Gives back one of the two where it holds the other. */
function merged(a: readonly InputId[], b: readonly InputId[]): readonly InputId[] {
  const all: InputId[] = []
  let [i, k] = [0, 0]
  while (i < a.length && k < b.length) {
    const [x, y] = [a[i] as InputId, b[k] as InputId]
    if (x === y) k++
    else if (x > y) {
      all.push(y)
      k++
      continue
    }
    all.push(x)
    i++
  }
  while (i < a.length) all.push(a[i++] as InputId)
  while (k < b.length) all.push(b[k++] as InputId)
  if (all.length === a.length) return a
  return all.length === b.length ? b : all
}

/** Input ids of several figures, once each and in order; shares the longest list where it holds all the others. */
export function mergedIds(lists: readonly (readonly InputId[])[]): readonly InputId[] {
  const [first = [], ...rest] = [...lists].sort((a, b) => b.length - a.length)
  return rest.reduce(merged, first)
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
