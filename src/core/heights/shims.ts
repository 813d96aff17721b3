import { type Basis, type Figure, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Demand, ShimPlan, UnitId } from '../plan/types'
import { citing, sum } from '../survey/sum'
import type { HeightsContext, StandingUnit } from './context'
import { ruleOf } from './demands/demand'

const overTheFloor: Basis = {
  kind: 'geometry',
  why: 'from the floor under the corner to the underside of the carcass',
}

/** For every unit that stands without legs, what goes between it and the floor at each corner it bears on. */
export function shimsOf(
  context: HeightsContext,
  undersides: ReadonlyMap<UnitId, Figure>,
): ReadonlyMap<UnitId, readonly ShimPlan[]> {
  return new Map(
    context.standing
      .filter(({ on }) => on === 'its-corners')
      .map((unit): [UnitId, readonly ShimPlan[]] => [
        unit.id,
        shimsUnder(unit, undersides.get(unit.id) as Figure),
      ]),
  )
}

function shimsUnder({ id, footings }: StandingUnit, underside: Figure): readonly ShimPlan[] {
  const standing = citing(underside, [factId('units', id, 'stands')])
  return footings.map(({ id: foot, x, y, floor }) => ({
    foot,
    x: x ?? 0,
    y: y ?? 0,
    floor,
    height: sum('mm', overTheFloor, [standing], [floor]),
  }))
}

/** Boxes with nothing of their own between them and the floor: no frame, no cleat. */
const ON_THE_FLOOR = new Set(['shims', 'nothing'])

/**
 * The demands that such boxes make of the floor. Where one of them bounds a height from below, the box goes down on the
 * floor there and everything else is shimmed up to it: work begins at the high point. Common practice.
 */
export function setsDown(context: HeightsContext): (demand: Demand) => boolean {
  const boxes = new Set(
    context.standing.flatMap(({ id, position }) =>
      ON_THE_FLOOR.has(position.unit.stands ?? '') ? [id] : [],
    ),
  )
  return (demand) =>
    ruleOf(demand) === 'shim-floor' &&
    boxes.has(demand.about[0] ?? '') &&
    demand.min !== null &&
    hasValue(demand.min)
}
