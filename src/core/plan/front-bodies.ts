import { valueOf } from '../figure'
import type { Unit } from '../kitchen/schema'
import type { FittedPart, LocalBox, UnitPlan } from './types'

/** Half of the gap left all round a door, mm. */
const GAP = 1.5
/** Doors whose widths come to no more than this over the width of the unit stand side by side, mm. */
const SLACK = 5

type Door = Unit['doors'][number]
type Drawer = Unit['drawers'][number]

/** The stretch of a unit's face that fronts are hung on, in its own frame, and the face of the arm of a corner unit. */
export interface Face {
  readonly x0: number
  readonly x1: number
  /** Where the arm's doors hang: their plane, and from where to where it reaches out. Null: no arm. */
  readonly arm: {
    readonly x: number
    readonly y0: number
    readonly y1: number
    readonly side: 'left' | 'right'
  } | null
}

interface Sizes {
  readonly width: number
  readonly tall: number
  readonly depth: number
  readonly thick: number
}

/**
 * The fronts of one unit on the face of its carcass: doors side by side where their widths let them, else one over the
 * other; drawers one over the other, over the doors of a base and under those of a tall. Drawers behind a door are not
 * fronts.
 */
export function frontBodies(
  unit: Unit,
  planned: UnitPlan | undefined,
  corner: 'left' | 'right' | null,
): readonly FittedPart[] {
  const [width, tall, depth, thick] = [unit.width, unit.height, unit.depth, unit.front].map(valueOf)
  if (planned?.pose == null || width === undefined || tall === undefined) return []
  if (depth === undefined || thick === undefined) return []
  const { pose, name } = planned
  const face = faceOf(unit, { width, tall, depth, thick }, corner)
  const boxes = boxesOf(unit, { width, tall, depth, thick }, face)
  return boxes.map(([id, box]) => ({
    part: `${unit.id}.${id}`,
    name: `${name}, front`,
    kind: 'front' as const,
    of: [unit.id],
    pose,
    solid: [box],
  }))
}

/** A corner unit opens away from its corner: past its own arm, or past what stands round the corner. */
function faceOf(unit: Unit, { width, depth }: Sizes, corner: 'left' | 'right' | null): Face {
  const [left, right, deep] = [unit.returnLeft, unit.returnRight, unit.returnDepth].map(valueOf)
  if (deep !== undefined && right !== undefined) {
    return { x0: 0, x1: width - deep, arm: { x: width - deep, y0: depth, y1: right, side: 'right' } }
  }
  if (deep !== undefined && left !== undefined) {
    return { x0: deep, x1: width, arm: { x: deep, y0: depth, y1: left, side: 'left' } }
  }
  const doors = unit.doors.map((door) => valueOf(door.width))
  const open = doors.reduce<number>((sum, w) => sum + (w ?? width), 0)
  if (corner === null || open === 0 || open > width - SLACK) return { x0: 0, x1: width, arm: null }
  const wide = open + 2 * GAP
  return corner === 'right' ? { x0: 0, x1: wide, arm: null } : { x0: width - wide, x1: width, arm: null }
}

type Named = readonly [string, LocalBox]

function boxesOf(unit: Unit, sizes: Sizes, face: Face): readonly Named[] {
  const isTall = unit.kind === 'tall'
  const [onFace, onArm] = splitOverArm(unit.doors, face)
  const rows = rowsOf(onFace, face.x1 - face.x0)
  const drawers = fromTheTop(unit.drawers.filter((drawer) => drawer.inner !== true))
  const doorsTall = rows.reduce((sum, row) => sum + tallest(row, 0), 0)
  const room = sizes.tall - doorsTall
  const share = (room > 0 ? room : sizes.tall) / Math.max(1, drawers.length)
  const own = drawers.map((drawer) => valueOf(drawer.height) ?? share)
  const heights = rows.length === 0 ? drawnOut(own, sizes.tall) : own
  const stack = heights.reduce((sum, h) => sum + h, 0)
  const isUnderDoors = isTall && rows.length > 0
  const doors =
    rows.length === 1 && !isTall
      ? sitting(rows[0] ?? [], sizes, face)
      : hanging(rows, sizes, face, isUnderDoors ? { top: 0, bottom: stack } : { top: stack, bottom: 0 })
  return [
    ...doors,
    ...onArm.flatMap((door) => onTheArm(door, sizes, face)),
    ...drawersFrom(drawers, heights, isUnderDoors ? stack : sizes.tall, sizes, face),
  ]
}

/** Gaps left over in a stack of fronts are shared out, so that it covers what it is to cover, mm. */
const GAPS = 40

function drawnOut(heights: readonly number[], tall: number): readonly number[] {
  const sum = heights.reduce((a, b) => a + b, 0)
  return sum > 0 && sum > tall - GAPS ? heights.map((h) => (h * tall) / sum) : heights
}

/** Drawers from the top: as their ids say, else the shallower one higher. */
function fromTheTop(drawers: readonly Drawer[]): readonly Drawer[] {
  return [...drawers].sort(
    (a, b) =>
      spoken(a.id, VERTICAL) - spoken(b.id, VERTICAL) || (valueOf(a.height) ?? 0) - (valueOf(b.height) ?? 0),
  )
}

/** Two doors of a unit that goes round a corner: one on each of its faces. */
function splitOverArm(doors: readonly Door[], face: Face): readonly [readonly Door[], readonly Door[]] {
  if (face.arm === null || doors.length < 2) return [doors, []]
  return [doors.slice(0, -1), doors.slice(-1)]
}

const VERTICAL: readonly (readonly string[])[] = [
  ['upper', 'top'],
  ['middle', 'centre'],
  ['lower', 'bottom'],
]
const ACROSS: readonly (readonly string[])[] = [['left'], ['middle', 'centre'], ['right']]

/** The place a door's id speaks of ("door-lower"); the middle one where it speaks of none. */
function spoken(id: string, places: readonly (readonly string[])[]): number {
  const words = id.split('-')
  const at = places.findIndex((place) => place.some((word) => words.includes(word)))
  return at < 0 ? 1 : at
}

/** Left-hinged before right-hinged, as a pair of doors hangs, where no id says which is which. */
function across(door: Door): number {
  const said = spoken(door.id, ACROSS)
  if (said !== 1) return said
  return door.hinge === 'left' ? 0.5 : door.hinge === 'right' ? 1.5 : 1
}

/**
 * Doors in rows from the top down; in a row as many side by side as the face is wide. Where no id says which is which the
 * lower door is the shorter one, in line with those of the bases: common practice.
 */
function rowsOf(doors: readonly Door[], width: number): readonly (readonly Door[])[] {
  const inOrder = [...doors].sort(
    (a, b) =>
      spoken(a.id, VERTICAL) - spoken(b.id, VERTICAL) ||
      (valueOf(b.height) ?? 0) - (valueOf(a.height) ?? 0) ||
      across(a) - across(b),
  )
  const rows: { doors: Door[]; wide: number; level: number }[] = []
  for (const door of inOrder) {
    const own = valueOf(door.width) ?? width / doors.length
    const level = spoken(door.id, VERTICAL)
    const row = rows.at(-1)
    if (row !== undefined && row.level === level && row.wide + own <= width + SLACK) {
      row.doors.push(door)
      row.wide += own
    } else rows.push({ doors: [door], wide: own, level })
  }
  return rows.map((row) => row.doors)
}

/** Across the face in equal parts, or at their own widths where those differ. */
function rowBoxes(
  row: readonly Door[],
  { x0, x1 }: Face,
  sizes: Sizes,
  z0: number,
  z1: number,
): readonly Named[] {
  const widths = row.map((door) => valueOf(door.width) ?? (x1 - x0) / row.length)
  const sum = widths.reduce((a, b) => a + b, 0)
  const scale = (x1 - x0) / sum
  let at = x0
  return row.map((door, i): Named => {
    const from = at
    at += (widths[i] ?? 0) * scale
    return [door.id, onFace(sizes, from, at, z0, z1)]
  })
}

function onFace({ depth, thick }: Sizes, x0: number, x1: number, z0: number, z1: number): LocalBox {
  return { x0: x0 + GAP, x1: x1 - GAP, y0: depth, y1: depth + thick, z0: z0 + GAP, z1: z1 - GAP }
}

const tallest = (row: readonly Door[], otherwise: number): number =>
  Math.max(...row.map((door) => valueOf(door.height) ?? otherwise))

/** One row stands on the bottom of its unit: a drawer may be over it. */
function sitting(row: readonly Door[], sizes: Sizes, face: Face): readonly Named[] {
  const own = Math.min(sizes.tall, tallest(row, sizes.tall))
  return rowBoxes(row, face, sizes, 0, own > sizes.tall - GAPS / 2 ? sizes.tall : own)
}

/** Rows one under the other, between what is over them and what is under them. */
function hanging(
  rows: readonly (readonly Door[])[],
  sizes: Sizes,
  face: Face,
  beside: { readonly top: number; readonly bottom: number },
): readonly Named[] {
  const room = sizes.tall - beside.top - beside.bottom
  const heights = drawnOut(
    rows.map((row) => tallest(row, room / rows.length)),
    room,
  )
  let top = sizes.tall - beside.top
  return rows.flatMap((row, i) => {
    const z1 = top
    top = Math.max(0, top - (heights[i] ?? 0))
    return rowBoxes(row, face, sizes, top, z1)
  })
}

function drawersFrom(
  drawers: readonly { readonly id: string }[],
  heights: readonly number[],
  from: number,
  sizes: Sizes,
  face: Face,
): readonly Named[] {
  let top = from
  return drawers.map((drawer, i): Named => {
    const z1 = top
    top -= heights[i] ?? 0
    return [drawer.id, onFace(sizes, face.x0, face.x1, Math.max(0, top), z1)]
  })
}

function onTheArm(door: Door, { tall, thick }: Sizes, { arm }: Face): readonly Named[] {
  if (arm === null) return []
  const [x0, x1] = arm.side === 'right' ? [arm.x - thick, arm.x] : [arm.x, arm.x + thick]
  const z1 = Math.min(tall, valueOf(door.height) ?? tall)
  return [[door.id, { x0, x1, y0: arm.y0 + GAP, y1: arm.y1 - GAP, z0: GAP, z1: z1 - GAP }]]
}
