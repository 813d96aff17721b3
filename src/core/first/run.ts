import { type Basis, type Figure, hasValue, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen, Unit, Wall } from '../kitchen/schema'
import { message } from '../message'
import { lowestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import { type FirstLine, type Verdict, wallSaid } from './line'
import { verdictOf } from './verdict'

/** The units that stand along a wall, against the smallest width they have there. */

const basis: Basis = {
  kind: 'geometry',
  why: 'widths of the units added up, against the smallest width measured; fillers, panels and gaps are not counted',
}

const NOT_ON_THE_FLOOR: readonly Unit['kind'][] = ['wall', 'corner-wall', 'bridging', 'island']

/** What stands on the floor along a wall, as the file lists it. */
export const standingOn = (kitchen: Kitchen, wall: string): readonly Unit[] =>
  kitchen.units.filter((unit) => unit.wall === wall && !NOT_ON_THE_FLOOR.includes(unit.kind))

/** The smallest width measured on a wall; where none was, its length from corner to corner. */
export function roomAlong(wall: Wall): Figure {
  const measured = wall.widths.map(({ width }) => width).filter(hasValue)
  if (measured.length > 0) return lowestOf('mm', basis, measured)
  return hasValue(wall.length) ? wall.length : unknown('mm', [factId('walls', wall.id, 'widths')])
}

export interface Run {
  readonly wall: Wall
  readonly units: Figure
  readonly room: Figure
  readonly left: Figure
  readonly verdict: Verdict
}

/** Every wall that units stand along, with what is left over. */
export function runsOf(kitchen: Kitchen): readonly Run[] {
  return kitchen.walls.flatMap((wall) => {
    const standing = standingOn(kitchen, wall.id)
    if (standing.length === 0) return []
    const units = sum(
      'mm',
      basis,
      standing.map(({ width }) => width),
    )
    const room = roomAlong(wall)
    const left = sum('mm', basis, [room], [units])
    return [{ wall, units, room, left, verdict: verdictOf(left) }]
  })
}

/** Whether the units along each wall look like going in. */
export function runLines(kitchen: Kitchen): readonly FirstLine[] {
  return runsOf(kitchen).flatMap(({ wall, units, room, left, verdict }): readonly FirstLine[] => {
    if (verdict === 'open' || !hasValue(left)) return []
    const over = sum('mm', basis, [units], [room])
    const values = { wall: wallSaid(wall), units, room, left, over }
    return [{ kind: 'fits', say: message(`first.run.${verdict}`, values), facts: left.from, basis }]
  })
}
