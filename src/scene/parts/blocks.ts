import type { StandingUnit } from '../../core/plan/standing-at'
import { extentOf, roomPoint, type Tilt } from '../../core/plan/travel-path'
import type { RoomShape } from '../../core/views/room-shape'
import { BLANKET } from '../../core/views/upturned'
import { palette } from '../palette'
import { type Box, type BoxShades, boxEdges, boxFaces, type Place, type Sketch } from '../sketch'

const shades: BoxShades = {
  front: '#DDC096',
  top: '#E6CFAB',
  left: '#CFAF80',
  right: '#D9BA8D',
  back: '#CFAF80',
  under: '#C3A274',
}
/** Half the width of a block across the edge it bears, and its length along it, mm. */
const HALF = 70
const LONG = 140
/** How far in from its head end a lying unit is borne, mm. */
const HEAD_IN = 160
/** Lower than this, mm, there is nothing to draw. */
const LEAST = 20

/** The blocks under the edge a unit turns on, and under its head while it lies level on them. */
export function sketchBlocks(
  sketch: Sketch,
  standing: StandingUnit,
  room: RoomShape,
  over: Tilt['over'],
): void {
  const { unit, pose, tilt } = standing
  const extent = extentOf(unit.solid)
  const upright: Place = (x, y, z) => {
    const p = roomPoint({ pose, tilt: null }, extent, { x, y, z })
    return [p.x, p.y, p.z]
  }
  const isLying = tilt !== null && tilt.angle === 90
  for (const block of blocksAt(over, extent, isLying)) {
    const middle = roomPoint({ pose, tilt: null }, extent, {
      x: (block.x0 + block.x1) / 2,
      y: (block.y0 + block.y1) / 2,
      z: 0,
    })
    const floor = room.floorOr(middle) - pose.z
    if (-floor < LEAST) continue
    const box = { ...block, z0: floor, z1: 0 }
    boxFaces(sketch, `blocks:${unit.unit}`, shades, upright, box)
    boxEdges(sketch, `blocks:${unit.unit}`, { weight: 'fine', colour: palette.timberEdge }, upright, box)
  }
}

/** The blanket under the top of a unit that lies on it, a little larger all round. */
export function sketchBlanket(sketch: Sketch, { unit }: StandingUnit, place: Place): void {
  const { width, depth, height } = extentOf(unit.solid)
  const box = {
    x0: -ROUND,
    x1: width + ROUND,
    y0: -ROUND,
    y1: depth + ROUND,
    z0: height,
    z1: height + BLANKET,
  }
  const felt: BoxShades = {
    front: '#AFA79B',
    top: '#9C9489',
    left: '#A29A8E',
    right: '#A8A094',
    back: '#A29A8E',
    under: '#B9B2A6',
  }
  boxFaces(sketch, `blanket:${unit.unit}`, felt, place, box)
  boxEdges(sketch, `blanket:${unit.unit}`, { weight: 'hair', colour: palette.pencil }, place, box)
}
const ROUND = 90

type Plan = Omit<Box, 'z0' | 'z1'>

/** Two blocks along the edge, one towards each end of it, and two more where the head of a lying unit comes. */
function blocksAt(
  over: Tilt['over'],
  { width, depth, height }: ReturnType<typeof extentOf>,
  isLying: boolean,
): readonly Plan[] {
  const isSide = over === 'left' || over === 'right'
  const edge = isSide ? depth : width
  /** Which way its head lies from the edge, and where the edge is, along its width or its depth. */
  const [at, way] = { left: [0, -1], back: [0, -1], right: [width, 1], front: [depth, 1] }[over] as [
    number,
    number,
  ]
  const rows = isLying ? [at, at + way * (height - HEAD_IN)] : [at]
  return rows.flatMap((across) =>
    [edge * 0.12, edge * 0.88 - LONG].map((along): Plan => {
      const [a0, a1, b0, b1] = [across - HALF, across + HALF, along, along + LONG]
      return isSide ? { x0: a0, x1: a1, y0: b0, y1: b1 } : { x0: b0, x1: b1, y0: a0, y1: a1 }
    }),
  )
}
