import { type Figure, hasValue, valueOf } from '../figure'
import { add, direction, scale } from '../geometry/point'
import type { Kitchen, Wall } from '../kitchen/schema'
import type { PlanPoint, WallId } from '../plan/types'
import { insideAngle } from './corner'

/** Where a wall starts on a plan and which way it runs; `out` points into the room. */
export interface Frame {
  readonly origin: PlanPoint
  /** Degrees anticlockwise from +x. */
  readonly heading: number
  readonly along: PlanPoint
  readonly out: PlanPoint
}

/**
 * The walls in order, and which of them hang together. A chain is a stretch of walls with every length and corner
 * between them known: within it places can be compared, past a break they cannot. The first chain is the room's frame.
 */
export interface WallChains {
  readonly walls: readonly Wall[]
  /** Inside angle at each wall's right end. */
  readonly corners: readonly Figure[]
  readonly indexOf: ReadonlyMap<WallId, number>
  /** For each wall, the index of the first wall of its chain. */
  readonly chainOf: readonly number[]
  /** Each wall on the plan of its own chain, whose first wall runs from (0, 0) along +x. */
  readonly frames: readonly Frame[]
}

export const startFrame: Frame = frameAt({ x: 0, y: 0 }, 0)

function frameAt(origin: PlanPoint, heading: number): Frame {
  const along = direction(heading)
  return { origin, heading, along, out: { x: along.y + 0, y: -along.x + 0 } }
}

/** The next wall's frame: at the right end, turned clockwise by what the inside angle leaves to a straight line. */
export function frameAfter(frame: Frame, length: number, angle: number): Frame {
  return frameAt(add(frame.origin, scale(frame.along, length)), frame.heading - (180 - angle))
}

export function pointIn(frame: Frame, along: number, out: number): PlanPoint {
  const { origin, along: u, out: v } = frame
  return { x: origin.x + (u.x * along + v.x * out), y: origin.y + (u.y * along + v.y * out) }
}

export function chainWalls(kitchen: Kitchen): WallChains {
  const { walls } = kitchen
  const corners = walls.map((wall) => insideAngle(wall.cornerRight))
  const indexOf = new Map(walls.map((wall, i) => [wall.id, i]))
  const chainOf: number[] = []
  const frames: Frame[] = []
  walls.forEach((_, i) => {
    const before = i - 1
    const length = i === 0 ? undefined : valueOf((walls[before] as Wall).length)
    const angle = i === 0 ? undefined : valueOf(corners[before] as Figure)
    const hangs = length !== undefined && angle !== undefined
    chainOf.push(hangs ? (chainOf[before] as number) : i)
    frames.push(hangs ? frameAfter(frames[before] as Frame, length, angle) : startFrame)
  })
  return { walls, corners, indexOf, chainOf, frames }
}

/** The lengths and corners that place the walls from one to another: length, corner, length, corner … */
export function linksBetween({ walls, corners }: WallChains, first: number, last: number): readonly Figure[] {
  const links: Figure[] = []
  for (let i = first; i < last; i++) links.push((walls[i] as Wall).length, corners[i] as Figure)
  return links
}

/** The frames of a stretch of walls from its lengths and corners, the first at the start. */
export function framesAlong(links: readonly number[]): readonly Frame[] {
  const frames = [startFrame]
  for (let i = 0; i + 1 < links.length; i += 2) {
    frames.push(frameAfter(frames[i / 2] as Frame, links[i] as number, links[i + 1] as number))
  }
  return frames
}

/** Whether the walls up to this one are all known well enough to say where it stands in the room. */
export function isPlaced(chains: WallChains, index: number): boolean {
  return chains.chainOf[index] === 0
}

export function allKnown(figures: readonly Figure[]): boolean {
  return figures.every(hasValue)
}
