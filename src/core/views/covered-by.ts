import type { RoomPoint } from '../plan/types'
import { FIELD, type Framing } from './frame-view'

/** How large the part in hand is in a picture, at the moment it is largest. */
export interface Covered {
  /** Of the picture's area, 0..1, by its outline. */
  readonly share: number
  /** Of the picture's width or height, whichever it takes more of: all its moments together. */
  readonly reach: number
  /** It takes hardly any height or hardly any width, so that it covers little however near one comes. */
  readonly isThin: boolean
}

/** Less than this in two of its three sizes, mm, a body covers little however near one comes. */
const THIN = 160

/** Measures bodies, each by its corners, in a picture of this shape. */
export function coveredBy(
  { eye, target }: Framing,
  bodies: readonly (readonly RoomPoint[])[],
  aspect: number,
): Covered {
  const tall = Math.tan((FIELD * Math.PI) / 360)
  const onto = ontoPicture(eye, target)
  const spots = bodies.map((body) => body.map(onto))
  const shares = spots.map((s) => areaRound(s) / (4 * tall * tall * aspect))
  const all = spots.flat()
  const width = spread(all.map((p) => p.x)) / (2 * tall * aspect)
  const height = spread(all.map((p) => p.y)) / (2 * tall)
  return {
    share: Math.max(0, ...shares),
    reach: Math.max(width, height),
    isThin: bodies.every(isThin),
  }
}

interface Flat {
  readonly x: number
  readonly y: number
}

/** Takes a point to the plane one length before the eye, upright. */
export function ontoPicture(eye: RoomPoint, target: RoomPoint): (p: RoomPoint) => Flat {
  const [dx, dy, dz] = [target.x - eye.x, target.y - eye.y, target.z - eye.z]
  const length = Math.hypot(dx, dy, dz)
  const [fx, fy, fz] = [dx / length, dy / length, dz / length]
  const level = Math.max(1e-9, Math.hypot(fx, fy))
  const [rx, ry] = [fy / level, -fx / level]
  const [ux, uy, uz] = [-fz * (fx / level), -fz * (fy / level), level]
  return (p) => {
    const [x, y, z] = [p.x - eye.x, p.y - eye.y, p.z - eye.z]
    const ahead = Math.max(1, x * fx + y * fy + z * fz)
    return { x: (x * rx + y * ry) / ahead, y: (x * ux + y * uy + z * uz) / ahead }
  }
}

const spread = (values: readonly number[]) =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values)

function isThin(body: readonly RoomPoint[]): boolean {
  const sizes = [spread(body.map((p) => p.x)), spread(body.map((p) => p.y)), spread(body.map((p) => p.z))]
  return sizes.filter((size) => size > THIN).length < 2
}

/** Area of the convex outline round some spots. */
function areaRound(spots: readonly Flat[]): number {
  const sorted = [...spots].sort((a, b) => a.x - b.x || a.y - b.y)
  const half = (points: readonly Flat[]): readonly Flat[] => {
    const kept: Flat[] = []
    for (const p of points) {
      for (;;) {
        const [a, b] = [kept.at(-2), kept.at(-1)]
        if (a === undefined || b === undefined) break
        if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 0) break
        kept.pop()
      }
      kept.push(p)
    }
    return kept.slice(0, -1)
  }
  const round = [...half(sorted), ...half([...sorted].reverse())]
  let area = 0
  for (const [i, a] of round.entries()) {
    const b = round[(i + 1) % round.length] ?? a
    area += a.x * b.y - b.x * a.y
  }
  return Math.abs(area) / 2
}
