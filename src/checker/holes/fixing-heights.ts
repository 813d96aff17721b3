import { type Case, topOf, underside } from '../case'
import type { GivenUnit } from '../given'
import { isKnown, less, type Measure, plus, work } from '../measure'
import { groupOf, isHung } from '../positions'

const BRACKET_BELOW_TOP = 40

const RESTRAINT_BELOW_TOP = 60

/** Base units are fixed back by brackets and talls restrained; an island has no wall to be fixed to. */
export function hasBrackets(unit: GivenUnit): boolean {
  return !isHung(unit) && unit.kind !== 'island' && (groupOf(unit) === 'base' || groupOf(unit) === 'tall')
}

/** Hook-on edge of plate or rail. */
export function hookEdge(c: Case, unit: GivenUnit): Measure {
  return less(topOf(c, unit), unit.hanging.plateBelowTop)
}

/** Middle of the rail behind which a hung unit gets its second fixings: the lower rail, or else the back rail. */
export function secondHeight(c: Case, unit: GivenUnit): Measure {
  const low = work(
    [underside(c, unit.id), unit.bottomRail.edge, unit.bottomRail.height],
    (z = 0, up = 0, h = 0) => z + up + h / 2,
  )
  if (isKnown(unit.bottomRail.edge) && isKnown(unit.bottomRail.height)) return low
  return backRailMiddle(c, unit)
}

export function backRailMiddle(c: Case, unit: GivenUnit): Measure {
  return work(
    [topOf(c, unit), unit.backRail.edge, unit.backRail.height],
    (top = 0, down = 0, h = 0) => top - down - h / 2,
  )
}

/** Height of base brackets and tall restraints: in the back rail where there is one, or a little below the top. */
export function fixingHeight(c: Case, unit: GivenUnit): Measure {
  const railed = isKnown(unit.backRail.edge) && isKnown(unit.backRail.height)
  const below = groupOf(unit) === 'tall' ? RESTRAINT_BELOW_TOP : BRACKET_BELOW_TOP
  return railed ? backRailMiddle(c, unit) : plus(topOf(c, unit), -below)
}
