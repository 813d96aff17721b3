import type { LocalBox, PlanPoint, Pose } from '../core/plan/types'
import type { GivenUnit } from './given'
import { gapBetween, overlap, type Polygon, thinness } from './polygon'
import { type Frame, roomPoint } from './room'

/** A solid in the room: a convex polygon on the plan between two heights. */
export interface Prism {
  readonly polygon: Polygon
  readonly bottom: number
  readonly top: number
}

/** Solids that meet by less than this only touch. */
const TOUCH = 0.11

export function meets(one: Prism, other: Prism): boolean {
  const height = Math.min(one.top, other.top) - Math.max(one.bottom, other.bottom)
  return height > TOUCH && thinness(overlap(one.polygon, other.polygon)) > TOUCH
}

/** Least distance between two prisms, 0 when they meet. */
export function distance(one: Prism, other: Prism): number {
  const flat = gapBetween(one.polygon, other.polygon)
  const up = Math.max(0, one.bottom - other.top, other.bottom - one.top)
  return Math.hypot(flat, up)
}

/**
 * The carcass as boxes in its own frame: the box against its wall and, for a corner unit, the arm that runs out along
 * the neighbouring wall. Null when a size it needs is not known.
 */
export function carcassBoxes(unit: GivenUnit): readonly LocalBox[] | null {
  const { width, height, depth } = {
    width: unit.width.value,
    height: unit.height.value,
    depth: unit.depth.value,
  }
  if (width === null || height === null || depth === null) return null
  const z = { z0: 0, z1: height }
  const main: LocalBox = { x0: 0, x1: width, y0: 0, y1: depth, ...z }
  const arms = [
    { reach: unit.returnLeft.value, right: false },
    { reach: unit.returnRight.value, right: true },
  ].filter((arm) => arm.reach !== null)
  const across = unit.returnDepth.value
  if (arms.length > 0 && across === null) return null
  return [
    main,
    ...arms.map(({ reach, right }): LocalBox => {
      const x = right ? { x0: width - (across ?? 0), x1: width } : { x0: 0, x1: across ?? 0 }
      return { ...x, y0: 0, y1: reach ?? 0, ...z }
    }),
  ]
}

/** Where a local point of a unit comes to in the room. */
export function inRoom(pose: Pose, x: number, y: number): PlanPoint {
  const turn = (pose.yaw * Math.PI) / 180
  return {
    x: pose.x + x * Math.cos(turn) + y * Math.sin(turn),
    y: pose.y + x * Math.sin(turn) - y * Math.cos(turn),
  }
}

/** A box of a unit on the plan, anticlockwise (the local frame is left-handed seen from above). */
export function boxPolygon(pose: Pose, box: LocalBox): Polygon {
  return [
    inRoom(pose, box.x0, box.y1),
    inRoom(pose, box.x1, box.y1),
    inRoom(pose, box.x1, box.y0),
    inRoom(pose, box.x0, box.y0),
  ]
}

export function prismsAt(pose: Pose, boxes: readonly LocalBox[]): readonly Prism[] {
  return boxes.map((box) => ({
    polygon: boxPolygon(pose, box),
    bottom: pose.z + box.z0,
    top: pose.z + box.z1,
  }))
}

/** The final pose of a unit with its back `out` from its wall, at an underside. */
export function poseAgainst(frame: Frame, left: number, out: number, underside: number): Pose {
  return { ...roomPoint(frame, left, out), z: underside, yaw: frame.bearing }
}

export function samePose(a: Pose, b: Pose, within: number): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z) <= within && turnBetween(a.yaw, b.yaw) < 0.01
}

export function turnBetween(a: number, b: number): number {
  const turn = Math.abs(a - b) % 360
  return Math.min(turn, 360 - turn)
}

/** Two sets of boxes fill the same space: same size, and nothing of one outside the other. */
export function sameSolid(one: readonly LocalBox[], other: readonly LocalBox[]): boolean {
  const shared = filled(one, other)
  const a = filled(one, one)
  const b = filled(other, other)
  return Math.abs(a - shared) < 1 + a * 1e-6 && Math.abs(b - shared) < 1 + b * 1e-6
}

/** Volume that lies in both sets of boxes, counted once: every cell between neighbouring faces is in or out as a whole. */
function filled(one: readonly LocalBox[], other: readonly LocalBox[]): number {
  const cuts = (key: 'x' | 'y' | 'z'): readonly number[] =>
    [...new Set([...one, ...other].flatMap((b) => [b[`${key}0`], b[`${key}1`]]))].sort((a, b) => a - b)
  const xs = cuts('x')
  const ys = cuts('y')
  const zs = cuts('z')
  let volume = 0
  for (const [x0, x1] of steps(xs))
    for (const [y0, y1] of steps(ys))
      for (const [z0, z1] of steps(zs)) {
        const mid = { x: (x0 + x1) / 2, y: (y0 + y1) / 2, z: (z0 + z1) / 2 }
        if (holds(one, mid) && holds(other, mid)) volume += (x1 - x0) * (y1 - y0) * (z1 - z0)
      }
  return volume
}

function steps(cuts: readonly number[]): readonly (readonly [number, number])[] {
  return cuts.slice(1).map((to, i) => [cuts[i] ?? to, to] as const)
}

function holds(boxes: readonly LocalBox[], p: { x: number; y: number; z: number }): boolean {
  return boxes.some((b) => p.x > b.x0 && p.x < b.x1 && p.y > b.y0 && p.y < b.y1 && p.z > b.z0 && p.z < b.z1)
}

/** Centre of mass of a carcass taken as evenly filled, in its own frame. */
export function centreOf(boxes: readonly LocalBox[]): { readonly x: number; readonly y: number } {
  const parts = boxes.map((b) => ({
    weight: (b.x1 - b.x0) * (b.y1 - b.y0) * (b.z1 - b.z0),
    x: (b.x0 + b.x1) / 2,
    y: (b.y0 + b.y1) / 2,
  }))
  const total = parts.reduce((t, p) => t + p.weight, 0)
  return {
    x: parts.reduce((t, p) => t + p.weight * p.x, 0) / total,
    y: parts.reduce((t, p) => t + p.weight * p.y, 0) / total,
  }
}
