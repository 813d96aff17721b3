import type { Achieved } from '../daylog/achieved'
import { workOutFixings } from '../fixings/fixings'
import { workOutHeights } from '../heights/heights'
import { workOutLines } from '../heights/lines'
import { bandsOfPlan, workOutBands } from '../holes/bands'
import type { Kitchen } from '../kitchen/schema'
import { liftOf } from '../lifting/lifting'
import { operationFindings } from '../operations/findings'
import type { OperationContext } from '../operations/operation-context'
import { workOutOperations } from '../operations/operations'
import { arrange } from '../order/arrange'
import { workOutReasons } from '../order/reasons'
import { answerWishes, lateWishes } from '../order/wishes'
import type { RegionPack } from '../region/region'
import { err, ok, type Result } from '../result'
import { RULES } from '../rules'
import { findingsOf } from '../rules/rule'
import { workOutSurvey } from '../survey/survey'
import { unitNames } from '../units/names'
import { workOutPositions } from '../units/positions'
import { bringIn } from './bring-in'
import { fittedParts } from './fitted-parts'
import { generalFindings } from './general-findings'
import { withHoldPoints } from './hold-points'
import { measureNext } from './measure-next'
import { namesOf } from './names-of'
import { obstacles } from './obstacles'
import { siteOf } from './site'
import { standUps } from './stand-ups'
import type { Finding, NoPlan, Operation, Plan } from './types'
import { type UnitAnswers, unitPlan } from './unit-plans'
import { wallThings } from './wall-things'
import { workPlaces } from './work-places'

/** Raised whenever a rule or a figure changes, so that a sheet printed under other rules can be told apart. */
export const RULES_VERSION = '1'

/** What a plan is made of: facts, the day so far, the region's data, and the stamp over all of it. */
export interface PlanInput {
  readonly kitchen: Kitchen
  readonly achieved: Achieved
  readonly region: RegionPack | null
  readonly hash: string
}

/**
 * The plan of a kitchen: survey, heights, fixings, lifts, the ways in, the work and its order, one after the other,
 * each from what stands before it. Pure: the same input gives the same plan to the last byte. No ways out are worked
 * out here; a remedy is found by planning again.
 */
export function plan({ kitchen, achieved, region, hash }: PlanInput): Result<Plan, NoPlan> {
  const survey = workOutSurvey(kitchen, region)
  const positions = workOutPositions(kitchen, survey)
  const heights = workOutHeights(kitchen, survey, positions, region, achieved)
  const bands = workOutBands(kitchen, survey, region)
  const fixings = workOutFixings(kitchen, survey, positions, heights, bands, region)
  const floor = heights.highPoint.z
  const lifts = positions.units.map((p) => {
    const underside = heights.undersides.get(p.unit.id)
    const setDown = underside === undefined ? undefined : { underside, floor }
    return { unit: p.unit.id, ...liftOf(p, kitchen, region, setDown) }
  })
  const tilts = standUps(positions.units, survey, heights.highPoint.z)
  const answers: UnitAnswers = {
    survey,
    undersides: heights.undersides,
    legs: heights.legs,
    shims: heights.shims,
    lifts: new Map(lifts.map((l) => [l.unit, l.lift])),
    holding: fixings.holding,
    hookOn: heights.hookOn,
    standUps: tilts,
    achieved,
  }
  const standing = positions.units.map((p) => unitPlan(p, answers))
  const fixed = obstacles(kitchen, survey)
  const entry = bringIn(kitchen, survey, positions.units, standing, fixed, tilts, heights.highPoint.z)
  const { units } = entry
  const { lines, marks } = workOutLines(
    kitchen,
    survey,
    positions,
    heights.heights,
    fixings.rails,
    fixings.holes,
    heights.undersides,
  )

  const context: OperationContext = {
    kitchen,
    region,
    survey,
    floor: { highPoint: heights.highPoint, fall: heights.fall },
    names: unitNames(kitchen),
    heights: heights.heights,
    units,
    parts: positions.parts,
    rails: fixings.rails,
    holes: fixings.holes,
    bands: bandsOfPlan(bands, fixings.holes),
    lines,
    marks,
    paths: entry.paths,
    neededNoggings: fixings.neededNoggings,
    achieved,
  }
  const operations = workOutOperations(context)
  const ruled = (order: readonly Operation[]) => {
    const site = siteOf(context, survey, positions.units, fixed, order)
    return RULES.flatMap((rule) => findingsOf(rule, site))
  }
  const reasons = workOutReasons(context, operations)
  const wishes = answerWishes(kitchen, operations, reasons)
  const findings = [
    ...survey.findings,
    ...positions.findings,
    ...heights.findings,
    ...bands.findings,
    ...fixings.findings,
    ...lifts.flatMap((l) => l.findings),
    ...entry.findings,
    ...operationFindings(context),
    ...wishes.findings,
    ...generalFindings(kitchen, region, units, fixings.holes),
  ]
  const all = [...reasons, ...wishes.reasons]
  const trapped = entry.trapped
  if (trapped.length > 0 || wishes.conflicts.length > 0) {
    return err({
      kind: 'no-order',
      conflicts: wishes.conflicts,
      repairs: wishes.repairs,
      loops: [],
      trapped,
      reasons: all,
      findings: sorted([...findings, ...ruled([])]),
    })
  }
  const arranged = arrange({
    operations,
    reasons: all,
    places: workPlaces(operations, units, survey.frames),
    overridden: new Set(kitchen.wishes.overrides.map((o) => o.arc)),
    helperIsCalled: kitchen.crew.people.filter((p) => p.alwaysThere).length < 2,
    kept: kitchen.keptOrder,
  })
  if (!arranged.ok) {
    const loops = arranged.error.map((loop) => loop.reasons)
    return err({
      kind: 'no-order',
      conflicts: [],
      repairs: [],
      loops,
      trapped,
      reasons: loops.flat(),
      findings: sorted([...findings, ...ruled([])]),
    })
  }
  const byId = new Map(operations.map((o) => [o.id, o]))
  const order = arranged.value.order.flatMap((id) => byId.get(id) ?? [])
  const found = sorted([...findings, ...ruled(order), ...lateWishes(arranged.value.late, all)])
  const made: Omit<Plan, 'measureNext' | 'changes'> = {
    stamp: { hash, rules: RULES_VERSION, region: region?.id ?? null },
    name: kitchen.name,
    demo: kitchen.demo,
    walls: survey.frames,
    floor: {
      points: survey.points,
      triangles: survey.triangles,
      plane: survey.plane,
      highPoint: heights.highPoint,
      fall: heights.fall,
    },
    heights: heights.heights,
    lines,
    marks,
    units,
    rails: fixings.rails,
    bands: context.bands,
    holes: fixings.holes,
    obstacles: fixed,
    wallThings: wallThings(kitchen, survey),
    parts: fittedParts({ kitchen, survey, parts: positions.parts, units, heights: heights.heights }),
    paths: entry.paths,
    operations: withHoldPoints(order, found, fixings.holes),
    reasons: all,
    order: arranged.value.report,
    findings: found,
  }
  return ok({ ...made, measureNext: measureNext(made, namesOf(kitchen)), changes: [] })
}

/** Findings once each, in order of their ids. */
function sorted(findings: readonly Finding[]): readonly Finding[] {
  const byId = new Map(findings.map((f) => [f.id, f]))
  return [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
}
