import { type Basis, type Figure, hasValue } from '../figure'
import { mergedIds } from '../ids'
import { factId } from '../kitchen/fact-id'
import type { LegPlan, UnitId } from '../plan/types'
import { citing, sum } from '../survey/sum'
import { workedFrom } from '../survey/worked'
import type { HeightsContext, StandingUnit } from './context'

const overTheFloor: Basis = {
  kind: 'geometry',
  why: 'from the floor under the foot to the underside of the carcass',
}
const overOneTurn: Basis = { kind: 'geometry', why: 'the change of length over the change in one turn' }

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
        legsUnder(unit, undersides.get(unit.id) as Figure),
      ]),
  )
}

function legsUnder({ id, position, footings }: StandingUnit, underside: Figure): readonly LegPlan[] {
  const { min, max, delivered, perTurn } = position.unit.legs
  const standing = citing(underside, [factId('units', id, 'stands')])
  const turned = mergedIds([standing.from, delivered.from, perTurn.from])
  return footings.map((foot) => {
    const extension = sum('mm', overTheFloor, [standing], [foot.floor])
    // Mostly the height already rests on every foot's floor, and then all feet share one list of inputs.
    const from = extension.from === standing.from ? turned : mergedIds([turned, extension.from])
    return {
      foot: foot.id,
      x: foot.x ?? 0,
      y: foot.y ?? 0,
      floor: foot.floor,
      extension,
      min,
      max,
      delivered,
      turns: { ...turnsFrom(delivered, extension, perTurn), from },
      within: reachOf(extension, min, max),
    }
  })
}

/** Turns from the delivered setting, + to wind out. */
function turnsFrom(delivered: Figure, extension: Figure, oneTurn: Figure): Figure {
  const usable: Figure =
    hasValue(oneTurn) && oneTurn.value === 0
      ? { ...oneTurn, state: 'unknown', missing: oneTurn.from }
      : oneTurn
  const work = ([to = 0, from = 0, turn = 1]: readonly number[]) => (to - from) / turn
  return workedFrom('turn', overOneTurn, [extension, delivered, usable], work, [])
}

/** Whether a leg reaches: outside only when it is so by more than the precision of both figures. */
function reachOf(extension: Figure, min: Figure, max: Figure): LegPlan['within'] {
  if (!hasValue(extension)) return 'not-known'
  if (hasValue(min) && extension.value + extension.pm < min.value - min.pm) return 'too-short'
  if (hasValue(max) && extension.value - extension.pm > max.value + max.pm) return 'too-long'
  return hasValue(min) && hasValue(max) ? 'yes' : 'not-known'
}
