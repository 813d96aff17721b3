import { type Lettered, placesOf } from '../../core/plan/findings-at'
import type { Standing, StandingUnit } from '../../core/plan/standing-at'
import { type Carriage, extentOf, roomPoint } from '../../core/plan/travel-path'
import type { Finding, LocalBox, Plan, RoomPoint, WallFrame } from '../../core/plan/types'
import { holePlace, isInPlace } from '../../core/views/hole-place'
import type { RoomShape } from '../../core/views/room-shape'
import { lengthOf, onWall, placedWall } from '../../core/views/wall-place'
import { palette } from '../palette'
import { type Pen, type Point, ring, type Sketch } from '../sketch'

/** Half the height of the outline round a spot, mm. */
const ROUND = 52
/** How far in front of what it lies on it is drawn, mm. */
const BEFORE = 8
/** Below the top of a wall, mm, where what is found about all of it is shown. */
const UNDER_TOP = 140
/** Up a unit, as a share of its height. */
const UP_UNIT = 0.82

/** Where a finding shows: the middle of its outline, and the two ways the outline lies. */
export interface FindingSpot extends Lettered {
  readonly at: RoomPoint
  readonly across: RoomPoint
  readonly up: RoomPoint
  /** The wall it is on, if it is on one. */
  readonly wall: WallFrame | null
  /** The unit it is on, if it moves with one. */
  readonly unit: string | null
}

/** Every place of every finding that can be shown now; a wall that is left out takes what is on it along. */
export function findingSpots(
  plan: Plan,
  standing: Standing,
  findings: readonly Lettered[],
  room: RoomShape,
  hidden: ReadonlySet<string>,
): readonly FindingSpot[] {
  return findings.flatMap(({ finding, letter }) => {
    const places = placesOf(plan, finding)
    const here = places.filter(
      (p) => p.kind !== 'hole' || standing.operation?.holes.includes(p.hole.id) === true,
    )
    return (here.length > 0 ? here : places).flatMap((place): readonly FindingSpot[] => {
      const spot = spotOf(plan, standing, place, room)
      if (spot === null || (spot.wall !== null && hidden.has(spot.wall.wall))) return []
      return [{ finding, letter, ...spot }]
    })
  })
}

type Where = Omit<FindingSpot, 'finding' | 'letter'>

function spotOf(
  plan: Plan,
  standing: Standing,
  place: ReturnType<typeof placesOf>[number],
  room: RoomShape,
): Where | null {
  switch (place.kind) {
    case 'unit': {
      const unit = plan.units.find((u) => u.unit === place.unit)
      if (unit === undefined || unit.pose === null) return null
      const at = standing.units.find((u) => u.unit.unit === place.unit) ?? { pose: unit.pose, tilt: null }
      const spot = onFront(at, unit.solid)
      return spot === null ? null : { ...spot, unit: unit.unit }
    }
    case 'part': {
      const part = plan.parts?.find((p) => p.part === place.part)
      return part?.pose == null ? null : onFront({ pose: part.pose, tilt: null }, part.solid)
    }
    case 'wall': {
      const wall = placedWall(plan, place.wall)
      return wall === undefined
        ? null
        : onFace(standing, wall, lengthOf(wall) / 2, room.topOf(wall).z - UNDER_TOP)
    }
    case 'spot': {
      const wall = placedWall(plan, place.wall)
      if (wall === undefined) return null
      const hole = holeAt(standing, place)
      const seen = hole === undefined ? null : holePlace(plan, standing, hole)
      return seen === null || seen.behind !== null
        ? onFace(standing, wall, place.along, place.height)
        : { at: seen.at, ...waysOf(wall), wall, unit: null }
    }
    case 'hole': {
      const { hole } = place
      const wall = placedWall(plan, hole.wall)
      const seen = holePlace(plan, standing, hole)
      if (wall === undefined || seen === null) return null
      if (hole.along.state === 'unknown' || hole.height.state === 'unknown') return null
      if (seen.behind !== null) return onFace(standing, wall, hole.along.value, hole.height.value)
      return { at: seen.at, ...waysOf(wall), wall, unit: null }
    }
  }
}

/** The hole that is made now at a spot of a wall: what is found there is shown round its mark, not before it. */
function holeAt({ holes }: Standing, spot: { readonly wall: string; along: number; height: number }) {
  return holes.find(
    ({ hole: { wall, along, height }, isNow }) =>
      isNow &&
      wall === spot.wall &&
      along.state !== 'unknown' &&
      height.state !== 'unknown' &&
      Math.hypot(along.value - spot.along, height.value - spot.height) < 1,
  )?.hole
}

const waysOf = ({ alongDir }: WallFrame) => ({
  across: { x: alongDir.x, y: alongDir.y, z: 0 },
  up: { x: 0, y: 0, z: 1 },
})

/** On a wall, or on the front of the unit that stands before that spot of it. */
function onFace(standing: Standing, wall: WallFrame, along: number, height: number): Where {
  const before = standing.units.filter((u) => covers(u, wall, along, height))
  const depth = Math.max(0, ...before.flatMap((u) => u.unit.solid.map((b) => b.y1)))
  const [x, y, z] = onWall(wall)(along, depth + BEFORE, height)
  return { at: { x, y, z }, ...waysOf(wall), wall, unit: null }
}

function covers(u: StandingUnit, wall: WallFrame, along: number, height: number): boolean {
  const { left, right, underside, top } = u.unit
  if (u.unit.wall !== wall.wall || u.unit.kind === 'island' || !isInPlace(u)) return false
  if (left.state === 'unknown' || right.state === 'unknown') return false
  if (underside.state === 'unknown' || top.state === 'unknown') return false
  return left.value <= along && along <= right.value && underside.value <= height && height <= top.value
}

function onFront(at: Carriage, solid: readonly LocalBox[]): Where | null {
  const [box] = solid
  if (box === undefined) return null
  const extent = extentOf(solid)
  const [x, y, z] = [(box.x0 + box.x1) / 2, box.y1 + BEFORE, box.z0 + UP_UNIT * (box.z1 - box.z0)]
  const point = (dx: number, dz: number) => roomPoint(at, extent, { x: x + dx, y, z: z + dz })
  const middle = point(0, 0)
  const way = (p: RoomPoint) => ({ x: p.x - middle.x, y: p.y - middle.y, z: p.z - middle.z })
  return { at: middle, across: way(point(1, 0)), up: way(point(0, 1)), wall: null, unit: null }
}

/** An outline standing on its corner round every spot: red where work stops, chalk where it is open, else quiet. */
export function sketchFindings(sketch: Sketch, spots: readonly FindingSpot[], open: string | null): void {
  for (const { finding, at, across, up } of spots) {
    const to = (a: number, b: number): Point => [
      at.x + a * across.x + b * up.x,
      at.y + a * across.y + b * up.y,
      at.z + a * across.z + b * up.z,
    ]
    const round = [to(-ROUND, 0), to(0, ROUND), to(ROUND, 0), to(0, -ROUND)]
    ring(sketch, `finding:${finding.id}`, penOf(finding, finding.id === open), round)
  }
}

function penOf({ weight, dangerous }: Finding, isOpen: boolean): Pen {
  const colour = isOpen ? palette.chalk : weight === 'stop' ? palette.refused : palette.ink
  return { weight: isOpen || dangerous || weight === 'stop' ? 'bold' : 'fine', colour }
}
