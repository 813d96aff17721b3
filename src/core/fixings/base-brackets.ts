import { type Basis, derive, type Figure, hasValue } from '../figure'
import { finding } from '../holes/finding'
import type { Unit } from '../kitchen/schema'
import { message } from '../message'
import type { UnitPosition } from '../units/positions'
import type { Drilled } from './drill'
import { backRailOf } from './rail-middle'
import type { SecondWork } from './second-fixings'
import { inMasonrySides, inTimberSides, type Sides } from './side-fixings'
import { PLATE_THICKNESS, throughRail } from './stand-off'
import { nothingHolds } from './unproved-stud'
import type { WallWork } from './wall-work'

/** A bracket is screwed this far below the top of a base unit. */
const BELOW_TOP = 40

const basis: Basis = {
  kind: 'common-practice',
  why: 'a base unit is fixed to the wall with an L bracket at each side, near its top',
}

const throughBasis: Basis = {
  kind: 'common-practice',
  why: 'a base box that stands on shims is screwed to the wall through the rail at its back',
}

/** Box, frame or cleat standing on the floor itself: its back is at the wall. Legs stand clear of it, pipes behind. */
const AT_THE_WALL = new Set(['shims', 'plinth-frame', 'floor-cleat', 'nothing'])

/** Whether a base is screwed through a rail of its own: it has one, and no legs. */
export function screwedThroughRail({ stands, backRail }: Pick<Unit, 'stands' | 'backRail'>): boolean {
  const hasRail = hasValue(backRail.fromTop) || hasValue(backRail.height)
  return hasRail && stands !== null && AT_THE_WALL.has(stands)
}

const marked = (holes: readonly Drilled[]): readonly Drilled[] =>
  holes.map((drilled) => ({ ...drilled, hole: { ...drilled.hole, throughRail: true } }))

/**
 * What holds a base unit to its wall once it is level: screws through its back rail where it stands at the wall without
 * legs, else brackets, at the middle of its back rail or 40 mm below its top; in masonry near each side, in a stud wall
 * into the outermost studs within it. They keep it from coming forward and carry nothing, so one stud will do.
 */
export function baseBrackets(work: WallWork, position: UnitPosition, top: Figure): SecondWork {
  const { unit } = position
  const through = screwedThroughRail(unit)
  const sides: Sides = {
    name: `base-bracket.${unit.id}`,
    purpose: 'base-bracket',
    position,
    height: backRailOf(position, top)?.middle ?? belowTop(top, BELOW_TOP),
    standOff: through ? throughRail(position, unit.backRail.thickness) : PLATE_THICKNESS,
    onlyTimber: false,
  }
  const asDrilled = through ? marked : (holes: readonly Drilled[]) => holes
  if (work.kind === null) return { holes: [], findings: [], needed: [] }
  if (work.kind === 'masonry')
    return { holes: asDrilled(inMasonrySides(work, sides)), findings: [], needed: [] }
  const found = inTimberSides(work, sides, 1)
  if (found.kept > 0) return { holes: asDrilled(found.holes), findings: [], needed: [] }
  const key = through ? 'rail-screw-needs-timber' : 'bracket-needs-timber'
  const lack = nothingHolds(work, position, key, { unit: position.name, wall: work.name })
  const lacking = finding({
    rule: 'bracket-needs-timber',
    subjects: [unit.id],
    weight: 'ask',
    where: { wall: unit.wall, along: position.left, height: sides.height },
    say: lack.say,
    figures: [position.left, position.right, ...lack.figures],
    from: [...work.studs.from, ...work.letInFrom],
    settledBy: lack.settledBy,
    basis: through ? throughBasis : basis,
    ask: message('fixings.find-the-studs', { wall: work.name }),
  })
  return { holes: asDrilled(found.holes), findings: [lacking], needed: [] }
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
