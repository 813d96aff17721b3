import type { LocalBox, UnitPlan } from '../../core/plan/types'
import {
  BACK,
  BACK_LET_IN,
  BOARD,
  isBack,
  isOpenTopped,
  shelfHeights,
  sideBoard,
  topRails,
} from '../../core/views/carcass'
import { insetCorners, planOutline, type Side } from '../../core/views/plan-outline'
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

/** A shelf stands back from the front, mm. */
const SHELF_BACK = 30

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

interface Carcass {
  readonly back: number
  readonly height: number
  readonly pens: Pens
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
