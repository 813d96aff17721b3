import type { Achieved } from '../daylog/achieved'
import { adjustersOf } from '../daylog/adjusters'
import { derive, type Figure } from '../figure'
import type { Survey } from '../survey/survey'
import { poseOf, type UnitPosition } from '../units/positions'
import type { TallStandUp } from './stand-ups'
import type { HoldingPlan, LegPlan, LiftPlan, ShimPlan, UnitId, UnitPlan } from './types'

/** What the parts of the core have worked out for each unit, by its id. */
export interface UnitAnswers {
  readonly survey: Survey
  readonly undersides: ReadonlyMap<UnitId, Figure>
  readonly legs: ReadonlyMap<UnitId, readonly LegPlan[]>
  readonly shims: ReadonlyMap<UnitId, readonly ShimPlan[]>
  readonly lifts: ReadonlyMap<UnitId, LiftPlan>
  readonly holding: ReadonlyMap<UnitId, HoldingPlan>
  readonly hookOn: ReadonlyMap<UnitId, UnitPlan['hookOn']>
  readonly standUps: ReadonlyMap<UnitId, TallStandUp>
  readonly achieved: Achieved
}

/** One unit as the plan shows it: its place, its legs and adjusters, its lift, what holds it. */
export function unitPlan(position: UnitPosition, answers: UnitAnswers): UnitPlan {
  const { unit } = position
  const underside = answers.undersides.get(unit.id) as Figure
  const legs = answers.legs.get(unit.id) ?? []
  const shims = answers.shims.get(unit.id)
  const state = answers.achieved.states.get(unit.id)
  const reached = answers.achieved.undersides.get(unit.id)
  return {
    unit: unit.id,
    name: position.name,
    kind: unit.kind,
    wall: unit.wall,
    left: position.left,
    right: position.right,
    width: position.width,
    height: position.height,
    depth: position.depth,
    underside,
    top: derive(
      'mm',
      { kind: 'geometry', why: 'underside and height of the carcass' },
      [underside, position.height],
      (u, h) => (u as number) + (h as number),
    ),
    stands: unit.stands,
    pose: poseOf(position, answers.survey, underside),
    solid: position.boxes ?? [],
    legs,
    ...(shims === undefined ? {} : { shims }),
    adjusters: adjustersOf(unit, legs),
    lift: answers.lifts.get(unit.id) as LiftPlan,
    holding: answers.holding.get(unit.id) ?? null,
    standUp: answers.standUps.get(unit.id)?.here.plan ?? null,
    hookOn: answers.hookOn.get(unit.id) ?? null,
    achieved:
      state === undefined && reached === undefined
        ? null
        : { underside: reached ?? underside, state: state ?? 'standing' },
  }
}
