import { type Basis, derive, type Figure, hasValue, sortedIds } from '../figure'
import type { UnitPosition } from '../units/positions'

const geometry = (why: string): Basis => ({ kind: 'geometry', why })

/** Top of a unit's carcass from its underside. */
export function topOf(position: Pick<UnitPosition, 'height'>, underside: Figure): Figure {
  return derive(
    'mm',
    geometry('underside of the carcass, and its height'),
    [underside, position.height],
    (under, tall) => (under as number) + (tall as number),
  )
}

/** The edge of plate or rail a hanger hooks over: below the top of the unit by what the maker says, adjuster in mid travel. */
export function hookOnEdge(position: Pick<UnitPosition, 'unit'>, top: Figure): Figure {
  return derive(
    'mm',
    geometry('top of the unit, less how far the hook-on edge lies below it'),
    [top, position.unit.hanging.plateBelowTop],
    (at, below) => (at as number) - (below as number),
  )
}

/** The fixing holes of plate or rail, below its edge (− is above). */
export function holesBelow(edge: Figure, plateHoleBelow: Figure): Figure {
  return derive(
    'mm',
    geometry('hook-on edge, less how far the fixing hole lies below it'),
    [edge, plateHoleBelow],
    (at, below) => (at as number) - (below as number),
  )
}

/** Figures that should all be the same, as one: the first, as uncertain as the worst of them, resting on all. */
export function agreed(figures: readonly Figure[]): Figure | undefined {
  const [first] = figures
  if (first === undefined) return undefined
  const from = sortedIds(figures.flatMap((f) => f.from))
  const missing = figures.flatMap((f) => (f.state === 'unknown' ? f.missing : []))
  const { unit, basis } = first
  if (!figures.every(hasValue) || !hasValue(first)) {
    return { state: 'unknown', unit, basis, from, missing: sortedIds(missing) }
  }
  const state = figures.some((f) => f.state === 'assumed') ? 'assumed' : 'known'
  return { ...first, state, pm: Math.max(...figures.map((f) => (hasValue(f) ? f.pm : 0))), from }
}

/** By how much figures that should agree differ at most; 0 while one is not known. */
export function disagreement(figures: readonly Figure[]): number {
  const values = figures.filter(hasValue).map((f) => f.value)
  return values.length < figures.length || values.length === 0 ? 0 : Math.max(...values) - Math.min(...values)
}
