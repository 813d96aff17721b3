import type { StandingUnit } from '../../core/plan/standing-at'
import { extentOf, roomPoint } from '../../core/plan/travel-path'
import type { WallFrame } from '../../core/plan/types'
import type { RoomShape } from '../room-shape'
import { type Point, type Sketch, wash } from '../sketch'
import { LAYER, lengthOf, onWall } from '../wall-place'

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

/** The shade under a unit that stands, or beside and below one that hangs. */
export function sketchShadow(
  sketch: Sketch,
  standing: StandingUnit,
  room: RoomShape,
  wall: WallFrame | undefined,
): void {
  const { unit } = standing
  if (standing.tilt !== null || unit.kind === 'appliance-space') return
  const extent = extentOf(unit.solid)
  const part = `shadow:${unit.unit}`
  const isHung = unit.kind === 'wall' || unit.kind === 'corner-wall' || unit.kind === 'bridging'
  if (!isHung) {
    for (const box of unit.solid) {
      const place: Flat = (x, y) => {
        const p = roomPoint(standing, extent, { x, y, z: 0 })
        return [p.x, p.y, room.floorOr(p) + LAYER.shadow]
      }
      softRectangle(sketch, part, place, [box.x0, box.x1, box.y0, box.y1], FLOOR.blur, FLOOR.opacity)
    }
    return
  }
  const { left, right, underside, top } = unit
  if (wall === undefined || left.state === 'unknown' || right.state === 'unknown') return
  if (underside.state === 'unknown' || top.state === 'unknown') return
  const at = onWall(wall)
  const end = lengthOf(wall)
  const place: Flat = (a, z) => at(Math.max(0, Math.min(end, a)), LAYER.shadow, z)
  softRectangle(
    sketch,
    part,
    place,
    [left.value + WALL.aside, right.value + WALL.aside, underside.value - WALL.down, top.value - WALL.down],
    WALL.blur,
    WALL.opacity,
  )
}
