/**
 * A figure: one number with its unit, its precision, what it stands on and the inputs it came from.
 *
 * Everything the tool says about a room is a figure. "Why", "marginal", "what changed" and what is still to be
 * measured are all read off it, so a figure is never stripped to a bare number on its way to a screen or a sheet.
 */

import { type InputId, mergedIds, sortedIds } from './ids'

export { type InputId, mergedIds, sortedIds }

export type FigureUnit = 'mm' | 'deg' | 'kg' | 'N' | 'min' | 'turn' | 'mm/turn' | 'count' | 'ratio' | 'kg/m³'

/** What a figure or a rule stands on. `common-practice` is said openly: there is no source. */
export type Basis =
  | { readonly kind: 'survey' }
  | { readonly kind: 'maker' }
  | { readonly kind: 'wish' }
  | { readonly kind: 'achieved' }
  | { readonly kind: 'geometry'; readonly why: string }
  | { readonly kind: 'standard'; readonly source: string; readonly where: string }
  | { readonly kind: 'common-practice'; readonly why: string }

/** A figure with a value. `assumed`: it, or something it came from, is a stated default nobody has confirmed. */
export interface ValueFigure {
  readonly state: 'known' | 'assumed'
  readonly value: number
  /** Precision: the true value lies within value ± pm. Same unit as the value. */
  readonly pm: number
  readonly unit: FigureUnit
  readonly basis: Basis
  readonly from: readonly InputId[]
}

/** A figure that cannot be worked out yet; `missing` names the facts that would settle it. */
export interface UnknownFigure {
  readonly state: 'unknown'
  readonly unit: FigureUnit
  readonly basis: Basis
  readonly from: readonly InputId[]
  readonly missing: readonly InputId[]
}

export type Figure = ValueFigure | UnknownFigure

const surveyed: Basis = { kind: 'survey' }

/** Rounds to a thousandth so that equal sums compare equal; never gives minus zero. */
export function quantise(value: number): number {
  return Math.round(value * 1000) / 1000 + 0
}

export function known(
  value: number,
  pm: number,
  unit: FigureUnit,
  from: readonly InputId[],
  basis: Basis = surveyed,
): ValueFigure {
  return { state: 'known', value: quantise(value), pm: quantise(pm), unit, basis, from: sortedIds(from) }
}

export function assumed(
  value: number,
  pm: number,
  unit: FigureUnit,
  from: readonly InputId[],
  basis: Basis,
): ValueFigure {
  return { state: 'assumed', value: quantise(value), pm: quantise(pm), unit, basis, from: sortedIds(from) }
}

export function unknown(
  unit: FigureUnit,
  missing: readonly InputId[],
  from: readonly InputId[] = missing,
  basis: Basis = surveyed,
): UnknownFigure {
  return { state: 'unknown', unit, basis, from: sortedIds(from), missing: sortedIds(missing) }
}

export function hasValue(figure: Figure): figure is ValueFigure {
  return figure.state !== 'unknown'
}

/** The bare value, or undefined when unknown: only for geometry that has already decided what to do without it. */
export function valueOf(figure: Figure): number | undefined {
  return figure.state === 'unknown' ? undefined : figure.value
}

/**
 * A figure worked out from others. Unknown if any of them is; assumed if any of them is; its precision is the worst
 * case of each input moved by its own (the sum of the changes), which never claims more than the readings hold.
 */
export function derive(
  unit: FigureUnit,
  basis: Basis,
  inputs: readonly Figure[],
  work: (...values: number[]) => number,
): Figure {
  const from = mergedIds(inputs.map((f) => f.from))
  const open = inputs.filter((f) => f.state === 'unknown')
  if (open.length > 0) {
    return { state: 'unknown', unit, basis, from, missing: mergedIds(open.map((f) => f.missing)) }
  }
  const values = inputs.map((f) => (f as ValueFigure).value)
  const value = work(...values)
  let pm = 0
  inputs.forEach((f, i) => {
    const { value: at, pm: step } = f as ValueFigure
    if (step === 0) return
    values[i] = at + step
    const up = work(...values)
    values[i] = at - step
    const down = work(...values)
    values[i] = at
    pm += Math.max(Math.abs(up - value), Math.abs(down - value))
  })
  const state = inputs.some((f) => f.state === 'assumed') ? 'assumed' : 'known'
  return { state, value: quantise(value), pm: quantise(pm), unit, basis, from }
}

/** A figure that also rests on further facts (a choice, a kind) that do not change its value but make it exist. */
export function restingOn(figure: Figure, ids: readonly InputId[]): Figure {
  return { ...figure, from: mergedIds([figure.from, sortedIds(ids)]) }
}
