import { hasValue, known } from '../figure'
import { compareIds } from '../kitchen/normalise'
import type { OperationContext } from '../operations/operation-context'
import type { Site } from '../rules/rule'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'
import type { Obstacle, Operation, UnitPlan } from './types'

const ON_THE_FACE = known(0, 0, 'mm', [], { kind: 'geometry', why: 'on the face of the wall' })

/** What has been worked out of a kitchen, laid out for the rules of the trade: look-ups by id, units along their walls. */
export function siteOf(
  context: OperationContext,
  survey: Survey,
  positions: readonly UnitPosition[],
  obstacles: readonly Obstacle[],
  order: readonly Operation[],
): Site {
  const { kitchen, names } = context
  const plans = new Map(context.units.map((unit) => [unit.unit, unit]))
  const stated = new Map(kitchen.units.map((unit) => [unit.id, unit]))
  const walls = new Map(kitchen.walls.map((wall) => [wall.id, wall]))
  const appliances = new Map(kitchen.appliances.map((appliance) => [appliance.id, appliance]))
  const at = ({ left }: UnitPlan) => (hasValue(left) ? left.value : Number.POSITIVE_INFINITY)
  return {
    ...context,
    survey,
    positions,
    obstacles,
    order,
    unit: (id) => plans.get(id),
    stated: (id) => stated.get(id),
    wall: (id) => walls.get(id),
    name: (id) => {
      const appliance = appliances.get(id)
      if (appliance !== undefined) return appliance.name ?? `the ${appliance.kind.replaceAll('-', ' ')}`
      return names.get(id) ?? survey.frame(id)?.name ?? id
    },
    onFace: (wall, along, height) => survey.height(height, { wall, along, out: ON_THE_FACE }),
    along: (wall) =>
      context.units
        .filter((unit) => unit.wall === wall && hasValue(unit.left))
        .sort((a, b) => (at(a) === at(b) ? compareIds(a.unit, b.unit) : at(a) - at(b))),
  }
}
