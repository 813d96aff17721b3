import type { UnitPlan } from '../../core/plan/types'
import { palette } from '../palette'
import { type Box, boxEdges, boxFaces, type Place, type Sketch } from '../sketch'

const LENGTH = 600
const BODY = { across: 24, high: 52 }
/** Over this height the top can't be reached with the eye: the level stands against the front edge instead. */
const UPRIGHT_OVER = 1400

const wood = {
  front: palette.timber,
  back: palette.timber,
  top: '#E5CBA3',
  under: '#B8945F',
  left: '#CFAC7A',
  right: '#CFAC7A',
}
const glass = {
  front: '#A9CDB6',
  back: '#A9CDB6',
  top: '#BFDCC9',
  under: '#A9CDB6',
  left: '#8FBBA0',
  right: '#8FBBA0',
}

/** Where the level lies on a unit, in the unit's own frame. */
export function levelBox(unit: UnitPlan): Box | null {
  const [box] = unit.solid
  if (box === undefined) return null
  if (box.z1 > UPRIGHT_OVER) {
    const x1 = box.x1 - 3
    const z0 = Math.min(box.z1 - LENGTH - 150, 750)
    return { x0: x1 - BODY.high, x1, y0: box.y1, y1: box.y1 + BODY.across, z0, z1: z0 + LENGTH }
  }
  const length = Math.min(LENGTH, box.x1 - box.x0 - 20)
  const middle = (box.x0 + box.x1) / 2
  const y1 = box.y1 - 40
  return {
    x0: middle - length / 2,
    x1: middle + length / 2,
    y0: y1 - BODY.across,
    y1,
    z0: box.z1,
    z1: box.z1 + BODY.high,
  }
}

/** A wooden spirit level with a green vial, lying along the unit being levelled. */
export function sketchLevel(sketch: Sketch, unit: UnitPlan, place: Place): void {
  const body = levelBox(unit)
  if (body === null) return
  const part = `level:${unit.unit}`
  boxFaces(sketch, part, wood, place, body)
  boxEdges(sketch, part, { weight: 'fine', colour: palette.timberEdge }, place, body)
  const vial = vialOf(body)
  boxFaces(sketch, part, glass, place, vial)
  boxEdges(sketch, part, { weight: 'fine', colour: palette.levelGreen }, place, vial)
}

/** A window in the middle of the level, standing a little proud of it so that it shows from the front and from above. */
function vialOf(b: Box): Box {
  const isUpright = b.z1 - b.z0 > b.x1 - b.x0
  const middle = isUpright ? (b.z0 + b.z1) / 2 : (b.x0 + b.x1) / 2
  const proud = 1.5
  if (isUpright) {
    return { ...b, x0: b.x0 - proud, x1: b.x0 + 26, y1: b.y1 + proud, z0: middle - 42, z1: middle + 42 }
  }
  return {
    ...b,
    x0: middle - 42,
    x1: middle + 42,
    y1: b.y1 + proud,
    y0: b.y0 - proud,
    z0: b.z1 - 26,
    z1: b.z1 + proud,
  }
}
