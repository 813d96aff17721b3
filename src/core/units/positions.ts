import { type Basis, type Figure, hasValue, known, quantise, valueOf } from '../figure'
import { bearing } from '../geometry/point'
import { factId } from '../kitchen/fact-id'
import type { FinishingPart, Kitchen, Unit } from '../kitchen/schema'
import type { Finding, LocalBox, Pose, WallId } from '../plan/types'
import { citing } from '../survey/sum'
import type { Survey } from '../survey/survey'
import { unitNames } from './names'
import { type Extent, extentsOn } from './order-on-wall'
import { pastEnd } from './past-end'
import { solidOf } from './solid'

/** Where a unit stands along its wall, and its carcass. Lengths mm, left and right seen from the room. */
export interface UnitPosition {
  readonly unit: Unit
  readonly name: string
  readonly left: Figure
  readonly right: Figure
  readonly width: Figure
  readonly height: Figure
  readonly depth: Figure
  /** Back of the carcass out from the finished face. */
  readonly out: Figure
  /** The carcass in the unit's own frame; null while a size is not known. */
  readonly boxes: readonly LocalBox[] | null
}

/** A finishing part that stands somewhere along a wall: panels and fillers. */
export interface PartPosition {
  readonly part: FinishingPart
  /** Its own wall, or its neighbour's. */
  readonly wall: WallId | null
  readonly left: Figure
  readonly right: Figure
}

export interface Positions {
  readonly units: readonly UnitPosition[]
  readonly parts: readonly PartPosition[]
  readonly findings: readonly Finding[]
}

const againstTheWall: Basis = { kind: 'geometry', why: 'against the wall where no stand-off is given' }

/** Back of a unit's carcass out from the finished face: against the wall, unless its file says otherwise. */
export function backOut({ standOff }: Pick<Unit, 'standOff'>): Figure {
  return hasValue(standOff) ? standOff : known(0, 0, 'mm', [], againstTheWall)
}

/** Where every unit, panel and filler stands along its wall. */
export function workOutPositions(kitchen: Kitchen, survey: Survey): Positions {
  const names = unitNames(kitchen)
  const extentOf = extentsOn(kitchen, survey)
  const units = kitchen.units.map((unit): UnitPosition => {
    const extent = extentOf(unit.id) as Extent
    // Neighbours pass on where the first of them stands; that this unit stands on the same wall is a fact of its own.
    const [left, right] = [extent.left, extent.right].map((end) =>
      citing(end, [factId('units', unit.id, 'wall')]),
    )
    return {
      unit,
      name: names.get(unit.id) as string,
      left: left as Figure,
      right: right as Figure,
      width: unit.width,
      height: unit.height,
      depth: unit.depth,
      out: backOut(unit),
      boxes: solidOf(unit),
    }
  })
  const parts = kitchen.finishing
    .filter(({ order }) => order !== undefined)
    .map((part): PartPosition => ({ part, ...(extentOf(part.id) as Extent) }))
  const findings = units.flatMap(({ unit: { id, wall }, name, left, right }) =>
    pastEnd({ id, name, wall, left, right }, survey),
  )
  return { units, parts, findings }
}

/**
 * Where the unit's carcass stands in the room: its back left bottom corner, and which way its width runs. Null while
 * its place, its height or its wall's place in the room is not known.
 */
export function poseOf(position: UnitPosition, survey: Survey, underside: Figure): Pose | null {
  const [left, out, z] = [position.left, position.out, underside].map(valueOf)
  const frame = survey.frame(position.unit.wall)
  if (left === undefined || out === undefined || z === undefined || frame === undefined) return null
  const point = survey.toRoom(position.unit.wall, left, out)
  return point === null ? null : { ...point, z, yaw: quantise(bearing(frame.alongDir)) }
}
