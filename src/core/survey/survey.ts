import { type Basis, type Figure, known, quantise, unknown } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { AlongPosition, HeightPosition, Kitchen, Place, Wall } from '../kitchen/schema'
import type { Finding, FloorSurface, PlanPoint, WallFrame, WallId } from '../plan/types'
import type { RegionPack } from '../region/region'
import { alongFromLeft } from './along'
import { ceilingReadings, lowestCeiling } from './ceiling'
import { drawnFloor, floorReadings, floorSteps } from './floor'
import { heightFromLine, isAboveFloor } from './height'
import { outlineFindings, outlineOf } from './outline'
import { type Surface, surfaceThrough } from './surface'
import { chainWalls, type Frame, isPlaced, pointIn, type WallChains } from './wall-chain'

/** The survey worked out: the plan, and the questions everything else asks of it. Lengths mm, heights re the line. */
export interface Survey {
  readonly frames: readonly WallFrame[]
  readonly frame: (wall: WallId) => WallFrame | undefined
  /** A place along a wall from its left end, whichever end and face it was measured from. */
  readonly along: (wall: WallId, position: AlongPosition) => Figure
  /** A height re the line; `at` says where, for a height given above the floor. */
  readonly height: (
    position: HeightPosition,
    at?: { readonly wall: WallId; readonly along: Figure; readonly out: Figure },
  ) => Figure
  /** A point on the plan of the room; null when the wall has no place in it. */
  readonly toRoom: (wall: WallId, along: number, out: number) => PlanPoint | null
  readonly floorAt: (wall: WallId, along: Figure, out: Figure) => Figure
  /** How far a place lies outside the floor readings; 0 among them, null when that cannot be said. */
  readonly floorOutsideBy: (wall: WallId, along: Figure, out: Figure) => number | null
  /** Floor readings that have a place in the room, their triangles, and the plane through them. */
  readonly points: FloorSurface['points']
  readonly triangles: FloorSurface['triangles']
  readonly plane: FloorSurface['plane']
  /** The ceiling over one place, straight between the readings round it. */
  readonly ceilingAt: (wall: WallId, along: Figure, out: Figure) => Figure
  /** The lowest ceiling over a stretch of wall, out to `out` from the wall, or from `near` where that is given. */
  readonly ceilingOver: (wall: WallId, from: Figure, to: Figure, out: Figure, near?: Figure) => Figure
  /** Ceiling readings that have a place in the room, and their triangles. */
  readonly ceiling: Pick<FloorSurface, 'points' | 'triangles'>
  /** Corners of the room, clockwise; where the walls do not close, the last wall's right end too. Null: not all known. */
  readonly outline: readonly PlanPoint[] | null
  readonly findings: readonly Finding[]
}

const leftEnd: Basis = { kind: 'geometry', why: 'the left end of the wall' }
/** The ceiling "over a wall" is read over this depth in front of it, as deep as base units are. Common practice. */
const OVER_A_WALL = 600
const AT_THE_WALL = known(0, 0, 'mm', [], { kind: 'geometry', why: 'from the face of the wall' })

/** Works out the plan, the floor and the ceiling from what was measured. Nothing is filled in for what was not. */
export function workOutSurvey(kitchen: Kitchen, _region: RegionPack | null): Survey {
  const chains = chainWalls(kitchen)
  const floor = surfaceThrough(chains, floorReadings(kitchen, chains), 'floor.readings')
  const lookUp = lookUps(kitchen, chains, floor)
  const frames = chains.walls.map((wall, i) => frameOf(chains, wall, i, lookUp.ceilingOver))
  const byId = new Map(frames.map((frame) => [frame.wall, frame]))
  return {
    frames,
    frame: (wall) => byId.get(wall),
    ...lookUp,
    ...drawnFloor(floor),
    outline: outlineOf(kitchen, chains),
    findings: [...outlineFindings(kitchen, chains), ...floorSteps(floor, chains)],
  }
}

type LookUps = Pick<
  Survey,
  'along' | 'height' | 'toRoom' | 'floorAt' | 'floorOutsideBy' | 'ceilingAt' | 'ceilingOver' | 'ceiling'
>

function lookUps(kitchen: Kitchen, chains: WallChains, floor: Surface): LookUps {
  const along = (wall: WallId, position: AlongPosition): Figure => {
    const known = wallNamed(chains, wall)
    return known === undefined ? noSuchWall(wall) : alongFromLeft(known, position)
  }
  const floorAt = (wall: WallId, at: Figure, out: Figure): Figure => {
    const index = chains.indexOf.get(wall)
    return index === undefined ? noSuchWall(wall) : floor.heightAt(index, at, out)
  }
  const floorAtPlace = ({ wall, along: at, out }: Place) => floorAt(wall, along(wall, at), out)
  const readings = ceilingReadings(kitchen, chains, floorAtPlace)
  const ceiling = surfaceThrough(chains, readings, 'ceiling')
  return {
    along,
    floorAt,
    height: (position, at) => {
      const isFromFloor = at !== undefined && isAboveFloor(position)
      return heightFromLine(kitchen, position, isFromFloor ? floorAt(at.wall, at.along, at.out) : null)
    },
    toRoom: (wall, x, out) => {
      const index = chains.indexOf.get(wall)
      if (index === undefined || !isPlaced(chains, index)) return null
      const point = pointIn(chains.frames[index] as Frame, x, out)
      return { x: quantise(point.x), y: quantise(point.y) }
    },
    floorOutsideBy: (wall, at, out) => {
      const index = chains.indexOf.get(wall)
      return index === undefined ? null : floor.outsideBy(index, at, out)
    },
    ceilingAt: (wall, at, out) => {
      const index = chains.indexOf.get(wall)
      return index === undefined ? noSuchWall(wall) : ceiling.heightAt(index, at, out)
    },
    ceilingOver: (wall, from, to, out, near = AT_THE_WALL) => {
      const index = chains.indexOf.get(wall)
      if (index === undefined) return noSuchWall(wall)
      return lowestCeiling(ceiling, chains, { wall: index, from, to, out, near })
    },
    ceiling: drawnFloor(ceiling),
  }
}

function wallNamed(chains: WallChains, id: WallId): Wall | undefined {
  const index = chains.indexOf.get(id)
  return index === undefined ? undefined : chains.walls[index]
}

function noSuchWall(id: WallId): Figure {
  return unknown('mm', [factId('walls', id)])
}

function frameOf(
  chains: WallChains,
  wall: Wall,
  index: number,
  ceilingOver: Survey['ceilingOver'],
): WallFrame {
  const { origin, along, out } = chains.frames[index] as Frame
  const from = known(0, 0, 'mm', [], leftEnd)
  const depth = known(OVER_A_WALL, 0, 'mm', [], leftEnd)
  return {
    wall: wall.id,
    name: wall.name ?? `wall ${wall.id}`,
    origin: { x: quantise(origin.x), y: quantise(origin.y) },
    alongDir: along,
    outDir: out,
    length: wall.length,
    cornerRight: chains.corners[index] as Figure,
    ceiling: ceilingOver(wall.id, from, wall.length, depth),
    placed: isPlaced(chains, index),
  }
}
