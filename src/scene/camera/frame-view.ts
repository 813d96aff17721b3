import type { RoomPoint } from '../../core/plan/types'

/** Which way the eye looks from: degrees anticlockwise from +x on plan, and up from level. */
export interface Direction {
  readonly azimuth: number
  readonly elevation: number
}
/** A camera: where the eye is and what it looks at. */
export interface Framing {
  readonly eye: RoomPoint
  readonly target: RoomPoint
}

/** Upright field of view of the picture, degrees: long enough that uprights hardly lean. */
export const FIELD = 28
/** Share of the picture's half width and height that what must be seen may fill. */
const FILL = 0.9

const radians = (d: number) => (d * Math.PI) / 180

/** Unit vector from what is looked at to the eye. */
export function towardEye({ azimuth, elevation }: Direction): RoomPoint {
  const level = Math.cos(radians(elevation))
  return {
    x: level * Math.cos(radians(azimuth)),
    y: level * Math.sin(radians(azimuth)),
    z: Math.sin(radians(elevation)),
  }
}

/** Stands the eye as near as it may so that every point is in the picture, and in the middle of it. */
export function frameView(direction: Direction, points: readonly RoomPoint[], aspect: number): Framing {
  const back = towardEye(direction)
  const right = { x: -Math.sin(radians(direction.azimuth)), y: Math.cos(radians(direction.azimuth)), z: 0 }
  const up = {
    x: back.y * right.z - back.z * right.y,
    y: back.z * right.x - back.x * right.z,
    z: back.x * right.y - back.y * right.x,
  }
  const dot = (a: RoomPoint, b: RoomPoint) => a.x * b.x + a.y * b.y + a.z * b.z
  const seen = points.map((p) => ({ x: dot(p, right), y: dot(p, up), near: dot(p, back) }))
  const tall = Math.tan(radians(FIELD / 2)) * FILL
  const wide = tall * aspect
  // For each side of the picture, the furthest back any point pushes the eye: middle and distance follow from both.
  const most = (f: (p: (typeof seen)[number]) => number) => Math.max(...seen.map(f))
  const rightmost = most((p) => p.x + wide * p.near)
  const leftmost = most((p) => -p.x + wide * p.near)
  const highest = most((p) => p.y + tall * p.near)
  const lowest = most((p) => -p.y + tall * p.near)
  const x = (rightmost - leftmost) / 2
  const y = (highest - lowest) / 2
  const eyeAt = Math.max((rightmost + leftmost) / (2 * wide), (highest + lowest) / (2 * tall))
  const nearest = most((p) => p.near)
  const middle = (nearest - Math.max(...seen.map((p) => -p.near))) / 2
  const point = (near: number): RoomPoint => ({
    x: right.x * x + up.x * y + back.x * near,
    y: right.y * x + up.y * y + back.y * near,
    z: right.z * x + up.z * y + back.z * near,
  })
  return { eye: point(Math.max(eyeAt, nearest + 300)), target: point(middle) }
}
