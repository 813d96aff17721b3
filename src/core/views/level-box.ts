import { levelOn } from '../levelling/level-on'
import type { Axis } from '../levelling/vial'
import type { LocalBox, UnitPlan } from '../plan/types'

/** Where the level lies on a unit, in the unit's own frame: left to right, unless it is tried the other way. */
export const levelBox = (unit: UnitPlan, axis: Axis = 'along'): LocalBox | null =>
  levelOn(unit, axis)?.body ?? null
