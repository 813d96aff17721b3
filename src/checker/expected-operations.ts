import type { Operation } from '../core/plan/types'
import { type Case, topOf, underside, wallOf } from './case'
import type { GivenUnit } from './given'
import { timberNeeded } from './holes/timber-needed'
import { isKnown } from './measure'
import { groupOf, isCarcass, isHung, type UnitStretch } from './positions'
import { isStudWall } from './wall-make-up'

/**
 * What has to be done in this kitchen, worked out from the file: operations that must be there, and those that may be.
 * Which walls are drilled is taken from the plan's holes, which are themselves judged against the kitchen elsewhere.
 */
export interface ExpectedOperations {
  readonly required: ReadonlySet<string>
  readonly allowed: (id: string) => boolean
  /** Joints that must be there, as pairs of units in either order. */
  readonly joints: readonly (readonly [string, string])[]
}

const REGION_ASBESTOS: Readonly<Record<string, number>> = {
  uk: 2000,
  'north-america': 1990,
  continental: 2000,
}
const USUAL_ASBESTOS = 2000

/** Work on the room as a whole does no harm where no unit calls for it. */
const FOR_THE_ROOM: ReadonlySet<string> = new Set([
  'check-delivery:room',
  'isolate:room',
  'restore-supply:room',
  'strike:line',
  'read-floor:room',
  'snag:room',
])

export function expectedOperations(c: Case): ExpectedOperations {
  const required = new Set([...always(c), ...safety(c), ...walls(c), ...units(c), ...parts(c)])
  const joints = touchingPairs(c)
  return { required, joints, allowed: (id) => required.has(id) || isAllowed(c, id) || FOR_THE_ROOM.has(id) }
}

/** Where no unit is to be fitted nothing has to be made ready for one; where all of them hang the floor bears on none. */
function always(c: Case): readonly string[] {
  if (!c.given.units.some(isCarcass)) return []
  return [
    'check-delivery:room',
    'isolate:room',
    'restore-supply:room',
    'strike:line',
    ...(c.given.units.every(isHung) ? [] : ['read-floor:room']),
    'snag:room',
  ]
}

function safety(c: Case): readonly string[] {
  const { houseBuilt, gas, region, appliances } = c.given
  const before = REGION_ASBESTOS[region ?? ''] ?? USUAL_ASBESTOS
  const old = c.given.units.some(isCarcass) && (houseBuilt === null || houseBuilt < before)
  const gasWork = gas !== false && appliances.some((a) => a.fuel === 'gas' || a.fuel === 'both')
  return [...(old ? ['asbestos-check:room'] : []), ...(gasWork ? ['call-trade:gas'] : [])]
}

/** Walls that have holes which are not refused: those are drilled. */
export function drilledWalls(c: Case): ReadonlySet<string> {
  return new Set(c.plan.holes.filter((h) => h.verdict !== 'refused').map((h) => h.wall))
}

/** An island is set out on the floor: nothing of it is marked on the wall it is measured from. */
function alongWall(c: Case, wall: string): readonly GivenUnit[] {
  return c.given.units.filter((unit) => unit.wall === wall && unit.kind !== 'island')
}

function walls(c: Case): readonly string[] {
  const drilled = drilledWalls(c)
  return c.given.walls.flatMap((wall) => [
    ...(alongWall(c, wall.id).some(isCarcass) ? [`set-out-heights:${wall.id}`] : []),
    ...(alongWall(c, wall.id).length > 0 ? [`set-out-widths:${wall.id}`] : []),
    ...(drilled.has(wall.id) || wall.noggings.length > 0 ? [`trace:${wall.id}`] : []),
    ...(drilled.has(wall.id) ? [`mark-holes:${wall.id}`] : []),
    ...(drilled.has(wall.id) && isStudWall(wall) ? [`find-studs:${wall.id}`] : []),
    ...wall.noggings.map((nogging) => `fit-nogging:${wall.id}.${nogging.id}`),
  ])
}

/** `second.<unit>.<timber>-1` goes into that timber; so do holes of a cleat or a back rail. */
export function holeTimber(hole: string): string | null {
  return /^(?:second|cleat|back-rail)\.[^.]+\.(.+)-\d+$/.exec(hole)?.[1] ?? null
}

function units(c: Case): readonly string[] {
  return [
    ...c.given.units
      .filter(isCarcass)
      .flatMap((unit) => [
        ...(unit.assembled === 'built' ? [] : [`assemble:${unit.id}`]),
        ...(unit.stands === 'legs' && hasFeet(c, unit) ? [`set-legs:${unit.id}`] : []),
        ...(isHung(unit) ? hungOperations(c, unit) : standingOperations(unit)),
        ...(unit.fronts > 0 ? [`hang-fronts:${unit.id}`] : []),
      ]),
    ...c.given.rails
      .filter((rail) => rail.units.length > 0)
      .flatMap((r) => [`drill-rail:${r.id}`, `fix-rail:${r.id}`]),
  ]
}

function hungOperations(c: Case, unit: GivenUnit): readonly string[] {
  const onHangers = unit.stands === 'plates' || unit.stands === 'rail'
  const wall = wallOf(c, unit.wall)
  return [
    ...(onHangers ? [`fit-hangers:${unit.id}`] : []),
    ...(unit.stands === 'plates' || unit.stands === 'cleat'
      ? [`drill-plates:${unit.id}`, `fix-plates:${unit.id}`]
      : []),
    ...[`hang:${unit.id}`, `level:${unit.id}`],
    ...(onHangers ? [`lock:${unit.id}`] : []),
    ...(onHangers && wall !== undefined && isStudWall(wall) ? [`second-fix:${unit.id}`] : []),
    ...(onHangers && wall !== undefined && !isStudWall(wall) && hasRailZone(unit) && isScrewed(c, unit)
      ? [`screw-back:${unit.id}`]
      : []),
  ]
}

/** Nobody can wind legs whose feet are not listed. */
function hasFeet(c: Case, unit: GivenUnit): boolean {
  return (c.plan.units.find((u) => u.unit === unit.id)?.legs.length ?? 0) > 0
}

/** A hole through its back rail is there to be screwed into. */
function isScrewed(c: Case, unit: GivenUnit): boolean {
  return c.plan.holes.some(
    (h) => h.purpose === 'back-rail' && h.verdict !== 'refused' && h.for.includes(unit.id),
  )
}

/** The unit has a rail at its back that can be screwed through. */
export function hasRailZone(unit: GivenUnit): boolean {
  return [unit.bottomRail, unit.backRail].some((zone) => isKnown(zone.edge) && isKnown(zone.height))
}

function standingOperations(unit: GivenUnit): readonly string[] {
  if (groupOf(unit) === 'tall') {
    return ['stand-up', 'place', 'level', 'restrain'].map((kind) => `${kind}:${unit.id}`)
  }
  return ['place', 'level', 'fix'].map((kind) => `${kind}:${unit.id}`)
}

function parts(c: Case): readonly string[] {
  const { finishing, worktops, appliances } = c.given
  const hold = worktops.length > 0 ? ['prove:room'] : []
  return [
    ...finishing.filter((f) => f.kind === 'plinth').map((f) => `plinth:${f.id}`),
    ...finishing.filter((f) => f.kind === 'end-panel').map((f) => `panel:${f.id}`),
    ...hold,
    ...worktops.map((w) => `worktop:${w.id}`),
    ...appliances.map((a) => `connect:${a.id}`),
  ]
}

/** Parts that may be fitted as a panel or as a finish, but must be fitted once. */
export function eitherWay(c: Case): readonly (readonly string[])[] {
  return c.given.finishing
    .filter((f) => f.kind !== 'end-panel' && f.kind !== 'plinth')
    .map((f) => [`panel:${f.id}`, `finish:${f.id}`])
}

function isAllowed(c: Case, id: string): boolean {
  const [kind = '', object = ''] = id.split(':')
  const unit = c.units.get(object)?.unit
  switch (kind) {
    case 'drill-rail':
    case 'fix-rail':
      return c.given.rails.some((rail) => rail.id === object)
    case 'fit-nogging':
      return c.given.walls.some((wall) => object.startsWith(`${wall.id}.`))
    case 'panel':
    case 'finish':
      return eitherWay(c).some((ways) => ways.includes(id))
    case 'hang-fronts':
      return unit !== undefined && isCarcass(unit)
    case 'fit-hangers':
    case 'drill-plates':
    case 'fix-plates':
      // How it hangs is not known: whatever will do for a hung unit.
      return unit !== undefined && isHung(unit) && unit.stands === null
    case 'lock':
    case 'second-fix':
    case 'screw-back':
      return unit !== undefined && isHung(unit)
    case 'set-out-heights':
    case 'trace':
    case 'find-studs':
    case 'mark-holes':
      return c.room.frames.has(object)
    case 'prove':
      return object === 'room'
    case 'join':
      return isJoint(c, object)
    default:
      return false
  }
}

/** Sides that touch, by their places on one wall: carcasses are screwed side to side, and to the side of a tall. */
function touchingPairs(c: Case): readonly (readonly [string, string])[] {
  const units = [...c.units.values()].filter((u) => isCarcass(u.unit) && u.unit.kind !== 'island')
  return units.flatMap((a) =>
    units.filter((b) => touchesRight(c, a, b)).map((b) => [a.unit.id, b.unit.id] as const),
  )
}

const isTall = (unit: GivenUnit): boolean => groupOf(unit) === 'tall'

/** Screwed side to side: both hung or both standing, or one of them a tall, which reaches from bases to wall units. */
function mayJoin(a: GivenUnit, b: GivenUnit): boolean {
  return isHung(a) === isHung(b) || isTall(a) || isTall(b)
}

/** b stands with its left side at a's right side, at one height, their backs on one line. */
function touchesRight(c: Case, a: UnitStretch, b: UnitStretch): boolean {
  if (a.wall !== b.wall || a.unit.id === b.unit.id || !mayJoin(a.unit, b.unit)) return false
  if (isHung(a.unit) !== isHung(b.unit) && !overlapInHeight(c, a.unit, b.unit)) return false
  if (a.right.value === null || b.left.value === null || Math.abs(a.right.value - b.left.value) > 0.05)
    return false
  const back = Math.max(a.out.value ?? 0, b.out.value ?? 0)
  const deep = Number.POSITIVE_INFINITY
  const front = Math.min(
    (a.out.value ?? 0) + (a.unit.depth.value ?? deep),
    (b.out.value ?? 0) + (b.unit.depth.value ?? deep),
  )
  return front - back > 1
}

/** A wall unit over the top of a tall has no side of it to be screwed to. */
function overlapInHeight(c: Case, a: GivenUnit, b: GivenUnit): boolean {
  const ends = [underside(c, a.id), topOf(c, a), underside(c, b.id), topOf(c, b)].map((m) => m.value)
  const [au, at, bu, bt] = ends as [number | null, number | null, number | null, number | null]
  if (au === null || at === null || bu === null || bt === null) return false
  return Math.min(at, bt) - Math.max(au, bu) > 1
}

/** A joint of two carcasses; round a corner it cannot be told from one wall, so any two of a kind may be joined. */
function isJoint(c: Case, object: string): boolean {
  const both = object.split('+').map((id) => c.units.get(id)?.unit)
  const [a, b] = both
  return (
    both.length === 2 &&
    a !== undefined &&
    b !== undefined &&
    a !== b &&
    isCarcass(a) &&
    isCarcass(b) &&
    mayJoin(a, b)
  )
}

export function jointOf(op: Operation): readonly string[] | null {
  return op.id.startsWith('join:') ? op.id.slice('join:'.length).split('+') : null
}

/** Units on stud walls that too few studs stand behind: timber has to be put in for them first. */
export function timberLacking(c: Case): readonly string[] {
  return timberNeeded(c).flatMap(({ unit, purpose }) => {
    const wall = c.units.get(unit)?.wall ?? ''
    const id = `fit-nogging:${wall}.nogging-${unit}-${purpose}`
    return c.place.has(id) ? [] : [id]
  })
}

/** `fit-nogging:<wall>.nogging-<unit>…` */
export function isTimberFor(operation: string, unit: string): boolean {
  const added = operation.startsWith('fit-nogging:') ? operation.split('.nogging-')[1] : undefined
  return added !== undefined && `${added}-`.startsWith(`${unit}-`)
}
