import type { Plan, WallFrame, WallId } from '../core/plan/types'
import type { Place, Point } from './sketch'

/** Millimetres out from the finished face at which flat things lie on a wall, so that none fights another for depth. */
export const LAYER = { stud: 0.5, band: 1, service: 1.5, shadow: 2.5, wash: 3, line: 4, opening: 12 } as const

/** A place on a wall: along it, out from it, up from the line. */
export function onWall(frame: WallFrame): Place {
  const { origin, alongDir, outDir } = frame
  return (along, out, up): Point => [
    origin.x + along * alongDir.x + out * outDir.x,
    origin.y + along * alongDir.y + out * outDir.y,
    up,
  ]
}

/** The wall by its id, if it has a place in the room. */
export function placedWall(plan: Plan, wall: WallId | null): WallFrame | undefined {
  return plan.walls.find((w) => w.wall === wall && w.placed && w.length.state !== 'unknown')
}

export function lengthOf(frame: WallFrame): number {
  return frame.length.state === 'unknown' ? 0 : frame.length.value
}
