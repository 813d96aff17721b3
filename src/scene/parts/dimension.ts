import type { Figure } from '../../core/figure'
import type { Standing } from '../../core/plan/standing-at'
import type { Plan, RoomPoint } from '../../core/plan/types'
import type { RoomShape } from '../../core/views/room-shape'
import { lengthOf, onWall, placedWall } from '../../core/views/wall-place'
import { LAYER } from '../layer'
import { palette } from '../palette'
import { type Pen, type Point, type Sketch, stroke } from '../sketch'

const pen: Pen = { weight: 'fine', colour: palette.ink }
const TICK = 38
/** Above the top of a hung unit, or in front of a standing one, mm. */
const CLEAR = 130

/** A distance to be shown: from one point to another, its ticks across it, and the figure that is written at it. */
export interface Dimension {
  readonly id: string
  readonly from: Point
  readonly to: Point
  /** Which way its ticks stand. */
  readonly tick: Point
  readonly figure: Figure
}

/** How far from the left corner the part in hand goes: above it on the wall if it hangs, before it on the floor. */
export function dimensionsOf(plan: Plan, standing: Standing, room: RoomShape): readonly Dimension[] {
  return standing.places.flatMap(({ unit, wall, isHung }) => {
    const frame = placedWall(plan, wall?.wall ?? null)
    if (wall === null || frame === undefined || wall.left < 1) return []
    const at = onWall(frame)
    const { outDir: n } = frame
    if (isHung) {
      const z = Math.min(wall.top + CLEAR, room.topOf(frame).z - 60)
      const id = `dimension:${unit.unit}`
      return [
        {
          id,
          from: at(0, LAYER.line, z),
          to: at(wall.left, LAYER.line, z),
          tick: [0, 0, TICK],
          figure: unit.left,
        },
      ]
    }
    const depth = unit.depth.state === 'unknown' ? 600 : unit.depth.value
    const onFloor = (along: number): Point => {
      const [x, y] = at(Math.min(along, lengthOf(frame)), depth + CLEAR, 0)
      return [x, y, room.floorOr({ x, y }) + LAYER.line]
    }
    const tick: Point = [n.x * TICK, n.y * TICK, 0]
    return [
      { id: `dimension:${unit.unit}`, from: onFloor(0), to: onFloor(wall.left), tick, figure: unit.left },
    ]
  })
}

export function sketchDimensions(sketch: Sketch, dimensions: readonly Dimension[]): void {
  for (const { id, from, to, tick } of dimensions) {
    stroke(sketch, id, pen, from, to)
    for (const p of [from, to]) {
      stroke(
        sketch,
        id,
        pen,
        [p[0] - tick[0], p[1] - tick[1], p[2] - tick[2]],
        [p[0] + tick[0], p[1] + tick[1], p[2] + tick[2]],
      )
    }
  }
}

/** A point of a dimension, 0 at its start and 1 at its end, where its figure may be written. */
export function partWay({ from, to }: Dimension, f: number): RoomPoint {
  const mix = (a: number, b: number) => a + f * (b - a)
  return { x: mix(from[0], to[0]), y: mix(from[1], to[1]), z: mix(from[2], to[2]) }
}
