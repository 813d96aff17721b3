import { type Basis, derive, type Figure } from '../figure'
import type { UnitMasses } from '../lifting/panel-mass'
import type { UnitPosition } from '../units/positions'

const basis: Basis = {
  kind: 'geometry',
  why: 'carcass and contents act at half its depth, doors in the middle of their own thickness in front of it',
}

/** Mass of a unit with all that is to stand in it. Unknown until somebody says what will. */
export function massInUse(masses: UnitMasses, contents: Figure): Figure {
  const why = 'the whole unit and what will stand in it'
  return derive(
    'kg',
    { kind: 'geometry', why },
    [masses.whole, contents],
    (unit, inside) => (unit as number) + (inside as number),
  )
}

/** Distance of the centre of mass of a unit in use from the wall, mm. */
export function centreOut(
  position: Pick<UnitPosition, 'unit' | 'depth' | 'out'>,
  masses: UnitMasses,
  contents: Figure,
): Figure {
  const { depth, out, unit } = position
  const always = [masses.whole, contents, depth, out]
  if (unit.doors.length === 0) {
    return derive('mm', basis, always, (_unit, _inside, deep, gap) => (gap as number) + (deep as number) / 2)
  }
  return derive(
    'mm',
    basis,
    [...always, masses.doors, unit.front],
    (whole, inside, deep, gap, doors, front) => {
      const back = (gap as number) + (deep as number) / 2
      const ahead = (gap as number) + (deep as number) + (front as number) / 2
      const total = (whole as number) + (inside as number)
      return total <= 0 ? back : (back * (total - (doors as number)) + ahead * (doors as number)) / total
    },
  )
}
