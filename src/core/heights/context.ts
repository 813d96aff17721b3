import type { Achieved } from '../daylog/achieved'
import { type Basis, type Figure, known } from '../figure'
import type { Appliance, FinishingPart, Kitchen } from '../kitchen/schema'
import type { UnitId } from '../plan/types'
import type { RegionPack } from '../region/region'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'
import type { UnitPosition } from '../units/positions'
import { cornersOf, type Footing, feetOf, type Ground, withFinish } from './footings'
import { type GroupedUnit, groupUnits, type HeightGroup } from './groups'

/** A unit that stands on the floor, and where it meets it. */
export interface StandingUnit extends GroupedUnit {
  readonly on: 'legs' | 'its-corners'
  readonly footings: readonly Footing[]
}

/** A space in which an appliance stands on the floor. */
export interface Bay {
  readonly position: UnitPosition
  readonly appliance: Appliance | null
  /** Whether it is under a worktop, so that the height of the base units bounds it. */
  readonly underWorktop: boolean
  readonly corners: readonly Footing[]
}

/** All that the demands on heights are read from. */
export interface HeightsContext {
  readonly kitchen: Kitchen
  readonly survey: Survey
  readonly region: RegionPack | null
  readonly achieved: Achieved
  readonly positions: readonly UnitPosition[]
  readonly units: readonly GroupedUnit[]
  readonly standing: readonly StandingUnit[]
  readonly bays: readonly Bay[]
  /** The lowest ceiling over each unit that hangs or is tall, from the wall out to its front. */
  readonly ceilings: ReadonlyMap<UnitId, Figure>
  readonly nameOf: (unit: UnitId) => string
}

export function heightsContext(
  kitchen: Kitchen,
  survey: Survey,
  positions: readonly UnitPosition[],
  region: RegionPack | null,
  achieved: Achieved,
): HeightsContext {
  const units = groupUnits(positions)
  const ground = { kitchen, survey, achieved }
  const names = new Map(positions.map(({ unit, name }) => [unit.id, name]))
  return {
    kitchen,
    survey,
    region,
    achieved,
    positions,
    units,
    standing: units.flatMap((unit) => standingUnit(unit, ground)),
    bays: positions.flatMap((position) => bayOf(position, ground)),
    ceilings: new Map(
      units
        .filter(({ group }) => group !== 'base')
        .map(({ id, position }): [UnitId, Figure] => [id, ceilingOver(survey, position)]),
    ),
    nameOf: (unit) => names.get(unit) ?? unit,
  }
}

const underTheCeiling: Basis = { kind: 'geometry', why: 'over the unit, from the wall out to its front' }

function ceilingOver(survey: Survey, { unit, left, right, out, depth }: UnitPosition): Figure {
  return survey.ceilingOver(unit.wall, left, right, sum('mm', underTheCeiling, [out, depth]))
}

/**
 * Ways of standing on the floor without legs: the box, its frame or its cleat is shimmed at the corners, or where its
 * feet are listed: a side with a toe space bears no further out than that.
 */
const ON_ITS_CORNERS = new Set(['shims', 'plinth-frame', 'floor-cleat', 'nothing'])

function standingUnit(unit: GroupedUnit, ground: Ground): readonly StandingUnit[] {
  const { stands } = unit.position.unit
  if (unit.group === 'wall' || stands === null) return []
  if (stands === 'legs') {
    return [{ ...unit, on: 'legs', footings: feetOf(unit.position, ground) }]
  }
  if (!ON_ITS_CORNERS.has(stands)) return []
  const { position } = unit
  const bearing = position.unit.feet.length > 0 ? feetOf(position, ground) : cornersOf(position, ground)
  return [{ ...unit, on: 'its-corners', footings: bearing }]
}

/** Appliances that go under a worktop as a rule, whether or not a worktop is said to lie over their space. */
const UNDER_WORKTOPS = new Set(['dishwasher', 'washing-machine', 'oven'])

function bayOf(position: UnitPosition, ground: Ground): readonly Bay[] {
  const { unit } = position
  const { kitchen } = ground
  if (unit.kind !== 'appliance-space') return []
  const appliance = kitchen.appliances.find(({ id }) => id === unit.applianceBay) ?? null
  const covered = kitchen.worktops.some(({ over }) => over.includes(unit.id))
  const underWorktop = covered || (appliance !== null && UNDER_WORKTOPS.has(appliance.kind))
  return [{ position, appliance, underWorktop, corners: cornersOf(position, ground) }]
}

export function unitsIn(context: HeightsContext, group: HeightGroup): readonly GroupedUnit[] {
  return context.units.filter((unit) => unit.group === group)
}

/** The plinth in front of a unit: the first that names it. */
export function plinthOf({ kitchen }: HeightsContext, unit: UnitId): FinishingPart | undefined {
  return kitchen.finishing.find(({ kind, of }) => kind === 'plinth' && of.includes(unit))
}

const plinthLine: Basis = {
  kind: 'geometry',
  why: 'the plinth’s face, set back from the front of the carcass',
}

/** The floor at the plinth line in front of a unit: at its left end and at its right end. */
export function floorAtPlinth(
  { kitchen, survey }: HeightsContext,
  { unit, left, right, out, depth }: UnitPosition,
  setBack: Figure,
): readonly Figure[] {
  const line = sum('mm', plinthLine, [out, depth], [setBack])
  return [left, right].map((end) => withFinish(kitchen, survey.floorAt(unit.wall, end, line)))
}

/** A plinth not said to be there stands flush with the front, exactly: the edge an appliance has to come out over. */
export function setBackOf(plinth: FinishingPart | undefined): Figure {
  return plinth === undefined ? known(0, 0, 'mm', [], plinthLine) : plinth.setBack
}

/** A finish still to be laid that will lie in the bays, on top of the floor they have now; null: none there. */
export function finishInBays({
  kitchen: { floor },
}: {
  readonly kitchen: Pick<Kitchen, 'floor'>
}): Figure | null {
  return floor.finishWhere === 'bays-and-front' ? floor.finishToCome : null
}
