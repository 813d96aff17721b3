import { hasValue, known } from '../figure'
import { compareIds } from '../kitchen/normalise'
import type { Kitchen } from '../kitchen/schema'
import type { OperationContext } from '../operations/operation-context'
import type { Site } from '../rules/rule'
import type { Survey } from '../survey/survey'
import { applianceSaid, nameSaid, partName, worktopName } from '../units/part-name'
import type { UnitPosition } from '../units/positions'
import type { Obstacle, Operation, UnitPlan, WallId } from './types'

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
  const said = namesSaid(kitchen)
  const along = new Map<WallId, readonly UnitPlan[]>()
  return {
    ...context,
    survey,
    positions,
    obstacles,
    order,
    unit: (id) => plans.get(id),
    stated: (id) => stated.get(id),
    wall: (id) => walls.get(id),
    name: (id) => names.get(id) ?? said.get(id) ?? survey.frame(id)?.name ?? id,
    onFace: (wall, along, height) => survey.height(height, { wall, along, out: ON_THE_FACE }),
    along: (wall) => {
      const known = along.get(wall) ?? unitsAlong(context.units, wall)
      along.set(wall, known)
      return known
    },
  }
}

/** Appliances, finishing parts and worktops as they are said within a sentence, by id. */
function namesSaid(kitchen: Kitchen): ReadonlyMap<string, string> {
  return new Map([
    ...kitchen.finishing.map((part) => [part.id, nameSaid(partName(kitchen, part))] as const),
    ...kitchen.worktops.map((top) => [top.id, nameSaid(worktopName(kitchen, top))] as const),
    ...kitchen.appliances.map((appliance) => [appliance.id, applianceSaid(appliance)] as const),
  ])
}

function unitsAlong(units: readonly UnitPlan[], wall: WallId): readonly UnitPlan[] {
  const at = ({ left }: UnitPlan) => (hasValue(left) ? left.value : Number.POSITIVE_INFINITY)
  return units
    .filter((unit) => unit.wall === wall && hasValue(unit.left))
    .sort((a, b) => (at(a) === at(b) ? compareIds(a.unit, b.unit) : at(a) - at(b)))
}
