import { derive, type Figure, hasValue } from '../figure'
import { bottomRailOf } from '../fixings/rail-middle'
import { throughRail } from '../fixings/stand-off'
import type { Message } from '../message'
import type { Hole, NamedFigure } from '../plan/types'
import { backOut } from '../units/positions'
import type { FittedUnit } from './job'
import { shown, toldFigure } from './make'

/** Holes whose screws go through a rail of the unit itself. */
const THROUGH: readonly Hole['purpose'][] = ['second-fixing', 'back-rail']

export function goesThrough(hole: Pick<Hole, 'purpose' | 'throughRail'>): boolean {
  return THROUGH.includes(hole.purpose) || hole.throughRail === true
}

/** Where a hole in the wall comes inside the unit that stands or hangs in front of it. */
export interface InsideUnit {
  /** From the inside of its left side; while its board is not known, from the outside of it. */
  readonly across: Figure
  /** A hung unit: up from its bottom panel, inside (board not known: from its underside). Others: down from the top. */
  readonly upright: Figure
  readonly from: 'bottom' | 'top'
  /** Measured from the inside faces of its panels. */
  readonly inside: boolean
}

/** A unit hides the marks on the wall behind it: where its holes are is measured from its own panels then. */
export function insideUnit(unit: FittedUnit, hole: Pick<Hole, 'along' | 'height'>): InsideUnit {
  const { board } = unit.unit
  const { left, underside, top } = unit.plan
  const inside = hasValue(board)
  const panel = inside ? [board] : []
  const across = derive(
    'mm',
    {
      kind: 'geometry',
      why: 'the place of the hole along the wall, less the left side of the unit and its panel',
    },
    [hole.along, left, ...panel],
    (at = 0, side = 0, thick = 0) => at - side - thick,
  )
  if (unit.way !== 'hung') {
    const down = derive(
      'mm',
      { kind: 'geometry', why: 'the top of the unit, less the height of the hole' },
      [top, hole.height],
      (high = 0, at = 0) => high - at,
    )
    return { across, upright: down, from: 'top', inside }
  }
  const up = derive(
    'mm',
    { kind: 'geometry', why: 'the height of the hole, less the underside of the unit and its panel' },
    [hole.height, underside, ...panel],
    (at = 0, under = 0, thick = 0) => at - under - thick,
  )
  return { across, upright: up, from: 'bottom', inside }
}

/** What the bit goes through before the wall where a hole goes through the unit: its rail and the packing behind it. */
export function beforeTheWall(unit: FittedUnit, hole: Pick<Hole, 'purpose'>): Figure {
  const position = { unit: unit.unit, out: backOut(unit.unit) }
  const { backRail } = unit.unit
  const low = bottomRailOf(position, unit.plan.underside)
  const thickness = hole.purpose === 'second-fixing' && low !== undefined ? low.thickness : backRail.thickness
  return throughRail(position, thickness)
}

/** Where the depth stop is set on a bit that goes through the unit: depth in the wall and all before it, from the rail. */
export function stopFromRail(unit: FittedUnit, hole: Pick<Hole, 'purpose' | 'depth'>): Figure {
  return derive(
    'mm',
    { kind: 'geometry', why: 'depth in the wall, and the rail and packing in front of it' },
    [hole.depth, beforeTheWall(unit, hole)],
    (depth = 0, before = 0) => depth + before,
  )
}

const numberOf = (hole: Hole): string | number => hole.number ?? hole.id

const leftToRight = (holes: readonly Hole[]): readonly Hole[] =>
  [...holes].sort((a, b) => (a.number ?? 0) - (b.number ?? 0))

/** One sentence for each hole, from left to right: where it is, measured inside the unit. */
export function insideSentences(unit: FittedUnit, holes: readonly Hole[]): readonly Message[] {
  return leftToRight(holes).map((hole) => {
    const { across, upright, from, inside } = insideUnit(unit, hole)
    return toldFigure('drill', `${inside ? 'inside' : 'outside'}.${from}`, {
      hole: numberOf(hole),
      across,
      upright,
    })
  })
}

/** The same places as figures, and the depth stop where a hole goes through the unit. */
export function insideFigures(unit: FittedUnit, holes: readonly Hole[]): readonly NamedFigure[] {
  return holes.flatMap((hole) => {
    const { across, upright, from, inside } = insideUnit(unit, hole)
    const values = { hole: numberOf(hole), unit: unit.name }
    const up = from === 'bottom' ? 'hole-up' : 'hole-down'
    return [
      shown(`${hole.id}.in`, across, inside ? 'hole-in' : 'hole-in-outside', values),
      shown(`${hole.id}.up`, upright, inside || from === 'top' ? up : 'hole-up-outside', values),
      ...(goesThrough(hole) ? [shown(`${hole.id}.stop`, stopFromRail(unit, hole), 'hole-stop', values)] : []),
    ]
  })
}
