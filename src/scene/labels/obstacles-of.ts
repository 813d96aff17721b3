import type { Standing, StandingUnit } from '../../core/plan/standing-at'
import { type Carriage, extentOf, roomPoint } from '../../core/plan/travel-path'
import type { LocalBox, Plan, Pose, RoomPoint } from '../../core/plan/types'
import { holePlace } from '../../core/views/hole-place'
import { isBlocked } from '../../core/views/rays'
import type { View } from '../../core/views/view'
import { onWall, placedWall } from '../../core/views/wall-place'
import type { LabelObstacles } from './LabelRig'
import { markPlace } from './labels-of'

/** What the texts keep off: fixing points, and the edges of what is in hand that the eye sees. */
export function obstaclesOf(plan: Plan, standing: Standing, view: View): LabelObstacles {
  const marks = standing.holes.flatMap(({ hole, isNow }) => {
    const place = holePlace(plan, standing, hole)
    const isDrawn = place !== null && place.behind === null && (place.inside === null || isNow)
    return isDrawn ? [place.at] : []
  })
  const edges = standing.units
    .filter((u) => u.isInHand)
    .flatMap((u) => [...u.unit.solid.flatMap((b) => seenEdges(u, u.unit.solid, b, view.eye)), ...legEdges(u)])
  const boards = standing.parts
    .filter((p) => p.isNow)
    .flatMap(({ part }): readonly Edge[] =>
      part.pose === null
        ? []
        : part.solid.flatMap((b) =>
            seenEdges({ pose: part.pose as Pose, tilt: null }, part.solid, b, view.eye),
          ),
    )
  return {
    marks: [...marks, ...struckMarks(plan, standing)],
    edges: [...edges, ...boards, ...frontEdges(standing, view)],
    plates: platesOf(plan, standing, view),
  }
}

/** Marks being made now, where they cross the line they are made on. */
function struckMarks(plan: Plan, standing: Standing): readonly RoomPoint[] {
  return standing.marks.flatMap(({ mark, isNow }) => {
    const place = isNow ? markPlace(plan, mark) : null
    return place === null ? [] : [place]
  })
}

/** Fronts as they are hung, as large as they are drawn. */
function frontEdges(standing: Standing, view: View): readonly Edge[] {
  return standing.units
    .filter((u) => u.fronts === 'now')
    .flatMap((u) => {
      const [box] = u.unit.solid
      if (box === undefined) return []
      return seenEdges(u, u.unit.solid, { ...box, y0: box.y1 + 2, y1: box.y1 + 20 }, view.eye)
    })
}

/** Sockets, switches and outlets that the eye sees: the corners of each. */
function platesOf(plan: Plan, standing: Standing, view: View): readonly (readonly RoomPoint[])[] {
  const blockers = standing.units
    .filter((u) => u.tilt === null)
    .map((u) => ({ id: u.unit.unit, wall: null, pose: u.pose, boxes: u.unit.solid }))
  const isSeen = (p: RoomPoint) => !blockers.some((b) => isBlocked(view.eye, p, b))
  return standing.wallThings.flatMap(({ thing }): readonly (readonly RoomPoint[])[] => {
    const wall = placedWall(plan, thing.wall)
    const { left, right, bottom, top } = thing
    if (thing.kind !== 'accessory' || wall === undefined || view.hidden.includes(thing.wall)) return []
    if (left.state === 'unknown' || right.state === 'unknown') return []
    if (bottom === null || bottom.state === 'unknown' || top === null || top.state === 'unknown') return []
    const corners = [left.value, right.value].flatMap((along) =>
      [bottom.value, top.value].map((up): RoomPoint => {
        const [x, y, z] = onWall(wall)(along, 12, up)
        return { x, y, z }
      }),
    )
    return corners.some(isSeen) ? [corners] : []
  })
}

type Edge = readonly [RoomPoint, RoomPoint]

/** The legs of a unit that stands on them, each as one line. */
function legEdges(u: StandingUnit): readonly Edge[] {
  const extent = extentOf(u.unit.solid)
  return u.unit.legs.flatMap(({ x, y, extension }): readonly Edge[] =>
    extension.state === 'unknown' || u.tilt !== null
      ? []
      : [[roomPoint(u, extent, { x, y, z: 0 }), roomPoint(u, extent, { x, y, z: -extension.value })]],
  )
}

/** Corners of the six faces, each in order round it; corner k has x1 for bit 0, y1 for bit 1, z1 for bit 2. */
const FACES = [
  { round: [0, 2, 6, 4], out: [-1, 0, 0] },
  { round: [1, 3, 7, 5], out: [1, 0, 0] },
  { round: [0, 1, 5, 4], out: [0, -1, 0] },
  { round: [2, 3, 7, 6], out: [0, 1, 0] },
  { round: [0, 1, 3, 2], out: [0, 0, -1] },
  { round: [4, 5, 7, 6], out: [0, 0, 1] },
] as const

/** Edges of every face that looks towards the eye. */
function seenEdges(at: Carriage, solid: readonly LocalBox[], b: LocalBox, eye: RoomPoint): readonly Edge[] {
  const extent = extentOf(solid)
  const corner = (k: number) =>
    roomPoint(at, extent, { x: k & 1 ? b.x1 : b.x0, y: k & 2 ? b.y1 : b.y0, z: k & 4 ? b.z1 : b.z0 })
  return FACES.flatMap(({ round, out }): readonly Edge[] => {
    const [x, y, z] = out
    const origin = roomPoint(at, extent, { x: 0, y: 0, z: 0 })
    const tip = roomPoint(at, extent, { x, y, z })
    const p = corner(round[0])
    const ahead =
      (tip.x - origin.x) * (eye.x - p.x) +
      (tip.y - origin.y) * (eye.y - p.y) +
      (tip.z - origin.z) * (eye.z - p.z)
    if (ahead <= 0) return []
    return round.map((k, i) => [corner(k), corner(round[(i + 1) % 4] ?? k)])
  })
}
