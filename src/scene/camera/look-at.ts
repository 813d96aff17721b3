import type { RoomPoint, WallFrame } from '../../core/plan/types'
import { frameView } from '../../core/views/frame-view'
import { floorUnder } from '../../core/views/rectangle'
import type { RoomShape } from '../../core/views/room-shape'
import type { View } from '../../core/views/view'
import { lengthOf } from '../../core/views/wall-place'
import type { FindingSpot } from '../parts/findings'
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
  const { across, up } = spot
  const at = spot.wall === null ? spot.at : onItsWall(spot.at, spot.wall, room)
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

/** Moved in from the ends of its wall, so that the picture is of the wall and not of what is beside the room. */
function onItsWall(at: RoomPoint, wall: WallFrame, room: RoomShape): RoomPoint {
  const { origin, alongDir } = wall
  const along = (at.x - origin.x) * alongDir.x + (at.y - origin.y) * alongDir.y
  const by = within(along, ROUND, lengthOf(wall) - ROUND) - along
  const z = within(at.z, floorUnder(room, wall, along) + ROUND, room.topOf(wall).z - ROUND)
  return { x: at.x + by * alongDir.x, y: at.y + by * alongDir.y, z }
}

/** Between the two, or midway where they have crossed. */
function within(value: number, low: number, high: number): number {
  return low > high ? (low + high) / 2 : Math.max(low, Math.min(high, value))
}

function beforeWall(azimuth: number, { outDir }: WallFrame): number {
  const straight = (Math.atan2(outDir.y, outDir.x) * 180) / Math.PI
  const turn = ((((azimuth - straight) % 360) + 540) % 360) - 180
  return straight + Math.max(-WIDEST, Math.min(WIDEST, turn))
}
