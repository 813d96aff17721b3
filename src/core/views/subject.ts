import { type Standing, type StandingUnit, segmentsOf } from '../plan/standing-at'
import { type Carriage, endOf, extentOf, roomPoint, startOf, travel } from '../plan/travel-path'
import type { LocalBox, Plan, PlanPoint, RoomPoint, UnitPlan, WallFrame } from '../plan/types'
import { carcassBoards, HANGER } from './carcass'
import { holePlace } from './hole-place'
import { levelBox } from './level-box'
import { endsOf } from './line-ends'
import type { Blocker } from './rays'
import { floorUnder, rectangleOf } from './rectangle'
import type { RoomShape } from './room-shape'
import type { Moment, Spot, ViewSubject } from './view'
import { lengthOf, onWall, placedWall } from './wall-place'

/** Wall shown to either side of what an operation is about, mm. */
const ASIDE = 500
/** Floor shown in front of the wall, mm. */
const BEFORE = 650
/** Nearer its place than this the unit in hand has to hide what it is fixed to, mm. */
const CLOSE = 250
/** Spots along one way of a face: thirds of it. */
const THIRDS = [1 / 6, 1 / 2, 5 / 6]

/** Gathers what the view of an operation is to show from what stands in the room. */
export function viewSubject(plan: Plan, standing: Standing, room: RoomShape, aspect: number): ViewSubject {
  const wall = wallOf(plan, standing)
  const fixings = fixingSpots(plan, standing)
  const place = placeSpots(plan, standing, room, wall)
  const bodies = bodiesOf(plan, standing)
  const must = [
    ...bodies.flat(),
    ...fixings.map((s) => s.at),
    ...(wall === undefined ? [] : place.map((s) => s.at)),
  ]
  const wide =
    wall === undefined
      ? wholeRoom(room)
      : [...must, ...wallWindow(room, wall, must, aspect, closeUp(plan, standing))]
  const near = must.length === 0 ? [] : CLOSER.map((by) => around(must, by))
  return {
    wall: wall?.wall ?? null,
    facing: wall?.outDir ?? null,
    moments: momentsOf(plan, standing),
    fixings,
    place,
    frames: [wide, ...near],
    bodies,
    blockers: blockersOf(standing),
    lowestEye: Math.max(...room.outline.map((p) => room.floorOr(p)), -10_000) + 500,
    screens: room.walls.map((w) => ({
      wall: w.wall,
      from: w.origin,
      to: { x: w.origin.x + lengthOf(w) * w.alongDir.x, y: w.origin.y + lengthOf(w) * w.alongDir.y },
      outDir: w.outDir,
      top: room.topOf(w).z,
    })),
  }
}

/** Room shown round what an operation is about, mm, where it would be too small in a wider picture. */
const CLOSER = [600, 300, 120, 0]

/** The corners of a box round some points, so much larger. */
function around(points: readonly RoomPoint[], by: number): readonly RoomPoint[] {
  const ends = (of: (p: RoomPoint) => number) => {
    const values = points.map(of)
    return [Math.min(...values) - by, Math.max(...values) + by]
  }
  const [xs, ys, zs] = [ends((p) => p.x), ends((p) => p.y), ends((p) => p.z)]
  return xs.flatMap((x) => ys.flatMap((y) => zs.map((z) => ({ x, y, z }))))
}

/** The wall an operation is about, by its own word or by the unit in hand. */
function wallOf(plan: Plan, { operation, units }: Standing): WallFrame | undefined {
  if (operation === null) return undefined
  const inHand = units.filter((u) => u.isInHand)
  return placedWall(plan, operation.wall ?? (inHand.length === 0 ? null : (inHand[0]?.unit.wall ?? null)))
}

// ---------------------------------------------------------------- the part in hand

/** The moments at which the part in hand must show: the turning points of its path, or where it stands. */
function momentsOf(plan: Plan, standing: Standing): readonly Moment[] {
  const { operation } = standing
  const parts = standing.parts.filter((p) => p.isNow && p.part.pose !== null)
  const fitted = parts.flatMap(({ part }) =>
    part.pose === null ? [] : partSpots({ pose: part.pose, tilt: null }, part.solid),
  )
  const moments: Moment[] = fitted.length === 0 ? [] : [{ part: fitted, blocker: null }]
  const inHand = standing.units.filter((u) => u.isInHand)
  const moving = operation?.path == null ? undefined : plan.paths[operation.path]?.unit
  const still = inHand.filter((u) => u.unit.unit !== moving)
  if (still.length > 0 && fitted.length === 0) {
    moments.push({
      part: still.flatMap((u) => partSpots(u, u.unit.solid)),
      blocker: still.length === 1 && still[0] !== undefined ? boardsBlocker(still[0].unit, still[0]) : null,
    })
  }
  const traveller = inHand.find((u) => u.unit.unit === moving)
  if (traveller !== undefined) {
    for (const at of turningPoints(plan, standing, traveller.unit)) {
      const isClose = distance(at, traveller.unit) < CLOSE || at.tilt !== null
      moments.push({
        part: partSpots(at, traveller.unit.solid),
        blocker: isClose ? null : boardsBlocker(traveller.unit, at),
      })
    }
  }
  return moments
}

const distance = ({ pose }: Carriage, unit: UnitPlan) =>
  unit.pose === null ? 0 : Math.hypot(pose.x - unit.pose.x, pose.y - unit.pose.y)

function turningPoints(plan: Plan, { operation }: Standing, unit: UnitPlan): readonly Carriage[] {
  const segments = operation === null ? [] : segmentsOf(plan, operation)
  const last = segments[segments.length - 1]
  const all = segments.flatMap((s) => {
    const middle = s.kind === 'stand-up' ? travel([s], extentOf(unit.solid), 0.5) : null
    return middle === null ? [startOf(s)] : [startOf(s), middle]
  })
  return last === undefined ? [] : [...all, endOf(last)]
}

function boardsBlocker(unit: UnitPlan, { pose }: Carriage): Blocker {
  return { id: unit.unit, wall: null, pose, boxes: carcassBoards(unit) }
}

/** Spots over the sides and top of a solid, each facing out of it. */
function partSpots(at: Carriage, solid: readonly LocalBox[]): readonly Spot[] {
  const extent = extentOf(solid)
  const room = (x: number, y: number, z: number) => roomPoint(at, extent, { x, y, z })
  return solid.flatMap((b) => {
    const on = (f: number, low: number, high: number) => low + f * (high - low)
    const grid = THIRDS.flatMap((f) => THIRDS.map((g) => [f, g] as const))
    const side = (
      area: number,
      spot: (f: number, g: number) => readonly [number, number, number],
      n: readonly [number, number, number],
    ) =>
      grid.map(([f, g]): Spot => {
        const [x, y, z] = spot(f, g)
        const p = room(x, y, z)
        const q = room(x + n[0], y + n[1], z + n[2])
        return { at: p, faces: { x: q.x - p.x, y: q.y - p.y, z: q.z - p.z }, wall: null, area }
      })
    const [w, d, h] = [b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0]
    return [
      ...side(w * h, (f, g) => [on(f, b.x0, b.x1), b.y1, on(g, b.z0, b.z1)], [0, 1, 0]),
      ...side(d * h, (f, g) => [b.x0, on(f, b.y0, b.y1), on(g, b.z0, b.z1)], [-1, 0, 0]),
      ...side(d * h, (f, g) => [b.x1, on(f, b.y0, b.y1), on(g, b.z0, b.z1)], [1, 0, 0]),
      ...side(w * d, (f, g) => [on(f, b.x0, b.x1), on(g, b.y0, b.y1), b.z1], [0, 0, 1]),
    ]
  })
}

// ---------------------------------------------------------------- fixings and place

/** Its screws are seen a little before its face, mm. */
const HANGER_OUT = HANGER.out + 6

const facing = (d: PlanPoint): RoomPoint => ({ x: d.x, y: d.y, z: 0 })

/** Holes of this operation, those the unit in hand is going to hang on, rails and plates, and the level. */
function fixingSpots(plan: Plan, standing: Standing): readonly Spot[] {
  const brought = new Set(standing.places.map((p) => p.unit.unit))
  const plates = new Set(standing.plates.filter((p) => p.isNow).flatMap((p) => p.holes.map((h) => h.id)))
  const holes = standing.holes.flatMap(({ hole, isNow }) => {
    const wall = placedWall(plan, hole.wall)
    const awaits = hole.for.some((u) => brought.has(u)) && isInPlace(standing, hole)
    const isWanted = isNow || awaits || plates.has(hole.id)
    if (wall === undefined || hole.verdict === 'refused' || !isWanted) return []
    const place = holePlace(plan, standing, hole)
    if (place === null || (place.behind !== null && !isNow)) return []
    return [{ at: place.at, faces: facing(wall.outDir), wall: hole.wall }]
  })
  const rails = standing.rails.flatMap(({ rail, isNow }) => {
    const wall = placedWall(plan, rail.wall)
    if (!isNow || wall === undefined) return []
    if (rail.from.state === 'unknown' || rail.to.state === 'unknown' || rail.edge.state === 'unknown')
      return []
    const [a, b, z] = [rail.from.value, rail.to.value, rail.edge.value - 19]
    return [a + 20, (a + b) / 2, b - 20].map((along): Spot => {
      const [x, y, height] = onWall(wall)(along, 12, z)
      return { at: { x, y, z: height }, faces: facing(wall.outDir), wall: rail.wall }
    })
  })
  return [...holes, ...rails, ...hangerSpots(standing), ...levelSpots(standing)]
}

/** A drilled hole of a rail shared by several units counts for the one in hand only over its own width. */
function isInPlace(standing: Standing, hole: Standing['holes'][number]['hole']): boolean {
  const { along } = hole
  return standing.places.some(
    ({ wall }) =>
      wall !== null &&
      along.state !== 'unknown' &&
      wall.wall === hole.wall &&
      wall.left <= along.value &&
      along.value <= wall.right,
  )
}

/** Work at the hangers themselves. */
const AT_HANGERS: readonly string[] = ['fit-hangers', 'lock']

/** The hangers of the unit in hand, in its top corners inside, where they are what is worked at. */
function hangerSpots({ operation, units }: Standing): readonly Spot[] {
  if (operation === null || !AT_HANGERS.includes(operation.kind)) return []
  return units
    .filter((u) => u.isInHand && u.tilt === null)
    .flatMap((unit) => {
      const extent = extentOf(unit.unit.solid)
      const on = (x: number, y: number) => roomPoint(unit, extent, { x, y, z: extent.height - HANGER.below })
      return unit.unit.adjusters.flatMap(({ kind, x }): readonly Spot[] => {
        if (kind !== 'height-screw' || x.state === 'unknown') return []
        const [at, ahead] = [on(x.value, HANGER_OUT), on(x.value, HANGER_OUT + 1)]
        return [{ at, faces: { x: ahead.x - at.x, y: ahead.y - at.y, z: 0 }, wall: null }]
      })
    })
}

function levelSpots(standing: Standing): readonly Spot[] {
  const unit = standing.units.find((u) => u.unit.unit === standing.levelOn)
  const box = unit === undefined ? null : levelBox(unit.unit)
  if (unit === undefined || box === null) return []
  const extent = extentOf(unit.unit.solid)
  const middle = roomPoint(unit, extent, {
    x: (box.x0 + box.x1) / 2,
    y: box.y1 + 2,
    z: (box.z0 + box.z1) / 2,
  })
  const isFlat = box.z1 - box.z0 < box.x1 - box.x0
  const ahead = roomPoint(unit, extent, { x: (box.x0 + box.x1) / 2, y: box.y1 + 3, z: (box.z0 + box.z1) / 2 })
  return [
    {
      at: middle,
      // Lying flat its vial is read from above as well as from the front; upright only from the front.
      faces: { x: ahead.x - middle.x, y: ahead.y - middle.y, z: isFlat ? 1 : 0 },
      wall: null,
    },
  ]
}

/** Where the part in hand goes, lines and marks as they are made, timber let in: what the eye should also find. */
function placeSpots(
  plan: Plan,
  standing: Standing,
  room: RoomShape,
  wall: WallFrame | undefined,
): readonly Spot[] {
  const on = (frame: WallFrame, along: number, z: number): Spot => {
    const [x, y] = onWall(frame)(along, 3, z)
    return { at: { x, y, z }, faces: facing(frame.outDir), wall: frame.wall }
  }
  const places = standing.places.flatMap(({ wall: r }) => {
    const frame = placedWall(plan, r?.wall ?? null)
    if (r === null || frame === undefined) return []
    return THIRDS.flatMap((f) =>
      THIRDS.map((g) => on(frame, r.left + f * (r.right - r.left), r.bottom + g * (r.top - r.bottom))),
    )
  })
  const lines = standing.lines.flatMap(({ line, isNow }) => {
    const frame = placedWall(plan, line.wall)
    if (!isNow || frame === undefined || line.height.state === 'unknown') return []
    const [from, to] = endsOf(line, frame)
    const z = line.height.value
    return [0.02, 0.25, 0.5, 0.75, 0.98].map((f) => on(frame, from + f * (to - from), z))
  })
  const marks = standing.marks.flatMap(({ mark, isNow }) => {
    const frame = placedWall(plan, mark.wall)
    if (!isNow || frame === undefined || mark.along.state === 'unknown') return []
    return [on(frame, mark.along.value, 0)]
  })
  const timber = standing.wallThings.flatMap(({ thing, isNow }) => {
    const frame = placedWall(plan, thing.wall)
    const r = isNow && frame !== undefined ? rectangleOf(thing, room, frame) : null
    if (r === null || frame === undefined) return []
    return [on(frame, r.left, (r.bottom + r.top) / 2), on(frame, r.right, (r.bottom + r.top) / 2)]
  })
  const spots = [...places, ...lines, ...marks, ...timber]
  const isSomethingShown =
    spots.length > 0 || standing.units.some((u) => u.isInHand) || standing.parts.some((p) => p.isNow)
  if (isSomethingShown) return spots
  return (wall === undefined ? wallsWithUnits(plan, room) : [wall]).flatMap((frame) =>
    THIRDS.flatMap((f) => THIRDS.map((g) => on(frame, f * lengthOf(frame), room.topOf(frame).z * g))),
  )
}

function wallsWithUnits(plan: Plan, room: RoomShape): readonly WallFrame[] {
  const used = room.walls.filter((w) => plan.units.some((u) => u.wall === w.wall && u.pose !== null))
  return used.length > 0 ? used : room.walls
}

// ---------------------------------------------------------------- what is in the picture, what is in the way

type Corners = (at: Carriage, solid: readonly LocalBox[]) => readonly RoomPoint[]

/** Fronts as they are hung, before units of one box. */
function frontBodies(standing: Standing, corners: Corners): readonly (readonly RoomPoint[])[] {
  return standing.units.flatMap((u) => {
    const [box] = u.unit.solid
    if (u.fronts !== 'now' || box === undefined || u.unit.solid.length > 1) return []
    return [corners(u, [{ ...box, y0: box.y1, y1: box.y1 + 20 }])]
  })
}

/** Corners of what the operation handles at each moment of its way: boards, else fronts, units, rails and plates. */
function bodiesOf(plan: Plan, standing: Standing): readonly (readonly RoomPoint[])[] {
  const corners: Corners = (at, solid) => {
    const extent = extentOf(solid)
    return solid.flatMap((b) =>
      [b.x0, b.x1].flatMap((x) =>
        [b.y0, b.y1].flatMap((y) => [b.z0, b.z1].map((z) => roomPoint(at, extent, { x, y, z }))),
      ),
    )
  }
  const { operation } = standing
  const moving = operation?.path == null ? undefined : plan.paths[operation.path]?.unit
  const parts = standing.parts
    .filter((p) => p.isNow)
    .flatMap(({ part }) => (part.pose === null ? [] : [corners({ pose: part.pose, tilt: null }, part.solid)]))
  const units = standing.units
    .filter((u) => u.isInHand)
    .flatMap((u) =>
      u.unit.unit === moving
        ? turningPoints(plan, standing, u.unit).map((at) => corners(at, u.unit.solid))
        : [corners(u, u.unit.solid)],
    )
  const kinds = [parts, frontBodies(standing, corners), units, metalBodies(plan, standing)]
  return kinds.map((bodies) => bodies.filter((b) => b.length > 0)).find((bodies) => bodies.length > 0) ?? []
}

/** Rails and plates as they are fixed, as flat as they are. */
function metalBodies(plan: Plan, standing: Standing): readonly (readonly RoomPoint[])[] {
  const on = (wall: string, spots: readonly (readonly [number, number])[]) => {
    const frame = placedWall(plan, wall)
    return frame === undefined
      ? []
      : spots.map(([along, up]): RoomPoint => {
          const [x, y, z] = onWall(frame)(along, 5, up)
          return { x, y, z }
        })
  }
  const rails = standing.rails.flatMap(({ rail: { wall, from, to, edge }, isNow }) =>
    !isNow || from.state === 'unknown' || to.state === 'unknown' || edge.state === 'unknown'
      ? []
      : [
          on(
            wall,
            [from.value, to.value].flatMap((along) =>
              [edge.value - 38, edge.value].map((up) => [along, up] as const),
            ),
          ),
        ],
  )
  const plates = standing.plates.flatMap(({ wall, holes, isNow }) =>
    !isNow
      ? []
      : [
          on(
            wall,
            holes.flatMap(({ along, height }) =>
              along.state === 'unknown' || height.state === 'unknown'
                ? []
                : [-22, 22].map((d) => [along.value + d, height.value + d] as const),
            ),
          ),
        ],
  )
  return [...rails, ...plates].filter((body) => body.length > 0)
}

function wholeRoom(room: RoomShape): readonly RoomPoint[] {
  const tops = room.walls.flatMap((w) => {
    const { z } = room.topOf(w)
    return [0, lengthOf(w)].map((along): RoomPoint => {
      const [x, y] = onWall(w)(along, 0, 0)
      return { x, y, z }
    })
  })
  return [...room.outline.map((p) => ({ ...p, z: room.floorOr(p) })), ...tops]
}

/** Room shown round a unit that is drilled through or for, mm: near enough that its holes stand apart. */
const CLOSE_UP = 300

/** Heights between which the wall is shown while one or two units are drilled for; null: from floor to top. */
function closeUp(plan: Plan, { operation, holes }: Standing): readonly [number, number] | null {
  if (operation === null || !holes.some((h) => h.isNow)) return null
  const units = plan.units.filter((u) => operation.on.includes(u.unit))
  const heights = units.flatMap(({ underside, top }) =>
    underside.state === 'unknown' || top.state === 'unknown' ? [] : [underside.value, top.value],
  )
  if (units.length === 0 || units.length > 2 || heights.length === 0) return null
  return [Math.min(...heights) - CLOSE_UP, Math.max(...heights) + CLOSE_UP]
}

/** The stretch of wall round what the operation is about, floor to top, as wide as the picture has room for. */
function wallWindow(
  room: RoomShape,
  wall: WallFrame,
  must: readonly RoomPoint[],
  aspect: number,
  between: readonly [number, number] | null,
): readonly RoomPoint[] {
  const { origin, alongDir } = wall
  const end = lengthOf(wall)
  const along = must.map((p) => (p.x - origin.x) * alongDir.x + (p.y - origin.y) * alongDir.y)
  const low = along.length === 0 ? 0 : Math.max(0, Math.min(...along))
  const high = along.length === 0 ? end : Math.min(end, Math.max(...along))
  const under = floorUnder(room, wall, (low + high) / 2)
  const floor = between === null ? under : Math.max(under, between[0])
  const top = between === null ? room.topOf(wall).z : Math.min(room.topOf(wall).z, between[1])
  const aside = between === null ? ASIDE : CLOSE_UP
  const wanted = Math.min(end, Math.max(high - low + 2 * aside, (top - floor) * aspect * 1.1))
  const start = Math.max(0, Math.min(end - wanted, (low + high - wanted) / 2))
  return [start, start + wanted].flatMap((a) => {
    const point = (out: number, z: number): RoomPoint => {
      const [x, y] = onWall(wall)(a, out, z)
      return { x, y, z }
    }
    return [point(0, floor), point(0, top), ...(floor === under ? [point(BEFORE, floor)] : [])]
  })
}

function blockersOf(standing: Standing): readonly Blocker[] {
  const units = standing.units
    .filter((u) => !u.isInHand && u.tilt === null)
    .map(
      (u: StandingUnit): Blocker => ({
        id: u.unit.unit,
        wall: u.unit.kind === 'island' || u.isHeld ? null : u.unit.wall,
        pose: u.pose,
        boxes: u.unit.solid,
      }),
    )
  const parts = standing.parts
    .filter((p) => !p.isNow)
    .flatMap(({ part }): readonly Blocker[] =>
      part.pose === null ? [] : [{ id: part.part, wall: null, pose: part.pose, boxes: part.solid }],
    )
  return [...units, ...parts]
}
