import { type Basis, type Figure, hasValue, quantise, restingOn, type ValueFigure } from '../figure'
import { fitPlane, worstOff } from '../geometry/plane'
import { distance } from '../geometry/point'
import { SAME_POINT } from '../geometry/tolerance'
import { mergedIds } from '../ids'
import { factId } from '../kitchen/fact-id'
import type { Kitchen, Wall } from '../kitchen/schema'
import { message } from '../message'
import { finding } from '../plan/finding'
import type { Finding, FloorReadingPoint, FloorSurface, FloorTriangle, PlanPoint } from '../plan/types'
import { alongFromLeft } from './along'
import { lineOffset } from './line-offset'
import { sum } from './sum'
import type { Sheet, Surface, SurfaceReading } from './surface'
import type { WallChains } from './wall-chain'

type Reading = Kitchen['floor']['readings'][number]

const belowTheLine: Basis = { kind: 'geometry', why: 'a bigger drop from the line is a lower floor' }
const stepPractice: Basis = {
  kind: 'common-practice',
  why: 'a floor that falls more than 15 mm in a metre from one reading to the next may have a step between them',
}
const samePlace: Basis = { kind: 'geometry', why: 'the floor in one place has one height' }
/** mm a metre. */
const STEEP = 15

/** Height of the floor at a reading, re the first line: the height of its line less the drop. */
function floorHeight(kitchen: Kitchen, { id, line, drop }: Reading): Figure {
  const z = sum('mm', belowTheLine, [lineOffset(kitchen, line)], [drop])
  return restingOn(z, [factId('floor', 'readings', id, 'line')])
}

/** The floor readings whose wall is on the list, each with its place and its height. */
export function floorReadings(kitchen: Kitchen, chains: WallChains): readonly SurfaceReading[] {
  return kitchen.floor.readings.flatMap((reading): SurfaceReading[] => {
    const wall = chains.indexOf.get(reading.at.wall)
    if (wall === undefined) return []
    const along = restingOn(alongFromLeft(chains.walls[wall] as Wall, reading.at.along), [
      factId('floor', 'readings', reading.id, 'at', 'wall'),
    ])
    return [{ id: reading.id, wall, along, out: reading.at.out, z: floorHeight(kitchen, reading) }]
  })
}

/** The readings that have a place in the room, their triangles, and the plane through them when all are known. */
export function drawnFloor(floor: Surface): Pick<FloorSurface, 'points' | 'triangles' | 'plane'> {
  const sheet = floor.sheets.find(({ chain }) => chain === 0)
  if (sheet === undefined) return { points: [], triangles: [], plane: null }
  const points = sheet.readings.map((reading, i): FloorReadingPoint => {
    const { x, y } = sheet.points[i] as PlanPoint
    return { id: reading.id, at: { x: quantise(x), y: quantise(y) }, z: reading.z }
  })
  const triangles = sheet.triangles.map((triangle): FloorTriangle => {
    const [a, b, c] = triangle.map((i) => (sheet.readings[i] as SurfaceReading).id)
    return { readings: [a as string, b as string, c as string] }
  })
  return { points, triangles, plane: planeThrough(floor, sheet) }
}

/** Null while any reading is unknown or has no place: the plane rests on all of them. */
function planeThrough(floor: Surface, sheet: Sheet): FloorSurface['plane'] {
  if (sheet.placed.length < floor.readings.length) return null
  const samples = sheet.placed.flatMap(({ reading: { z }, at }) => (hasValue(z) ? [{ at, z: z.value }] : []))
  const plane = samples.length < sheet.placed.length ? null : fitPlane(samples)
  if (plane === null) return null
  const slope = (part: number) => Math.round(part * 1e9) / 1e9 + 0
  const worst = quantise(worstOff(plane, samples))
  return { a: quantise(plane.a), b: slope(plane.b), c: slope(plane.c), worst }
}

/** Neighbouring readings with a slope between them that asks for more readings, and that is more than their precision. */
export function floorSteps(floor: Surface, chains: WallChains): readonly Finding[] {
  return floor.sheets.flatMap((sheet) => [
    ...edgesOf(sheet).flatMap((edge) => stepOn(sheet, edge, chains)),
    ...sheet.placed.flatMap(({ reading, at }) => readTwice(sheet, reading, at, chains)),
  ])
}

/** A reading in one place with another that counts before it, and that differs by more than their precision. */
function readTwice(
  sheet: Sheet,
  reading: SurfaceReading,
  at: PlanPoint,
  chains: WallChains,
): readonly Finding[] {
  const first = sheet.placed.find((other) => distance(other.at, at) <= SAME_POINT)?.reading
  if (first === undefined || first === reading) return []
  const fall = sum('mm', samePlace, [first.z], [reading.z])
  if (!hasValue(fall) || Math.abs(fall.value) <= fall.pm) return []
  return [saidBetween(first, reading, fall, chains, 'survey.read-twice', samePlace)]
}

type Edge = readonly [number, number]

/** Each edge of the triangles once, in order. */
function edgesOf({ triangles }: Sheet): readonly Edge[] {
  const edges = new Map<string, Edge>()
  for (const [a, b, c] of triangles) {
    for (const [i, k] of [
      [a, b],
      [b, c],
      [c, a],
    ] as const) {
      const edge: Edge = i < k ? [i, k] : [k, i]
      edges.set(edge.join(' '), edge)
    }
  }
  return [...edges.values()].sort((s, t) => s[0] - t[0] || s[1] - t[1])
}

function stepOn(sheet: Sheet, [i, k]: Edge, chains: WallChains): readonly Finding[] {
  const [a, b] = [sheet.readings[i], sheet.readings[k]] as [SurfaceReading, SurfaceReading]
  const apart = distance(sheet.points[i] as PlanPoint, sheet.points[k] as PlanPoint)
  const fall = sum('mm', stepPractice, [a.z], [b.z])
  if (!hasValue(fall) || Math.abs(fall.value) <= Math.max((STEEP * apart) / 1000, fall.pm)) return []
  const values = { apart: Math.round(apart) }
  return [saidBetween(a, b, fall, chains, 'survey.floor-step', stepPractice, values)]
}

function saidBetween(
  a: SurfaceReading,
  b: SurfaceReading,
  fall: ValueFigure,
  chains: WallChains,
  key: string,
  basis: Basis,
  values: Readonly<Record<string, number>> = {},
): Finding {
  const size = { ...fall, value: Math.abs(fall.value) }
  return finding({
    rule: 'floor-step',
    subjects: [a.id, b.id],
    weight: 'ask',
    where: { wall: (chains.walls[a.wall] as Wall).id, along: a.along },
    say: message(key, { a: a.id, b: b.id, fall: size, ...values }),
    figures: [fall],
    from: mergedIds([a, b].flatMap(({ along, out, z }) => [along.from, out.from, z.from])),
    basis,
    ask: message(`${key}.ask`, { a: a.id, b: b.id }),
  })
}
