import { HUNG_KINDS } from '../kitchen/kinds'
import { extentOf } from '../plan/travel-path'
import type { LocalBox, UnitPlan } from '../plan/types'
import type { Axis } from './vial'

/** How the level is put to a unit. */
export interface LevelOn {
  /** On the top edges, inside on the bottom panel, or upright against it. */
  readonly way: 'on-top' | 'inside' | 'upright'
  readonly length: number
  /** Its body, in the unit's own frame. */
  readonly body: LocalBox
}

/** So many times as large as it is a picture of the room draws the vial of a level, and says so. */
export const VIAL_DRAWN = { lying: 6, upright: 2 } as const

/** Lengths a level is sold in, mm, longest first: from memory, as nothing hangs on it but the figure that is read. */
const LENGTHS = [600, 400, 250] as const
const LONG_LEVEL = 1000
const BODY = { thick: 24, high: 52 }
const BOARD = 18
/** Over this height the top can't be reached with the eye: the level stands against the unit instead. */
const UPRIGHT_OVER = 1400
/** How far from the front edge, and from a side, it lies. */
const IN_FROM_EDGE = 40

/** Where the level lies on a unit, or stands against it; null for one that has no shape yet. */
export function levelOn(unit: UnitPlan, axis: Axis): LevelOn | null {
  const [box] = unit.solid
  if (box === undefined) return null
  if (extentOf(unit.solid).height > UPRIGHT_OVER) return upright(box, axis)
  return HUNG_KINDS.includes(unit.kind) ? inside(box, axis) : onTop(box, axis)
}

const longest = (room: number): number => LENGTHS.find((l) => l <= room) ?? Math.max(100, room)

function lying(box: LocalBox, axis: Axis, length: number, z0: number): LocalBox {
  const z1 = z0 + BODY.high
  if (axis === 'along') {
    const [middle, y1] = [(box.x0 + box.x1) / 2, box.y1 - IN_FROM_EDGE]
    return { x0: middle - length / 2, x1: middle + length / 2, y0: y1 - BODY.thick, y1, z0, z1 }
  }
  const [middle, x1] = [(box.y0 + box.y1) / 2, box.x1 - IN_FROM_EDGE]
  return { x0: x1 - BODY.thick, x1, y0: middle - length / 2, y1: middle + length / 2, z0, z1 }
}

function onTop(box: LocalBox, axis: Axis): LevelOn {
  const length = longest(axis === 'along' ? box.x1 - box.x0 : box.y1 - box.y0)
  return { way: 'on-top', length, body: lying(box, axis, length, box.z1) }
}

/** Along the front edge of the bottom panel, between the sides. */
function inside(box: LocalBox, axis: Axis): LevelOn {
  const length = longest((axis === 'along' ? box.x1 - box.x0 : box.y1 - box.y0) - 2 * BOARD)
  return { way: 'inside', length, body: lying(box, axis, length, box.z0 + BOARD) }
}

/** Upright at the right side: its edge to the front edge, or its broad face to the front so that its vial is seen. */
function upright(box: LocalBox, axis: Axis): LevelOn {
  const z0 = Math.min(box.z1 - LONG_LEVEL - 150, 750)
  const z = { z0, z1: z0 + LONG_LEVEL }
  const x1 = box.x1 - 3
  const body =
    axis === 'along'
      ? { x0: x1 - BODY.high, x1, y0: box.y1, y1: box.y1 + BODY.thick, ...z }
      : { x0: x1 - BODY.thick, x1, y0: box.y1, y1: box.y1 + BODY.high, ...z }
  return { way: 'upright', length: LONG_LEVEL, body }
}
