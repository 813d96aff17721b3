import {
  type Basis,
  type Figure,
  type FigureUnit,
  hasValue,
  type InputId,
  quantise,
  sortedIds,
  type ValueFigure,
} from '../figure'
import { mergedIds } from '../ids'

/**
 * A figure worked out from others, just as `derive` does it (unknown if any is unknown; precision the sum of what each
 * input moved by its own changes), for work that is done hundreds of times over in one plan: values come in one list
 * that the work must not keep, and ids are merged rather than sorted, or given by a caller who has merged them before.
 */
export function workedFrom(
  unit: FigureUnit,
  basis: Basis,
  inputs: readonly Figure[],
  work: (values: readonly number[]) => number,
  from: readonly InputId[] = mergedIds(inputs.map((input) => input.from)),
): Figure {
  if (!inputs.every(hasValue)) {
    const missing = inputs.flatMap((input) => (hasValue(input) ? [] : input.missing))
    return { state: 'unknown', unit, basis, from, missing: sortedIds(missing) }
  }
  const values = inputs.map(({ value }) => value)
  const value = work(values)
  let pm = 0
  inputs.forEach((input: ValueFigure, i) => {
    if (input.pm === 0) return
    values[i] = input.value + input.pm
    const up = work(values)
    values[i] = input.value - input.pm
    const down = work(values)
    values[i] = input.value
    pm += Math.max(Math.abs(up - value), Math.abs(down - value))
  })
  const state = inputs.some((input) => input.state === 'assumed') ? 'assumed' : 'known'
  return { state, value: quantise(value), pm: quantise(pm), unit, basis, from }
}
