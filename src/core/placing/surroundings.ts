import type { Obstacle, PlanPoint, WallId } from '../plan/types'
import {
  CONTACT,
  type Extents,
  extentsMeet,
  extentsOf,
  middleOf,
  type Polygon,
  type Prism,
  planDistance,
  planOverlap,
  pointInside,
} from './solid'

/** A piece of wall whose place is known, its left end first, seen from inside. */
export interface KnownWall {
  readonly wall: WallId
  readonly from: PlanPoint
  readonly to: PlanPoint
}

/** Everything fixed that a unit on its way must not go through. Room frame. */
export interface Room {
  /** Corner by corner, clockwise from above; null when it is not closed or a wall of it has no place. */
  readonly outline: readonly PlanPoint[] | null
  /** The wall from each corner to the next, in the same order; left out, walls are named by their number. */
  readonly outlineWalls?: readonly WallId[]
  /** Looked at only without an outline: the walls that do have a place. */
  readonly walls?: readonly KnownWall[]
  readonly obstacles: readonly Obstacle[]
  /** Highest floor under a convex polygon, lowest ceiling over it; null: not known, and then not tested. */
  readonly floorHighUnder: (polygon: readonly PlanPoint[]) => number | null
  /** The same of the floor among the readings alone, where it is not guessed; left out: all of it was read. */
  readonly floorReadUnder?: (polygon: readonly PlanPoint[]) => number | null
  readonly ceilingLowUnder: (polygon: readonly PlanPoint[]) => number | null
}

/** What stands for the walls: the whole outline, the walls that have a place, or nothing but what is behind the unit. */
export type WallsKnown = 'outline' | 'known-walls' | 'own-wall-only'

/** Something fixed: `id` is a wall's, an obstacle's, or `ceiling`, `floor`, `behind` (the wall at its back, unplaced). */
export interface FixedThing {
  readonly kind: 'wall' | 'obstacle' | 'ceiling' | 'floor' | 'behind'
  readonly id: string
}

interface Edge extends Extents {
  readonly thing: FixedThing
  readonly points: readonly [PlanPoint, PlanPoint]
}
/** A fixed upright block of any plan shape, made of its sides. */
interface Block extends Extents {
  readonly thing: FixedThing
  readonly polygon: Polygon
  readonly sides: readonly Edge[]
  readonly bottom: number
  readonly top: number
}

/** The room made ready for asking the same thing many times. */
export interface Surroundings {
  readonly room: Room
  readonly walls: WallsKnown
  readonly outline: Polygon | null
  readonly edges: readonly Edge[]
  readonly blocks: readonly Block[]
}

/** How far behind its face a wall without an outline counts as solid, mm. */
const WALL_BEHIND = 100

/** Makes a room ready for asking. */
export function surroundingsOf(room: Room): Surroundings {
  const outline = room.outline === null || room.outline.length < 3 ? null : withoutRepeats(room.outline)
  const pieces = outline === null ? (room.walls ?? []) : []
  const walls = outline !== null ? 'outline' : pieces.length > 0 ? 'known-walls' : 'own-wall-only'
  return {
    room,
    walls,
    outline,
    edges: outline === null ? [] : outlineEdges(outline, room.outlineWalls ?? []),
    blocks: [...pieces.map(wallBlock), ...room.obstacles.map(obstacleBlock)],
  }
}

function withoutRepeats(points: readonly PlanPoint[]): Polygon {
  return points.filter((point, i) => {
    const next = points[(i + 1) % points.length]
    return next === undefined || Math.abs(next.x - point.x) > 1e-6 || Math.abs(next.y - point.y) > 1e-6
  })
}

function outlineEdges(outline: Polygon, walls: readonly WallId[]): readonly Edge[] {
  return edgesOf(outline, (i) => ({ kind: 'wall', id: walls[i] ?? `wall ${i + 1}` }))
}

function edgesOf(polygon: Polygon, thing: (i: number) => FixedThing): readonly Edge[] {
  return polygon.flatMap((from, i) => {
    const to = polygon[(i + 1) % polygon.length]
    return to === undefined
      ? []
      : [{ thing: thing(i), points: [from, to] as const, ...extentsOf([from, to]) }]
  })
}

function wallBlock({ wall, from, to }: KnownWall): Block {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1
  // Walls run left to right seen from inside, so what is behind the face is on the left of the way along it.
  const bx = (-(to.y - from.y) / length) * WALL_BEHIND
  const by = ((to.x - from.x) / length) * WALL_BEHIND
  const polygon = [from, to, { x: to.x + bx, y: to.y + by }, { x: from.x + bx, y: from.y + by }]
  return blockOver({ kind: 'wall', id: wall }, polygon, null, null)
}

function obstacleBlock({ id, polygon, bottom, top }: Obstacle): Block {
  return blockOver({ kind: 'obstacle', id }, polygon, bottom, top)
}

function blockOver(thing: FixedThing, polygon: Polygon, bottom: number | null, top: number | null): Block {
  return {
    thing,
    polygon,
    sides: edgesOf(polygon, () => thing),
    bottom: bottom ?? Number.NEGATIVE_INFINITY,
    top: top ?? Number.POSITIVE_INFINITY,
    ...extentsOf(polygon),
  }
}

/** By thing id, how deep one may go into it: for a unit that already cuts into it where it stands. */
export type Slack = ReadonlyMap<string, number>
export const noSlack: Slack = new Map()

/**
 * The first fixed wall or obstacle that an upright prism goes into by more than contact, or null. Walls go all the way
 * up. The whole prism must lie inside the outline, whatever its shape.
 */
export function fixedInTheWay(around: Surroundings, prism: Prism, slack: Slack = noSlack): FixedThing | null {
  return wallInTheWay(around, prism, slack) ?? obstacleInTheWay(around, prism, slack)
}

function wallInTheWay({ outline, edges }: Surroundings, prism: Prism, slack: Slack): FixedThing | null {
  if (outline === null) return null
  for (const edge of edges) {
    if (pierces(edge, prism, slack.get(edge.thing.id) ?? CONTACT)) return edge.thing
  }
  // No wall cuts it, so it is inside as a whole or outside as a whole.
  if (pointInside(middleOf(prism.polygon), outline)) return null
  return nearestWall(edges, prism)
}

/** A wall edge is thin, so its extents may have no width: only being apart dismisses it. */
function pierces(edge: Edge, prism: Prism, tolerance: number): boolean {
  if (edge.x0 >= prism.x1 || edge.x1 <= prism.x0 || edge.y0 >= prism.y1 || edge.y1 <= prism.y0) return false
  return planOverlap(edge.points, prism.polygon) > tolerance
}

function nearestWall(edges: readonly Edge[], prism: Prism): FixedThing {
  let nearest: FixedThing = { kind: 'wall', id: 'wall' }
  let least = Number.POSITIVE_INFINITY
  for (const edge of edges) {
    const distance = planDistance(edge.points, prism.polygon)
    if (distance < least) {
      least = distance
      nearest = edge.thing
    }
  }
  return nearest
}

function obstacleInTheWay({ blocks }: Surroundings, prism: Prism, slack: Slack): FixedThing | null {
  for (const block of blocks) {
    if (enters(block, prism, slack.get(block.thing.id) ?? CONTACT)) return block.thing
  }
  return null
}

function enters(block: Block, prism: Prism, tolerance: number): boolean {
  if (block.top - prism.bottom <= tolerance || prism.top - block.bottom <= tolerance) return false
  if (!extentsMeet(block, prism, tolerance)) return false
  if (block.sides.some((side) => pierces(side, prism, tolerance))) return true
  return pointInside(middleOf(prism.polygon), block.polygon)
}

/** How deep a prism is in each wall and obstacle it goes into by more than contact. */
export function fixedCuts(
  around: Surroundings,
  prism: Prism,
): readonly { readonly thing: FixedThing; readonly by: number }[] {
  const cuts = [
    ...around.edges.map((edge) => ({ thing: edge.thing, by: planOverlap(edge.points, prism.polygon) })),
    ...around.blocks.map((block) => ({ thing: block.thing, by: cutBy(block, prism) })),
  ]
  return cuts.filter(({ by }) => by > CONTACT)
}

function cutBy(block: Block, prism: Prism): number {
  if (!enters(block, prism, CONTACT)) return 0
  const upright = Math.min(block.top - prism.bottom, prism.top - block.bottom)
  const plan = Math.max(...block.sides.map((side) => planOverlap(side.points, prism.polygon)))
  // Wholly inside the block no side of it is met; then it is in by its own size.
  return Math.min(upright, plan > CONTACT ? plan : Math.min(prism.x1 - prism.x0, prism.y1 - prism.y0))
}

/** Whether a fixed thing (its edge, or all corners of its plan) passes a test, for leaving it out of a reckoning. */
export type Leaving = (points: Polygon) => boolean

/** Distance from a prism to the nearest wall or obstacle, those that `leaving` takes out apart; Infinity without any. */
export function distanceToFixed(
  around: Surroundings,
  prism: Prism,
  leaving: Leaving,
  cutOff: number,
): number {
  let least = cutOff
  for (const edge of around.edges) {
    if (!nearer(edge, prism, least) || leaving(edge.points)) continue
    least = Math.min(least, planDistance(edge.points, prism.polygon))
  }
  for (const block of around.blocks) {
    if (!nearer(block, prism, least) || leaving(block.polygon)) continue
    const plan = enters(block, { ...prism, bottom: block.bottom, top: block.top }, 0)
      ? 0
      : Math.min(...block.sides.map((side) => planDistance(side.points, prism.polygon)))
    const upright = Math.max(0, block.bottom - prism.top, prism.bottom - block.top)
    least = Math.min(least, Math.sqrt(plan * plan + upright * upright))
  }
  return least
}

function nearer(a: Extents, b: Extents, than: number): boolean {
  return a.x0 - b.x1 < than && b.x0 - a.x1 < than && a.y0 - b.y1 < than && b.y0 - a.y1 < than
}
