import type { Standing } from '../../core/plan/standing-at'
import type { WallFrame } from '../../core/plan/types'
import { onWall } from '../../core/views/wall-place'
import { handBoard, palette } from '../palette'
import { type Box, boxEdges, boxFaces, type Sketch } from '../sketch'

/** Height and thickness of a rail or plate as drawn, mm. */
const RAIL = { height: 38, thickness: 9 }
const PLATE = { around: 22, thickness: 4 }

const metal = {
  front: '#CBC4B6',
  top: '#DAD4C8',
  under: '#A9A294',
  left: '#B9B2A4',
  right: '#B9B2A4',
  back: '#B9B2A4',
}
const pale = {
  front: handBoard.outer,
  top: handBoard.top,
  under: handBoard.under,
  left: handBoard.inner,
  right: handBoard.inner,
  back: handBoard.inner,
}

/** Rails and wall plates that are on the wall; the one being fixed is in hand. */
export function sketchRails(sketch: Sketch, standing: Standing, wall: WallFrame): void {
  for (const { rail, isNow } of standing.rails) {
    if (rail.wall !== wall.wall) continue
    const { from, to, edge } = rail
    if (from.state === 'unknown' || to.state === 'unknown' || edge.state === 'unknown') continue
    const box = {
      x0: from.value,
      x1: to.value,
      y0: 0,
      y1: RAIL.thickness,
      z0: edge.value - RAIL.height,
      z1: edge.value,
    }
    metalBox(sketch, `rail:${rail.rail}`, wall, box, isNow)
  }
  for (const { plate, wall: at, holes, isNow } of standing.plates) {
    if (at !== wall.wall) continue
    const spots = holes.flatMap(({ along, height }) =>
      along.state === 'unknown' || height.state === 'unknown' ? [] : [{ x: along.value, z: height.value }],
    )
    if (spots.length === 0) continue
    const box = {
      x0: Math.min(...spots.map((s) => s.x)) - PLATE.around,
      x1: Math.max(...spots.map((s) => s.x)) + PLATE.around,
      y0: 0,
      y1: PLATE.thickness,
      z0: Math.min(...spots.map((s) => s.z)) - PLATE.around,
      z1: Math.max(...spots.map((s) => s.z)) + PLATE.around,
    }
    metalBox(sketch, `plate:${plate}`, wall, box, isNow)
  }
}

function metalBox(sketch: Sketch, part: string, wall: WallFrame, box: Box, isNow: boolean): void {
  boxFaces(sketch, part, isNow ? pale : metal, onWall(wall), box)
  const pen = isNow
    ? ({ weight: 'bold', colour: palette.chalkDeep } as const)
    : ({ weight: 'fine', colour: palette.ink } as const)
  boxEdges(sketch, part, pen, onWall(wall), box)
}
