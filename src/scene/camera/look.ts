import type { Plan } from '../../core/plan/types'
import type { Framing } from '../../core/views/frame-view'
import { isFacing } from '../../core/views/rays'
import type { RoomShape } from '../../core/views/room-shape'
import type { View } from '../../core/views/view'

/** A user's own turn of the chosen view: degrees round to the right and up, and how much closer (1: as chosen). */
export interface Look {
  readonly turn: number
  readonly tip: number
  readonly closer: number
}
export const asChosen: Look = { turn: 0, tip: 0, closer: 1 }

const LOWEST = -15
const HIGHEST = 85

/** The chosen view, turned about what it looks at; the walls that get in between change with it. */
export function turnedView(view: View, look: Look, room: RoomShape): View {
  if (look.turn === 0 && look.tip === 0 && look.closer === 1) return view
  const { eye, target } = view
  const away = { x: eye.x - target.x, y: eye.y - target.y, z: eye.z - target.z }
  const distance = Math.hypot(away.x, away.y, away.z) / look.closer
  const elevation = Math.max(LOWEST, Math.min(HIGHEST, view.elevation + look.tip))
  const azimuth = view.azimuth + look.turn
  const [a, e] = [(azimuth * Math.PI) / 180, (elevation * Math.PI) / 180]
  const turned: Framing = {
    target,
    eye: {
      x: target.x + distance * Math.cos(e) * Math.cos(a),
      y: target.y + distance * Math.cos(e) * Math.sin(a),
      z: target.z + distance * Math.sin(e),
    },
  }
  return { ...view, ...turned, azimuth, elevation, hidden: hiddenFrom(room, turned) }
}

/** Walls that a camera is not on the room side of. */
export function hiddenFrom(room: RoomShape, { eye }: Framing): readonly string[] {
  return room.walls.filter((w) => !isFacing({ from: w.origin, outDir: w.outDir }, eye)).map((w) => w.wall)
}

/** A view from a given camera, for pictures that must not choose. */
export function fixedView(framing: Framing, room: RoomShape): View {
  const { eye, target } = framing
  const level = Math.hypot(eye.x - target.x, eye.y - target.y)
  return {
    ...framing,
    azimuth: (Math.atan2(eye.y - target.y, eye.x - target.x) * 180) / Math.PI,
    elevation: (Math.atan2(eye.z - target.z, level) * 180) / Math.PI,
    hidden: hiddenFrom(room, framing),
    score: 0,
    seen: { part: 0, fixings: 0, marks: 0, place: 0 },
  }
}

/** Whether a plan has anything to look at: a wall with a place. */
export function canBeDrawn(plan: Plan): boolean {
  return plan.walls.some((w) => w.placed && w.length.state !== 'unknown')
}
