import { LEAN_DRAWN, lieOf } from '../../core/levelling/lie'
import { heightsNow, type Trial } from '../../core/levelling/trial-heights'
import type { UnitPlan } from '../../core/plan/types'
import type { Place } from '../sketch'

/** Places in the picture of a unit that is tried: of the unit itself, and of its legs. */
export interface Leaning {
  readonly unit: Place
  readonly legs: Place
}

/**
 * A unit as it stands in a trial of the level, so many times further out than it is that it can be seen; the words beside
 * the picture say so. For leans as small as these a turn is a shift by the height, and a rise by the way along and out.
 * Its legs stay upright on the floor and reach it.
 */
export function leaning(place: Place, unit: UnitPlan, tried: Trial | null): Leaning {
  const lie = tried === null ? null : lieOf(unit, heightsNow(tried, unit))
  if (lie === null) return { unit: place, legs: place }
  const [along, out] = [lie.along * LEAN_DRAWN, lie.out * LEAN_DRAWN]
  const rise = (x: number, y: number) => lie.corner * LEAN_DRAWN + along * x + out * y
  return {
    unit: (x, y, z) => place(x - along * z, y - out * z, z + rise(x, y)),
    legs: (x, y, z) => place(x, y, z < 0 ? z : z + rise(x, y)),
  }
}
