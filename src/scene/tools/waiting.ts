import { Matrix4, Vector3 } from 'three'
import type { Standing } from '../../core/plan/standing-at'
import type { LocalBox, PlanPoint, Pose, RoomPoint } from '../../core/plan/types'
import type { Act, Contact } from '../../core/staging/staging'
import { carcassBoards } from '../../core/views/carcass'
import { FIELD } from '../../core/views/frame-view'
import type { RoomShape } from '../../core/views/room-shape'
import { lengthOf } from '../../core/views/wall-place'
import { newSketch } from '../sketch'
import { frameOf, READY } from './pieces'
import { sketchTool } from './shapes'

/** Where a tool waits beside its work, in its own frame, mm, and how far it is turned about the way it works, degrees. */
export interface Waiting {
  readonly x: number
  readonly y: number
  readonly turn: number
}
export const AS_GIVEN: Waiting = { x: 0, y: -60, turn: 0 }

/** What a tool may not reach into, and who looks on. */
export interface Around {
  readonly standing: Standing
  readonly room: RoomShape
  readonly eye: RoomPoint
}

/** Half the size of a mark over the height of the picture. */
const MARK = 8 / 600
/** How far from the edge of its mark the middle of a tool waits, mm: the nearest first. */
const OFF = [50, 120] as const
const WAYS = [
  [0, -1],
  [-1, 0],
  [1, 0],
  [0, 1],
] as const
/** Nearer its tip than this, mm, a tool is in what it works on. */
const TIP = 20
/** Pieces meet without being in one another, mm. */
const MEET = 3

/**
 * Where a tool waits, and which way its grip points: through no board, in the room, and off the mark as far as that goes.
 * Worked out as each act begins, so what is near is told once for each way of holding the tool, and only shifted for each
 * place it may wait at.
 */
export function waitingOf(act: Act, { standing, room, eye }: Around): Waiting {
  const { contact, motion } = act
  if (contact === null || motion.kind === 'carry') return AS_GIVEN
  const own = newSketch()
  sketchTool(own, '', act)
  const tool = trianglesOf(own.faces.points)
  const radius = MARK * distanceOf(contact.at, eye) * 2 * Math.tan((FIELD * Math.PI) / 360)
  const reach = Math.max(0, ...tool.map((corner) => corner.length())) + READY + radius + OFF[1]
  const near = obstaclesNear(contact.at, reach, standing, room)
  const isAlong = motion.kind === 'draw' || motion.kind === 'measure'
  let best = AS_GIVEN
  let least = Number.POSITIVE_INFINITY
  for (const turn of isAlong ? [0] : [0, 180, 90, 270]) {
    const frame = turnedFrame(act, contact, turn)
    const looks = new Vector3(eye.x, eye.y, eye.z).applyMatrix4(frame.clone().invert())
    const held = near.map((obstacle) => seenFrom(obstacle, frame, tool))
    const inTheWayAt = (x: number, y: number, z: number) => inTheWay(held, new Vector3(x, y, z))
    // Where no way of holding it is free, that in which it is least deep in a board.
    const atWork = 8 * inTheWayAt(0, 0, 0)
    if (atWork >= least) continue
    for (const off of OFF)
      for (const [wx, wy] of WAYS) {
        const [x, y] = [wx * (radius + off), wy * (radius + off)]
        const cost =
          atWork +
          4 * inTheWayAt(x, y, READY) +
          (covers(tool, x, y, looks, radius) ? 2 : 0) +
          (off === OFF[0] ? 0 : 1)
        if (cost < least) [best, least] = [{ x, y, turn }, cost]
        if (cost === 0) return best
      }
  }
  return best
}

export function turnedFrame(act: Act, contact: Contact, turn: number): Matrix4 {
  return frameOf(act, contact).multiply(new Matrix4().makeRotationZ((turn * Math.PI) / 180))
}

const distanceOf = (a: RoomPoint, b: RoomPoint) => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z)

/** The corners of a drawing's triangles, three for each; what lies at the tip is in the work and counts from there on. */
function trianglesOf(points: readonly number[]): readonly Vector3[] {
  const corners: Vector3[] = []
  for (let i = 0; i < points.length; i += 9) {
    const three = [0, 3, 6].map(
      (n) => new Vector3(points[i + n] ?? 0, points[i + n + 1] ?? 0, points[i + n + 2] ?? 0),
    )
    if (three.every(({ z }) => z <= TIP)) continue
    for (const corner of three) corners.push(corner.setZ(Math.max(TIP, corner.z)))
  }
  return corners
}

/** Something in the way of a tool: how deep a box is in it, mm; 0 or less: not at all. */
interface Obstacle {
  /** From the room into its own frame. */
  readonly into: Matrix4
  readonly depth: (box: Box) => number
  /** Nothing goes beyond a wall or a floor; in a board it may have to be. */
  readonly isRoom: boolean
}
type Box = readonly [x0: number, x1: number, y0: number, y1: number, z0: number, z1: number]

/** A frame that stands upright: where it begins, and where its first two axes point in plan. */
function upright(o: RoomPoint, x: PlanPoint, y: PlanPoint): Matrix4 {
  const along = (d: PlanPoint) => -(d.x * o.x + d.y * o.y)
  return new Matrix4().set(x.x, x.y, 0, along(x), y.x, y.y, 0, along(y), 0, 0, 1, -o.z, 0, 0, 0, 1)
}

function obstaclesNear(
  at: RoomPoint,
  reach: number,
  standing: Standing,
  room: RoomShape,
): readonly Obstacle[] {
  const floor: Obstacle = {
    into: upright({ ...at, z: room.floorOr(at) }, { x: 1, y: 0 }, { x: 0, y: 1 }),
    depth: (box) => -box[4] - MEET,
    isRoom: true,
  }
  const walls = room.walls.map(
    (w): Obstacle => ({
      into: upright({ ...w.origin, z: 0 }, w.alongDir, w.outDir),
      depth: ([x0, x1, y0]) => (x1 > 0 && x0 < lengthOf(w) ? -y0 - MEET : 0),
      isRoom: true,
    }),
  )
  const boards = boardsIn(standing).flatMap(({ pose, boxes }): readonly Obstacle[] => {
    const yaw = (pose.yaw * Math.PI) / 180
    const [c, s] = [Math.cos(yaw), Math.sin(yaw)]
    const into = upright(pose, { x: c, y: s }, { x: s, y: -c })
    const { x, y, z } = new Vector3(at.x, at.y, at.z).applyMatrix4(into)
    const [x0, x1, y0, y1, z0, z1] = [x - reach, x + reach, y - reach, y + reach, z - reach, z + reach]
    const close = boxes.filter((b) => depthIn([x0, x1, y0, y1, z0, z1], b) > 0)
    if (close.length === 0) return []
    return [{ into, depth: (box) => Math.max(...close.map((b) => depthIn(box, b))), isRoom: false }]
  })
  return [floor, ...walls, ...boards]
}

function boardsIn(
  standing: Standing,
): readonly { readonly pose: Pose; readonly boxes: readonly LocalBox[] }[] {
  const units = standing.units
    .filter((u) => u.tilt === null)
    .map((u) => ({ pose: u.pose, boxes: carcassBoards(u.unit) }))
  const parts = standing.parts.flatMap(({ part, isNow }) =>
    isNow || part.pose === null ? [] : [{ pose: part.pose, boxes: part.solid }],
  )
  return [...units, ...parts]
}

/** How far a box would have to be moved to be out of a board, mm. */
const depthIn = ([x0, x1, y0, y1, z0, z1]: Box, b: LocalBox): number =>
  Math.min(x1 - b.x0, b.x1 - x0, y1 - b.y0, b.y1 - y0, z1 - b.z0, b.z1 - z0) - MEET

/** An obstacle with the boxes of a tool's triangles in its frame, for one way of holding it. */
interface Held {
  readonly obstacle: Obstacle
  readonly boxes: readonly Box[]
  /** Turns a shift in the frame of the tool into one in the frame of the obstacle. */
  readonly shift: Matrix4
}

function seenFrom(obstacle: Obstacle, frame: Matrix4, tool: readonly Vector3[]): Held {
  const whole = obstacle.into.clone().multiply(frame)
  const corners = tool.map((corner) => corner.clone().applyMatrix4(whole))
  const boxes: Box[] = []
  for (let i = 0; i + 2 < corners.length; i += 3) {
    const [a, b, c] = [corners[i], corners[i + 1], corners[i + 2]] as [Vector3, Vector3, Vector3]
    boxes.push([
      Math.min(a.x, b.x, c.x),
      Math.max(a.x, b.x, c.x),
      Math.min(a.y, b.y, c.y),
      Math.max(a.y, b.y, c.y),
      Math.min(a.z, b.z, c.z),
      Math.max(a.z, b.z, c.z),
    ])
  }
  return { obstacle, boxes, shift: new Matrix4().extractRotation(whole) }
}

/** 0 where a tool held there is in no board, under no floor and beyond no wall; else more than 1, and more the deeper. */
function inTheWay(held: readonly Held[], by: Vector3): number {
  let deepest = 0
  for (const { obstacle, boxes, shift } of held) {
    const { x, y, z } = by.clone().applyMatrix4(shift)
    for (const [x0, x1, y0, y1, z0, z1] of boxes) {
      const depth = obstacle.depth([x0 + x, x1 + x, y0 + y, y1 + y, z0 + z, z1 + z])
      if (depth > 0 && obstacle.isRoom) return 2
      deepest = Math.max(deepest, depth)
    }
  }
  return deepest === 0 ? 0 : 1 + Math.min(1, deepest / 50)
}

/** Whether a tool held there hides the mark it comes to, at the origin of its frame, from whoever looks on. */
function covers(tool: readonly Vector3[], x: number, y: number, eye: Vector3, radius: number): boolean {
  if (eye.z <= 0) return false
  const onto = (corner: Vector3) => {
    const [px, py, pz] = [corner.x + x, corner.y + y, corner.z + READY]
    const f = eye.z / Math.max(1, eye.z - pz)
    return [eye.x + (px - eye.x) * f, eye.y + (py - eye.y) * f] as const
  }
  for (let i = 0; i + 2 < tool.length; i += 3) {
    const three = [tool[i], tool[i + 1], tool[i + 2]].map((corner) => onto(corner as Vector3))
    const isClear = ([0, 1] as const).some(
      (axis) => three.every((p) => p[axis] >= radius) || three.every((p) => p[axis] <= -radius),
    )
    if (!isClear) return true
  }
  return false
}
