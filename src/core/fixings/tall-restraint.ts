import type { Basis, Figure } from '../figure'
import { finding } from '../holes/finding'
import { message } from '../message'
import type { UnitPosition } from '../units/positions'
import { belowTop } from './base-brackets'
import { neededNogging } from './needed-nogging'
import { backRailOf } from './rail-middle'
import type { SecondWork } from './second-fixings'
import { inMasonrySides, inTimberSides, type Sides } from './side-fixings'
import { PLATE_THICKNESS } from './stand-off'
import { nothingHolds } from './unproved-stud'
import type { WallWork } from './wall-work'

/** A restraint is screwed this far below the top of a tall unit. */
const BELOW_TOP = 60

const basis: Basis = {
  kind: 'common-practice',
  why: 'a tall unit that is not held at its top tips when a door or an oven is opened',
}

/**
 * What holds a tall unit back at its top: brackets at the middle of its back rail where it has one, else 60 mm below its
 * top; placed as the brackets of base units are. It is held by hand until they are in; none possible is a stop.
 *
 * Common practice; failure mode F54.
 */
export function tallRestraint(work: WallWork, position: UnitPosition, top: Figure): SecondWork {
  const { unit } = position
  if (work.kind === null) return { holes: [], findings: [], needed: [] }
  const sides: Sides = {
    name: `tall-restraint.${unit.id}`,
    purpose: 'tall-restraint',
    position,
    height: backRailOf(position, top)?.middle ?? belowTop(top, BELOW_TOP),
    standOff: PLATE_THICKNESS,
    onlyTimber: true,
  }
  const holes = work.kind === 'masonry' ? inMasonrySides(work, sides) : inTimberSides(work, sides, 1).holes
  if (holes.some((d) => d.hole.verdict !== 'refused')) return { holes, findings: [], needed: [] }
  const lack = nothingHolds(work, position, 'tall-not-restrained', { unit: position.name, wall: work.name })
  const lacking = finding({
    rule: 'tall-not-restrained',
    subjects: [unit.id],
    weight: 'stop',
    dangerous: true,
    where: { wall: unit.wall, along: position.left, height: sides.height },
    say: lack.say,
    figures: [position.left, position.right, sides.height, ...lack.figures],
    from: [...work.studs.from, ...work.letInFrom],
    settledBy: lack.settledBy,
    basis,
    ask: message('fixings.let-timber-in', { wall: work.name }),
  })
  const needed = work.kind === 'studs' ? [neededNogging(position, 'tall-restraint', sides.height)] : []
  return { holes, findings: [lacking], needed }
}
