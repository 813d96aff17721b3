import type { Trial } from '../core/levelling/trial-heights'
import type { Lettered } from '../core/plan/findings-at'
import type { Standing, StandingUnit } from '../core/plan/standing-at'
import { type Carriage, extentOf, roomPoint } from '../core/plan/travel-path'
import type { Plan, UnitPlan } from '../core/plan/types'
import { holePlace } from '../core/views/hole-place'
import { goesWithWall, type LeftOut } from '../core/views/kept'
import type { RoomShape } from '../core/views/room-shape'
import { isUpturned } from '../core/views/upturned'
import { palette } from './palette'
import { sketchAccessories } from './parts/accessories'
import { sketchAppliances } from './parts/appliances'
import { sketchBands } from './parts/bands'
import { sketchBehindBack } from './parts/behind-back'
import { sketchBlanket, sketchBlocks } from './parts/blocks'
import { dimensionsOf, sketchDimensions } from './parts/dimension'
import { type FindingSpot, findingSpots, sketchFindings } from './parts/findings'
import { sketchFittedParts } from './parts/fitted-parts'
import { sketchHangers } from './parts/hangers'
import { sketchHoles } from './parts/holes'
import { sketchKeepClear } from './parts/keep-clear'
import { leaning } from './parts/lean'
import { sketchLegs } from './parts/legs'
import { sketchLevel } from './parts/level'
import { sketchLines } from './parts/lines'
import { sketchMarks } from './parts/marks'
import { sketchObstacles } from './parts/obstacles'
import { sketchOpenings } from './parts/openings'
import { sketchPlaces } from './parts/place-outline'
import { sketchRails } from './parts/rails'
import { sketchRoom } from './parts/room'
import { sketchServices } from './parts/services'
import { sketchFloorShadow, sketchWallShadows } from './parts/shadows'
import { sketchShims } from './parts/shims'
import { sketchStuds } from './parts/studs'
import { sketchUnitBody } from './parts/unit-body'
import { newSketch, type Place, ring, type Sketch } from './sketch'
import { wallTone } from './wall-tone'

/** The picture of one operation: what keeps still, and the unit that travels, drawn in a frame of its own. */
export interface SceneSketch {
  readonly still: Sketch
  readonly moving: { readonly unit: string; readonly sketch: Sketch } | null
}

/** The unit on its way in this operation. */
export function movingUnit(plan: Plan, standing: Standing): StandingUnit | null {
  const path = standing.operation?.path ?? null
  const unit = path === null ? undefined : plan.paths[path]?.unit
  return standing.units.find((u) => u.unit.unit === unit) ?? null
}

/** Units on a wall that is left out go with it where they are in the way; the one in hand never does. */
export function isCutAway({ unit, isInHand, isHeld }: StandingUnit, leftOut: LeftOut): boolean {
  return goesWithWall(unit, leftOut) && !isInHand && !isHeld
}

/** What has been found that is shown with an operation, and which of it is open beside the picture. */
export interface Found {
  readonly lettered: readonly Lettered[]
  readonly open: string | null
}
export const nothingFound: Found = { lettered: [], open: null }

/**
 * Sketches an operation. `standing` is the room at its start, or at its end; the unit on its way is drawn apart from it,
 * and only whether it is arriving changes what keeps still.
 */
export function sketchScene(
  plan: Plan,
  standing: Standing,
  room: RoomShape,
  leftOut: LeftOut,
  isNearlyThere = false,
  found: Found = nothingFound,
  tried: Trial | null = null,
): SceneSketch {
  const still = newSketch()
  const hidden = leftOut.walls
  sketchRoom(still, room, hidden)
  sketchObstacles(still, plan, room)
  for (const wall of room.walls) {
    if (hidden.has(wall.wall)) continue
    sketchOpenings(still, plan, room, wall)
    const tone = wallTone(standing, wall)
    sketchStuds(still, standing, room, wall, tone)
    sketchBands(still, plan, standing, room, wall, tone)
    sketchServices(still, standing, room, wall)
    sketchLines(still, standing, wall, tone)
    sketchMarks(still, plan, standing, wall, tone)
    sketchRails(still, standing, wall)
    sketchAccessories(still, standing, room, wall)
  }
  const moving = movingUnit(plan, standing)
  const settled = standing.units.filter((u) => u !== moving)
  for (const wall of room.walls) if (!hidden.has(wall.wall)) sketchWallShadows(still, settled, wall)
  for (const unit of standing.units) {
    if (unit === moving) continue
    if (isCutAway(unit, leftOut)) sketchFootprint(still, unit, room)
    else sketchUnit(still, plan, standing, unit, room, tried)
  }
  if (moving !== null && standing.operation?.kind === 'stand-up') {
    const over = moving.unit.standUp?.over ?? moving.tilt?.over
    if (over !== undefined) sketchBlocks(still, moving, room, over)
  }
  sketchKeepClear(still, standing, room)
  sketchPlaces(still, plan, standing, room, hidden)
  sketchHoles(still, plan, isNearlyThere ? withHome(standing, moving) : standing, hidden)
  sketchFittedParts(still, withoutCutAway(plan, standing, leftOut), room)
  sketchAppliances(still, plan, standing, room, hidden)
  sketchDimensions(still, dimensionsOf(plan, standing, room))
  const spots = findingSpots(plan, standing, found.lettered, room, hidden)
  const isCarried = (spot: FindingSpot) => spot.unit !== null && spot.unit === moving?.unit.unit
  sketchFindings(
    still,
    spots.filter((s) => !isCarried(s)),
    found.open,
  )
  if (moving === null) return { still, moving: null }

  const own = newSketch()
  const home = withOwnFrame(moving)
  const carried = { ...standing, units: standing.units.map((u) => (u === moving ? home : u)) }
  const onIt = findingSpots(plan, carried, found.lettered, room, hidden).filter(isCarried)
  sketchFindings(own, onIt, found.open)
  sketchUnitBody(own, moving.unit, ownPlace, { isInHand: true, hasShelves: moving.shelves === 'in' })
  sketchHangers(own, plan, standing, moving, ownPlace)
  if (hasRoomForLegs(moving, room)) sketchLegs(own, moving, ownPlace)
  return { still, moving: { unit: moving.unit.unit, sketch: own } }
}

/** Nearer its place than this, mm, a unit on its way hides the marks behind it, though they are pulled forward. */
const ARRIVING = 90

/** Whether a unit on its way is as good as in its place. */
export function isArriving({ pose: place }: UnitPlan, at: Carriage): boolean {
  if (place === null || at.tilt !== null) return false
  const { x, y, z } = at.pose
  return Math.hypot(x - place.x, y - place.y, z - place.z) < ARRIVING
}

function withHome(standing: Standing, moving: StandingUnit | null): Standing {
  const home = moving?.unit.pose ?? null
  if (home === null) return standing
  return {
    ...standing,
    units: standing.units.map((u) => (u === moving ? { ...u, pose: home, tilt: null } : u)),
  }
}

/** A unit set down on its carcass has its legs off: at their full length they'd be in the floor. */
function hasRoomForLegs({ unit, pose, tilt, legs }: StandingUnit, room: RoomShape): boolean {
  if (tilt !== null || legs === 'wound-in') return true
  const longest = Math.max(
    0,
    ...unit.legs.map((l) => (l.extension.state === 'unknown' ? 0 : l.extension.value)),
  )
  return pose.z - longest > room.floorOr(pose) - 25
}

/** The unit in a frame of its own, which runs the ways the room's does at yaw 0. */
const withOwnFrame = (moving: StandingUnit): StandingUnit => ({
  ...moving,
  pose: { x: 0, y: 0, z: 0, yaw: 0 },
  tilt: null,
})

/** Right-handed own frame of the travelling unit: x along its width, y behind its back, z up. */
const ownPlace: Place = (x, y, z) => [x, -y, z]

function roomPlace(unit: StandingUnit): Place {
  const extent = extentOf(unit.unit.solid)
  return (x, y, z) => {
    const p = roomPoint(unit, extent, { x, y, z })
    return [p.x, p.y, p.z]
  }
}

function sketchUnit(
  still: Sketch,
  plan: Plan,
  standing: Standing,
  unit: StandingUnit,
  room: RoomShape,
  tried: Trial | null,
): void {
  const place = roomPlace(unit)
  const trial =
    standing.levelOn === unit.unit.unit && tried?.operation === standing.operation?.id ? tried : null
  const lying = leaning(place, unit.unit, trial)
  const isDrilled = standing.holes.some(
    (h) => h.isNow && holePlace(plan, standing, h.hole)?.inside?.unit.unit === unit.unit.unit,
  )
  const hasShelves = unit.shelves === 'in' && !isDrilled
  sketchFloorShadow(still, unit, room)
  sketchUnitBody(still, unit.unit, lying.unit, { isInHand: unit.isInHand, hasShelves })
  if (isDrilled) sketchBehindBack(still, plan, standing.wallThings, unit, room)
  sketchHangers(still, plan, standing, unit, lying.unit)
  sketchLegs(still, unit, lying.legs)
  sketchShims(still, unit, place)
  if (isUpturned(unit)) sketchBlanket(still, unit, place)
  else if (unit.tilt !== null) sketchBlocks(still, unit, room, unit.tilt.over)
  if (standing.levelOn === unit.unit.unit) sketchLevel(still, unit.unit, lying.unit, trial)
}

function sketchFootprint(still: Sketch, unit: StandingUnit, room: RoomShape): void {
  const place = roomPlace(unit)
  for (const b of unit.unit.solid) {
    const corners = [place(b.x0, b.y0, 0), place(b.x1, b.y0, 0), place(b.x1, b.y1, 0), place(b.x0, b.y1, 0)]
    ring(
      still,
      `foot:${unit.unit.unit}`,
      { weight: 'hair', colour: palette.pencil },
      corners.map(([x, y]) => [x, y, room.floorOr({ x, y }) + 2] as const),
    )
  }
}

function withoutCutAway(plan: Plan, standing: Standing, leftOut: LeftOut): Standing {
  const gone = new Set(standing.units.filter((u) => isCutAway(u, leftOut)).map((u) => u.unit.unit))
  const onHidden = new Set(plan.units.filter((u) => goesWithWall(u, leftOut)).map((u) => u.unit))
  return {
    ...standing,
    units: standing.units.filter((u) => !gone.has(u.unit.unit)),
    parts: standing.parts.filter(
      ({ part, isNow }) => isNow || part.of.length === 0 || !part.of.every((u) => onHidden.has(u)),
    ),
  }
}
