import { boxAround } from '../plan/travel-path'
import type { LocalBox, PlanPoint, Pose, RoomPoint } from '../plan/types'

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

/** Says whether anything is in the way of the straight line from one eye to a point. */
export type InTheWay = (point: RoomPoint) => boolean

/** Makes one blocker ready for many lines from the same eye: most of them miss the box round all its boxes. */
export function blockerFrom(eye: RoomPoint, { pose, boxes }: Blocker): InTheWay {
  const yaw = (pose.yaw * Math.PI) / 180
  const [c, s] = [Math.cos(yaw), Math.sin(yaw)]
  const intoFrame = (p: RoomPoint): RoomPoint => {
    const [dx, dy] = [p.x - pose.x, p.y - pose.y]
    return { x: dx * c + dy * s, y: dx * s - dy * c, z: p.z - pose.z }
  }
  const from = intoFrame(eye)
  const whole = boxAround(boxes)
  return (point) => {
    const to = intoFrame(point)
    const length = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z)
    const most = length === 0 ? 0 : 1 - NEAR / length
    if (!crosses(from, to, whole, most)) return false
    return boxes.length === 1 || boxes.some((b) => crosses(from, to, b, most))
  }
}

/** Whether a blocker lies across the straight line from the eye to a point. */
export function isBlocked(eye: RoomPoint, point: RoomPoint, blocker: Blocker): boolean {
  return blockerFrom(eye, blocker)(point)
}

/** Whether the line from → to, up to its share `most`, goes through a box. Called very often, so it makes nothing. */
function crosses(from: RoomPoint, to: RoomPoint, b: LocalBox, most: number): boolean {
  let enter = 0
  let leave = most
  for (let axis = 0; axis < 3; axis += 1) {
    const p = axis === 0 ? from.x : axis === 1 ? from.y : from.z
    const q = axis === 0 ? to.x : axis === 1 ? to.y : to.z
    const low = axis === 0 ? b.x0 : axis === 1 ? b.y0 : b.z0
    const high = axis === 0 ? b.x1 : axis === 1 ? b.y1 : b.z1
    const d = q - p
    if (d > -1e-9 && d < 1e-9) {
      if (p <= low || p >= high) return false
      continue
    }
    const a = (low - p) / d
    const z = (high - p) / d
    enter = Math.max(enter, Math.min(a, z))
    leave = Math.min(leave, Math.max(a, z))
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
  const { from, to, outDir } = screen
  const a = (eye.x - from.x) * outDir.x + (eye.y - from.y) * outDir.y
  const b = (point.x - from.x) * outDir.x + (point.y - from.y) * outDir.y
  if (a <= 0 || b >= -NEAR) return false
  const f = a / (a - b)
  const x = eye.x + (point.x - eye.x) * f
  const y = eye.y + (point.y - eye.y) * f
  const dx = to.x - from.x
  const dy = to.y - from.y
  const along = ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)
  return along > 0 && along < 1 && eye.z + (point.z - eye.z) * f < screen.top
}
