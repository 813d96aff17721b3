import type { WallFrame, WallThing } from '../plan/types'
import type { RoomShape } from './room-shape'
import { lengthOf } from './wall-place'

export interface Rectangle {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

/** The floor of a wall at its middle, for things that stand on it. */
export function floorUnder(room: RoomShape, wall: WallFrame, along: number): number {
  return room.floorOr({
    x: wall.origin.x + along * wall.alongDir.x,
    y: wall.origin.y + along * wall.alongDir.y,
  })
}

/** A thing's rectangle on its wall, open ends drawn to floor and ceiling; null when an end is unknown. */
export function rectangleOf(thing: WallThing, room: RoomShape, wall: WallFrame): Rectangle | null {
  const { left, right, bottom, top } = thing
  if (left.state === 'unknown' || right.state === 'unknown') return null
  if (bottom?.state === 'unknown' || top?.state === 'unknown') return null
  const middle = (left.value + right.value) / 2
  return {
    left: Math.max(0, left.value),
    right: Math.min(lengthOf(wall), right.value),
    bottom: bottom === null ? floorUnder(room, wall, middle) : bottom.value,
    top: top === null ? room.topOf(wall).z : top.value,
  }
}
