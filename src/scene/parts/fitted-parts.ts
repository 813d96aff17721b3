import type { Standing } from '../../core/plan/standing-at'
import { extentOf, roomPoint } from '../../core/plan/travel-path'
import type { FittedPart, LocalBox, Pose } from '../../core/plan/types'
import type { RoomShape } from '../../core/views/room-shape'
import { handBoard, palette } from '../palette'
import { type BoxShades, boxEdges, boxFaces, type Place, type Sketch } from '../sketch'

const sheet: BoxShades = {
  front: '#F3EEE2',
  top: '#F6F1E7',
  left: '#E9E2D4',
  right: '#EFE8DB',
  back: '#E4DCCD',
  under: '#D8CFBE',
}
const worktop: BoxShades = {
  front: '#D8C8AA',
  top: '#E6D9C0',
  left: '#CCBB9C',
  right: '#D2C2A4',
  back: '#CCBB9C',
  under: '#B9A987',
}
const inHand: BoxShades = {
  front: handBoard.outerLit,
  top: handBoard.top,
  left: handBoard.inner,
  right: handBoard.outer,
  back: handBoard.inner,
  under: handBoard.under,
}

/** Thickness and gap of a front drawn without its own sizes, mm. */
const FRONT = { thick: 18, gap: 2 }

/** What is fitted after the units: worktops, panels, plinths, fronts. */
export function sketchFittedParts(sketch: Sketch, standing: Standing, room: RoomShape): void {
  for (const { part, isNow } of standing.parts) {
    if (part.pose !== null)
      boards(sketch, `part:${part.part}`, shadesOf(part, isNow), part.pose, part.solid, isNow, room)
  }
  for (const u of standing.units) {
    const [box] = u.unit.solid
    const hasOwn = standing.parts.some((p) => p.part.kind === 'front' && p.part.of.includes(u.unit.unit))
    if (u.fronts === 'off' || hasOwn || box === undefined || u.unit.solid.length > 1) continue
    const whole: LocalBox = {
      x0: box.x0 + FRONT.gap,
      x1: box.x1 - FRONT.gap,
      y0: box.y1 + FRONT.gap,
      y1: box.y1 + FRONT.gap + FRONT.thick,
      z0: box.z0 + FRONT.gap,
      z1: box.z1 - FRONT.gap,
    }
    const isNow = u.fronts === 'now'
    boards(sketch, `front:${u.unit.unit}`, isNow ? inHand : sheet, u.pose, [whole], isNow, room)
  }
}

function shadesOf(part: FittedPart, isNow: boolean): BoxShades {
  if (isNow) return inHand
  return part.kind === 'worktop' ? worktop : sheet
}

function boards(
  sketch: Sketch,
  part: string,
  shades: BoxShades,
  pose: Pose,
  solid: readonly LocalBox[],
  isNow: boolean,
  room: RoomShape,
): void {
  const extent = extentOf(solid)
  // A plinth is cut to the floor it stands on, wherever it would reach below it.
  const place: Place = (x, y, z) => {
    const p = roomPoint({ pose, tilt: null }, extent, { x, y, z })
    return [p.x, p.y, Math.max(p.z, room.floorOr(p) + 2)]
  }
  const pen = isNow
    ? ({ weight: 'bold', colour: palette.chalkDeep } as const)
    : ({ weight: 'fine', colour: palette.pencil } as const)
  for (const box of solid) {
    boxFaces(sketch, part, shades, place, box)
    boxEdges(sketch, part, pen, place, box)
  }
}
