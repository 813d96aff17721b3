import type { LocalBox, UnitPlan } from '../../core/plan/types'
import { type BoardShades, handBoard, quietBoard } from '../palette'
import {
  boxEdges,
  boxFaces,
  face,
  type Pen,
  type Place,
  type Point,
  ring,
  type Sketch,
  stroke,
} from '../sketch'
import { trianglesOf } from '../triangles'
import { insetCorners, moved, planOutline, type Side } from './plan-outline'

/** Boards of the drawing, mm: what a carcass looks like, not what it is cut from. */
const BOARD = 18
const BACK = 8
/** The back panel is let in from the back edges of the sides. */
const BACK_LET_IN = 14
const SHELF_BACK = 30
const BASE_RAIL = 90

export interface BodyStyle {
  readonly isInHand: boolean
  /** Loose shelves are out while somebody drills through the back. */
  readonly hasShelves: boolean
}

/** A carcass of boards: sides, bottom, top or rails, back let in, shelves; its open side towards the room. */
export function sketchUnitBody(sketch: Sketch, unit: UnitPlan, place: Place, style: BodyStyle): void {
  const part = `unit:${unit.unit}`
  const shades = style.isInHand ? handBoard : quietBoard
  if (unit.kind === 'appliance-space') {
    const pen: Pen = { weight: 'hair', colour: shades.line, dashes: [50, 50] }
    for (const box of unit.solid) boxEdges(sketch, part, pen, place, box)
    return
  }
  const height = Math.max(0, ...unit.solid.map((b) => b.z1))
  const sides = planOutline(unit.solid)
  const pens: Pens = {
    outer: { weight: style.isInHand ? 'bold' : 'fine', colour: shades.line },
    inner: { weight: style.isInHand ? 'fine' : 'hair', colour: shades.line },
  }
  const back = Math.min(...unit.solid.map((b) => b.y0))
  const boards = sides.filter((s) => !s.isOpen)
  for (const side of boards) sketchSide(sketch, part, shades, place, side, sides, { back, height, pens })
  const inside = insetCorners(sides, (s) => (s.isOpen ? 0 : isBack(s, back) ? BACK_LET_IN + BACK : BOARD))
  slab(sketch, part, shades, place, inside, 0, BOARD, pens.inner)
  if (isOpenTopped(unit)) {
    const [box] = unit.solid
    if (sides.length === 4 && box !== undefined) sketchRails(sketch, part, shades, place, box, pens.inner)
  } else {
    slab(sketch, part, shades, place, inside, height - BOARD, height, pens.inner)
  }
  if (style.hasShelves) {
    const on = insetCorners(sides, (s) =>
      s.isOpen ? SHELF_BACK : isBack(s, back) ? BACK_LET_IN + BACK : BOARD,
    )
    for (const z of shelfHeights(unit, height)) {
      slab(sketch, part, { ...shades, top: shades.shelf }, place, on, z, z + BOARD, pens.inner)
    }
  }
  outerEdges(sketch, part, place, sides, height, pens.outer)
}

interface Pens {
  readonly outer: Pen
  readonly inner: Pen
}

const isOpenTopped = (unit: UnitPlan) =>
  unit.kind === 'base' || unit.kind === 'corner-base' || unit.kind === 'island'
const isBack = (side: Side, back: number) => side.y0 === back && side.y1 === back

/** Shelves at even heights: one in a base unit, more the taller it is. */
export function shelfHeights(unit: UnitPlan, height: number): readonly number[] {
  const count = isOpenTopped(unit) ? 1 : Math.max(0, Math.round(height / 320))
  return Array.from({ length: count }, (_, i) => (height * (i + 1)) / (count + 1))
}

interface Carcass {
  readonly back: number
  readonly height: number
  readonly pens: Pens
}

interface SideBoard {
  readonly box: LocalBox
  readonly isThin: boolean
  /** Way the side runs, its inside on the left. */
  readonly dx: number
  readonly dy: number
}

/** An upright board along one side; the back is thinner and let in between its neighbours. */
function sideBoard(side: Side, sides: readonly Side[], back: number, height: number): SideBoard {
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
function topRails(box: LocalBox): readonly LocalBox[] {
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

function sketchSide(
  sketch: Sketch,
  part: string,
  shades: BoardShades,
  place: Place,
  side: Side,
  sides: readonly Side[],
  { back, height, pens }: Carcass,
): void {
  const { box, isThin, dx, dy } = sideBoard(side, sides, back, height)
  const inside = isThin ? shades.back : dy > 0 ? shades.inner : shades.innerLit
  boxFaces(
    sketch,
    part,
    {
      // Inside is on the left hand of the side's direction.
      right: dy > 0 ? shades.outerLit : dy < 0 ? inside : shades.edge,
      left: dy < 0 ? shades.outer : dy > 0 ? inside : shades.edge,
      front: dx > 0 ? inside : dx < 0 ? shades.outer : shades.edge,
      back: shades.outer,
      top: shades.top,
      under: shades.under,
    },
    place,
    box,
  )
  boxEdges(sketch, part, pens.inner, place, box)
}

/** A level board over the inside of the carcass. */
function slab(
  sketch: Sketch,
  part: string,
  shades: BoardShades,
  place: Place,
  corners: readonly { readonly x: number; readonly y: number }[],
  low: number,
  high: number,
  pen: Pen,
): void {
  const level = (z: number) => corners.map((c): Point => place(c.x, c.y, z))
  for (const triangle of trianglesOf(corners)) {
    face(
      sketch,
      part,
      shades.top,
      triangle.map((c) => place(c.x, c.y, high)),
    )
    face(
      sketch,
      part,
      shades.under,
      triangle.map((c) => place(c.x, c.y, low)),
    )
  }
  const [under, over] = [level(low), level(high)]
  for (let i = 0; i < corners.length; i += 1) {
    const k = (i + 1) % corners.length
    const rim = [under[i], under[k], over[k], over[i]] as readonly Point[]
    face(sketch, part, shades.edge, rim)
    stroke(sketch, part, pen, rim[0] as Point, rim[3] as Point)
  }
  ring(sketch, part, pen, under)
  ring(sketch, part, pen, over)
}

function sketchRails(
  sketch: Sketch,
  part: string,
  shades: BoardShades,
  place: Place,
  box: LocalBox,
  pen: Pen,
): void {
  const tones = {
    ...shades,
    right: shades.outerLit,
    left: shades.outer,
    front: shades.edge,
    back: shades.outer,
  }
  for (const rail of topRails(box)) {
    boxFaces(sketch, part, tones, place, rail)
    boxEdges(sketch, part, pen, place, rail)
  }
}

function outerEdges(
  sketch: Sketch,
  part: string,
  place: Place,
  sides: readonly Side[],
  height: number,
  pen: Pen,
): void {
  for (const z of [0, height])
    ring(
      sketch,
      part,
      pen,
      sides.map((s) => place(s.x0, s.y0, z)),
    )
  for (const s of sides) stroke(sketch, part, pen, place(s.x0, s.y0, 0), place(s.x0, s.y0, height))
}
