import { valueOf } from '../figure'
import type { Unit } from '../kitchen/schema'
import type { LocalBox } from '../plan/types'

/**
 * The carcass as boxes in the unit's own frame: one, or with an arm for a corner unit that goes round. The arm on the
 * left runs out from the back along the wall on the left, `returnLeft` long and `returnDepth` deep; on the right
 * likewise. Null while a size is not known.
 */
export function solidOf(unit: Unit): readonly LocalBox[] | null {
  const [width, height, depth] = [unit.width, unit.height, unit.depth].map(valueOf)
  if (width === undefined || height === undefined || depth === undefined) return null
  const box = (x0: number, x1: number, y1: number): LocalBox => ({ x0, x1, y0: 0, y1, z0: 0, z1: height })
  const [left, right, deep] = [unit.returnLeft, unit.returnRight, unit.returnDepth].map(valueOf)
  if ((left !== undefined || right !== undefined) && deep === undefined) return null
  const boxes = [box(0, width, depth)]
  if (left !== undefined && deep !== undefined) boxes.push(box(0, deep, left))
  if (right !== undefined && deep !== undefined) boxes.push(box(width - deep, width, right))
  return boxes
}
