import { hasValue } from '../figure'
import type { Adjuster, UnitPlan } from '../plan/types'
import type { Heights } from './lie'
import type { Axis, Vial } from './vial'

/**
 * Levelling tried before the day: a unit stands out of level by a reading that was set or given, its adjusters are
 * turned, and the level is read again. It is a rehearsal: nothing of it is written down.
 */
export interface Trial {
  readonly operation: string
  /** Which way the level lies. */
  readonly axis: Axis
  readonly vial: Vial['name']
  /** The reading that was given last; it also chooses the screw made up where nobody has said what a turn does. */
  readonly seed: number
  /** How the adjusters stood when the reading was set; the highest at 0. */
  readonly start: Heights
  /** Turns made since then, by adjuster: + up. */
  readonly turns: Readonly<Record<string, number>>
}

/** What one turn does in the trial. Where nobody has said it, a screw is made up, and `isMadeUp`. */
export interface TrialScrew {
  readonly perTurn: number
  readonly isMadeUp: boolean
}
const MADE_UP = [1.25, 2, 1, 1.5] as const

export function screwOf({ seed }: Trial, { perTurn }: Adjuster): TrialScrew {
  if (hasValue(perTurn)) return { perTurn: perTurn.value, isMadeUp: false }
  return { perTurn: MADE_UP[seed % MADE_UP.length] ?? 1, isMadeUp: true }
}

/** How far an adjuster has been moved since the reading was set, mm: + up. */
export const movedBy = (trial: Trial, adjuster: Adjuster): number =>
  (trial.turns[adjuster.id] ?? 0) * screwOf(trial, adjuster).perTurn

/** How the adjusters stand after the turns made. */
export function heightsNow(trial: Trial, unit: UnitPlan): Heights {
  return Object.fromEntries(unit.adjusters.map((a) => [a.id, (trial.start[a.id] ?? 0) + movedBy(trial, a)]))
}
