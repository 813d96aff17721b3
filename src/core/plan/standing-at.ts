import { type Carriage, endOf, extentOf, roomPoint, startOf, travel } from './travel-path'
import type {
  FittedPart,
  HeightLine,
  Hole,
  LocalBox,
  Operation,
  PathSegment,
  Plan,
  RailPlan,
  RoomPoint,
  StandingState,
  UnitId,
  UnitPlan,
  WallId,
  WallMark,
  WallThing,
} from './types'
import { STANDING_STATES } from './types'

/** A unit in the room: where, how far it has come, and whether somebody has hands on it. */
export interface StandingUnit extends Carriage {
  readonly unit: UnitPlan
  readonly state: StandingState
  /** The operation under way acts on it. */
  readonly isInHand: boolean
  /** Somebody must not let go of it. */
  readonly isHeld: boolean
  /** Doors and drawer fronts: none yet, going on now, or on. */
  readonly fronts: 'off' | 'now' | 'on'
  /** Loose shelves: out from when it is put together or stripped to be lifted, until its fronts are hung. */
  readonly shelves: 'in' | 'out'
  /** Legs: not on yet, wound right in for lying and standing up, or at the length the plan gives them. */
  readonly legs: 'off' | 'wound-in' | 'set'
}

/** The place of a unit that isn't in it yet: its rectangle on the wall and its footprint on the floor plan. */
export interface PlaceOutline {
  readonly unit: UnitPlan
  /** Null for an island: there is no wall behind it. */
  readonly wall: {
    readonly wall: WallId
    readonly left: number
    readonly right: number
    readonly bottom: number
    readonly top: number
  } | null
  /** Corners at the unit's underside, in order round it; one ring a box of its solid. */
  readonly footprints: readonly (readonly RoomPoint[])[]
  readonly isHung: boolean
}

/** A wall plate, known by the holes it is fixed through. */
export interface StandingPlate {
  readonly plate: string
  readonly wall: WallId
  readonly holes: readonly Hole[]
  readonly isNow: boolean
}

/** All that stands, hangs and is struck in the room at one moment of the plan. Plain data: the picture draws this. */
export interface Standing {
  readonly operation: Operation | null
  readonly t: number
  readonly units: readonly StandingUnit[]
  readonly places: readonly PlaceOutline[]
  /** Places of all that is to come, while what was delivered is counted and nothing stands yet. */
  readonly planned: readonly PlaceOutline[]
  readonly lines: readonly { readonly line: HeightLine; readonly isNow: boolean }[]
  readonly marks: readonly { readonly mark: WallMark; readonly isNow: boolean }[]
  readonly holes: readonly {
    readonly hole: Hole
    readonly state: 'marked' | 'drilled'
    readonly isNow: boolean
  }[]
  readonly rails: readonly { readonly rail: RailPlan; readonly isNow: boolean }[]
  readonly plates: readonly StandingPlate[]
  /** What is in the walls: seen by the survey, or let in by an operation that is done or under way. */
  readonly wallThings: readonly { readonly thing: WallThing; readonly isNow: boolean }[]
  readonly parts: readonly { readonly part: FittedPart; readonly isNow: boolean }[]
  /** Floor nobody stands on now, one ring each, at any height. */
  readonly keepClear: readonly (readonly RoomPoint[])[]
  /** The unit a level lies on. */
  readonly levelOn: UnitId | null
  /** Cable bands are hatched; boldly where something is traced or drilled now. */
  readonly bands: { readonly isHatched: true; readonly boldOn: readonly WallId[] }
}

/** Work on a unit at the bench or on the floor, before it goes to its place. */
const BENCH: readonly string[] = ['assemble', 'set-legs', 'fit-hangers']
/** Work that only draws holes on the wall. */
const MARKING: readonly string[] = ['mark-holes', 'set-out-heights', 'set-out-widths']
/** An operation about more units than this is about the room, and no unit is singled out. */
const MOST_IN_HAND = 2
/** Room kept in front of a hung unit that isn't secured, mm: common practice, a step's length. */
const CLEAR_UNDER = 600

const isSet = (state: StandingState) => STANDING_STATES.indexOf(state) > STANDING_STATES.indexOf('carried')

/** The pieces of its path that an operation travels: standing a tall up and bringing it in may share one path. */
export function segmentsOf(plan: Plan, operation: Operation): readonly PathSegment[] {
  if (operation.path === null) return []
  const all = plan.paths[operation.path]?.segments ?? []
  const sharers = plan.operations.filter((o) => o.path === operation.path)
  const raising = sharers.find((o) => o.kind === 'stand-up')
  const cut = all.reduce((at, s, i) => (s.kind === 'stand-up' ? i + 1 : at), 0)
  if (raising === undefined || sharers.length === 1) return sharers[0]?.id === operation.id ? all : []
  if (raising.id === operation.id) return all.slice(0, cut)
  return sharers.find((o) => o.kind !== 'stand-up')?.id === operation.id ? all.slice(cut) : []
}

function unitOnPath(plan: Plan, operation: Operation): UnitId | null {
  return operation.path === null ? null : (plan.paths[operation.path]?.unit ?? null)
}

/** What is so of one unit before an operation begins. */
interface Before {
  readonly state: StandingState
  /** Where the last journey left it; null: it hasn't been brought in. */
  readonly at: Carriage | null
}

/** Reads the done operations once and says how far every unit has come. */
function before(plan: Plan, index: number): ReadonlyMap<UnitId, Before> {
  const so = new Map<UnitId, Before>(plan.units.map((u) => [u.unit, { state: 'delivered', at: null }]))
  const pose = new Map(plan.units.map((u) => [u.unit, u.pose]))
  for (const operation of plan.operations.slice(0, index)) {
    const moved = unitOnPath(plan, operation)
    const last = segmentsOf(plan, operation).at(-1)
    if (moved !== null && last !== undefined) {
      so.set(moved, { state: so.get(moved)?.state ?? 'delivered', at: endOf(last) })
    }
    for (const { unit, to } of operation.changes) {
      const final = pose.get(unit) ?? null
      const at = so.get(unit)?.at ?? (isSet(to) && final !== null ? { pose: final, tilt: null } : null)
      so.set(unit, { state: to, at })
    }
  }
  return so
}

/** Units the operation acts on, whether they are in their place yet or not. */
function unitsOf(plan: Plan, operation: Operation | null): ReadonlySet<UnitId> {
  if (operation === null) return new Set()
  const moved = unitOnPath(plan, operation)
  const named = plan.units.map((u) => u.unit).filter((u) => operation.on.includes(u))
  return new Set([
    ...(moved === null ? [] : [moved]),
    ...operation.changes.map((c) => c.unit),
    ...(named.length <= MOST_IN_HAND ? named : []),
  ])
}

/** The first pose of a unit's journey: where it waits on the floor. */
function staging(plan: Plan, unit: UnitId): Carriage | null {
  const operation = plan.operations.find(
    (o) => unitOnPath(plan, o) === unit && segmentsOf(plan, o).length > 0,
  )
  const first = operation === undefined ? undefined : segmentsOf(plan, operation)[0]
  return first === undefined ? null : startOf(first)
}

function carriageNow(plan: Plan, unit: UnitPlan, was: Before, operation: Operation | null, t: number) {
  if (unit.pose === null) return null
  if (operation === null) return was.at
  if (unitOnPath(plan, operation) === unit.unit) {
    const going = travel(segmentsOf(plan, operation), extentOf(unit.solid), t)
    if (going !== null) return going
  }
  if (was.at !== null) return was.at
  const change = operation.changes.find((c) => c.unit === unit.unit)
  if (change !== undefined && isSet(change.to)) return { pose: unit.pose, tilt: null }
  const atBench = BENCH.includes(operation.kind) && operation.on.includes(unit.unit)
  return atBench ? staging(plan, unit.unit) : null
}

function frontsOf(plan: Plan, unit: UnitId, index: number): StandingUnit['fronts'] {
  const at = plan.operations.findIndex((o) => o.kind === 'hang-fronts' && o.on.includes(unit))
  if (at < 0 || at > index) return 'off'
  return at === index ? 'now' : 'on'
}

/**
 * A unit put together here goes up without its shelves, one that came whole is stripped before it is lifted; they go back
 * in with its fronts, or at the end where it has none.
 */
function shelvesOf(plan: Plan, unit: UnitId, index: number): StandingUnit['shelves'] {
  const { operations } = plan
  const out = operations.findIndex(
    (o) => (o.kind === 'assemble' && o.on.includes(unit)) || unitOnPath(plan, o) === unit,
  )
  const fronts = operations.findIndex((o) => o.kind === 'hang-fronts' && o.on.includes(unit))
  const back = fronts < 0 ? operations.length : fronts
  return out >= 0 && out <= index && index < back ? 'out' : 'in'
}

/** Legs of a tall are wound right in before it is laid on its edge, and off where even so they are longer than the blocks. */
function legsOf(plan: Plan, unit: UnitPlan, at: Carriage, index: number): StandingUnit['legs'] {
  const operation = plan.operations[index]
  const fitted = plan.operations.findIndex((o) => o.kind === 'set-legs' && o.on.includes(unit.unit))
  if (fitted > index) return 'off'
  const isStoodUp = operation?.kind === 'stand-up' && operation.on.includes(unit.unit)
  const way = unit.standUp
  if ((at.tilt === null && !isStoodUp) || way?.pivot === 'feet') return 'set'
  if (way === null) return at.tilt === null ? 'set' : 'off'
  const { blocks } = way
  const isClear = (min: number) => blocks.state !== 'unknown' && min <= blocks.value
  return unit.legs.every((l) => l.min.state !== 'unknown' && isClear(l.min.value)) ? 'wound-in' : 'off'
}

function standingUnits(
  plan: Plan,
  index: number,
  t: number,
  so: ReadonlyMap<UnitId, Before>,
): readonly StandingUnit[] {
  const operation = plan.operations[index] ?? null
  const inHand = unitsOf(plan, operation)
  return plan.units.flatMap((unit) => {
    const was = so.get(unit.unit) ?? { state: 'delivered', at: null }
    const at = carriageNow(plan, unit, was, operation, t)
    if (at === null) return []
    const change = operation?.changes.find((c) => c.unit === unit.unit)
    const state = change !== undefined && t >= 1 ? change.to : (change?.from ?? was.state)
    const isLoose = state === 'carried' || state === 'held' || state === 'hooked'
    return [
      {
        ...at,
        unit,
        state,
        isInHand: inHand.has(unit.unit),
        isHeld: isLoose || operation?.holding.includes(unit.unit) === true,
        fronts: frontsOf(plan, unit.unit, index),
        shelves: shelvesOf(plan, unit.unit, index),
        legs: legsOf(plan, unit, at, index),
      },
    ]
  })
}

function ring(at: Carriage, box: LocalBox, whole: readonly LocalBox[]): readonly RoomPoint[] {
  const extent = extentOf(whole)
  const corners = [
    [box.x0, box.y0],
    [box.x1, box.y0],
    [box.x1, box.y1],
    [box.x0, box.y1],
  ] as const
  return corners.map(([x, y]) => roomPoint(at, extent, { x, y, z: box.z0 }))
}

const isHung = (unit: UnitPlan) =>
  unit.stands === 'plates' ||
  unit.stands === 'rail' ||
  unit.stands === 'back-rail-screws' ||
  unit.stands === 'cleat'

function placeOf(unit: UnitPlan): PlaceOutline | null {
  const { pose, solid } = unit
  if (pose === null || solid.length === 0) return null
  const { left, right, underside, top } = unit
  const onWall =
    unit.kind !== 'island' &&
    left.state !== 'unknown' &&
    right.state !== 'unknown' &&
    underside.state !== 'unknown' &&
    top.state !== 'unknown'
      ? { wall: unit.wall, left: left.value, right: right.value, bottom: underside.value, top: top.value }
      : null
  const at = { pose, tilt: null }
  return { unit, wall: onWall, footprints: solid.map((b) => ring(at, b, solid)), isHung: isHung(unit) }
}

/** Places of the units this operation brings in, or prepares the wall for. */
function places(plan: Plan, operation: Operation | null, so: ReadonlyMap<UnitId, Before>) {
  if (operation === null || BENCH.includes(operation.kind)) return []
  const moved = unitOnPath(plan, operation)
  const wanted = unitsOf(plan, operation)
  return plan.units.flatMap((u) => {
    const goes = u.unit === moved || (wanted.has(u.unit) && (so.get(u.unit)?.at ?? null) === null)
    const place = goes ? placeOf(u) : null
    return place === null ? [] : [place]
  })
}

/** While the delivery is checked: where each of the units on the list is going to be. */
function planned(plan: Plan, operation: Operation | null): readonly PlaceOutline[] {
  if (operation?.kind !== 'check-delivery') return []
  return plan.units.flatMap((u) => placeOf(u) ?? [])
}

/** Things that appear with an operation and stay: those of done ones, and those of the one under way. */
function appeared<T>(
  plan: Plan,
  index: number,
  all: readonly T[],
  idOf: (thing: T) => string,
  namedBy: (operation: Operation) => readonly string[],
): readonly { readonly thing: T; readonly isNow: boolean }[] {
  const done = new Set(plan.operations.slice(0, Math.max(0, index)).flatMap(namedBy))
  const operation = plan.operations[index]
  const now = new Set(operation === undefined ? [] : namedBy(operation))
  return all
    .filter((thing) => done.has(idOf(thing)) || now.has(idOf(thing)))
    .map((thing) => ({ thing, isNow: now.has(idOf(thing)) }))
}

/** A hole of the operation under way is a mark until it is done. */
function holesAt(plan: Plan, index: number, t: number): Standing['holes'] {
  const marked = appeared(
    plan,
    index,
    plan.holes,
    (h) => h.id,
    (o) => o.holes,
  )
  const drilled = new Map(
    appeared(
      plan,
      index,
      plan.holes,
      (h) => h.id,
      (o) => (MARKING.includes(o.kind) ? [] : o.holes),
    ).map(({ thing, isNow }) => [thing.id, isNow]),
  )
  const struckOff = refusedAt(plan, index).filter(({ hole }) => !marked.some((m) => m.thing === hole))
  return [
    ...struckOff,
    ...marked.map(({ thing: hole, isNow }) => {
      const isDone = drilled.get(hole.id) === false || t >= 1
      const isDrilled = drilled.has(hole.id) && isDone && hole.verdict !== 'refused'
      return { hole, state: isDrilled ? ('drilled' as const) : ('marked' as const), isNow }
    }),
  ]
}

/** Places no hole goes: nobody drills them, so they are in no operation; they are struck off as their wall is marked. */
function refusedAt(plan: Plan, index: number): Standing['holes'] {
  return plan.holes
    .filter((hole) => hole.verdict === 'refused')
    .flatMap((hole) => {
      const at = plan.operations.findIndex((o) => o.kind === 'mark-holes' && o.on.includes(hole.wall))
      return at < 0 || at > index ? [] : [{ hole, state: 'marked' as const, isNow: at === index }]
    })
}

/** `plate.<unit>.<side>` of a plate hole's id; its last word only numbers the holes of one plate. */
const plateOf = (hole: Hole) => hole.id.split('.').slice(0, 3).join('.')

function platesAt(plan: Plan, index: number): readonly StandingPlate[] {
  const fixing = (o: Operation) => (o.kind === 'fix-plates' ? o.on : [])
  const plates = new Map<string, Hole[]>()
  for (const hole of plan.holes) {
    if (hole.purpose !== 'plate' || hole.verdict === 'refused') continue
    plates.set(plateOf(hole), [...(plates.get(plateOf(hole)) ?? []), hole])
  }
  const all = [...plates].map(([plate, holes]) => ({ plate, holes }))
  return appeared(plan, index, all, (p) => p.plate.split('.')[1] ?? '', fixing).flatMap(
    ({ thing, isNow }) => {
      const wall = thing.holes[0]?.wall
      return wall === undefined ? [] : [{ plate: thing.plate, wall, holes: thing.holes, isNow }]
    },
  )
}

/** Noggings that an operation lets in aren't there before it; everything else in the walls is. */
function wallThingsAt(plan: Plan, index: number): Standing['wallThings'] {
  const isFitted = (o: Operation, thing: WallThing) =>
    o.kind === 'fit-nogging' && (o.on.includes(thing.id) || o.on.includes(`${thing.wall}.${thing.id}`))
  return (plan.wallThings ?? []).flatMap((thing) => {
    const at = plan.operations.findIndex((o) => isFitted(o, thing))
    return at > index ? [] : [{ thing, isNow: at >= 0 && at === index }]
  })
}

/** Fronts go on with their unit's own operation, every other part with the operation that names it. */
function partsAt(plan: Plan, index: number, units: readonly StandingUnit[]): Standing['parts'] {
  const fronts = (plan.parts ?? []).flatMap((part) => {
    const of = part.kind === 'front' ? units.find((u) => part.of.includes(u.unit.unit)) : undefined
    return of === undefined || of.fronts === 'off' ? [] : [{ part, isNow: of.fronts === 'now' }]
  })
  const others = (plan.parts ?? []).filter((p) => p.kind !== 'front')
  const shown = appeared(
    plan,
    index,
    others,
    (p) => p.part,
    (o) => o.on,
  )
  return [...fronts, ...shown.map(({ thing, isNow }) => ({ part: thing, isNow }))]
}

/** The floor rectangle, square to a unit's place, that holds every given point. */
function squareRing(at: Carriage, points: readonly RoomPoint[]): readonly RoomPoint[] {
  const { pose } = at
  const yaw = (pose.yaw * Math.PI) / 180
  const c = Math.cos(yaw)
  const s = Math.sin(yaw)
  const xs = points.map((p) => (p.x - pose.x) * c + (p.y - pose.y) * s)
  const ys = points.map((p) => (p.x - pose.x) * s - (p.y - pose.y) * c)
  const z = Math.min(...points.map((p) => p.z))
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const corner = (x: number, y: number) => ({ x: pose.x + x * c + y * s, y: pose.y + x * s - y * c, z })
  return [corner(x0, y0), corner(x1, y0), corner(x1, y1), corner(x0, y1)]
}

/** Every corner of the unit at one moment of a journey. */
function corners(unit: UnitPlan, at: Carriage): readonly RoomPoint[] {
  const extent = extentOf(unit.solid)
  return unit.solid.flatMap((b) =>
    [b.z0, b.z1].flatMap((z) =>
      [
        [b.x0, b.y0],
        [b.x1, b.y0],
        [b.x1, b.y1],
        [b.x0, b.y1],
      ].map(([x = 0, y = 0]) => roomPoint(at, extent, { x, y, z })),
    ),
  )
}

/**
 * The floor the journey of a unit passes over, and the floor under a hung one that isn't secured. While a tall is being
 * raised that includes all it could fall on: its own length.
 */
function keepClear(
  plan: Plan,
  operation: Operation | null,
  units: readonly StandingUnit[],
): readonly (readonly RoomPoint[])[] {
  if (operation === null) return []
  const moved = unitOnPath(plan, operation)
  return units.flatMap((standing) => {
    const { unit } = standing
    const last = { pose: unit.pose ?? standing.pose, tilt: null }
    if (unit.unit === moved) {
      const steps = segmentsOf(plan, operation).flatMap((s) => [startOf(s), endOf(s)])
      const points = steps.flatMap((at) => corners(unit, at))
      return points.length === 0 ? [] : [squareRing(last, points)]
    }
    if (!standing.isHeld || !isHung(unit)) return []
    const { width, depth } = extentOf(unit.solid)
    const reach = [
      { x: 0, y: 0, z: 0 },
      { x: width, y: depth + CLEAR_UNDER, z: 0 },
    ].map((p) => roomPoint(last, extentOf(unit.solid), p))
    return [squareRing(last, reach)]
  })
}

/**
 * What stands in the room while operation `index` is under way, t in 0..1 of it.
 *
 * Before the first operation (index below 0) nothing does; past the last everything does, and no operation is under
 * way. A unit whose pose isn't known isn't drawn at all, and none is shown before it is brought in, except the one in
 * hand. Whatever t is, the moving unit is on its planned path; at 1 it is exactly at the path's end.
 */
export function standingAt(plan: Plan, index: number, t: number): Standing {
  const at = Math.max(-1, Math.min(plan.operations.length, Math.floor(index)))
  const moment = Math.max(0, Math.min(1, t))
  const operation = plan.operations[at] ?? null
  const so = before(plan, Math.max(0, at))
  const units = at < 0 ? [] : standingUnits(plan, at, moment, so)
  const rails = appeared(
    plan,
    at,
    plan.rails,
    (r) => r.rail,
    (o) => (o.kind === 'drill-rail' ? [] : o.rails),
  )
  const isBold = operation !== null && (operation.kind === 'trace' || operation.holes.length > 0)
  return {
    operation,
    t: moment,
    units,
    places: places(plan, operation, so),
    planned: planned(plan, operation),
    lines: appeared(
      plan,
      at,
      plan.lines,
      (l) => l.id,
      (o) => o.lines,
    ).map(({ thing, isNow }) => ({
      line: thing,
      isNow,
    })),
    marks: appeared(
      plan,
      at,
      plan.marks,
      (m) => m.id,
      (o) => o.marks,
    ).map(({ thing, isNow }) => ({
      mark: thing,
      isNow,
    })),
    holes: holesAt(plan, at, moment),
    rails: rails.map(({ thing, isNow }) => ({ rail: thing, isNow })),
    plates: platesAt(plan, at),
    wallThings: wallThingsAt(plan, at),
    parts: partsAt(plan, at, units),
    keepClear: keepClear(plan, operation, units),
    levelOn: operation?.kind === 'level' ? (units.find((u) => u.isInHand)?.unit.unit ?? null) : null,
    bands: { isHatched: true, boldOn: isBold && operation.wall !== null ? [operation.wall] : [] },
  }
}
