import { type Standing, type StandingUnit, segmentsOf, standingAt } from '../../../src/core/plan/standing-at'
import { type Carriage, extentOf, roomPoint, travel } from '../../../src/core/plan/travel-path'
import type { LocalBox, Operation, Plan, RoomPoint } from '../../../src/core/plan/types'
import { BACK, BACK_LET_IN, BOARD } from '../../../src/core/views/carcass'
import { holePlace } from '../../../src/core/views/hole-place'
import { type RoomShape, roomShape } from '../../../src/core/views/room-shape'
import { onWall, placedWall } from '../../../src/core/views/wall-place'

/**
 * What is asked of the pictures of one operation, worked out from the plan alone and not from what the choosing of views
 * made of it: the part in hand, its fixing points, what it will touch, and the room its way takes.
 */
export interface Asked {
  readonly id: string
  readonly kind: string
  readonly sort: Sort
  /** The wall it is about; null: none, or several. */
  readonly wall: string | null
  /** Names in the id picture that make up the part in hand. */
  readonly active: readonly string[]
  /** Too small or too thin to cover much of any picture: a plate, a rail, a filler, a plinth. */
  readonly isSmall: boolean
  /** Moments, 0..1, at which it must show: the ends of its way and half of it, or as it is done. */
  readonly moments: readonly number[]
  /** The moment at which fixing points and what it will touch must show. */
  readonly early: number
  readonly fixings: readonly Fixing[]
  readonly contacts: readonly Contact[]
  /** Corners of the part in hand all along its way. */
  readonly way: readonly RoomPoint[]
  /** Fixing points drawn, of whichever operation: no text lies on them. */
  readonly marks: readonly Fixing[]
  /** Units and boards that come into the room with it. */
  readonly newParts: readonly string[]
}
export interface Fixing {
  readonly id: string
  readonly at: RoomPoint
}
/** A flat piece of what the part meets. */
export interface Contact {
  readonly id: string
  readonly corners: readonly RoomPoint[]
}

export type Sort = 'placing' | 'fixing' | 'other'
const PLACING = [
  'stand-up',
  'place',
  'hang',
  'panel',
  'worktop',
  'plinth',
  'hang-fronts',
  'fix-rail',
  'fix-plates',
]
const FIXING = [
  'fit-nogging',
  'drill-rail',
  'drill-plates',
  'level',
  'lock',
  'join',
  'restrain',
  'fix',
  'second-fix',
  'screw-back',
]
const sortOf = (kind: string): Sort =>
  PLACING.includes(kind) ? 'placing' : FIXING.includes(kind) ? 'fixing' : 'other'

/** Above the surface that is looked for, mm, so that lines lying on it don't hide it. */
const PROUD = 6
/** Width of what is looked at beside a meeting line, mm. */
const BESIDE = 60
/** Places along a way at which its corners are taken. */
const STEPS = 12

export function askedOf(plan: Plan, index: number): Asked {
  const operation = plan.operations[index]
  if (operation === undefined) throw new Error(`no operation ${index}`)
  const room = roomShape(plan)
  const moves = operation.path !== null && segmentsOf(plan, operation).length > 0
  const early = moves ? 0 : 1
  const standing = standingAt(plan, index, early)
  const done = standingAt(plan, index, 1)
  return {
    id: operation.id,
    kind: operation.kind,
    sort: sortOf(operation.kind),
    wall: operation.wall,
    active: activeOf(standing, operation),
    isSmall: isSmall(standing, operation),
    moments: moves ? [0, 0.5, 1] : [1],
    early,
    fixings: fixingsOf(plan, standing, operation),
    contacts: contactsOf(plan, standing, room),
    way: wayOf(plan, standing, operation),
    marks: drawnHoles(plan, standing),
    newParts: newPartsOf(plan, index, done),
  }
}

const isDrawn = ({ unit }: StandingUnit) => unit.kind !== 'appliance-space' && unit.solid.length > 0

/** What somebody has hands on: fronts as they are hung, boards as they are fitted, else the unit; else a rail or plates. */
function activeOf(standing: Standing, operation: Operation): readonly string[] {
  const fronts = standing.units
    .filter((u) => u.fronts === 'now' && u.unit.solid.length === 1)
    .map((u) => `front:${u.unit.unit}`)
  const parts = standing.parts
    .filter((p) => p.isNow && p.part.pose !== null)
    .map((p) => `part:${p.part.part}`)
  const units = standing.units.filter((u) => u.isInHand && isDrawn(u)).map((u) => `unit:${u.unit.unit}`)
  const metal = [
    ...standing.rails
      .filter((r) => r.isNow && r.rail.edge.state !== 'unknown')
      .flatMap((r) => [
        `rail:${r.rail.rail}`,
        ...standing.holes
          .filter(({ hole }) => hole.purpose === 'rail' && hole.wall === r.rail.wall)
          .map(({ hole }) => `hole:${hole.id}`),
      ]),
    ...standing.plates
      .filter((p) => p.isNow)
      .flatMap((p) => [`plate:${p.plate}`, ...p.holes.map((h) => `hole:${h.id}`)]),
  ]
  if (operation.kind === 'hang-fronts' && fronts.length + parts.length > 0) return [...fronts, ...parts]
  return [parts, units, metal].find((names) => names.length > 0) ?? []
}

/** Next to largest size below which a part is thin, mm. */
const THIN = 160

function isSmall(standing: Standing, operation: Operation): boolean {
  const names = activeOf(standing, operation)
  if (names.every((n) => /^(rail|plate|hole):/.test(n))) return true
  const boards = standing.parts.filter((p) => p.isNow && names.includes(`part:${p.part.part}`))
  return (
    boards.length > 0 &&
    boards.every(({ part }) =>
      part.solid.every(
        (b) => [b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0].filter((size) => size > THIN).length < 2,
      ),
    )
  )
}

function drawnHoles(plan: Plan, standing: Standing): readonly Fixing[] {
  return standing.holes.flatMap(({ hole, isNow }) => {
    const place = holePlace(plan, standing, hole)
    if (place === null || place.behind !== null || (place.inside !== null && !isNow)) return []
    return [{ id: hole.id, at: place.at }]
  })
}

/** Where this operation drills or screws, and what the unit on its way will hang on. */
function fixingsOf(plan: Plan, standing: Standing, operation: Operation): readonly Fixing[] {
  const drawn = new Map(drawnHoles(plan, standing).map((f) => [f.id, f]))
  const rails = standing.rails.filter((r) => r.isNow).map((r) => r.rail)
  const plates = new Set(standing.plates.filter((p) => p.isNow).flatMap((p) => p.holes.map((h) => h.id)))
  const going = new Set(standing.places.map((p) => p.unit.unit))
  return plan.holes.flatMap((hole) => {
    if (hole.verdict === 'refused') return []
    const { along } = hole
    const isWithin = (left: number, right: number) =>
      along.state !== 'unknown' && left <= along.value && along.value <= right
    const isOnRail = rails.some(
      (r) =>
        hole.purpose === 'rail' &&
        r.wall === hole.wall &&
        r.from.state !== 'unknown' &&
        r.to.state !== 'unknown' &&
        isWithin(r.from.value, r.to.value),
    )
    const awaits = standing.places.some(
      ({ unit, wall }) =>
        going.has(unit.unit) &&
        hole.for.includes(unit.unit) &&
        wall?.wall === hole.wall &&
        isWithin(wall.left, wall.right),
    )
    const isAsked = operation.holes.includes(hole.id) || isOnRail || plates.has(hole.id) || awaits
    const at = drawn.get(hole.id)
    // A hole of this operation that is not drawn at all has no mark to be seen, and is told so.
    if (isAsked && at === undefined && operation.holes.includes(hole.id))
      return [{ id: hole.id, at: { x: Number.NaN, y: 0, z: 0 } }]
    return isAsked && at !== undefined ? [at] : []
  })
}

/** What the part will touch: its place on wall and floor; standing in it, the boards it is fixed through. */
function contactsOf(plan: Plan, standing: Standing, room: RoomShape): readonly Contact[] {
  const places = standing.places.flatMap(({ unit, wall, footprints, isHung }): readonly Contact[] => {
    const frame = placedWall(plan, wall?.wall ?? null)
    const onIts =
      wall === null || frame === undefined
        ? []
        : [wallPiece(`wall:${unit.unit}`, frame, wall.left, wall.right, wall.bottom, wall.top)]
    const floor = isHung
      ? []
      : footprints.map((ring, i) => ({
          id: `floor:${unit.unit}.${i}`,
          corners: ring.map((p) => ({ x: p.x, y: p.y, z: room.floorOr(p) + PROUD })),
        }))
    return [...onIts, ...floor]
  })
  const inPlace = standing.units
    .filter((u) => u.isInHand && isDrawn(u) && places.length === 0)
    .flatMap((u) => insideFaces(u))
  const boards = standing.parts
    .filter((p) => p.isNow)
    .flatMap(({ part }) =>
      part.pose === null
        ? []
        : part.solid.flatMap((b, i) =>
            ringAround(`${part.part}.${i}`, { pose: part.pose as never, tilt: null }, part.solid, b),
          ),
    )
  const metal = standing.rails.flatMap(({ rail, isNow }) => {
    const frame = placedWall(plan, rail.wall)
    const { from, to, edge } = rail
    if (!isNow || frame === undefined) return []
    if (from.state === 'unknown' || to.state === 'unknown' || edge.state === 'unknown') return []
    return [wallPiece(`wall:${rail.rail}`, frame, from.value, to.value, edge.value, edge.value + BESIDE)]
  })
  const round = standing.holes.flatMap(({ hole, isNow }) => {
    const frame = placedWall(plan, hole.wall)
    const place = holePlace(plan, standing, hole)
    const { along, height } = hole
    if (!isNow || frame === undefined || place === null || place.inside !== null) return []
    if (along.state === 'unknown' || height.state === 'unknown' || hole.verdict === 'refused') return []
    const [a, z] = [along.value, height.value]
    return [wallPiece(`wall:${hole.id}`, frame, a - BESIDE, a + BESIDE, z - BESIDE, z + BESIDE)]
  })
  return [...places, ...inPlace, ...boards, ...metal, ...round].slice(0, 8)
}

function wallPiece(
  id: string,
  frame: Parameters<typeof onWall>[0],
  left: number,
  right: number,
  bottom: number,
  top: number,
): Contact {
  const at = (along: number, up: number): RoomPoint => {
    const [x, y, z] = onWall(frame)(along, PROUD, up)
    return { x, y, z }
  }
  return { id, corners: [at(left, bottom), at(right, bottom), at(right, top), at(left, top)] }
}

/** Inner faces of back and sides of a unit that stands in its place: it meets the wall and its neighbours there. */
function insideFaces(u: StandingUnit): readonly Contact[] {
  const [b] = u.unit.solid
  if (b === undefined) return []
  const at = (x: number, y: number, z: number) => roomPoint(u, extentOf(u.unit.solid), { x, y, z })
  const [back, low, high] = [b.y0 + BACK_LET_IN + BACK + 2, b.z0 + BOARD, b.z1 - BOARD]
  const side = (id: string, x: number): Contact => ({
    id: `${id}:${u.unit.unit}`,
    corners: [at(x, back, low), at(x, b.y1, low), at(x, b.y1, high), at(x, back, high)],
  })
  const [left, right] = [b.x0 + BOARD + 2, b.x1 - BOARD - 2]
  return [
    {
      id: `back:${u.unit.unit}`,
      corners: [at(left, back, low), at(right, back, low), at(right, back, high), at(left, back, high)],
    },
    side('left', left),
    side('right', right),
  ]
}

/** What a board meets, beside its front and its top: a strip along each of their edges. */
function ringAround(id: string, at: Carriage, solid: readonly LocalBox[], b: LocalBox): readonly Contact[] {
  const point = (x: number, y: number, z: number) => roomPoint(at, extentOf(solid), { x, y, z })
  const y = b.y1 + 1
  const strip = (name: string, x0: number, x1: number, z0: number, z1: number): Contact => ({
    id: `${name}:${id}`,
    corners: [point(x0, y, z0), point(x1, y, z0), point(x1, y, z1), point(x0, y, z1)],
  })
  return [
    strip('above', b.x0, b.x1, b.z1, b.z1 + BESIDE),
    strip('below', b.x0, b.x1, b.z0 - BESIDE, b.z0),
    strip('left', b.x0 - BESIDE, b.x0, b.z0, b.z1),
    strip('right', b.x1, b.x1 + BESIDE, b.z0, b.z1),
  ]
}

const cornersOf = (at: Carriage, solid: readonly LocalBox[]): readonly RoomPoint[] => {
  const extent = extentOf(solid)
  return solid.flatMap((b) =>
    [b.x0, b.x1].flatMap((x) =>
      [b.y0, b.y1].flatMap((y) => [b.z0, b.z1].map((z) => roomPoint(at, extent, { x, y, z }))),
    ),
  )
}

function wayOf(plan: Plan, standing: Standing, operation: Operation): readonly RoomPoint[] {
  const segments = segmentsOf(plan, operation)
  const moving = operation.path === null ? undefined : plan.paths[operation.path]?.unit
  const units = standing.units
    .filter((u) => u.isInHand && isDrawn(u))
    .flatMap((u) => {
      if (u.unit.unit !== moving || segments.length === 0) return cornersOf(u, u.unit.solid)
      return Array.from({ length: STEPS + 1 }, (_, i) =>
        travel(segments, extentOf(u.unit.solid), i / STEPS),
      ).flatMap((at) => (at === null ? [] : cornersOf(at, u.unit.solid)))
    })
  const parts = standing.parts
    .filter((p) => p.isNow)
    .flatMap(({ part }) => (part.pose === null ? [] : cornersOf({ pose: part.pose, tilt: null }, part.solid)))
  const fixings = fixingsOf(plan, standing, operation)
    .map((f) => f.at)
    .filter((p) => !Number.isNaN(p.x))
  const rails = standing.rails.flatMap(({ rail, isNow }) => {
    const frame = placedWall(plan, rail.wall)
    const { from, to, edge } = rail
    if (!isNow || frame === undefined) return []
    if (from.state === 'unknown' || to.state === 'unknown' || edge.state === 'unknown') return []
    return [from.value, to.value].map((along): RoomPoint => {
      const [x, y, z] = onWall(frame)(along, 9, edge.value)
      return { x, y, z }
    })
  })
  const isBoard = parts.length > 0
  return [...(isBoard ? parts : units), ...fixings, ...rails]
}

/** Units that come in, and boards by what they are: the pieces of one plinth are one. */
function newPartsOf(plan: Plan, index: number, done: Standing): readonly string[] {
  const before = new Set(index === 0 ? [] : standingAt(plan, index - 1, 1).units.map((u) => u.unit.unit))
  const units = done.units
    .filter((u) => u.isInHand && !before.has(u.unit.unit))
    .map((u) => `unit:${u.unit.unit}`)
  const parts = done.parts.filter((p) => p.isNow).map((p) => `${p.part.kind}s`)
  return [...new Set([...units, ...parts])]
}
