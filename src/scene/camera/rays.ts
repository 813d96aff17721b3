import type { LocalBox, PlanPoint, Pose, RoomPoint } from '../../core/plan/types'

/** Boxes that may stand between the eye and what it looks at; `wall` is what they leave the picture with. */
export interface Blocker {
  readonly id: string
  readonly wall: string | null
  readonly pose: Pose
  readonly boxes: readonly LocalBox[]
}

/** A wall as a screen: seen from its room side it hides what is beyond it. */
export interface Screen {
  readonly wall: string
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly outDir: PlanPoint
  readonly top: number
}

/** Nothing this near the point looked at counts as before it, mm: it is what the point lies on. */
const NEAR = 2

/** Whether a box lies across the straight line from the eye to a point. */
export function isBlocked(eye: RoomPoint, point: RoomPoint, blocker: Blocker): boolean {
  const from = intoFrame(blocker.pose, eye)
  const to = intoFrame(blocker.pose, point)
  const length = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z)
  const most = length === 0 ? 0 : 1 - NEAR / length
  return blocker.boxes.some((b) => crosses(from, to, b, most))
}

function intoFrame(pose: Pose, p: RoomPoint): RoomPoint {
  const yaw = (pose.yaw * Math.PI) / 180
  const [c, s] = [Math.cos(yaw), Math.sin(yaw)]
  const [dx, dy] = [p.x - pose.x, p.y - pose.y]
  return { x: dx * c + dy * s, y: dx * s - dy * c, z: p.z - pose.z }
}

function crosses(from: RoomPoint, to: RoomPoint, b: LocalBox, most: number): boolean {
  let [enter, leave] = [0, most]
  for (const [p, d, low, high] of [
    [from.x, to.x - from.x, b.x0, b.x1],
    [from.y, to.y - from.y, b.y0, b.y1],
    [from.z, to.z - from.z, b.z0, b.z1],
  ] as const) {
    if (Math.abs(d) < 1e-9) {
      if (p <= low || p >= high) return false
      continue
    }
    const [a, z] = d > 0 ? [(low - p) / d, (high - p) / d] : [(high - p) / d, (low - p) / d]
    enter = Math.max(enter, a)
    leave = Math.min(leave, z)
    if (enter >= leave) return false
  }
  return true
}

/** Whether the eye is on the room side of a wall. */
export function isFacing(screen: Pick<Screen, 'from' | 'outDir'>, eye: PlanPoint): boolean {
  return (eye.x - screen.from.x) * screen.outDir.x + (eye.y - screen.from.y) * screen.outDir.y > 1
}

/** Whether a drawn wall stands between the eye and a point: only one that bends into the room can. */
export function isBehindWall(eye: RoomPoint, point: RoomPoint, screen: Screen): boolean {
  const out = (p: PlanPoint) =>
    (p.x - screen.from.x) * screen.outDir.x + (p.y - screen.from.y) * screen.outDir.y
  const [a, b] = [out(eye), out(point)]
  if (a <= 0 || b >= -NEAR) return false
  const f = a / (a - b)
  const [x, y] = [eye.x + (point.x - eye.x) * f, eye.y + (point.y - eye.y) * f]
  const [dx, dy] = [screen.to.x - screen.from.x, screen.to.y - screen.from.y]
  const along = ((x - screen.from.x) * dx + (y - screen.from.y) * dy) / (dx * dx + dy * dy)
  return along > 0 && along < 1 && eye.z + (point.z - eye.z) * f < screen.top
}
