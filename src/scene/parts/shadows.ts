import type { StandingUnit } from '../../core/plan/standing-at'
import { extentOf, roomPoint } from '../../core/plan/travel-path'
import type { UnitPlan, WallFrame } from '../../core/plan/types'
import { isInPlace } from '../../core/views/hole-place'
import type { Rectangle } from '../../core/views/rectangle'
import type { RoomShape } from '../../core/views/room-shape'
import { lengthOf, onWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { type Point, type Sketch, wash } from '../sketch'

const SHADE = '#5C4A33'
const FLOOR = { blur: 90, opacity: 0.22 }
const WALL = { blur: 80, opacity: 0.11, aside: 70, down: 190 }

type Flat = (a: number, b: number) => Point

/** A soft-edged dark rectangle: even inside, fading over `blur` round it. No shadow is ever computed. */
function softRectangle(
  sketch: Sketch,
  part: string,
  place: Flat,
  [a0, a1, b0, b1]: readonly [number, number, number, number],
  blur: number,
  opacity: number,
): void {
  const inner = [
    [a0 + blur, b0 + blur],
    [a1 - blur, b0 + blur],
    [a1 - blur, b1 - blur],
    [a0 + blur, b1 - blur],
  ] as const
  const outer = [
    [a0 - blur, b0 - blur],
    [a1 + blur, b0 - blur],
    [a1 + blur, b1 + blur],
    [a0 - blur, b1 + blur],
  ] as const
  wash(
    sketch,
    part,
    SHADE,
    opacity,
    inner.map(([a, b]) => place(a, b)),
  )
  for (let i = 0; i < 4; i += 1) {
    const k = (i + 1) % 4
    const [p, q, r, s] = [inner[i], inner[k], outer[k], outer[i]]
    if (p === undefined || q === undefined || r === undefined || s === undefined) continue
    wash(sketch, part, SHADE, [opacity, opacity, 0, 0], [place(...p), place(...q), place(...r), place(...s)])
  }
}

/** The shade on the floor under a unit that stands. */
export function sketchFloorShadow(sketch: Sketch, standing: StandingUnit, room: RoomShape): void {
  const { unit } = standing
  if (standing.tilt !== null || unit.kind === 'appliance-space' || isHung(unit)) return
  const extent = extentOf(unit.solid)
  for (const box of unit.solid) {
    const place: Flat = (x, y) => {
      const p = roomPoint(standing, extent, { x, y, z: 0 })
      return [p.x, p.y, room.floorOr(p) + LAYER.shadow]
    }
    const extents = [box.x0, box.x1, box.y0, box.y1] as const
    softRectangle(sketch, `shadow:${unit.unit}`, place, extents, FLOOR.blur, FLOOR.opacity)
  }
}

/** The shade on a wall beside and below what hangs on it: one for each row of units that touch, so that none doubles. */
export function sketchWallShadows(sketch: Sketch, units: readonly StandingUnit[], wall: WallFrame): void {
  const end = lengthOf(wall)
  const at = onWall(wall)
  const place: Flat = (a, z) => at(Math.max(0, Math.min(end, a)), LAYER.shadow, z)
  for (const r of rows(units.filter((u) => u.unit.wall === wall.wall && isInPlace(u)).map((u) => u.unit))) {
    const extents = [
      r.left + WALL.aside,
      r.right + WALL.aside,
      r.bottom - WALL.down,
      r.top - WALL.down,
    ] as const
    softRectangle(sketch, `shadow:${wall.wall}`, place, extents, WALL.blur, WALL.opacity)
  }
}

const isHung = (unit: UnitPlan) =>
  unit.kind === 'wall' || unit.kind === 'corner-wall' || unit.kind === 'bridging'

/** Hung units of one height side by side, as one rectangle each row. */
function rows(units: readonly UnitPlan[]): readonly Rectangle[] {
  const each = units
    .filter(isHung)
    .flatMap(({ left, right, underside, top }): readonly Rectangle[] =>
      left.state === 'unknown' ||
      right.state === 'unknown' ||
      underside.state === 'unknown' ||
      top.state === 'unknown'
        ? []
        : [{ left: left.value, right: right.value, bottom: underside.value, top: top.value }],
    )
    .sort((a, b) => a.left - b.left)
  const joined: Rectangle[] = []
  for (const r of each) {
    const last = joined[joined.length - 1]
    const touches =
      last !== undefined && r.left - last.right < 30 && r.bottom === last.bottom && r.top === last.top
    if (touches) joined[joined.length - 1] = { ...last, right: r.right }
    else joined.push(r)
  }
  return joined
}
