import { type Basis, derive, type Figure, hasValue, quantise } from '../figure'
import type { Kitchen } from '../kitchen/schema'
import { message } from '../message'
import { finding } from '../plan/finding'
import type { Finding, PlanPoint } from '../plan/types'
import { type Frame, framesAlong, isPlaced, linksBetween, pointIn, type WallChains } from './wall-chain'

const walked: Basis = {
  kind: 'geometry',
  why: 'the walls walked in order, by their lengths and inside angles',
}
const closingPractice: Basis = {
  kind: 'common-practice',
  why: 'walls measured all the way round should come back to within 10 mm of where they began, and the precision of the lengths',
}
const MAY_MISS = 10

function rounded({ x, y }: PlanPoint): PlanPoint {
  return { x: quantise(x), y: quantise(y) }
}

/**
 * The corners of the room on the plan: every wall's left end and, where the walls do not go all the way round, the last
 * one's right end. Null while any wall has no place in the room.
 */
export function outlineOf(kitchen: Kitchen, chains: WallChains): readonly PlanPoint[] | null {
  const last = chains.walls.length - 1
  const length = chains.walls[last]?.length
  if (last < 0 || length === undefined || !isPlaced(chains, last)) return null
  const corners = chains.frames.map(({ origin }) => rounded(origin))
  if (kitchen.closed === true) return corners
  if (!hasValue(length)) return null
  return [...corners, rounded(pointIn(chains.frames[last] as Frame, length.value, 0))]
}

/** By how much a walk round the room misses its own start; unknown while a length or a corner on the way is. */
export function missOf(chains: WallChains): Figure {
  const last = chains.walls.length - 1
  const links = last < 0 ? [] : linksBetween(chains, 0, last)
  const ends = chains.walls.slice(-1).map(({ length }) => length)
  return derive('mm', walked, [...links, ...ends], (...values) => {
    const frames = framesAlong(values.slice(0, -1))
    const { x, y } = pointIn(frames.at(-1) as Frame, values.at(-1) ?? 0, 0)
    return Math.hypot(x, y)
  })
}

/** Asked when the walls are said to go all the way round and do not come back to where they began. */
export function outlineFindings(kitchen: Kitchen, chains: WallChains): readonly Finding[] {
  if (kitchen.closed !== true || chains.walls.length < 3) return []
  const miss = missOf(chains)
  if (!hasValue(miss) || miss.value <= MAY_MISS + miss.pm) return []
  return [
    finding({
      rule: 'outline-does-not-close',
      subjects: ['room'],
      weight: 'ask',
      about: chains.walls.map(({ id }) => id),
      say: message('survey.outline-does-not-close', { miss, allowed: MAY_MISS }),
      figures: [miss],
      basis: closingPractice,
      ask: message('survey.outline-does-not-close.ask'),
    }),
  ]
}
