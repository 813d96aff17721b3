import type { WallFrame } from '../../core/plan/types'
import type { FindingSpot } from '../parts/findings'
import type { RoomShape } from '../room-shape'
import type { View } from './choose-view'
import { frameView } from './frame-view'
import { hiddenFrom } from './look'

/** Room shown round a spot, mm: near enough to know it, wide enough to know where it is. */
const ROUND = 900
/** Further round than this, degrees, a wall is looked at from nearer its middle. */
const WIDEST = 55
const ELEVATION = { least: 5, most: 30 }

/** The view of one spot: from the way the step is looked at, but near, and so that the wall it is on is seen. */
export function viewOfSpot(view: View, spot: FindingSpot, room: RoomShape, aspect: number): View {
  const elevation = Math.max(ELEVATION.least, Math.min(ELEVATION.most, view.elevation))
  const azimuth = spot.wall === null ? view.azimuth : beforeWall(view.azimuth, spot.wall)
  const { at, across, up } = spot
  const around = [-ROUND, ROUND].flatMap((a) =>
    [-ROUND, ROUND].map((b) => ({
      x: at.x + a * across.x + b * up.x,
      y: at.y + a * across.y + b * up.y,
      z: at.z + a * across.z + b * up.z,
    })),
  )
  const framed = frameView({ azimuth, elevation }, around, aspect)
  return { ...view, ...framed, azimuth, elevation, hidden: hiddenFrom(room, framed) }
}

function beforeWall(azimuth: number, { outDir }: WallFrame): number {
  const straight = (Math.atan2(outDir.y, outDir.x) * 180) / Math.PI
  const turn = ((((azimuth - straight) % 360) + 540) % 360) - 180
  return straight + Math.max(-WIDEST, Math.min(WIDEST, turn))
}
