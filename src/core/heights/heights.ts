import type { Achieved } from '../daylog/achieved'
import { type Figure, hasValue } from '../figure'
import type { HeightName } from '../kitchen/kinds'
import type { Kitchen } from '../kitchen/schema'
import type {
  Finding,
  FloorSurface,
  Heights,
  HeightValue,
  HeightVariable,
  LegPlan,
  ShimPlan,
  UnitId,
  UnitPlan,
} from '../plan/types'
import type { RegionPack } from '../region/region'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'
import { type Chosen, chooseHeights } from './choose'
import { componentsOf } from './components'
import { type HeightsContext, heightsContext } from './context'
import { networkOfDemands } from './demand-network'
import { demandsOn } from './demands/index'
import {
  clashes,
  givenUpFindings,
  hookOnFindings,
  legFindings,
  marginalHeights,
  outsideReadings,
  unknownDemands,
  wishesFromBareFloor,
} from './findings'
import { floorUnder } from './floor-under'
import { hookingOn } from './hooking-on'
import { type Kept, keepWhatHolds } from './keep'
import { legsNearEnd } from './leg-near-end'
import { legsOf } from './legs'
import { type Settled, settle } from './settled'
import { setsDown, shimsOf } from './shims'
import { type HeightOf, undersidesOf } from './undersides'
import { unmetOf } from './unmet'

/** The heights of the kitchen, and what follows from them for every unit. Heights re the line, mm. */
export interface HeightsWorkedOut {
  readonly heights: Heights
  readonly undersides: ReadonlyMap<UnitId, Figure>
  readonly legs: ReadonlyMap<UnitId, readonly LegPlan[]>
  readonly shims: ReadonlyMap<UnitId, readonly ShimPlan[]>
  readonly highPoint: FloorSurface['highPoint']
  readonly fall: Figure
  readonly hookOn: ReadonlyMap<UnitId, UnitPlan['hookOn']>
  readonly findings: readonly Finding[]
}

const NAMES: readonly HeightName[] = [
  'base-underside',
  'base-top',
  'worktop-top',
  'wall-underside',
  'wall-top',
  'tall-underside',
  'tall-top',
]

/**
 * Chooses every height once for the whole kitchen: gathers what demands something of it, keeps what can hold together,
 * and sets each height away from the ends of the room it has. What stands already is not chosen any more; what rests on
 * something not known is unknown; what cannot be met is said, and stands among the unmet.
 */
export function workOutHeights(
  kitchen: Kitchen,
  survey: Survey,
  positions: { readonly units: readonly UnitPosition[] },
  region: RegionPack | null,
  achieved: Achieved,
): HeightsWorkedOut {
  const context = heightsContext(kitchen, survey, positions.units, region, achieved)
  const demands = demandsOn(context)
  const settled = settle(demands)
  const kept = keepWhatHolds(demands, settled)
  const components = componentsOf(demands, settled)
  const chosen = chooseHeights(components, networkOfDemands(kept.demands), settled, setsDown(context))
  const heightOf: HeightOf = (variable) => settled.heights.get(variable) ?? chosen.get(variable)?.height
  const heights: Heights = {
    demands,
    values: valuesOf(settled, chosen),
    conflicts: kept.conflicts,
    unmet: unmetOf(demands, kept, heightOf),
  }
  return { heights, ...whatFollows(context, heights, kept, heightOf) }
}

function whatFollows(context: HeightsContext, heights: Heights, kept: Kept, heightOf: HeightOf) {
  const undersides = undersidesOf(context, heightOf)
  const legs = legsOf(context, undersides)
  const shims = shimsOf(context, undersides)
  const hookOn = hookingOn(context, undersides)
  const marginal = marginalHeights(heights.values, heights.demands)
  const findings = [
    ...unknownDemands(context, heights.demands),
    ...wishesFromBareFloor(context),
    ...clashes(heights.conflicts, heights.demands),
    ...givenUpFindings(kept),
    ...marginal,
    ...legFindings(context, legs),
    ...legsNearEnd(context, legs, new Set(marginal.flatMap(({ about }) => about))),
    ...outsideReadings(context),
    ...hookOnFindings(context, hookOn, undersides),
  ]
  return { undersides, legs, shims, hookOn, ...floorUnder(context), findings }
}

function valuesOf(settled: Settled, chosen: ReadonlyMap<HeightVariable, Chosen>): readonly HeightValue[] {
  return NAMES.flatMap((of): HeightValue[] => {
    const stands = settled.heights.get(of)
    if (stands !== undefined) return [standing(of, stands, settled.by.get(of) ?? [])]
    const choice = chosen.get(of)
    return choice === undefined ? [] : [{ of, ...choice, achieved: false }]
  })
}

function standing(of: HeightName, height: Figure, by: readonly string[]): HeightValue {
  const [lowest, highest] = hasValue(height)
    ? [height.value - height.pm, height.value + height.pm]
    : [null, null]
  return { of, height, lowest, highest, lowestBy: by, highestBy: by, marginal: false, achieved: true }
}
