import type { Plan, WallFrame, WallId } from '../plan/types'

/** Takes a place on a wall to the room: x, y, z. */
export type OnWall = (along: number, out: number, up: number) => readonly [number, number, number]

/** A place on a wall: along it, out from it, up from the line. */
export function onWall(frame: WallFrame): OnWall {
  const { origin, alongDir, outDir } = frame
  return (along, out, up) => [
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
