import { type Basis, derive, type Figure, known } from '../figure'
import type { Unit } from '../kitchen/schema'
import { extentsOf, inUnit } from '../placing/solid'
import {
  type LegsWhileTilting,
  leastWithLegsOn,
  type StandUpChoice,
  standUpOver,
  standUpPlan,
} from '../placing/stand-up'
import { tiltFloor } from '../placing/sweep'
import { highestOf } from '../survey/extremes'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'
import type { PlacingPath, UnitPlan } from './types'

/** How a tall unit could be stood up before its own place, and how elsewhere in the room when there it cannot. */
export interface TallStandUp {
  readonly here: StandUpChoice
  /** Under the highest ceiling of the room; null where its own place will do, or nowhere will. */
  readonly elsewhere: StandUpChoice | null
  /** The least height it would need with its legs on; null where it has none, or swings on them. */
  readonly withLegsOn: Figure | null
}

/** The choice by which a spot on the floor is looked for. */
export function choiceToTry({ here, elsewhere }: TallStandUp): StandUpChoice {
  return elsewhere ?? here
}

const clearHeight: Basis = { kind: 'geometry', why: 'lowest ceiling over it, less the highest floor' }
const onTheFloor: Basis = { kind: 'geometry', why: 'the floor it sweeps while it is stood up' }
const highestReading: Basis = { kind: 'geometry', why: 'the highest of the ceiling readings' }

/**
 * How each tall unit could be stood up, from the highest floor: under the lowest ceiling over the floor in front of its
 * own place, as far out as it is long; or else somewhere under the highest ceiling that was read.
 */
export function standUps(
  units: readonly UnitPosition[],
  survey: Survey,
  highPoint: Figure,
): ReadonlyMap<string, TallStandUp> {
  const talls = units.filter((u) => u.unit.kind === 'tall')
  const above = (ceiling: Figure): Figure => sum('mm', clearHeight, [ceiling], [highPoint])
  const readings = survey.ceiling.points.map(({ z }) => z)
  const highest = readings.length === 0 ? null : above(highestOf('mm', highestReading, readings))
  return new Map(
    talls.map((u) => {
      const { height, depth, width } = u
      const out = sum('mm', onTheFloor, [u.out, depth, height])
      const ceiling = above(survey.ceilingOver(u.unit.wall, u.left, u.right, out))
      const under = (clear: Figure) =>
        standUpPlan({ height, depth, width, ceiling: clear, legs: legsWhileTilting(u) })
      const here = under(ceiling)
      const best = here.plan.fits === 'yes' || highest === null ? null : under(highest)
      const isBetter = best !== null && best.plan.fits !== 'no' && best.plan.fits !== here.plan.fits
      const withLegsOn = leastWithLegsOn({ height, depth, width, ceiling, legs: legsWhileTilting(u) })
      return [u.unit.id, { here, elsewhere: isBetter ? best : null, withLegsOn }]
    }),
  )
}

export function legsWhileTilting({ unit, width, depth }: UnitPosition): LegsWhileTilting | null {
  if (unit.stands !== 'legs') return null
  const nearest = (of: (foot: Unit['feet'][number]) => Figure): Figure =>
    derive('mm', { kind: 'geometry', why: 'the foot nearest that side' }, unit.feet.map(of), (...all) =>
      Math.min(...all),
    )
  const less = (size: Figure, at: Figure): Figure =>
    derive(
      'mm',
      { kind: 'geometry', why: 'in from the far side' },
      [size, at],
      (s, a) => (s as number) - (a as number),
    )
  return {
    shortest: unit.legs.min,
    maySwing: unit.legs.maySwing,
    inset: {
      left: nearest((f) => f.x),
      right: nearest((f) => less(width, f.x)),
      back: nearest((f) => f.y),
      front: nearest((f) => less(depth, f.y)),
    },
  }
}

/**
 * The unit as it is stood up on its way in, over the side that the floor of this room allows. The ceiling told is that
 * before its own place, as long as the one over the floor it sweeps on its way says the same of it; else that one.
 */
export function stoodUpAsChosen(
  unit: UnitPlan,
  { left, out }: Pick<UnitPosition, 'left' | 'out'>,
  tilts: ReadonlyMap<string, TallStandUp>,
  paths: readonly PlacingPath[],
  survey: Pick<Survey, 'ceilingOver'>,
  highPoint: Figure,
): UnitPlan {
  const tilt = tilts.get(unit.unit)
  const { pose } = unit
  const way = paths.find((p) => p.unit === unit.unit)?.segments.find((s) => s.kind === 'stand-up')
  if (tilt === undefined || way === undefined || pose === null) return unit
  const choice = choiceToTry(tilt)
  const reach = choice.plan.pivot === 'feet' ? way.blocks : 0
  const floor = extentsOf(tiltFloor(unit.solid, way, reach).map((p) => inUnit(pose, p)))
  const from = (side: Figure, by: number): Figure =>
    sum('mm', onTheFloor, [side, known(by, 0, 'mm', [], onTheFloor)])
  const ceiling = survey.ceilingOver(
    unit.wall,
    from(left, floor.x0),
    from(left, floor.x1),
    from(out, floor.y1),
    from(out, floor.y0),
  )
  const clear = sum('mm', clearHeight, [ceiling], [highPoint])
  const onTheWay = standUpOver(choice, way.over, clear)
  const before = standUpOver(tilt.here, way.over)
  const saysTheSame = tilt.elsewhere === null && before.fits === onTheWay.fits
  return { ...unit, standUp: saysTheSame ? before : onTheWay }
}
