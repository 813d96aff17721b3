import { type Basis, type Figure, hasValue, type InputId, sortedIds, valueOf } from '../figure'
import { convexHull } from '../geometry/convex-hull'
import { byPlace, distance, leftOfLine } from '../geometry/point'
import { distanceOutside } from '../geometry/polygon'
import { distanceToSegment, shareAlong } from '../geometry/segment'
import { ON_EDGE, SAME_POINT } from '../geometry/tolerance'
import { type Triangle, triangulate } from '../geometry/triangulate'
import { mergedIds } from '../ids'
import type { PlanPoint } from '../plan/types'
import { planeBeyond, type Spot } from './beyond'
import { type Frame, framesAlong, linksBetween, pointIn, type WallChains } from './wall-chain'
import { workedFrom } from './worked'

/** One height read somewhere on the plan: floor or ceiling. */
export interface SurfaceReading {
  readonly id: string
  /** Index of the wall its place is given on. */
  readonly wall: number
  readonly along: Figure
  readonly out: Figure
  /** Height re the line. */
  readonly z: Figure
}

/** A reading with its place in the room. */
export interface PlacedReading {
  readonly reading: SurfaceReading
  readonly at: PlanPoint
}

/** The readings of one chain of walls, in order of their ids, no two in one place. */
export interface Sheet {
  readonly chain: number
  readonly readings: readonly SurfaceReading[]
  readonly points: readonly PlanPoint[]
  readonly triangles: readonly Triangle[]
  readonly hull: readonly PlanPoint[]
  /** Those too that stand in one place with another: a plane is laid through all of them. */
  readonly placed: readonly PlacedReading[]
}

/** A surface through readings: straight between them, a plane laid through all of them beyond. */
export interface Surface {
  readonly readings: readonly SurfaceReading[]
  readonly sheets: readonly Sheet[]
  heightAt(wall: number, along: Figure, out: Figure): Figure
  /** How far a place lies outside all readings, in mm; null when that cannot be said. */
  outsideBy(wall: number, along: Figure, out: Figure): number | null
}

/** A place no further than this from a reading stands on it, or over the line between two. Common practice. */
const ON_READING = 1

const onReading: Basis = { kind: 'geometry', why: 'read at this place' }
const roundAbout: Basis = { kind: 'geometry', why: 'straight between the readings round this place' }
const tooFew: Basis = { kind: 'geometry', why: 'a surface needs three readings not all in one line' }

/**
 * The surface through some readings: at a reading its own height, between readings the flat triangle (or the straight
 * line) through those round the place, outside them all the least-squares plane. Of readings in one place the first by
 * id counts. `list` is the id of the list they stand in: what is missing when there are too few of them.
 */
export function surfaceThrough(
  chains: WallChains,
  readings: readonly SurfaceReading[],
  list: InputId,
): Surface {
  const sorted = [...readings].sort((a, b) => (a.id < b.id ? -1 : 1))
  const sheets = [...new Set(chains.chainOf)].map((chain) => sheetOf(chains, sorted, chain))
  const locate = (wall: number, along: Figure, out: Figure) => {
    const [x, y] = [valueOf(along), valueOf(out)]
    const sheet = sheets.find(({ chain }) => chain === chains.chainOf[wall])
    if (x === undefined || y === undefined || sheet === undefined) return undefined
    return { sheet, point: pointIn(chains.frames[wall] as Frame, x, y) }
  }
  const idsOf = rememberedIds()
  const beyond = planeBeyond(chains, sorted)
  return {
    readings: sorted,
    sheets,
    heightAt: (wall, along, out) => {
      const located = locate(wall, along, out)
      const place = { wall, along, out }
      if (located === undefined) return workedFrom('mm', roundAbout, [along, out], () => 0)
      const support = supportOf(located.sheet, located.point)
      if (support !== undefined) return sound(heightFrom(chains, place, support, idsOf(support)), list)
      const hasPlane = located.sheet.triangles.length > 0
      return hasPlane ? sound(beyond(place), list) : noPlane(chains, place, sorted, list)
    },
    outsideBy: (wall, along, out) => {
      const located = locate(wall, along, out)
      if (located === undefined || located.sheet.triangles.length === 0) return null
      return distanceOutside(located.sheet.hull, located.point)
    },
  }
}

/** Readings so nearly on one line that their own precision may bring them onto it say nothing to either side of it. */
function sound(height: Figure, list: InputId): Figure {
  if (!hasValue(height) || (Number.isFinite(height.value) && Number.isFinite(height.pm))) return height
  return { state: 'unknown', unit: 'mm', basis: tooFew, from: height.from, missing: [list] }
}

/** The inputs of the readings round a place; many feet stand among the same readings. */
function rememberedIds(): (support: readonly SurfaceReading[]) => readonly InputId[] {
  const known = new Map<string, readonly InputId[]>()
  return (support) => {
    const key = support.map(({ id }) => id).join(' ')
    const ids =
      known.get(key) ?? mergedIds(support.flatMap(({ along, out, z }) => [along.from, out.from, z.from]))
    known.set(key, ids)
    return ids
  }
}

function sheetOf(chains: WallChains, sorted: readonly SurfaceReading[], chain: number): Sheet {
  const readings: SurfaceReading[] = []
  const points: PlanPoint[] = []
  const placed: PlacedReading[] = []
  for (const reading of sorted) {
    const [along, out] = [valueOf(reading.along), valueOf(reading.out)]
    if (chains.chainOf[reading.wall] !== chain || along === undefined || out === undefined) continue
    const point = pointIn(chains.frames[reading.wall] as Frame, along, out)
    placed.push({ reading, at: point })
    if (points.some((other) => distance(other, point) <= SAME_POINT)) continue
    readings.push(reading)
    points.push(point)
  }
  return {
    chain,
    readings,
    points,
    triangles: inOrder(triangulate(points)),
    hull: convexHull(points),
    placed,
  }
}

/** Triangles from their smallest corner on, sorted by corners. */
function inOrder(triangles: readonly Triangle[]): readonly Triangle[] {
  const turned = triangles.map(([a, b, c]): Triangle => {
    if (a < b && a < c) return [a, b, c]
    return b < c ? [b, c, a] : [c, a, b]
  })
  return turned.sort((s, t) => s[0] - t[0] || s[1] - t[1] || s[2] - t[2])
}

/** The readings a place lies on, between, or among; undefined when it lies outside them all. */
function supportOf(sheet: Sheet, p: PlanPoint): readonly SurfaceReading[] | undefined {
  const corners = onOneReading(sheet, p) ?? amongTriangles(sheet, p) ?? onALine(sheet, p)
  return corners?.map((i) => sheet.readings[i] as SurfaceReading)
}

function onOneReading({ points }: Sheet, p: PlanPoint): readonly number[] | undefined {
  let nearest = -1
  let least = ON_READING
  points.forEach((point, i) => {
    const off = distance(point, p)
    if (off < least || (off === least && nearest < 0)) {
      nearest = i
      least = off
    }
  })
  return nearest < 0 ? undefined : [nearest]
}

function amongTriangles({ triangles, points }: Sheet, p: PlanPoint): readonly number[] | undefined {
  const leftOf = (i: number, k: number) => leftOfLine(points[i] as PlanPoint, points[k] as PlanPoint, p)
  for (const triangle of triangles) {
    const [a, b, c] = triangle
    const ab = leftOf(a, b)
    if (ab < -ON_EDGE) continue
    const bc = leftOf(b, c)
    if (bc < -ON_EDGE) continue
    const ca = leftOf(c, a)
    if (ca < -ON_EDGE) continue
    if (ab <= ON_EDGE) return [a, b]
    if (bc <= ON_EDGE) return [b, c]
    return ca <= ON_EDGE ? [c, a] : triangle
  }
  return undefined
}

/** For readings all on one line: the two neighbours that a place lies between. */
function onALine({ triangles, points }: Sheet, p: PlanPoint): readonly number[] | undefined {
  if (triangles.length > 0) return undefined
  const order = points.map((_, i) => i)
  order.sort((i, k) => byPlace(points[i] as PlanPoint, points[k] as PlanPoint))
  for (let i = 0; i + 1 < order.length; i++) {
    const [a, b] = [order[i] as number, order[i + 1] as number]
    if (distanceToSegment(points[a] as PlanPoint, points[b] as PlanPoint, p) <= ON_READING) return [a, b]
  }
  return undefined
}

/** What the places of one point and of several readings are worked from: their own figures, heights, then the links. */
interface Ground {
  readonly inputs: readonly Figure[]
  /** The places on one plan, the point itself first, from the inputs' values. */
  readonly pointsAt: (values: readonly number[]) => (i: number) => PlanPoint
  /** Where the heights of the readings begin among the inputs. */
  readonly heights: number
  /** Lengths and corners between the walls concerned. */
  readonly links: readonly Figure[]
}

/**
 * Places are worked in the frame of the first wall that is concerned, so that they rest on just the lengths and corners
 * between the walls concerned: on none at all when everything stands on one wall.
 */
function groundOf(chains: WallChains, place: Spot, readings: readonly SurfaceReading[]): Ground {
  const spots = [place, ...readings]
  const walls = spots.map(({ wall }) => wall)
  const first = Math.min(...walls)
  const links = linksBetween(chains, first, Math.max(...walls))
  const heights = 2 * spots.length
  const beforeLinks = heights + readings.length
  const inputs = [...spots.flatMap(({ along, out }) => [along, out]), ...readings.map(({ z }) => z), ...links]
  const asRead =
    links.length === 0 || !links.every(hasValue) ? undefined : framesAlong(links.map(valueOf) as number[])
  const pointsAt = (values: readonly number[]) => {
    const frames = links.every((link, i) => valueOf(link) === values[beforeLinks + i])
      ? asRead
      : framesAlong(values.slice(beforeLinks))
    return (i: number): PlanPoint => {
      const [along, out] = [values[2 * i] as number, values[2 * i + 1] as number]
      const frame = frames?.[(walls[i] as number) - first]
      return frame === undefined ? { x: along, y: out } : pointIn(frame, along, out)
    }
  }
  return { inputs, pointsAt, heights, links }
}

/** Height at a place from the one, two or three readings that hold it. */
function heightFrom(
  chains: WallChains,
  place: Spot,
  support: readonly SurfaceReading[],
  supportIds: readonly InputId[],
): Figure {
  const { inputs, pointsAt, heights, links } = groundOf(chains, place, support)
  const from = mergedIds([supportIds, place.along.from, place.out.from, ...links.map((link) => link.from)])
  if (support.length === 1) {
    return workedFrom('mm', onReading, inputs, (values) => values[heights] as number, from)
  }
  const between = support.length === 2 ? betweenTwo : amongThree
  const work = (values: readonly number[]) => {
    const pointAt = pointsAt(values)
    return between(pointAt, (i) => values[heights + i] as number)
  }
  return workedFrom('mm', roundAbout, inputs, work, from)
}

/** The place itself is point 0; the readings are the points from 1 on, their heights counted from 0. */
type PointAt = (i: number) => PlanPoint
type HeightAt = (i: number) => number

/** Straight along the line between two readings. */
function betweenTwo(pointAt: PointAt, zAt: HeightAt): number {
  return zAt(0) + shareAlong(pointAt(1), pointAt(2), pointAt(0)) * (zAt(1) - zAt(0))
}

/** On the flat triangle through three readings. */
function amongThree(pointAt: PointAt, zAt: HeightAt): number {
  const p = pointAt(0)
  const a = pointAt(1)
  const b = pointAt(2)
  const c = pointAt(3)
  const whole = crossFrom(a, b, c)
  const towardsB = crossFrom(a, p, c) / whole
  const towardsC = crossFrom(a, b, p) / whole
  return zAt(0) + towardsB * (zAt(1) - zAt(0)) + towardsC * (zAt(2) - zAt(0))
}

/** Positive when the way from a to c points to the left of the way from a to b. */
function crossFrom(a: PlanPoint, b: PlanPoint, c: PlanPoint): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

/** Height outside readings that are too few, or all on one line, for a plane through them. */
function noPlane(
  chains: WallChains,
  place: Spot,
  readings: readonly SurfaceReading[],
  list: InputId,
): Figure {
  const { inputs } = groundOf(chains, place, readings)
  const from = mergedIds(inputs.map((input) => input.from))
  const missing = inputs.flatMap((input) => (hasValue(input) ? [] : input.missing))
  return { state: 'unknown', unit: 'mm', basis: tooFew, from, missing: sortedIds([...missing, list]) }
}
