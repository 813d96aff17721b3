import { type Basis, type Figure, unknown } from '../figure'
import { finding } from '../holes/finding'
import { factId } from '../kitchen/fact-id'
import { message } from '../message'
import type { UnitPosition } from '../units/positions'
import { neededNogging } from './needed-nogging'
import { backRailOf } from './rail-middle'
import type { SecondWork } from './second-fixings'
import { inMasonrySides, inTimberSides, type Sides } from './side-fixings'
import { throughRail } from './stand-off'
import { nothingHolds } from './unproved-stud'
import type { WallWork } from './wall-work'

const basis: Basis = {
  kind: 'common-practice',
  why: 'a unit screwed through its back rail is held by two independent screws at least; one stud is a stop',
}

export interface BackRailWork extends SecondWork {
  /** Of the row of screws. */
  readonly height: Figure
}

/**
 * Screws through the back rail of a unit that hangs by nothing else, as shimmed and screwed boxes do: into the outermost
 * studs within it, or timber let in there; in masonry near each side. Fewer than two is a stop.
 */
export function backRailFixings(work: WallWork, position: UnitPosition, top: Figure): BackRailWork {
  const { unit } = position
  const rail = backRailOf(position, top)
  const facts = ['fromTop', 'height'].map((key) => factId('units', unit.id, 'backRail', key))
  const sides: Sides = {
    name: `back-rail.${unit.id}`,
    purpose: 'back-rail',
    position,
    height: rail?.middle ?? unknown('mm', facts),
    standOff: throughRail(position, unit.backRail.thickness),
    onlyTimber: true,
  }
  const { height } = sides
  if (work.kind === null) return { holes: [], findings: [], needed: [], height }
  const holes = work.kind === 'masonry' ? inMasonrySides(work, sides) : inTimberSides(work, sides, 2).holes
  if (holes.filter((d) => d.hole.verdict !== 'refused').length >= 2)
    return { holes, findings: [], needed: [], height }
  const lack = nothingHolds(work, position, 'back-rail-needs-timber', {
    unit: position.name,
    wall: work.name,
  })
  const lacking = finding({
    rule: 'back-rail-needs-timber',
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
  const needed = work.kind === 'studs' ? [neededNogging(position, 'back-rail', sides.height)] : []
  return { holes, findings: [lacking], needed, height }
}
