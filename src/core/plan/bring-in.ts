import { type Figure, valueOf } from '../figure'
import { isHung } from '../fixings/hung'
import { woundDownToHookOn } from '../heights/hooking-on'
import type { Kitchen, Unit } from '../kitchen/schema'
import { message } from '../message'
import { choosePaths } from '../placing/eliminate'
import { candidatePaths, type PlacedUnit } from '../placing/paths'
import type { StandUpWay } from '../placing/placed'
import type { Survey } from '../survey/survey'
import { boxNames } from '../units/box-name'
import type { UnitPosition } from '../units/positions'
import { placingFindings, withNames } from './placing-findings'
import { roomFor } from './room'
import { standUpFindings } from './stand-up-findings'
import { choiceToTry, legsWhileTilting, stoodUpAsChosen, type TallStandUp } from './stand-ups'
import type { Finding, NoPlan, Obstacle, PlacingPath, UnitPlan } from './types'

/**
 * How deep a unit may cut into a wall where it ends up and still be brought there, so that a corner out of square does
 * not lose the whole plan. It is said as a finding of its own.
 */
const MISFIT = 40

export interface BroughtIn {
  /** The chosen path of each unit that has one, in order of their ids. */
  readonly paths: readonly PlacingPath[]
  /** The units as they are brought in: how each tall one is stood up where there is floor for it. */
  readonly units: readonly UnitPlan[]
  readonly trapped: NoPlan['trapped']
  readonly findings: readonly Finding[]
}

/** Brings every unit whose place is known into the room: its ways in, the one chosen, and what stands against it. */
export function bringIn(
  kitchen: Kitchen,
  survey: Survey,
  positions: readonly UnitPosition[],
  units: readonly UnitPlan[],
  fixed: readonly Obstacle[],
  tilts: ReadonlyMap<string, TallStandUp>,
  highPoint: Figure,
): BroughtIn {
  const placed = units.flatMap((u, i) => placedUnit(u, positions[i] as UnitPosition, tilts))
  const room = roomFor(survey, fixed, kitchen.closed === true)
  const hint = kitchen.staging === null ? null : stagingPoint(kitchen.staging, survey)
  const ways = candidatePaths(placed, room, { stagingHint: hint, misfit: MISFIT })
  const names = namesOf(kitchen, survey, positions)
  const told = (brought: readonly UnitPlan[], paths: readonly PlacingPath[]) => [
    ...placingFindings(ways, positions, names, judgedElsewhere(kitchen)),
    ...standUpFindings(brought, tilts, paths),
  ]
  const trapped = ways.trapped.map(({ unit, say }) => ({ unit, say: withNames(say, names) }))
  const free = placed.map((p) => p.unit).filter((id) => !trapped.some((t) => t.unit === id))
  const chosen = choosePaths(free, ways.candidates, [])
  if (!chosen.ok) {
    const stuck = chosen.stuck.map((s) => ({
      unit: s.unit,
      say: withNames(
        message('no-way-in-between', {
          unit: s.unit,
          others: chosen.components
            .flat()
            .map((u) => names.get(u) ?? u)
            .join(', '),
        }),
        names,
      ),
    }))
    return { paths: [], units, trapped: [...trapped, ...stuck], findings: told(units, []) }
  }
  const paths = free.flatMap((id) => chosen.chosen.get(id) ?? [])
  const brought = units.map((u, i) =>
    stoodUpAsChosen(u, positions[i] as UnitPosition, tilts, paths, survey, highPoint),
  )
  return { paths, units: brought, trapped, findings: told(brought, paths) }
}

/** What everything that can be in the way is called. */
function namesOf(
  kitchen: Kitchen,
  { frames }: Pick<Survey, 'frames'>,
  positions: readonly UnitPosition[],
): ReadonlyMap<string, string> {
  return new Map([
    ['ceiling', 'the ceiling'],
    ['floor', 'the floor'],
    ['behind', 'the wall behind it'],
    ...frames.map(({ wall, name }) => [wall, name] as const),
    ...boxNames(kitchen),
    ...positions.map(({ unit, name }) => [unit.id, name] as const),
  ])
}

const TRIM: readonly Kitchen['boxes'][number]['kind'][] = ['skirting', 'coving', 'picture-rail']

/** Boxes on the wall of a unit, and trim on any wall: rules of the trade say how deep, how far and what to do. */
function judgedElsewhere({ boxes, units }: Kitchen): (unit: string, box: string) => boolean {
  const wallOf = new Map(units.map(({ id, wall }) => [id, wall]))
  const boxOf = new Map(boxes.map((box) => [box.id, box]))
  return (unit, id) => {
    const box = boxOf.get(id)
    if (box === undefined || box.kind === 'light') return false
    return TRIM.includes(box.kind) || wallOf.get(unit) === box.wall
  }
}

function placedUnit(
  unit: UnitPlan,
  position: UnitPosition,
  tilts: ReadonlyMap<string, TallStandUp>,
): readonly PlacedUnit[] {
  const { unit: asked } = position
  if (unit.pose === null || unit.kind === 'appliance-space') return []
  const stands = tilts.get(unit.unit)
  const tilt = stands === undefined ? undefined : choiceToTry(stands)
  const base: PlacedUnit = {
    unit: unit.unit,
    kind: unit.kind,
    wall: unit.wall,
    pose: unit.pose,
    solid: unit.solid,
    hung: isHung(asked),
    hookLift: hooksOn(asked) ? hookLiftOf(unit, asked) : 0,
  }
  if (tilt === undefined || tilt.sides.length === 0) return [base]
  const leg = valueOf(asked.legs.min) ?? 0
  const onFeet = tilt.plan.pivot === 'feet'
  const blocks = onFeet ? leg : (valueOf(tilt.plan.blocks) ?? 0)
  const insets = onFeet ? insetsOf(position) : undefined
  const swung = insets === undefined ? {} : { insets }
  return [{ ...base, standUp: { sides: tilt.sides, blocks, reach: onFeet ? leg : 0, ...swung } }]
}

/** How far in from each side its feet stand; undefined where that is not known of one. */
function insetsOf(position: UnitPosition): StandUpWay['insets'] {
  const inset = legsWhileTilting(position)?.inset
  const [back, front, left, right] = (['back', 'front', 'left', 'right'] as const).map((side) =>
    inset === undefined ? undefined : valueOf(inset[side]),
  )
  if (back === undefined || front === undefined || left === undefined || right === undefined) return undefined
  return { back, front, left, right }
}

/**
 * How far it is lifted over its place; less as far as its height screws are wound down first. One that cannot be hooked on
 * is brought to its place and no higher: that it does not go on is said, and the work stops there.
 */
function hookLiftOf({ hookOn }: UnitPlan, asked: Unit): number {
  if (hookOn?.fits === 'no') return 0
  const down = woundDownToHookOn(asked, hookOn)
  const lift = valueOf(asked.hanging.hookLift) ?? 0
  return down === null ? lift : Math.max(0, lift - (valueOf(down) ?? 0))
}

/** Only what hangs on hooks is lifted over its place to go in. */
const hooksOn = ({ stands }: Unit): boolean => stands === 'plates' || stands === 'rail' || stands === 'cleat'

function stagingPoint(place: NonNullable<Kitchen['staging']>, survey: Survey) {
  const [along, out] = [valueOf(survey.along(place.wall, place.along)), valueOf(place.out)]
  return along === undefined || out === undefined ? null : survey.toRoom(place.wall, along, out)
}
