import type { RoomPoint } from '../plan/types'

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

/** How much of the picture what must be seen takes up: the smaller of its shares of width and height, 0..1. */
export interface Framed extends Framing {
  readonly fill: number
}

/** Stands the eye as near as it may so that every point is in the picture, and in the middle of it. */
export function frameView(direction: Direction, points: readonly RoomPoint[], aspect: number): Framed {
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
  const nearest = most((p) => p.near)
  const furthest = Math.min(...seen.map((p) => p.near))
  const away = Math.max((rightmost + leftmost) / (2 * wide), (highest + lowest) / (2 * tall), nearest + 300)
  const x = middleOf(seen.map((p) => ({ across: p.x, ahead: away - p.near })))
  const y = middleOf(seen.map((p) => ({ across: p.y, ahead: away - p.near })))
  const point = (near: number): RoomPoint => ({
    x: right.x * x.at + up.x * y.at + back.x * near,
    y: right.y * x.at + up.y * y.at + back.y * near,
    z: right.z * x.at + up.z * y.at + back.z * near,
  })
  return {
    eye: point(away),
    target: point((nearest + furthest) / 2),
    fill: Math.min(x.reach / wide, y.reach / tall),
  }
}

/** Where across the view the eye stands so that as much shows on one side as on the other, and how far that reaches. */
function middleOf(points: readonly { readonly across: number; readonly ahead: number }[]): {
  readonly at: number
  readonly reach: number
} {
  let low = Math.min(...points.map((p) => p.across))
  let high = Math.max(...points.map((p) => p.across))
  let reach = 0
  // Halving a room's width so often leaves less than a millimetre.
  for (let i = 0; i < 14; i += 1) {
    const at = (low + high) / 2
    let left = Number.POSITIVE_INFINITY
    let right = Number.NEGATIVE_INFINITY
    for (const p of points) {
      const shown = (p.across - at) / p.ahead
      if (shown < left) left = shown
      if (shown > right) right = shown
    }
    reach = Math.max(-left, right)
    if (left + right > 0) low = at
    else high = at
  }
  return { at: (low + high) / 2, reach }
}
