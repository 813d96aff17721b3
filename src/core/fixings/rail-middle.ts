import { derive, type Figure, hasValue } from '../figure'
import type { UnitPosition } from '../units/positions'

/** Has anybody begun to say where this rail of the unit is? Then it is used, and what is left out is asked for. */
const isEntered = (figures: readonly Figure[]): boolean => figures.some(hasValue)

export interface RailOfUnit {
  /** Middle of the rail, re the line. */
  readonly middle: Figure
  readonly thickness: Figure
}

/** The rail at the top of the back through which a unit may be screwed; undefined when none was entered. */
export function backRailOf(position: Pick<UnitPosition, 'unit'>, top: Figure): RailOfUnit | undefined {
  const { fromTop, height, thickness } = position.unit.backRail
  if (!isEntered([fromTop, height])) return undefined
  const middle = derive(
    'mm',
    { kind: 'geometry', why: 'top of the unit, and the middle of its back rail below it' },
    [top, fromTop, height],
    (at, below, tall) => (at as number) - (below as number) - (tall as number) / 2,
  )
  return { middle, thickness }
}

/** The rail low in the back that second fixings go through; undefined when none was entered. */
export function bottomRailOf(
  position: Pick<UnitPosition, 'unit'>,
  underside: Figure,
): RailOfUnit | undefined {
  const { fromBottom, height, thickness } = position.unit.bottomRail
  if (!isEntered([fromBottom, height])) return undefined
  const middle = derive(
    'mm',
    { kind: 'geometry', why: 'underside of the unit, and the middle of its lower rail above it' },
    [underside, fromBottom, height],
    (at, above, tall) => (at as number) + (above as number) + (tall as number) / 2,
  )
  return { middle, thickness }
}
