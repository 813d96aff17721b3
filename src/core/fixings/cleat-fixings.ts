import { type Basis, derive, type Figure } from '../figure'
import { finding } from '../holes/finding'
import { message } from '../message'
import type { Finding } from '../plan/types'
import type { UnitPosition } from '../units/positions'
import type { Drilled } from './drill'
import { holesBelow, hookOnEdge } from './hanging-edge'
import { type NeededNogging, neededNogging } from './needed-nogging'
import { keptOf } from './rail-fixings'
import { type Row, rowFixings } from './row-fixings'
import type { WallWork } from './wall-work'

const INSIDE_UNIT = 20

const basis: Basis = { kind: 'common-practice', why: 'a cleat is held at two places at least, like a rail' }

export interface CleatWork {
  readonly row: Row
  readonly holes: readonly Drilled[]
  readonly findings: readonly Finding[]
  readonly needed: readonly NeededNogging[]
}

/**
 * The cleat a unit hooks over: a rail of its own, 20 mm inside its sides, as thick as its back rail, fixed as rails are.
 */
export function cleatFixings(work: WallWork, position: UnitPosition, top: Figure): CleatWork {
  const { unit } = position
  const inside = (side: 'left' | 'right') =>
    derive(
      'mm',
      { kind: 'common-practice', why: 'side of the unit, 20 mm inside' },
      [position[side]],
      (edge) => (edge as number) + (side === 'left' ? INSIDE_UNIT : -INSIDE_UNIT),
    )
  const row: Row = {
    name: `cleat.${unit.id}`,
    purpose: 'cleat',
    for: [unit.id],
    from: inside('left'),
    to: inside('right'),
    holeHeight: holesBelow(hookOnEdge(position, top), unit.hanging.plateHoleBelow),
    standOff: unit.backRail.thickness,
    maxSpacing: NOT_STATED,
  }
  const holes = rowFixings(work, row)
  if (work.kind === null || keptOf(holes).length >= 2) return { row, holes, findings: [], needed: [] }
  const lacking = finding({
    rule: 'cleat-needs-timber',
    subjects: [unit.id],
    weight: 'stop',
    dangerous: true,
    where: { wall: unit.wall, along: position.left, height: row.holeHeight },
    say: message('fixings.cleat-needs-timber', { unit: position.name, wall: work.name }),
    figures: [position.left, position.right],
    from: work.studs.from,
    basis,
    ask: message('fixings.let-timber-in', { wall: work.name }),
  })
  const needed = work.kind === 'studs' ? [neededNogging(position, 'cleat', row.holeHeight)] : []
  return { row, holes, findings: [lacking], needed }
}

/** Nobody prints how far apart the screws of a batten may be: the usual spacing stands in. */
const NOT_STATED: Figure = { state: 'unknown', unit: 'mm', basis, from: [], missing: [] }
