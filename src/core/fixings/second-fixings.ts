import { type Basis, type Figure, unknown } from '../figure'
import { finding } from '../holes/finding'
import { factId } from '../kitchen/fact-id'
import { message } from '../message'
import type { Finding } from '../plan/types'
import type { UnitPosition } from '../units/positions'
import type { Drilled } from './drill'
import { type NeededNogging, neededNogging } from './needed-nogging'
import { backRailOf, bottomRailOf, type RailOfUnit } from './rail-middle'
import { inTimberSides } from './side-fixings'
import { throughRail } from './stand-off'
import { nothingHolds } from './unproved-stud'
import type { WallWork } from './wall-work'

const basis: Basis = {
  kind: 'common-practice',
  why: 'a wall unit hung on a stud partition gets at least two more fixings into timber, through packing behind it',
}

export interface SecondWork {
  readonly holes: readonly Drilled[]
  readonly findings: readonly Finding[]
  readonly needed: readonly NeededNogging[]
}

/**
 * Second fixings of a unit hung in a stud wall: through its lower rail, else its back rail, with the void packed, into
 * two studs or into timber let in between them. Steel studs and plasterboard do not count. Fewer than two is a stop:
 * the unit may not be let go until there is timber behind it.
 */
export function secondFixings(
  work: WallWork,
  position: UnitPosition,
  underside: Figure,
  top: Figure,
): SecondWork {
  const { unit } = position
  const rail = bottomRailOf(position, underside) ?? backRailOf(position, top) ?? railNotKnown(unit.id)
  const found = inTimberSides(
    work,
    {
      name: `second.${unit.id}`,
      purpose: 'second-fixing',
      position,
      height: rail.middle,
      standOff: throughRail(position, rail.thickness),
      onlyTimber: true,
    },
    2,
  )
  if (found.kept >= 2) return { holes: found.holes, findings: [], needed: [] }
  const lack = nothingHolds(work, position, 'second-fixing-needs-timber', {
    unit: position.name,
    wall: work.name,
    count: found.kept,
    height: rail.middle,
  })
  const lacking = finding({
    rule: 'second-fixing-needs-timber',
    subjects: [unit.id],
    weight: 'stop',
    dangerous: true,
    where: { wall: unit.wall, along: position.left, height: rail.middle },
    say: lack.say,
    figures: [position.left, position.right, rail.middle, ...lack.figures],
    from: [...work.studs.from, ...work.letInFrom],
    settledBy: lack.settledBy,
    basis,
    ask: message('fixings.let-timber-in', { wall: work.name }),
  })
  return {
    holes: found.holes,
    findings: [lacking],
    needed: [neededNogging(position, 'second-fixing', rail.middle)],
  }
}

function railNotKnown(unit: string): RailOfUnit {
  const facts = ['fromBottom', 'height'].map((key) => factId('units', unit, 'bottomRail', key))
  return {
    middle: unknown('mm', facts),
    thickness: unknown('mm', [factId('units', unit, 'bottomRail', 'thickness')]),
  }
}
