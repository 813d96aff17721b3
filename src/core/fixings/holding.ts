import { derive, type Figure, type InputId, restingOn, sortedIds, unknown } from '../figure'
import { finding } from '../holes/finding'
import type { Appliance, Kitchen } from '../kitchen/schema'
import { massesOf } from '../lifting/panel-mass'
import { message } from '../message'
import type { Finding, HoldingPlan } from '../plan/types'
import type { UnitPosition } from '../units/positions'
import { centreOut, massInUse } from './centre-of-mass'
import type { Drilled } from './drill'
import { publishedPull } from './published-pull'
import { pullOn, shareOf, weightOf } from './pull-and-shear'
import { type Capacity, capacityFacts, capacityVerdict } from './verdict'
import type { WallWork } from './wall-work'

/** What a unit asks of its top fixings, whole. */
export interface Load {
  readonly pull: Figure
  readonly shear: Figure
  readonly mass: Figure
}

/** Distance between two heights, the first above the second. */
export function above(upper: Figure, lower: Figure): Figure {
  const why = 'height of the top fixings above the underside, where the unit bears on the wall'
  return derive('mm', { kind: 'geometry', why }, [upper, lower], (a = 0, b = 0) => a - b)
}

/** What will stand in a unit: its contents, and the appliance built into it. */
function contentsOf({ unit }: UnitPosition, appliances: readonly Appliance[]): Figure {
  const appliance = appliances.find((a) => a.id === unit.applianceBay)
  if (appliance === undefined) return unit.contents
  const why = 'what will stand in it, and the appliance built into it'
  return derive('kg', { kind: 'geometry', why }, [unit.contents, appliance.mass], (a = 0, b = 0) => a + b)
}

/** Pull and shear of a hung unit with all that is to stand in it; unknown until somebody says what will. */
export function loadOf(
  position: UnitPosition,
  kitchen: Pick<Kitchen, 'appliances'>,
  rowHeight: Figure,
  underside: Figure,
): Load {
  const masses = massesOf(position)
  const contents = contentsOf(position, kitchen.appliances)
  const mass = massInUse(masses, contents)
  const weight = weightOf(mass)
  const out = centreOut(position, masses, contents)
  return { pull: pullOn(weight, out, above(rowHeight, underside)), shear: weight, mass }
}

interface Shares {
  readonly pullPerFixing: Figure
  readonly shearPerFixing: Figure
}

/** Pull and shear shared equally by so many top fixings. */
export function evenShares(load: Load, count: Figure): Shares {
  return { pullPerFixing: shareOf(load.pull, count), shearPerFixing: shareOf(load.shear, count) }
}

/** Shares that cannot be told, and what would settle them. */
export function unknownShares(missing: readonly InputId[]): Shares {
  return { pullPerFixing: unknown('N', missing), shearPerFixing: unknown('N', missing) }
}

/** Shares also rest on what decides how many fixings there are: while that is not known, neither are they. */
export function sharesOnceSettled(
  shares: Shares,
  from: readonly InputId[],
  missing: readonly InputId[],
): Shares {
  const settle = (figure: Figure): Figure => {
    const resting = restingOn(figure, from)
    if (missing.length === 0) return resting
    const already = figure.state === 'unknown' ? figure.missing : []
    const { unit, basis } = figure
    return { state: 'unknown', unit, basis, from: resting.from, missing: sortedIds([...already, ...missing]) }
  }
  return { pullPerFixing: settle(shares.pullPerFixing), shearPerFixing: settle(shares.shearPerFixing) }
}

/**
 * What is said of how a unit is held: its load, the share of its worst fixing, and the verdict against the figures that
 * were entered for that fixing.
 */
export function holdingPlan(
  position: UnitPosition,
  load: Load,
  shares: Shares,
  holes: readonly Drilled[],
  work: Pick<WallWork, 'wall' | 'site'>,
): { readonly plan: HoldingPlan; readonly findings: readonly Finding[] } {
  const screw = holes.find((d) => d.screw !== null)?.screw ?? null
  const capacity = capacityVerdict(
    shares.pullPerFixing,
    shares.shearPerFixing,
    screw,
    perHanger(position, load),
  )
  const published = publishedPull(work, holes)
  const plan: HoldingPlan = {
    pull: load.pull,
    shear: load.shear,
    ...shares,
    verdict: capacity.verdict,
    lacking: capacity.lacking,
    ...(published === null ? {} : { published }),
  }
  return { plan, findings: said(position, plan, capacity, screw?.id ?? null) }
}

/** Two hangers share the whole mass, where the unit has them and their maker has rated them. */
function perHanger(
  { unit }: UnitPosition,
  { mass }: Load,
): { readonly load: Figure; readonly rated: Figure } | null {
  if (unit.stands !== 'plates' && unit.stands !== 'rail') return null
  const why = 'the whole mass shared by two hangers'
  const load = derive('kg', { kind: 'geometry', why }, [mass], (m = 0) => m / 2)
  return { load, rated: unit.hanging.ratedPerHanger }
}

function said(
  { unit, name }: UnitPosition,
  plan: HoldingPlan,
  { verdict, used, lacking, marginal }: Capacity,
  screw: string | null,
): readonly Finding[] {
  const shared = {
    subjects: [unit.id],
    dangerous: true,
    figures: [plan.pullPerFixing, plan.shearPerFixing, ...(used === null ? [] : [used])],
    basis: plan.pull.basis,
  }
  const values = { unit: name, pull: plan.pullPerFixing, shear: plan.shearPerFixing }
  if (verdict === 'exceeds') {
    const from = screw === null ? [] : capacityFacts(screw)
    const key = used === null ? 'fixings.hanger-exceeded' : 'fixings.capacity-exceeded'
    return [
      finding({ ...shared, rule: 'capacity-exceeded', weight: 'stop', from, say: message(key, values) }),
    ]
  }
  if (verdict !== 'unknown') return []
  const key = marginal ? 'fixings.capacity-marginal' : 'fixings.no-figure-entered'
  return [
    finding({
      ...shared,
      rule: 'no-figure-entered',
      weight: 'ask',
      from: lacking,
      say: message(key, values),
      ask: message('fixings.maker-or-pull-test'),
    }),
  ]
}
