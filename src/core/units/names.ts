import type { UnitKind } from '../kitchen/kinds'
import type { Kitchen } from '../kitchen/schema'
import type { UnitId } from '../plan/types'
import { eachOnce } from './each-once'

/** The kinds of unit, written out as they are said. */
export const KIND_NAMES: Readonly<Record<UnitKind, string>> = {
  tall: 'tall unit',
  wall: 'wall unit',
  base: 'base unit',
  'corner-base': 'corner base unit',
  'corner-wall': 'corner wall unit',
  'open-end': 'open end unit',
  bridging: 'bridging unit',
  island: 'island unit',
  'appliance-space': 'space for appliance',
}

/**
 * What each unit is called: the user's own text, else its kind and its number among that kind in the file ("wall unit
 * 3"). Units with a name of their own are counted too, so that naming one does not renumber the others. No two are called alike.
 */
export function unitNames({ units }: Pick<Kitchen, 'units'>): ReadonlyMap<UnitId, string> {
  const counted = new Map<UnitKind, number>()
  const names = units.map(({ kind, name }) => {
    const number = (counted.get(kind) ?? 0) + 1
    counted.set(kind, number)
    return name ?? `${KIND_NAMES[kind]} ${number}`
  })
  const once = eachOnce(names)
  return new Map(units.map(({ id }, i) => [id, once[i] ?? id]))
}
