import type { Given, GivenAccessory, GivenAlong, GivenRect, GivenService, GivenWall } from './given'
import type { Levels } from './levels'
import { type Measure, nought, work } from './measure'
import { fromLeft, leftCorner, type Room, rightCorner, roomPoint } from './room'
import { highestOver, lowestOver } from './surface'

/** A rectangle on a wall that holes keep out of, as this checker draws it. Open ends are infinite. */
export interface OwnBand {
  readonly wall: string
  readonly kind:
    | 'accessory-vertical'
    | 'accessory-horizontal'
    | 'corner'
    | 'ceiling'
    | 'service'
    | 'lintel'
    | 'fixed'
  readonly about: string
  readonly face: 'room' | 'other'
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
  /** `refuse`: no hole in it; `ask`: a hole in it needs settling first; `either`: the rules leave it open. */
  readonly weight: 'refuse' | 'ask' | 'either'
}

export interface WallBands {
  readonly bands: readonly OwnBand[]
  /** Things whose place or size is not known: every hole on the wall is then at least an `ask`. */
  readonly unknown: readonly string[]
  /** Something in or on the wall has no sure place, so that where a hole gives way to may be left open. */
  readonly unsure?: boolean
}

const OPEN = Number.POSITIVE_INFINITY
/** Either side of an accessory's plate, for a drill that wanders; common practice. */
const DRILL_MARGIN = 10
const THIN_WALL = 100
const DRAWN_WIDTH = 150
const LINTEL_BEARING = 150

interface RegionBands {
  readonly cornerStrip: number
  readonly ceilingStrip: number
  /** Level bands above the floor, and how far upright bands stand off openings. */
  readonly aboveFloor: readonly (readonly [number, number])[]
  readonly besideOpenings: readonly [number, number] | null
}

/**
 * BS 7671 522.6.202(i) in Britain; German practice on the continent; none in North America, where cables run through stud
 * centres.
 */
function regionBands(region: string | null): RegionBands | null {
  if (region === 'uk') return { cornerStrip: 150, ceilingStrip: 150, aboveFloor: [], besideOpenings: null }
  if (region !== 'continental') return null
  const aboveFloor = [
    [150, 450],
    [1000, 1300],
  ] as const
  return { cornerStrip: 300, ceilingStrip: 450, aboveFloor, besideOpenings: [100, 300] }
}

export function bandsOf(given: Given, room: Room, levels: Levels, wall: GivenWall): WallBands {
  const region = regionBands(given.region)
  const parts: readonly WallBands[] = [
    ...(region === null ? [] : wall.accessories.map((a) => accessoryBands(levels, room, wall, a))),
    ...(region === null ? [] : [cornerBands(given, wall, region), ceilingBand(levels, room, wall, region)]),
    ...(region === null ? [] : [floorBands(levels, room, wall, region), openingBands(wall, region)]),
    ...wall.services.map((s) => serviceBands(levels, room, wall, s)),
    ...wall.lintels.map((l) => lintelBand(levels, room, wall, l)),
    ...wall.openings.map((o) => openingHole(levels, room, wall, o)),
  ]
  return {
    bands: parts.flatMap((p) => p.bands),
    unknown: parts.flatMap((p) => p.unknown),
    unsure:
      parts.some((p) => p.unknown.length > 0) ||
      hasUnsure(wall) ||
      ceilingUnsure(given, levels) ||
      floorUnsure(given, levels, region),
  }
}

/** Openings whose edges nobody has read; things of the other face without a sure place or size. */
function hasUnsure(wall: GivenWall): boolean {
  const others = [
    ...wall.accessories.map((a) => ({ ...a, sizes: [a.width, a.tall] })),
    ...wall.services.flatMap((s) => s.points.map((p) => ({ ...p, face: s.face, sizes: [s.width] }))),
  ].filter((thing) => thing.face === 'other')
  const openings = wall.openings.flatMap((o) => [o.bottom, o.top])
  const unread = openings.some((h) => [h.up, h.down, h.aboveFloor].every((m) => m.value === null))
  return (
    unread ||
    others.some(
      ({ face, along, sizes }) =>
        !isPlain(face, along) ||
        [fromLeft(wall, along), wall.thickness, ...sizes].some((m) => m.value === null),
    )
  )
}

/** A floor reading without a place or a level, where bands are counted from the floor. */
function floorUnsure(given: Given, levels: Levels, region: RegionBands | null): boolean {
  const { readings } = levels.floor
  const unread = readings.length < given.readings.length || readings.some((r) => r.z.value === null)
  return region !== null && region.aboveFloor.length > 0 && unread
}

/** A ceiling reading without a place or a level. */
function ceilingUnsure(given: Given, levels: Levels): boolean {
  const { readings } = levels.ceiling
  return readings.length < given.ceiling.length || readings.some((r) => r.z.value === null)
}

/** Everything on the other face shows on this one in a thin wall, and in one of unknown thickness. */
function showsThrough(wall: GivenWall): boolean {
  return wall.thickness.value === null || wall.thickness.value <= THIN_WALL
}

function pointOver(room: Room, wall: GivenWall, along: Measure): { x: number; y: number } | null {
  const frame = room.frames.get(wall.id)
  if (frame === undefined || !frame.placed || along.value === null) return null
  return roomPoint(frame, along.value, 0)
}

function accessoryBands(levels: Levels, room: Room, wall: GivenWall, a: GivenAccessory): WallBands {
  const along = fromLeft(wall, a.along)
  const height = levels.of(a.height, pointOver(room, wall, along))
  const common = { wall: wall.id, about: a.id, face: a.face, weight: weightOf(wall, a.face, a.along) }
  const beside = work([along, a.width], (_, width = 0) => width / 2 + DRILL_MARGIN)
  const above = work([height, a.tall], (_, tall = 0) => tall / 2 + DRILL_MARGIN)
  const bands: OwnBand[] = []
  if (beside.value !== null && along.value !== null) {
    bands.push({
      ...common,
      kind: 'accessory-vertical',
      left: along.value - beside.value,
      right: along.value + beside.value,
      bottom: -OPEN,
      top: OPEN,
    })
  }
  if (above.value !== null && height.value !== null) {
    bands.push({
      ...common,
      kind: 'accessory-horizontal',
      left: -OPEN,
      right: OPEN,
      bottom: height.value - above.value,
      top: height.value + above.value,
    })
  }
  const unknown = bands.length === 2 ? [] : [a.id]
  const thick = a.face === 'other' && !showsThrough(wall)
  const open = !isPlain(a.face, a.along) && showsThrough(wall) ? [a.id] : []
  return {
    bands: [...bands, ...unmeasured(common, along, height, bands)],
    unknown: thick ? [] : [...unknown, ...open],
  }
}

/** On the other face, yet measured on this one: which of the two was meant is not known. */
function isPlain(face: 'room' | 'other', along: GivenAlong): boolean {
  return face === 'room' || along.face === 'other'
}

/** What is on the other face counts for sure in a thin wall; in a thick one only for what comes near that face. */
function weightOf(wall: GivenWall, face: 'room' | 'other', along: GivenAlong): OwnBand['weight'] {
  const sure = face === 'room' || (showsThrough(wall) && isPlain(face, along))
  return sure ? 'refuse' : 'either'
}

/** An accessory whose plate nobody measured is drawn 150 wide: a hole in that may be refused or asked about. */
function unmeasured(
  common: Pick<OwnBand, 'wall' | 'about' | 'face'>,
  along: Measure,
  height: Measure,
  sure: readonly OwnBand[],
): readonly OwnBand[] {
  const half = DRAWN_WIDTH / 2 + DRILL_MARGIN
  const missing = (kind: OwnBand['kind']): boolean => !sure.some((b) => b.kind === kind)
  const open = { left: -OPEN, right: OPEN, bottom: -OPEN, top: OPEN, weight: 'either' as const }
  const bands: OwnBand[] = []
  if (along.value !== null && missing('accessory-vertical')) {
    const [left, right] = [along.value - half, along.value + half]
    bands.push({ ...common, ...open, kind: 'accessory-vertical', left, right })
  }
  if (height.value !== null && missing('accessory-horizontal')) {
    const [bottom, top] = [height.value - half, height.value + half]
    bands.push({ ...common, ...open, kind: 'accessory-horizontal', bottom, top })
  }
  return bands
}

/** A strip at each end that is an internal corner. An end of which the file says nothing may be one: either will do. */
function cornerBands(given: Given, wall: GivenWall, region: RegionBands): WallBands {
  const length = wall.length.value
  const ends = [
    { corner: leftCorner(given, wall), left: 0, right: region.cornerStrip },
    { corner: rightCorner(given, wall), left: (length ?? 0) - region.cornerStrip, right: length ?? 0 },
  ]
  const bands = ends.flatMap(({ corner, left, right }, i): readonly OwnBand[] => {
    if (i === 1 && length === null) return []
    if (corner?.value !== undefined && corner.value !== null && corner.value >= 180) return []
    return [
      {
        wall: wall.id,
        kind: 'corner',
        about: wall.id,
        face: 'room',
        left: i === 0 ? -OPEN : left,
        right: i === 0 ? right : OPEN,
        bottom: -OPEN,
        top: OPEN,
        weight: (corner?.value ?? null) === null ? 'either' : 'refuse',
      },
    ]
  })
  return { bands, unknown: [] }
}

/** The strip below the ceiling, from the lowest ceiling read along the wall; a hole between that and the ceiling over the hole itself is judged either way. */
function ceilingBand(levels: Levels, room: Room, wall: GivenWall, region: RegionBands): WallBands {
  const length = wall.length.value
  const from = pointOver(room, wall, nought)
  const to = pointOver(room, wall, wall.length)
  if (length === null || from === null || to === null) return { bands: [], unknown: [] }
  const known = levels.ceiling.readings.flatMap((r) => (r.z.value === null ? [] : [r.z.value]))
  const lowest = lowestOver(levels.ceiling, [from, to]) ?? (known.length > 0 ? Math.min(...known) : null)
  if (lowest === null || known.length === 0) return { bands: [], unknown: [] }
  const highest = Math.max(lowest, ...known)
  const common = {
    wall: wall.id,
    about: wall.id,
    face: 'room' as const,
    left: -OPEN,
    right: OPEN,
    kind: 'ceiling' as const,
  }
  return {
    bands: [
      { ...common, bottom: highest - region.ceilingStrip, top: OPEN, weight: 'refuse' },
      { ...common, bottom: Math.min(lowest, ...known) - region.ceilingStrip, top: OPEN, weight: 'either' },
    ],
    unknown: [],
  }
}

/** Level bands above the floor: sure between the highest and lowest floor along the wall, open on their rims. */
function floorBands(levels: Levels, room: Room, wall: GivenWall, region: RegionBands): WallBands {
  const from = pointOver(room, wall, nought)
  const to = pointOver(room, wall, wall.length)
  if (from === null || to === null) return { bands: [], unknown: [] }
  const low = lowestOver(levels.floor, [from, to])
  const high = highestOver(levels.floor, [from, to])
  if (low === null || high === null) return { bands: [], unknown: [] }
  const common = {
    wall: wall.id,
    kind: 'fixed' as const,
    about: wall.id,
    face: 'room' as const,
    left: -OPEN,
    right: OPEN,
  }
  return {
    bands: region.aboveFloor.flatMap(([a, b]): readonly OwnBand[] => [
      { ...common, bottom: high + a, top: low + b, weight: 'refuse' },
      { ...common, bottom: low + a, top: high + b, weight: 'either' },
    ]),
    unknown: [],
  }
}

function openingBands(wall: GivenWall, region: RegionBands): WallBands {
  const reach = region.besideOpenings
  if (reach === null) return { bands: [], unknown: [] }
  const [near, far] = reach
  const common = {
    wall: wall.id,
    kind: 'fixed' as const,
    face: 'room' as const,
    bottom: -OPEN,
    top: OPEN,
    weight: 'refuse' as const,
  }
  const parts = wall.openings.map((opening): WallBands => {
    const left = fromLeft(wall, opening.left).value
    const right = fromLeft(wall, opening.right).value
    if (left === null || right === null) return { bands: [], unknown: [opening.id] }
    return {
      bands: [
        { ...common, about: opening.id, left: left - far, right: left - near },
        { ...common, about: opening.id, left: right + near, right: right + far },
      ],
      unknown: [],
    }
  })
  return { bands: parts.flatMap((p) => p.bands), unknown: parts.flatMap((p) => p.unknown) }
}

/** A door or window itself: there is no wall to drill. An edge nobody has read is left open. */
function openingHole(levels: Levels, room: Room, wall: GivenWall, opening: GivenRect): WallBands {
  const left = fromLeft(wall, opening.left)
  const right = fromLeft(wall, opening.right).value
  const point = pointOver(room, wall, left)
  if (left.value === null || right === null) return { bands: [], unknown: [] }
  const band: OwnBand = {
    wall: wall.id,
    kind: 'fixed',
    about: opening.id,
    face: 'room',
    left: left.value,
    right,
    bottom: levels.of(opening.bottom, point).value ?? -OPEN,
    top: levels.of(opening.top, point).value ?? OPEN,
    weight: 'refuse',
  }
  const sure = Number.isFinite(band.bottom) && Number.isFinite(band.top)
  // Something carries the wall over it, listed or not, and bears on both sides.
  const over: OwnBand = {
    ...band,
    left: band.left - LINTEL_BEARING,
    right: band.right + LINTEL_BEARING,
    bottom: Number.isFinite(band.top) ? band.top : band.bottom,
    top: OPEN,
    weight: 'either',
  }
  return { bands: [{ ...band, weight: sure ? 'refuse' : 'either' }, over], unknown: [] }
}

/** A rectangle round every leg of a known run, wider when its course is only guessed. */
function serviceBands(levels: Levels, room: Room, wall: GivenWall, service: GivenService): WallBands {
  const margin = service.traced === null || service.traced === 'guessed' ? 50 : 25
  const width = service.width.value
  const points = service.points.map((p) => {
    const along = fromLeft(wall, p.along)
    return { along, height: levels.of(p.height, pointOver(room, wall, along)) }
  })
  const unknown = width === null || points.some((p) => p.along.value === null || p.height.value === null)
  const sure = service.points.every((p) => weightOf(wall, service.face, p.along) === 'refuse')
  const mixed = service.points.some((p) => !isPlain(service.face, p.along))
  const legs = points.length === 1 ? [[points[0], points[0]]] : points.slice(1).map((p, i) => [points[i], p])
  const bands = legs.flatMap(([a, b]): readonly OwnBand[] => {
    const xs = [a?.along.value ?? null, b?.along.value ?? null]
    const zs = [a?.height.value ?? null, b?.height.value ?? null]
    if (width === null || xs.includes(null) || zs.includes(null)) return []
    const reach = width / 2 + margin
    return [
      {
        wall: wall.id,
        kind: 'service',
        about: service.id,
        face: service.face,
        left: Math.min(...xs.map(Number)) - reach,
        right: Math.max(...xs.map(Number)) + reach,
        bottom: Math.min(...zs.map(Number)) - reach,
        top: Math.max(...zs.map(Number)) + reach,
        weight: sure ? 'refuse' : 'either',
      },
    ]
  })
  return { bands, unknown: unknown || (mixed && showsThrough(wall)) ? [service.id] : [] }
}

/** A lintel with its bearings: never drilled when it is prestressed, steel or not known; otherwise asked about. */
function lintelBand(levels: Levels, room: Room, wall: GivenWall, lintel: GivenRect): WallBands {
  const left = fromLeft(wall, lintel.left)
  const right = fromLeft(wall, lintel.right)
  const bottom = levels.of(lintel.bottom, pointOver(room, wall, left))
  const top = levels.of(lintel.top, pointOver(room, wall, left))
  if (left.value === null || right.value === null || bottom.value === null || top.value === null) {
    return { bands: [], unknown: [lintel.id] }
  }
  const soft = lintel.kind === 'timber' || lintel.kind === 'concrete'
  return {
    bands: [
      {
        wall: wall.id,
        kind: 'lintel',
        about: lintel.id,
        face: 'room',
        left: left.value - LINTEL_BEARING,
        right: right.value + LINTEL_BEARING,
        bottom: bottom.value,
        top: top.value,
        weight: soft ? 'ask' : 'refuse',
      },
    ],
    unknown: [],
  }
}

/** The bands a point lies in, drawn in or out by a margin. */
export function hits(
  bands: readonly OwnBand[],
  along: number,
  height: number,
  margin: number,
): readonly OwnBand[] {
  return bands.filter(
    (b) =>
      along > b.left - margin &&
      along < b.right + margin &&
      height > b.bottom - margin &&
      height < b.top + margin,
  )
}
