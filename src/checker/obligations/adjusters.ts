import type { Adjuster } from '../../core/plan/types'
import { agree } from '../agree'
import type { Case } from '../case'
import type { GivenUnit } from '../given'
import { less, type Measure, notKnown, taken } from '../measure'

/** Every leg and height screw can still go as far as its travel leaves it, and acts where the unit has it. */
export function checkAdjusters(c: Case): void {
  for (const unit of c.given.units) {
    // Once a unit was read on the day, where its screws stand is no longer what the file says.
    if (c.achieved.edges.has(unit.id)) continue
    for (const adjuster of c.planUnits.get(unit.id)?.adjusters ?? []) checkAdjuster(c, unit, adjuster)
  }
}

function checkAdjuster(c: Case, unit: GivenUnit, adjuster: Adjuster): void {
  const what = `${unit.id} ${adjuster.id}`
  const own = adjuster.kind === 'leg' ? ofLeg(c, unit, adjuster.id) : ofScrew(unit, adjuster.id)
  if (own === null) {
    c.refuse('adjuster', what, 'the unit has no such adjuster')
    return
  }
  agree(c.refuse, 'adjuster', `${what} x`, adjuster.x, own.x)
  agree(c.refuse, 'adjuster', `${what} up`, adjuster.upLeft, own.up)
  agree(c.refuse, 'adjuster', `${what} down`, adjuster.downLeft, own.down)
}

interface Travel {
  readonly x: Measure
  readonly up: Measure
  readonly down: Measure
}

/** A leg winds out to its longest and in to its shortest. */
function ofLeg(c: Case, unit: GivenUnit, foot: string): Travel | null {
  const leg = c.planUnits.get(unit.id)?.legs.find((l) => l.foot === foot)
  if (leg === undefined) return null
  const out = taken(leg.extension)
  const x = unit.feet.find((f) => f.id === foot)?.x ?? notKnown(`units.${unit.id}.feet`)
  return { x, up: less(unit.legs.max, out), down: less(out, unit.legs.min) }
}

/** A hanger hangs in the middle of its travel. */
function ofScrew(unit: GivenUnit, side: string): Travel | null {
  const { hangerIn, up, down } = unit.hanging
  if (side !== 'left' && side !== 'right') return null
  return { x: side === 'left' ? hangerIn : less(unit.width, hangerIn), up, down }
}
