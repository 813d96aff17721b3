import { agree, disagreement, NEAR, round } from '../agree'
import type { Case } from '../case'
import { floorReadings, trianglesById } from '../levels'
import { type Measure, sum } from '../measure'
import { area, hull } from '../polygon'
import { isHung, type UnitStretch } from '../positions'
import { planeThrough } from '../surface'
import { finished, floorAt, floorUnder } from './legs'
import { bearingFloors, isPacked } from './shims'

/** The walls stand where walking round the room puts them, and the floor is the one that was read. */
export function checkSurvey(c: Case): void {
  checkWalls(c)
  checkFloor(c)
}

function checkWalls(c: Case): void {
  for (const [id, own] of c.room.frames) {
    const plan = c.plan.walls.find((w) => w.wall === id)
    if (plan === undefined) {
      c.refuse('wall', id, 'the plan leaves it out')
      continue
    }
    agree(c.refuse, 'wall', `${id} length`, plan.length, own.wall.length)
    if (plan.placed !== own.placed) c.refuse('wall', id, 'whether it has a place in the room is told wrongly')
    if (!own.placed) continue
    const off = Math.max(
      Math.hypot(plan.origin.x - own.origin.x, plan.origin.y - own.origin.y),
      Math.hypot(plan.alongDir.x - own.alongDir.x, plan.alongDir.y - own.alongDir.y) * 1000,
      Math.hypot(plan.outDir.x - own.outDir.x, plan.outDir.y - own.outDir.y) * 1000,
    )
    if (off > NEAR) c.refuse('wall', id, `it stands ${round(off)} from where the survey puts it`)
    const last = c.given.walls.at(-1)?.id === id
    const turn = disagreement(plan.cornerRight, own.wall.corner)
    if (turn !== null && !last) c.refuse('wall', `${id} corner`, turn)
  }
  for (const wall of c.plan.walls) {
    if (!c.room.frames.has(wall.wall)) c.refuse('wall', wall.wall, 'the kitchen has no such wall')
  }
}

function checkFloor(c: Case): void {
  const { floor } = c.plan
  const own = floorReadings(c.given, c.room)
  for (const reading of own) {
    const plan = floor.points.find((p) => p.id === reading.id)
    const twice = own.some(
      (r) => r !== reading && Math.hypot(r.at.x - reading.at.x, r.at.y - reading.at.y) <= 1,
    )
    if (plan === undefined && twice) continue
    if (plan === undefined) {
      c.refuse('floor', reading.id, 'the plan leaves this reading out')
      continue
    }
    agree(c.refuse, 'floor', reading.id, plan.z, reading.z)
    if (Math.hypot(plan.at.x - reading.at.x, plan.at.y - reading.at.y) > NEAR) {
      c.refuse('floor', reading.id, 'it was not read there')
    }
  }
  for (const point of floor.points) {
    if (!own.some((r) => r.id === point.id))
      c.refuse('floor', point.id, 'there is no such reading with a place')
  }
  const triangles =
    trianglesById(
      own,
      floor.triangles.map((t) => t.readings),
    ) ?? []
  if (triangles.length < floor.triangles.length) {
    c.refuse('floor', 'triangles', 'a triangle stands on a reading that is not there')
  }
  const spans = Math.abs(area(hull(own.map((r) => r.at)))) > 1
  const fault = spans ? c.floorFault : null
  if (fault !== null) c.refuse('floor', 'triangles', fault)
  checkPlane(c)
  checkHighPoint(c)
}

/** The highest floor under any foot of a unit, or corner of an appliance's bay. */
function checkHighPoint(c: Case): void {
  const places = [...c.units.values()].flatMap((at) => standingPlaces(c, at))
  if (places.length === 0) return
  const values = places.flatMap((z) => (z.value === null ? [] : [z.value]))
  const { z } = c.plan.floor.highPoint
  if (z.state !== 'unknown' && (values.length === 0 || z.value < Math.max(...values) - NEAR)) {
    c.refuse('floor', 'high point', `it is at ${round(Math.max(...values))}`)
  }
}

function standingPlaces(c: Case, at: UnitStretch): readonly Measure[] {
  if (at.unit.stands === 'legs') return at.unit.feet.map((foot) => floorUnder(c, at.unit, foot.id))
  if (isPacked(at)) return bearingFloors(c, at)
  const bay = at.unit.kind === 'appliance-space'
  if (!bay && (isHung(at.unit) || at.unit.stands === null)) return []
  const front = sum(at.out, at.unit.depth)
  return [at.out, front].flatMap((out) =>
    [at.left, at.right].map((along) => finished(c, floorAt(c, at.wall, along, out), ['everywhere'])),
  )
}

function checkPlane(c: Case): void {
  const own = planeThrough(c.levels.floor.readings)
  const { plane } = c.plan.floor
  if (plane === null || own === null) {
    if (plane !== null) c.refuse('floor', 'plane', 'the readings do not span a plane')
    return
  }
  const corners = c.levels.floor.readings.map((r) => r.at)
  const off = Math.max(
    ...corners.map((p) =>
      Math.abs(plane.a + plane.b * p.x + plane.c * p.y - (own.a + own.b * p.x + own.c * p.y)),
    ),
  )
  if (off > NEAR) c.refuse('floor', 'plane', `it lies ${round(off)} from the best plane through the readings`)
  if (Math.abs(plane.worst - own.worst) > NEAR) {
    c.refuse('floor', 'plane', `the readings lie up to ${round(own.worst)} from it, not ${plane.worst}`)
  }
}
