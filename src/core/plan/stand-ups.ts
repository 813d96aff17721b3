import { derive, type Figure, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Unit } from '../kitchen/schema'
import { type LegsWhileTilting, type StandUpChoice, standUpOver, standUpPlan } from '../placing/stand-up'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'
import type { PlacingPath, UnitPlan } from './types'

/** How each tall unit could be stood up, under the lowest ceiling over its wall and from the highest floor. */
export function standUps(
  units: readonly UnitPosition[],
  survey: Survey,
  highPoint: Figure,
): ReadonlyMap<string, StandUpChoice> {
  const talls = units.filter((u) => u.unit.kind === 'tall')
  return new Map(
    talls.map((u) => {
      const over = survey.frame(u.unit.wall)?.ceiling ?? unknown('mm', [factId('walls', u.unit.wall)])
      const ceiling = derive(
        'mm',
        { kind: 'geometry', why: 'lowest ceiling over its wall, less the highest floor' },
        [over, highPoint],
        (top, floor) => (top as number) - (floor as number),
      )
      const { height, depth, width } = u
      return [u.unit.id, standUpPlan({ height, depth, width, ceiling, legs: legsWhileTilting(u) })]
    }),
  )
}

function legsWhileTilting({ unit, width, depth }: UnitPosition): LegsWhileTilting | null {
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

/** The unit stood up over the side that the floor of this room allows, where that is not the one the ceiling favours. */
export function stoodUpAsChosen(
  unit: UnitPlan,
  tilts: ReadonlyMap<string, StandUpChoice>,
  paths: readonly PlacingPath[],
): UnitPlan {
  const tilt = tilts.get(unit.unit)
  const way = paths.find((p) => p.unit === unit.unit)?.segments.find((s) => s.kind === 'stand-up')
  return tilt === undefined || way === undefined ? unit : { ...unit, standUp: standUpOver(tilt, way.over) }
}
