import type { LocalBox, UnitPlan } from '../plan/types'
import { moved, planOutline, type Side } from './plan-outline'

/** Boards of the drawing, mm: what a carcass looks like, not what it is cut from. */
export const BOARD = 18
export const BACK = 8
/** The back panel is let in from the back edges of the sides. */
export const BACK_LET_IN = 14
/**
 * Where the middle of a hanger's face is, inside its unit, mm: below the top, out from the back of the unit, and in from its
 * side where nobody says. Common practice, and only for the picture: makers differ.
 */
export const HANGER = { below: 51, out: 46, in: 30 } as const
const BASE_RAIL = 90

export const isOpenTopped = (unit: UnitPlan) =>
  unit.kind === 'base' || unit.kind === 'corner-base' || unit.kind === 'island'
export const isBack = (side: Side, back: number) => side.y0 === back && side.y1 === back

/** Shelves at even heights: one in a base unit, more the taller it is. */
export function shelfHeights(unit: UnitPlan, height: number): readonly number[] {
  const count = isOpenTopped(unit) ? 1 : Math.max(0, Math.round(height / 320))
  return Array.from({ length: count }, (_, i) => (height * (i + 1)) / (count + 1))
}

export interface SideBoard {
  readonly box: LocalBox
  readonly isThin: boolean
  /** Way the side runs, its inside on the left. */
  readonly dx: number
  readonly dy: number
}

/** An upright board along one side; the back is thinner and let in between its neighbours. */
export function sideBoard(side: Side, sides: readonly Side[], back: number, height: number): SideBoard {
  const isThin = isBack(side, back)
  const outer = moved(side, isThin ? BACK_LET_IN : 0)
  const inner = moved(side, isThin ? BACK_LET_IN + BACK : BOARD)
  const at = sides.indexOf(side)
  const before = sides[(at + sides.length - 1) % sides.length] ?? side
  const after = sides[(at + 1) % sides.length] ?? side
  // Where two boards meet, the back fits between the sides and a side runs through.
  const cutStart = !before.isOpen && (isThin || isBack(before, back) === isThin) ? BOARD : 0
  const cutEnd = !after.isOpen && isThin ? BOARD : 0
  const length = Math.hypot(side.x1 - side.x0, side.y1 - side.y0)
  const [dx, dy] = [(side.x1 - side.x0) / length, (side.y1 - side.y0) / length]
  const xs = [
    outer.x0 + dx * cutStart,
    outer.x1 - dx * cutEnd,
    inner.x0 + dx * cutStart,
    inner.x1 - dx * cutEnd,
  ]
  const ys = [
    outer.y0 + dy * cutStart,
    outer.y1 - dy * cutEnd,
    inner.y0 + dy * cutStart,
    inner.y1 - dy * cutEnd,
  ]
  const box = {
    x0: Math.min(...xs),
    x1: Math.max(...xs),
    y0: Math.min(...ys),
    y1: Math.max(...ys),
    z0: isThin ? BOARD : 0,
    z1: height,
  }
  return { box, isThin, dx, dy }
}

/** The boards of a carcass as boxes of its own frame, without shelves: what hides a hole inside it. */
export function carcassBoards(unit: UnitPlan): readonly LocalBox[] {
  const known = boardsOf.get(unit)
  if (known !== undefined) return known
  const boards = workOutBoards(unit)
  boardsOf.set(unit, boards)
  return boards
}
/** Asked for at every moment of every view: worked out once for each unit of a plan. */
const boardsOf = new WeakMap<UnitPlan, readonly LocalBox[]>()

function workOutBoards(unit: UnitPlan): readonly LocalBox[] {
  if (unit.kind === 'appliance-space' || unit.solid.length === 0) return []
  const height = Math.max(...unit.solid.map((b) => b.z1))
  const back = Math.min(...unit.solid.map((b) => b.y0))
  const sides = planOutline(unit.solid)
  const upright = sides.filter((s) => !s.isOpen).map((s) => sideBoard(s, sides, back, height).box)
  const bottoms = unit.solid.map((b) => ({ ...b, z1: b.z0 + BOARD }))
  const tops = isOpenTopped(unit)
    ? unit.solid.slice(0, 1).flatMap(topRails)
    : unit.solid.map((b) => ({ ...b, z0: height - BOARD }))
  return [...upright, ...bottoms, ...tops]
}

/** A base unit has no top: a rail lies at the front and one stands at the back to hold its sides and be fixed through. */
export function topRails(box: LocalBox): readonly LocalBox[] {
  const [x0, x1, z1] = [box.x0 + BOARD, box.x1 - BOARD, box.z1]
  const back = box.y0 + BACK_LET_IN + BACK
  return [
    { x0, x1, y0: box.y1 - BASE_RAIL, y1: box.y1, z0: z1 - BOARD, z1 },
    { x0, x1, y0: back, y1: back + BOARD, z0: z1 - BASE_RAIL, z1 },
  ]
}

/** How far in front of the back of a unit a hole through it shows, at a height in its own frame. */
export function insideFace(unit: UnitPlan, z: number): number {
  const height = Math.max(0, ...unit.solid.map((b) => b.z1))
  const isOnRail = isOpenTopped(unit) && unit.solid.length === 1 && z > height - BASE_RAIL
  return BACK_LET_IN + BACK + (isOnRail ? BOARD : 0) + 4
}
