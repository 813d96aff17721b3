import { type Basis, type Figure, hasValue, restingOn } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { LegPlan, UnitId } from '../plan/types'
import { sum } from '../survey/sum'
import { workedFrom } from '../survey/worked'
import type { HeightsContext, StandingUnit } from './context'
import type { Footing } from './footings'

const overTheFloor: Basis = {
  kind: 'geometry',
  why: 'from the floor under the foot to the underside of the carcass',
}
const perTurn: Basis = { kind: 'geometry', why: 'the change of length over the change in one turn' }

/** For every unit on legs, how far each leg is wound out. */
export function legsOf(
  context: HeightsContext,
  undersides: ReadonlyMap<UnitId, Figure>,
): ReadonlyMap<UnitId, readonly LegPlan[]> {
  return new Map(
    context.standing
      .filter(({ on }) => on === 'legs')
      .map((unit): [UnitId, readonly LegPlan[]] => [
        unit.id,
        unit.footings.map((foot) => legUnder(unit, foot, undersides.get(unit.id) as Figure)),
      ]),
  )
}

function legUnder({ id, position }: StandingUnit, foot: Footing, underside: Figure): LegPlan {
  const { legs } = position.unit
  const extension = restingOn(sum('mm', overTheFloor, [underside], [foot.floor]), [
    factId('units', id, 'stands'),
  ])
  return {
    foot: foot.id,
    x: foot.x ?? 0,
    y: foot.y ?? 0,
    floor: foot.floor,
    extension,
    min: legs.min,
    max: legs.max,
    delivered: legs.delivered,
    turns: turnsFrom(legs.delivered, extension, legs.perTurn),
    within: reachOf(extension, legs.min, legs.max),
  }
}

/** Turns from the delivered setting, + to wind out. */
function turnsFrom(delivered: Figure, extension: Figure, oneTurn: Figure): Figure {
  const usable: Figure =
    hasValue(oneTurn) && oneTurn.value === 0
      ? { ...oneTurn, state: 'unknown', missing: oneTurn.from }
      : oneTurn
  return workedFrom(
    'turn',
    perTurn,
    [extension, delivered, usable],
    ([to = 0, from = 0, turn = 1]) => (to - from) / turn,
  )
}

/** Whether a leg reaches: outside only when it is so by more than the precision of both figures. */
function reachOf(extension: Figure, min: Figure, max: Figure): LegPlan['within'] {
  if (!hasValue(extension)) return 'not-known'
  if (hasValue(min) && extension.value + extension.pm < min.value - min.pm) return 'too-short'
  if (hasValue(max) && extension.value - extension.pm > max.value + max.pm) return 'too-long'
  return hasValue(min) && hasValue(max) ? 'yes' : 'not-known'
}
