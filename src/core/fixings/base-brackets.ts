import { type Basis, derive, type Figure } from '../figure'
import { finding } from '../holes/finding'
import { message } from '../message'
import type { UnitPosition } from '../units/positions'
import { backRailOf } from './rail-middle'
import type { SecondWork } from './second-fixings'
import { inMasonrySides, inTimberSides, type Sides } from './side-fixings'
import { PLATE_THICKNESS } from './stand-off'
import { nothingHolds } from './unproved-stud'
import type { WallWork } from './wall-work'

/** A bracket is screwed this far below the top of a base unit. */
const BELOW_TOP = 40

const basis: Basis = {
  kind: 'common-practice',
  why: 'a base unit is fixed to the wall with an L bracket at each side, near its top',
}

/**
 * The brackets that hold a base unit to its wall once it is level: at the middle of its back rail, else 40 mm below its
 * top; in masonry near each side, in a stud wall into the outermost studs within it. They keep it from coming forward
 * and carry nothing, so one stud will do.
 */
export function baseBrackets(work: WallWork, position: UnitPosition, top: Figure): SecondWork {
  const { unit } = position
  const sides: Sides = {
    name: `base-bracket.${unit.id}`,
    purpose: 'base-bracket',
    position,
    height: backRailOf(position, top)?.middle ?? belowTop(top, BELOW_TOP),
    standOff: PLATE_THICKNESS,
    onlyTimber: false,
  }
  if (work.kind === null) return { holes: [], findings: [], needed: [] }
  if (work.kind === 'masonry') return { holes: inMasonrySides(work, sides), findings: [], needed: [] }
  const found = inTimberSides(work, sides, 1)
  if (found.kept > 0) return { holes: found.holes, findings: [], needed: [] }
  const lack = nothingHolds(work, position, 'bracket-needs-timber', { unit: position.name, wall: work.name })
  const lacking = finding({
    rule: 'bracket-needs-timber',
    subjects: [unit.id],
    weight: 'ask',
    where: { wall: unit.wall, along: position.left, height: sides.height },
    say: lack.say,
    figures: [position.left, position.right, ...lack.figures],
    from: [...work.studs.from, ...work.letInFrom],
    basis,
    ask: message('fixings.find-the-studs', { wall: work.name }),
  })
  return { holes: found.holes, findings: [lacking], needed: [] }
}

/** A fixing a set way below the top of a unit. */
export function belowTop(top: Figure, by: number): Figure {
  return derive(
    'mm',
    { kind: 'common-practice', why: `${by} mm below the top of the unit, well below its top edge` },
    [top],
    (at) => (at as number) - by,
  )
}
