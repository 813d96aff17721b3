import type { Figure } from '../figure'
import type { Standing, StandingUnit } from '../plan/standing-at'
import { boxAround, type Carriage, extentOf, roomPoint } from '../plan/travel-path'
import type {
  FittedPart,
  Hole,
  LocalBox,
  Operation,
  Plan,
  PlanPoint,
  RoomPoint,
  WallFrame,
  WallId,
} from '../plan/types'
import { holePlace } from '../views/hole-place'
import { shownAt } from '../views/upturned'
import { onWall, placedWall } from '../views/wall-place'
import type { Act, Contact, Motion, StagedTool } from './staging'

/** What a staging is worked out from: the operation, and the room as it begins. */
export interface Stage {
  readonly plan: Plan
  readonly operation: Operation
  readonly standing: Standing
}

/** Works out the acts of one kind of operation. */
export type Stages = (stage: Stage) => readonly Act[]

export function stageOf(plan: Plan, index: number): Stage | null {
  const operation = plan.operations[index]
  return operation === undefined ? null : { plan, operation, standing: shownAt(plan, index, 0) }
}

export const UP: RoomPoint = { x: 0, y: 0, z: 1 }
export const DOWN: RoomPoint = { x: 0, y: 0, z: -1 }
/** Of the frame of a unit: along its width, and from its front towards its back. */
export const RIGHT: RoomPoint = { x: 1, y: 0, z: 0 }
export const BACK: RoomPoint = { x: 0, y: -1, z: 0 }

const level = ({ x, y }: PlanPoint): RoomPoint => ({ x, y, z: 0 })
const opposite = ({ x, y, z }: RoomPoint): RoomPoint => ({ x: -x, y: -y, z: -z })

/** A tool held against a wall, square to it. */
export function againstWall(frame: WallFrame, along: number, height: number, out = 3): Contact {
  const [x, y, z] = onWall(frame)(along, out, height)
  return { at: { x, y, z }, into: opposite(level(frame.outDir)), across: level(frame.alongDir) }
}

/** Where on a wall, as a place in the room. */
export function wallPoint(frame: WallFrame, along: number, height: number, out = 3): RoomPoint {
  const [x, y, z] = onWall(frame)(along, out, height)
  return { x, y, z }
}

/** A tool at a place of a unit, in the unit's own frame: `into` is a direction of that frame too. */
export function atUnit(unit: StandingUnit, local: RoomPoint, into: RoomPoint, across: RoomPoint): Contact {
  return atCarriage(unit, unit.unit.solid, local, into, across)
}

/** The same for anything that has a place and a solid. */
export function atCarriage(
  carriage: Carriage,
  solid: readonly LocalBox[],
  local: RoomPoint,
  into: RoomPoint,
  across: RoomPoint,
): Contact {
  const extent = extentOf(solid)
  const at = roomPoint(carriage, extent, local)
  const turned = (d: RoomPoint): RoomPoint => {
    const end = roomPoint(carriage, extent, { x: local.x + d.x, y: local.y + d.y, z: local.z + d.z })
    return { x: end.x - at.x, y: end.y - at.y, z: end.z - at.z }
  }
  return { at, into: turned(into), across: turned(across) }
}

/** A place of a fitted part, by shares of the box around it: left to right, back to front, bottom to top. */
type Share = readonly [x: number, y: number, z: number]

function shareOf(part: FittedPart, [x, y, z]: Share): RoomPoint {
  const b = boxAround(part.solid)
  return { x: b.x0 + x * (b.x1 - b.x0), y: b.y0 + y * (b.y1 - b.y0), z: b.z0 + z * (b.z1 - b.z0) }
}

const carriageOf = ({ pose }: FittedPart): Carriage => ({
  pose: pose ?? { x: 0, y: 0, z: 0, yaw: 0 },
  tilt: null,
})

/** A tool at a place of a fitted part. */
export function atPart(part: FittedPart, at: Share, into: RoomPoint, across: RoomPoint): Contact {
  return atCarriage(carriageOf(part), part.solid, shareOf(part, at), into, across)
}

export function onPart(part: FittedPart, ...at: Share): RoomPoint {
  return roomPoint(carriageOf(part), extentOf(part.solid), shareOf(part, at))
}

export function unitPoint(unit: StandingUnit, local: RoomPoint): RoomPoint {
  return roomPoint(unit, extentOf(unit.unit.solid), local)
}

export const wallOf = ({ plan }: Stage, wall: WallId | null): WallFrame | undefined => placedWall(plan, wall)

/** Units that the operation has in hand and that have a place in the room. */
export const inHand = ({ standing }: Stage): readonly StandingUnit[] =>
  standing.units.filter((u) => u.isInHand && u.unit.solid.length > 0)

/** A figure of the operation by its name. */
export function figureOf({ operation }: Stage, name: string): Figure | null {
  return operation.figures.find((f) => f.name === name)?.figure ?? null
}

/** Holes of the operation that may be made, by their numbers; a refused place is never shown under a drill. */
export function holesOf({ plan, operation }: Stage): readonly Hole[] {
  const ids = new Set(operation.holes)
  const number = (h: Hole) => h.number ?? Number.POSITIVE_INFINITY
  return plan.holes
    .filter((h) => ids.has(h.id) && h.verdict !== 'refused')
    .sort((a, b) => (number(a) === number(b) ? 0 : number(a) - number(b)))
}

/** Where a hole is worked at: on the wall, or on the back of the unit it goes through. */
export function holeContact({ plan, standing }: Stage, hole: Hole): Contact | null {
  const frame = placedWall(plan, hole.wall)
  const place = holePlace(plan, standing, hole)
  if (frame === undefined || place === null) return null
  return { at: place.at, into: opposite(level(frame.outDir)), across: level(frame.alongDir) }
}

export function act(tool: StagedTool, on: string, contact: Contact | null, motion: Motion): Act {
  return { tool, on, contact, motion: contact === null ? { kind: 'elsewhere' } : motion }
}

/** Work on something that has no place in the picture. */
export const elsewhere = (tool: StagedTool, on: string): Act => act(tool, on, null, { kind: 'elsewhere' })
