import type { Standing } from '../../core/plan/standing-at'
import type { Band, Plan, WallFrame } from '../../core/plan/types'
import { floorUnder, type Rectangle } from '../../core/views/rectangle'
import type { RoomShape } from '../../core/views/room-shape'
import { lengthOf, onWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { palette, roomShade } from '../palette'
import { type Point, type Sketch, stroke, wash } from '../sketch'
import type { WallTone } from '../wall-tone'

/** Hatching: stripe to stripe and stripe width along the wall, mm. */
const PITCH = 36
const STRIPE = 17
const OPACITY: Readonly<Record<WallTone, number>> = { loud: 0.5, plain: 0.26, faint: 0.055 }
/** A service that was traced says more than a band where one should be expected. */
const TRACED: Readonly<Record<WallTone, number>> = { loud: 0.6, plain: 0.5, faint: 0.11 }

/**
 * Bands where a cable or pipe should be expected, and lintels: hatched, whichever way they run, where the wall is worked
 * on; no more than a tint where it isn't.
 */
export function sketchBands(
  sketch: Sketch,
  plan: Plan,
  standing: Standing,
  room: RoomShape,
  wall: WallFrame,
  tone: WallTone,
): void {
  for (const band of plan.bands) {
    if (band.wall !== wall.wall) continue
    const r = extents(band, room, wall)
    if (r !== null)
      hatch(sketch, band, r, wall, tone === 'loud' && !isNearWork(standing, band, r) ? 'plain' : tone)
  }
}

/** A band further than this, mm, from every hole of the operation has no say in it. */
const NEAR_WORK = 250

/** Of a few holes only the bands round them speak up; where none is made, as in tracing, all do. */
function isNearWork(standing: Standing, band: Band, r: Rectangle): boolean {
  const now = standing.holes.filter((h) => h.isNow && h.hole.wall === band.wall)
  if (now.length === 0) return true
  return now.some(({ hole: { along, height } }) => {
    if (along.state === 'unknown' || height.state === 'unknown') return true
    const dx = Math.max(r.left - along.value, 0, along.value - r.right)
    const dz = Math.max(r.bottom - height.value, 0, height.value - r.top)
    return Math.hypot(dx, dz) < NEAR_WORK
  })
}

/** Open ends run to the end of the wall; a band whose place nobody has measured has no place on the wall either. */
export function extents(band: Band, room: RoomShape, wall: WallFrame): Rectangle | null {
  const { left, right, bottom, top, kind } = band
  const isUpright = kind === 'accessory-vertical' || kind === 'corner'
  const isNowhere =
    band.unknownBecause.length > 0 &&
    (isUpright ? left === null && right === null : bottom === null && top === null)
  if (isNowhere) return null
  const r = {
    left: Math.max(0, left ?? 0),
    right: Math.min(lengthOf(wall), right ?? lengthOf(wall)),
    bottom: bottom ?? floorUnder(room, wall, left ?? 0),
    top: Math.min(top ?? Number.POSITIVE_INFINITY, room.topOf(wall).z),
  }
  return r.left < r.right && r.bottom < r.top ? r : null
}

function hatch(sketch: Sketch, band: Band, r: Rectangle, wall: WallFrame, tone: WallTone): void {
  const part = `band:${band.id}`
  const at = onWall(wall)
  const colour = band.kind === 'lintel' ? palette.pencil : roomShade.band
  const opacity = (band.kind === 'service' ? TRACED : OPACITY)[tone] * (band.face === 'other' ? 0.8 : 1)
  for (const stripe of tone === 'faint' ? [whole(r)] : stripes(r)) {
    wash(
      sketch,
      part,
      colour,
      opacity,
      stripe.map(([a, z]) => at(a, LAYER.band, z)),
    )
  }
  if (tone !== 'loud') return
  const pen = { weight: 'hair', colour } as const
  const round: readonly Point[] = [
    at(r.left, LAYER.band, r.bottom),
    at(r.right, LAYER.band, r.bottom),
    at(r.right, LAYER.band, r.top),
    at(r.left, LAYER.band, r.top),
  ]
  for (const [i, p] of round.entries()) stroke(sketch, part, pen, p, round[(i + 1) % 4] ?? p)
}

type Flat = readonly [number, number]

const whole = (r: Rectangle): readonly Flat[] => [
  [r.left, r.bottom],
  [r.right, r.bottom],
  [r.right, r.top],
  [r.left, r.top],
]

/** Stripes leaning at 45°, cut to the rectangle; they line up from band to band. */
export function stripes(r: Rectangle): readonly (readonly Flat[])[] {
  const found: (readonly Flat[])[] = []
  const first = Math.floor((r.left - r.top) / PITCH) * PITCH
  for (let c = first; c < r.right - r.bottom; c += PITCH) {
    const clipped = clip(
      [
        [c + r.bottom, r.bottom],
        [c + STRIPE + r.bottom, r.bottom],
        [c + STRIPE + r.top, r.top],
        [c + r.top, r.top],
      ],
      r,
    )
    if (clipped.length >= 3) found.push(clipped)
  }
  return found
}

/** Cuts a convex polygon at the rectangle's upright sides; its ends already lie on the level ones. */
function clip(polygon: readonly Flat[], r: Rectangle): readonly Flat[] {
  const cut = (points: readonly Flat[], limit: number, sign: 1 | -1) =>
    points.flatMap((p, i): readonly Flat[] => {
      const q = points[(i + 1) % points.length] ?? p
      const isIn = sign * (p[0] - limit) >= 0
      const isNextIn = sign * (q[0] - limit) >= 0
      const kept: Flat[] = isIn ? [p] : []
      if (isIn !== isNextIn) {
        const f = (limit - p[0]) / (q[0] - p[0])
        kept.push([limit, p[1] + f * (q[1] - p[1])])
      }
      return kept
    })
  return cut(cut(polygon, r.left, 1), r.right, -1)
}
