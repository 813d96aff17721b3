import type { HeightLine, WallFrame } from '../plan/types'
import { lengthOf } from './wall-place'

/** From where to where a line runs; an open end is the end of the wall. */
export function endsOf(line: HeightLine, wall: WallFrame): readonly [number, number] {
  return [Math.max(0, line.from ?? 0), Math.min(lengthOf(wall), line.to ?? lengthOf(wall))]
}
