import { hasValue } from '../figure'
import { wallKind } from '../fixings/wall-kind'
import { HUNG_KINDS } from '../kitchen/kinds'
import { compareIds } from '../kitchen/normalise'
import type { Kitchen, Unit, Wall } from '../kitchen/schema'
import type { Hole, HolePurpose, UnitId, UnitPlan, WallId } from '../plan/types'
import { remembered } from '../remember'
import { footName } from '../units/foot-name'
import type { OperationContext } from './operation-context'

/** How a unit comes to be held up, which decides what is done with it. */
export type Way = 'tall' | 'hung' | 'base' | 'island'

/** A unit that is to be fitted. Spaces for appliances are not: nothing is put up there. */
export interface FittedUnit {
  readonly id: UnitId
  readonly unit: Unit
  readonly plan: UnitPlan
  readonly name: string
  readonly way: Way
  /** For hung units, what they hang by; null for the others. */
  readonly hangs: 'plates' | 'rail' | 'back-rail-screws' | 'cleat' | 'not-said' | null
  readonly wall: WallId
  /** Has a second fixing through its rail, without which it is not secured: on stud walls, and where nobody knows. */
  readonly wantsSecondFixing: boolean
  /** The rails it hangs on, by id. */
  readonly rails: readonly string[]
}

/** The kitchen read once for all makers of operations and reasons: lists in order of ids, look-ups by id. */
export interface Job {
  readonly context: OperationContext
  readonly kitchen: Kitchen
  readonly units: readonly FittedUnit[]
  readonly unit: (id: UnitId) => FittedUnit | undefined
  readonly wall: (id: WallId) => Wall | undefined
  readonly walls: readonly Wall[]
  readonly wallName: (id: WallId) => string
  readonly name: (id: string) => string
  /** Holes made for a unit or rail, refused ones left out. */
  readonly holesFor: (id: string, ...purposes: readonly HolePurpose[]) => readonly Hole[]
  readonly holesIn: (wall: WallId) => readonly Hole[]
}

const HUNG_BY = ['plates', 'rail', 'back-rail-screws', 'cleat'] as const

const byId = <T extends { readonly id: string }>(list: readonly T[]): readonly T[] =>
  [...list].sort((a, b) => compareIds(a.id, b.id))

/** What a unit hangs by; null when it stands. A wall unit hangs even while nobody has said by what. */
export function hangsBy(unit: Pick<Unit, 'kind' | 'stands'>): FittedUnit['hangs'] {
  const said = HUNG_BY.find((way) => way === unit.stands)
  if (said !== undefined) return said
  const notSaid = unit.stands === null || unit.stands === 'nothing'
  return notSaid && HUNG_KINDS.includes(unit.kind) ? 'not-said' : null
}

export function isStudWall(wall: Pick<Wall, 'construction'> | undefined): boolean {
  return wall !== undefined && wallKind(wall) === 'studs'
}

function wayOf(unit: Unit): Way {
  if (hangsBy(unit) !== null) return 'hung'
  if (unit.kind === 'tall') return 'tall'
  return unit.kind === 'island' ? 'island' : 'base'
}

/** Whether nothing is put up there: the place of an appliance. */
function isSpace(unit: Unit): boolean {
  return unit.kind === 'appliance-space'
}

/** Which rail or unit a hole is for: the second word of its id, for a rail's holes name all its units. */
function holeOwner(hole: Hole): string {
  return hole.id.split('.')[1] ?? ''
}

/** Reads the context once. Ties and lists go by id, so that the order things were typed in changes nothing. */
export const readJob: (context: OperationContext) => Job = remembered((context: OperationContext) => {
  const { kitchen } = context
  const plans = new Map(context.units.map((plan) => [plan.unit, plan]))
  const walls = new Map(kitchen.walls.map((wall) => [wall.id, wall]))
  const frames = new Map(context.survey.frames.map((frame) => [frame.wall, frame]))
  const name = (id: string) => context.names.get(id) ?? kitchen.units.find((u) => u.id === id)?.name ?? id
  const fitted = (unit: Unit): readonly FittedUnit[] => {
    const plan = plans.get(unit.id)
    if (plan === undefined || isSpace(unit)) return []
    const wall = walls.get(unit.wall)
    const hangs = hangsBy(unit)
    return [
      {
        id: unit.id,
        unit,
        plan,
        name: name(unit.id),
        way: wayOf(unit),
        hangs,
        wall: unit.wall,
        wantsSecondFixing:
          hangs !== null && (hangs === 'back-rail-screws' || isStudWall(wall) || wall?.construction === null),
        rails: byId(kitchen.rails).flatMap((rail) => (rail.units.includes(unit.id) ? [rail.id] : [])),
      },
    ]
  }
  const units = byId(kitchen.units).flatMap(fitted)
  const unitMap = new Map(units.map((u) => [u.id, u]))
  const holes = [...context.holes].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0))
  const owned = new Map<string, Hole[]>()
  for (const hole of holes) {
    if (hole.verdict === 'refused') continue
    const owner = holeOwner(hole)
    owned.set(owner, [...(owned.get(owner) ?? []), hole])
  }
  return {
    context,
    kitchen,
    units,
    unit: (id) => unitMap.get(id),
    wall: (id) => walls.get(id),
    walls: kitchen.walls,
    wallName: (id) => frames.get(id)?.name ?? walls.get(id)?.name ?? `wall ${id}`,
    name,
    holesFor: (id, ...purposes) => (owned.get(id) ?? []).filter((hole) => purposes.includes(hole.purpose)),
    holesIn: (wall) => holes.filter((hole) => hole.wall === wall),
  }
})

/** A place given as "unit.foot", by the name of its unit; any other is left as it is. */
export function placeName(job: Job, where: string): string {
  const [unit = '', foot] = where.split('.')
  return foot === undefined || job.unit(unit) === undefined
    ? where
    : `the ${footName(foot)} ${job.unit(unit)?.unit.stands === 'legs' ? 'foot' : 'corner'} of ${job.name(unit)}`
}

/** Units and spaces of a wall from left to right; those whose place is not known last, in order of their ids. */
export function unitsAlong(job: Job, wall: WallId): readonly UnitPlan[] {
  const at = ({ left }: UnitPlan) => (hasValue(left) ? left.value : Number.POSITIVE_INFINITY)
  return job.context.units
    .filter((unit) => unit.wall === wall && unit.kind !== 'island')
    .sort((a, b) => (at(a) === at(b) ? compareIds(a.unit, b.unit) : at(a) - at(b)))
}
