import { derive, type Figure, hasValue, type InputId, sortedIds, unknown, valueOf } from '../figure'
import type { WorkedBands } from '../holes/bands'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import type { Finding, HoldingPlan, Hole, RailPlan, UnitId } from '../plan/types'
import type { RegionPack } from '../region/region'
import type { UnitPosition } from '../units/positions'
import { backRailFixings } from './back-rail-fixings'
import { baseBrackets } from './base-brackets'
import { cleatFixings } from './cleat-fixings'
import type { Drilled } from './drill'
import {
  hardware,
  hardwareFindings,
  nearBandFindings,
  refusedFindings,
  screwFindings,
  wallFindings,
} from './fixing-findings'
import { topOf } from './hanging-edge'
import { evenShares, holdingPlan, type Load, loadOf, sharesOnceSettled, unknownShares } from './holding'
import { hollowFindings } from './hollow-findings'
import { heldBy } from './hung'
import { whatCouldMoveIt } from './move-inwards'
import { type NeededNogging, neededNogging } from './needed-nogging'
import { numberHoles } from './number-holes'
import { holesInPlate, plateFixings } from './plate-fixings'
import { TWO_PLATES } from './pull-and-shear'
import { keptOf, type RailWork, railFixings } from './rail-fixings'
import { bottomRailOf } from './rail-middle'
import { type Row, spacingOf } from './row-fixings'
import { secondFixings } from './second-fixings'
import { tallRestraint } from './tall-restraint'
import { worstShare } from './tributary'
import { type SurveyForFixings, type WallWork, wallWork } from './wall-work'

/** What fixings need of the heights: the underside of every unit, re the line. */
export interface HeightsForFixings {
  readonly undersides: ReadonlyMap<UnitId, Figure>
}

export interface WorkedFixings {
  readonly rails: readonly RailPlan[]
  readonly holes: readonly Hole[]
  /** Hung units only. */
  readonly holding: ReadonlyMap<UnitId, HoldingPlan>
  /** Timber to be let in before units can be fixed. */
  readonly neededNoggings: readonly NeededNogging[]
  readonly findings: readonly Finding[]
}

/** What came of one unit or one rail. */
interface Part {
  readonly holes: readonly Drilled[]
  readonly findings: readonly Finding[]
  readonly needed: readonly NeededNogging[]
  readonly holding: readonly (readonly [UnitId, HoldingPlan])[]
}

const NOTHING: Part = { holes: [], findings: [], needed: [], holding: [] }

/**
 * Every fixing into a wall: rails, plates, cleats, screws through back rails, second fixings, brackets, restraints; each
 * hole with its screw, depth and verdict, numbered for its wall; and what is asked of the top fixings of hung units.
 */
export function workOutFixings(
  kitchen: Kitchen,
  survey: SurveyForFixings,
  positions: { readonly units: readonly UnitPosition[] },
  heights: HeightsForFixings,
  worked: Pick<WorkedBands, 'bands' | 'deep' | 'doubts'>,
  region: RegionPack | null,
): WorkedFixings {
  const works = new Map(
    kitchen.walls.map((wall) => [wall.id, wallWork(wall, kitchen, survey, worked, region)]),
  )
  const undersideOf = (p: UnitPosition) =>
    heights.undersides.get(p.unit.id) ?? unknown('mm', [factId('units', p.unit.id, 'height')])
  const context: Context = { kitchen, undersideOf, topOf: (p) => topOf(p, undersideOf(p)) }
  const onRails = kitchen.rails.flatMap((rail) => {
    const work = works.get(rail.wall)
    return work === undefined ? [] : [{ work, rail: railFixings(work, rail, positions.units, context.topOf) }]
  })
  const parts = [
    ...onRails.map(({ rail }): Part => ({ ...NOTHING, holes: rail.holes, findings: rail.findings })),
    ...onRails.map(({ work, rail }) => railHolding(work, rail, positions.units, context)),
    ...positions.units.map((p) => ofUnit(p, works.get(p.unit.wall), context)),
  ]
  const drilled = parts.flatMap((part) => part.holes)
  const numbered = new Map(numberHoles(drilled.map((d) => d.hole)).map((hole) => [hole.id, hole]))
  const holes = drilled.map((d) => ({ ...d, hole: numbered.get(d.hole.id) ?? d.hole }))
  const byUnit = new Map(positions.units.map((p) => [p.unit.id, p]))
  const holesOn = (wall: string) => holes.filter((d) => d.hole.wall === wall)
  return {
    rails: onRails.map(({ rail }) => rail.plan),
    holes: holes.map((d) => d.hole),
    holding: new Map(parts.flatMap((part) => part.holding)),
    neededNoggings: parts.flatMap((part) => part.needed),
    findings: [
      ...[...works.values()].flatMap((work) => [
        ...wallFindings(work, holesOn(work.wall.id), isFixedTo(work, positions.units)),
        ...screwFindings(work, holesOn(work.wall.id)),
        ...hollowFindings(work, survey, holesOn(work.wall.id), byUnit),
      ]),
      ...parts.flatMap((part) => part.findings),
      ...refusedFindings(holes, byUnit),
      ...nearBandFindings(holes, byUnit),
    ],
  }
}

interface Context {
  readonly kitchen: Kitchen
  readonly undersideOf: (position: UnitPosition) => Figure
  readonly topOf: (position: UnitPosition) => Figure
}

function isFixedTo({ wall }: WallWork, positions: readonly UnitPosition[]): boolean {
  return positions.some((p) => p.unit.wall === wall.id && heldBy(p.unit) !== 'not-fixed')
}

function ofUnit(position: UnitPosition, work: WallWork | undefined, context: Context): Part {
  if (work === undefined) return NOTHING
  const top = context.topOf(position)
  const held = heldBy(position.unit)
  switch (held) {
    case 'not-fixed':
      return NOTHING
    case 'not-said':
      return notSaid(position)
    case 'base-brackets':
      return { ...NOTHING, ...baseBrackets(work, position, top) }
    case 'tall-restraint':
      return { ...NOTHING, ...tallRestraint(work, position, top) }
    case 'plates':
      return together([onPlates(position, work, context), second(position, work, context)])
    case 'rail':
      return together([onRail(position, context), second(position, work, context)])
    case 'cleat':
      return together([onCleat(position, work, context), second(position, work, context)])
    case 'back-rail-screws':
      return together([onBackRail(position, work, context), secondIfLowerRail(position, work, context)])
  }
}

function together(parts: readonly Part[]): Part {
  return {
    holes: parts.flatMap((p) => p.holes),
    findings: parts.flatMap((p) => p.findings),
    needed: parts.flatMap((p) => p.needed),
    holding: parts.flatMap((p) => p.holding),
  }
}

function notSaid(position: UnitPosition): Part {
  const facts = [factId('units', position.unit.id, 'stands')]
  const say = message('fixings.stands-not-said', { unit: position.name })
  return { ...NOTHING, findings: [hardware(position, facts, say)] }
}

function second(position: UnitPosition, work: WallWork, context: Context): Part {
  if (work.kind !== 'studs') return NOTHING
  return {
    ...NOTHING,
    ...secondFixings(work, position, context.undersideOf(position), context.topOf(position)),
  }
}

/** A unit screwed through its back rail has its two fixings in timber there; a lower rail takes two more. */
function secondIfLowerRail(position: UnitPosition, work: WallWork, context: Context): Part {
  const lower = bottomRailOf(position, context.undersideOf(position))
  return lower === undefined ? NOTHING : second(position, work, context)
}

function held(
  position: UnitPosition,
  load: Load,
  shares: Parameters<typeof holdingPlan>[2],
  holes: readonly Drilled[],
  work: WallWork,
): Pick<Part, 'holding' | 'findings'> {
  const { plan, findings } = holdingPlan(position, load, shares, holes, work)
  return { holding: [[position.unit.id, plan]], findings: [...findings, ...hardwareFindings(position)] }
}

/** Height of the top row of fixings, from its holes. */
function rowHeight(holes: readonly Drilled[], missing: readonly InputId[]): Figure {
  return holes[0]?.hole.height ?? unknown('mm', missing)
}

function onPlates(position: UnitPosition, work: WallWork, context: Context): Part {
  const holes = plateFixings(work, position, context.topOf(position))
  const row = rowHeight(holes, [])
  const load = loadOf(position, context.kitchen, row, context.undersideOf(position))
  const count = derive(
    'count',
    { kind: 'geometry', why: 'holes in two plates' },
    [TWO_PLATES, holesInPlate(position)],
    (plates = 0, n = 0) => plates * Math.max(1, Math.round(n)),
  )
  const nothingBehind =
    work.kind === 'studs' && holes.some(({ hole }) => hole.into === null && hasValue(hole.height))
  const needed = nothingBehind ? [neededNogging(position, 'plate', row)] : []
  return { ...NOTHING, holes, needed, ...held(position, load, evenShares(load, count), holes, work) }
}

function onBackRail(position: UnitPosition, work: WallWork, context: Context): Part {
  const found = backRailFixings(work, position, context.topOf(position))
  const kept = keptOf(found.holes)
  const load = loadOf(position, context.kitchen, found.height, context.undersideOf(position))
  const count: Figure = {
    state: 'known',
    value: kept.length,
    pm: 0,
    unit: 'count',
    basis: { kind: 'geometry', why: 'screws through the back rail' },
    from: [],
  }
  const even = kept.length === 0 ? unknownShares(wallFacts(work)) : evenShares(load, count)
  const settled = whatDecides(work, found.holes, position)
  const result = held(position, load, sharesOnceSettled(even, settled.from, settled.missing), kept, work)
  return { ...found, ...result, findings: [...found.findings, ...result.findings] }
}

function wallFacts(work: WallWork): readonly InputId[] {
  const fact = work.kind === null ? 'construction' : 'studs'
  return [factId('walls', work.wall.id, fact)]
}

/** What decides how many fixings a row has: where the unit is, studs and noggings, and every band of its wall. */
function whatDecides(
  work: WallWork,
  holes: readonly Drilled[],
  { left, right, unit }: UnitPosition,
): { readonly from: readonly InputId[]; readonly missing: readonly InputId[] } {
  const bands = holes.map(({ hole }) =>
    whatCouldMoveIt(work, valueOf(hole.along) ?? 0, { purpose: 'rail', height: hole.height }, [-1, 1]),
  )
  const places = [left, right, unit.board, ...holes.map((d) => d.hole.along)]
  return {
    from: sortedIds([
      ...work.studs.from,
      ...work.letInFrom,
      ...bands.flatMap((b) => b.from),
      ...places.flatMap((f) => f.from),
    ]),
    missing: sortedIds([
      ...work.studs.missing,
      ...work.letInMissing,
      ...bands.flatMap((b) => b.missing),
      ...places.flatMap((f) => (f.state === 'unknown' ? f.missing : [])),
    ]),
  }
}

function onCleat(position: UnitPosition, work: WallWork, context: Context): Part {
  const cleat = cleatFixings(work, position, context.topOf(position))
  const load = loadOf(position, context.kitchen, cleat.row.holeHeight, context.undersideOf(position))
  const shares = sharesAlong(work, cleat.row, cleat.holes, position, [load])
  const result = held(position, load, shares, keptOf(cleat.holes), work)
  return { ...NOTHING, ...cleat, ...result, findings: [...cleat.findings, ...result.findings] }
}

/** The share of the worst fixing of a rail or cleat that a unit hangs near. */
function sharesAlong(
  work: WallWork,
  row: Row,
  holes: readonly Drilled[],
  position: UnitPosition,
  loads: readonly Load[],
): ReturnType<typeof evenShares> {
  const kept = keptOf(holes)
  if (kept.length === 0) return unknownShares(wallFacts(work))
  const { left, right } = position
  const span = { from: row.from, to: row.to, places: kept.map((d) => d.hole.along), left, right }
  const shares = {
    pullPerFixing: worstShare({ ...span, loads: loads.map((l) => l.pull) }),
    shearPerFixing: worstShare({ ...span, loads: loads.map((l) => l.shear) }),
  }
  const settled = whatDecides(work, holes, position)
  const spacing = work.kind === 'masonry' ? spacingOf(row.maxSpacing).from : []
  return sharesOnceSettled(shares, [...settled.from, ...spacing], settled.missing)
}

/** Units on a rail: the rail carries them all, and each is judged by the worst fixing it hangs near. */
function railHolding(
  work: WallWork,
  rail: RailWork,
  positions: readonly UnitPosition[],
  context: Context,
): Part {
  const on = positions.filter((p) => rail.plan.units.includes(p.unit.id) && heldBy(p.unit) === 'rail')
  const loads = on.map((p) => loadOf(p, context.kitchen, rail.row.holeHeight, context.undersideOf(p)))
  const parts = on.map((position, i) => {
    const shares = sharesAlong(work, rail.row, rail.holes, position, loads)
    return { ...NOTHING, ...held(position, loads[i] as Load, shares, keptOf(rail.holes), work) }
  })
  return together(parts)
}

/** A unit said to hang on a rail that no rail lists. */
function onRail(position: UnitPosition, { kitchen }: Context): Part {
  const { unit } = position
  if (kitchen.rails.some((rail) => rail.units.includes(unit.id) && rail.wall === unit.wall)) return NOTHING
  const say = message('fixings.rail-not-listed', { unit: position.name })
  return { ...NOTHING, findings: [hardware(position, ['rails'], say)] }
}
