import type { Achieved } from '../daylog/achieved'
import { type Basis, type Figure, hasValue, known, restingOn, valueOf } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Kitchen } from '../kitchen/schema'
import type { UnitId } from '../plan/types'
import { sum } from '../survey/sum'
import type { Survey } from '../survey/survey'
import type { FootPlace } from '../units/foot-name'
import type { UnitPosition } from '../units/positions'

/** One point where a unit or an appliance meets the floor. */
export interface Footing {
  readonly unit: UnitId
  /** The foot's id, or the corner's: `back-left`, `arm-left-front` … */
  readonly id: string
  /** In the unit's own frame; null while not known. */
  readonly x: number | null
  readonly y: number | null
  readonly along: Figure
  readonly floor: Figure
  /** How far outside the floor readings it stands; null when that cannot be said. */
  readonly outsideBy: number | null
}

const acrossTheUnit: Basis = { kind: 'geometry', why: 'measured across the unit from its side and back' }
const underTheFinish: Basis = { kind: 'geometry', why: 'the floor as read, and the finish to be laid on it' }
const nothing: Figure = known(0, 0, 'mm', [], acrossTheUnit)

/** Where it stands under its unit, for its name. */
export function footPlace({ width, depth }: UnitPosition, { x, y }: Footing): FootPlace {
  return { x, y, width: valueOf(width) ?? null, depth: valueOf(depth) ?? null }
}

interface Spot {
  readonly id: string
  readonly x: Figure
  readonly y: Figure
}

/** What says where the floor is under a foot. */
export interface Ground {
  readonly kitchen: Kitchen
  readonly survey: Survey
  readonly achieved: Achieved
}

/** The floor as units will stand on it: with a finish that is still to be laid everywhere, on top of that. */
export function withFinish({ floor }: Pick<Kitchen, 'floor'>, read: Figure): Figure {
  if (floor.finishWhere !== 'everywhere') return read
  return restingOn(sum('mm', underTheFinish, [read, floor.finishToCome]), [factId('floor', 'finishWhere')])
}

function footingAt(position: UnitPosition, spot: Spot, ground: Ground): Footing {
  const { survey, achieved } = ground
  const { unit } = position
  const along = sum('mm', acrossTheUnit, [position.left, spot.x])
  const out = sum('mm', acrossTheUnit, [position.out, spot.y])
  const found = achieved.floorAtFoot.get(`${unit.id}.${spot.id}`)
  return {
    unit: unit.id,
    id: spot.id,
    x: valueOf(spot.x) ?? null,
    y: valueOf(spot.y) ?? null,
    along,
    floor: found ?? withFinish(ground.kitchen, survey.floorAt(unit.wall, along, out)),
    outsideBy: found === undefined ? survey.floorOutsideBy(unit.wall, along, out) : 0,
  }
}

/** The feet of a unit on legs, or where a box without legs bears. What was found under one on the day takes the place of the surface. */
export function feetOf(position: UnitPosition, ground: Ground): readonly Footing[] {
  return position.unit.feet.map((foot) => footingAt(position, foot, ground))
}

/** The corners of a box that stands on its own bottom edges; for a unit with an arm, the arm's front corners too. */
export function cornersOf(position: UnitPosition, ground: Ground): readonly Footing[] {
  const { width, depth } = position
  const box: readonly Spot[] = [
    { id: 'back-left', x: nothing, y: nothing },
    { id: 'back-right', x: width, y: nothing },
    { id: 'front-left', x: nothing, y: depth },
    { id: 'front-right', x: width, y: depth },
  ]
  return [...box, ...armCorners(position)].map((spot) => footingAt(position, spot, ground))
}

function armCorners({ unit, width }: UnitPosition): readonly Spot[] {
  const { returnLeft, returnRight, returnDepth } = unit
  const spots: Spot[] = []
  if (hasValue(returnLeft)) {
    spots.push({ id: 'arm-left-outer', x: nothing, y: returnLeft })
    spots.push({ id: 'arm-left-inner', x: returnDepth, y: returnLeft })
  }
  if (hasValue(returnRight)) {
    const inner = sum('mm', acrossTheUnit, [width], [returnDepth])
    spots.push({ id: 'arm-right-outer', x: width, y: returnRight })
    spots.push({ id: 'arm-right-inner', x: inner, y: returnRight })
  }
  return spots
}
