import { type Basis, type Figure, known } from '../figure'
import type { FinishingPart } from '../kitchen/schema'
import type { UnitPlan, WallId } from '../plan/types'
import { remembered } from '../remember'
import { sum } from '../survey/sum'
import { partName } from '../units/part-name'
import type { NamingKitchen } from '../units/part-place'
import type { PartPosition, UnitPosition } from '../units/positions'

/** What takes up room along a wall: a unit, or a panel or filler at the side of one. Heights from the line. */
export interface RunPiece {
  readonly id: string
  readonly name: string
  readonly wall: WallId
  readonly unit: UnitPlan | null
  readonly part: FinishingPart | null
  readonly left: Figure
  readonly right: Figure
  readonly bottom: Figure
  readonly top: Figure
  /** Back and front out from the finished face of the wall, fronts not counted. */
  readonly back: Figure
  readonly front: Figure
}

interface Laid {
  readonly kitchen: NamingKitchen
  readonly units: readonly UnitPlan[]
  readonly positions: readonly UnitPosition[]
  readonly parts: readonly PartPosition[]
}

const frontOf: Basis = { kind: 'geometry', why: 'the back out from the wall, and the depth' }
const downTo: Basis = {
  kind: 'geometry',
  why: 'a panel ends at the top of its unit and reaches down by its own height',
}
const atTheWall = known(0, 0, 'mm', [], frontOf)

function unitPiece(plan: UnitPlan, positions: readonly UnitPosition[]): RunPiece {
  const back = positions.find(({ unit }) => unit.id === plan.unit)?.out ?? atTheWall
  const { unit: id, name, wall, left, right, underside: bottom, top } = plan
  const front = sum('mm', frontOf, [back, plan.depth])
  return { id, name, wall, unit: plan, part: null, left, right, bottom, top, back, front }
}

function partPiece(laid: Laid, { part, wall, left, right }: PartPosition): readonly RunPiece[] {
  const beside = laid.units.find(({ unit }) => part.of.includes(unit))
  if (beside === undefined || wall === null) return []
  const of = unitPiece(beside, laid.positions)
  const isPanel = part.kind === 'end-panel'
  const { top } = of
  const bottom = isPanel ? sum('mm', downTo, [top], [part.height]) : of.bottom
  const [back, front] = isPanel
    ? [atTheWall, part.depth]
    : [sum('mm', frontOf, [of.front], [part.depth]), of.front]
  const name = partName(laid.kitchen, part)
  return [{ id: part.id, name, wall, unit: null, part, left, right, bottom, top, back, front }]
}

/** Units, and the panels and fillers beside them, as what stands along the walls. */
export const runPieces: (laid: Laid) => readonly RunPiece[] = remembered((laid: Laid) => [
  ...laid.units.map((plan) => unitPiece(plan, laid.positions)),
  ...laid.parts.flatMap((position) => partPiece(laid, position)),
])
