import { type Basis, derive, type Figure, hasValue, known, restingOn, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Unit } from '../kitchen/schema'
import type { UnitPosition } from '../units/positions'
import { BOARD_SPREAD, backDensity, FRONT_DENSITY, panelMass, particleboardDensity } from './board-density'

/** Two rails this wide stand in for the top of a base unit; a loose shelf stops this short of the back and the front. */
const RAIL = 100
const SHELF_SHORT = 60

export interface UnitMasses {
  /** Without doors, drawers and loose shelves: what is lifted. */
  readonly stripped: Figure
  readonly doors: Figure
  /** With all of them, and nothing standing in it. */
  readonly whole: Figure
}

type Sized = Pick<UnitPosition, 'unit' | 'width' | 'height' | 'depth'>

const basis: Basis = { kind: 'geometry', why: 'area × thickness × density of its panels' }
const NONE: Figure = known(0, 0, 'kg', [], { kind: 'geometry', why: 'it has none' })

/** Masses of a unit: as its sheet gives them, else from its panels, which is assumed until it has been weighed. */
export function massesOf(position: Sized): UnitMasses {
  const { unit } = position
  if (unit.kind === 'appliance-space') return { stripped: NONE, doors: NONE, whole: NONE }
  const stripped = hasValue(unit.massStripped)
    ? unit.massStripped
    : restingOn(carcassMass(position), unit.massStripped.from)
  const doors = sum(unit.doors.map(doorMass))
  const whole = hasValue(unit.massEmpty)
    ? unit.massEmpty
    : sum([stripped, doors, drawersMass(unit), shelvesMass(position)])
  return { stripped, doors, whole }
}

function sum(figures: readonly Figure[]): Figure {
  if (figures.length === 0) return NONE
  const why = 'its parts added up'
  return derive('kg', { kind: 'geometry', why }, figures, (...masses) => masses.reduce((a, b) => a + b, 0))
}

/** Kinds with a whole top panel; the rest have two rails under the worktop. */
const TOPPED: readonly Unit['kind'][] = ['tall', 'wall', 'corner-wall', 'bridging', 'open-end']

/**
 * Mass of the bare carcass from its panels: two sides, the bottom and the top between them (two rails for a base unit),
 * and the back. An L-shaped corner unit is not a box, and its mass is not guessed.
 */
export function carcassMass(position: Sized): Figure {
  const { unit, width, height, depth } = position
  if (hasValue(unit.returnLeft) || hasValue(unit.returnRight)) {
    return unknown('kg', [factId('units', unit.id, 'massStripped')])
  }
  const isTopped = TOPPED.includes(unit.kind)
  return derive(
    'kg',
    basis,
    [width, height, depth, unit.board, unit.back, BOARD_SPREAD],
    (w = 0, h = 0, d = 0, board = 0, back = 0, off = 0) =>
      panelMass(carcassArea(w, h, d, board, isTopped), board, particleboardDensity(board) + off) +
      panelMass(w * h, back, backDensity(back) + off),
  )
}

/** mm²: the panels between the sides are narrower by two thicknesses. */
export function carcassArea(
  width: number,
  height: number,
  depth: number,
  board: number,
  isTopped: boolean,
): number {
  const inside = width - 2 * board
  return 2 * height * depth + inside * depth + inside * (isTopped ? depth : 2 * RAIL)
}

/** mm²: a loose shelf lies between the sides, short of back and front. */
export function shelfArea(width: number, depth: number, board: number): number {
  return (width - 2 * board) * Math.max(0, depth - SHELF_SHORT)
}

function shelvesMass({ unit, width, depth }: Sized): Figure {
  return derive(
    'kg',
    basis,
    [unit.shelves, width, depth, unit.board, BOARD_SPREAD],
    (count = 0, w = 0, d = 0, board = 0, off = 0) =>
      count * panelMass(shelfArea(w, d, board), board, particleboardDensity(board) + off),
  )
}

/** As its sheet gives it, else from its size. */
export function doorMass(
  door: Pick<Unit['doors'][number], 'mass' | 'width' | 'height' | 'thickness'>,
): Figure {
  if (hasValue(door.mass)) return door.mass
  return derive(
    'kg',
    basis,
    [door.width, door.height, door.thickness, FRONT_DENSITY],
    (w = 0, h = 0, thickness = 0, density = 0) => panelMass(w * h, thickness, density),
  )
}

/** What runners, boxes and fronts weigh differs too much to guess. */
function drawersMass(unit: Unit): Figure {
  return sum(unit.drawers.map((drawer) => drawer.mass))
}
