import { quantise } from '../figure'
import type { LocalBox, PlacingPath, PlanPoint, Pose } from '../plan/types'
import { judgeRoute, type Mover } from './judge'
import { standUpWayOf } from './placed'
import type { Offset, Route } from './routes'
import { type Extents, extentsOf, inUnit } from './solid'
import type { FixedThing, Surroundings } from './surroundings'
import type { Side } from './sweep'

/**
 * Where on the floor a tall unit is stood up: it lies with its head over one of four directions, swings up about its
 * foot's edge, and is then walked straight out of there to its place, never turned.
 *
 * Tried on a fixed grid before its place, side by side of the best ones first, nearest first, so the same room always
 * gives the same spot.
 */

/** Grid out from and along the wall, mm. */
const STEP_OUT = 200
const STEP_ALONG = 300
const STEPS = 16
/** A spot this clear of everything fixed, with nobody in its way, is taken at once. */
export const COMFORTABLE = 50
/** Spots looked at with units in their way before the best of them is taken, each side. */
const ENOUGH = 24

export interface StandUpSearch {
  /** Best first: fewest units in the way, then clear of what is fixed (up to `COMFORTABLE`), then as tried. */
  readonly found: readonly PlacingPath[]
  /** For each side tried in vain, what stood in the way nearest to its place. */
  readonly refused: ReadonlyMap<Side, FixedThing>
}

/** Ways of standing a unit up and walking it in. Nothing found: no floor, or no height, is free of fixed things. */
export function findStandUp(mover: Mover, around: Surroundings, hint: PlanPoint | null): StandUpSearch {
  const way = standUpWayOf(mover.body.placed)
  const found: PlacingPath[] = []
  const refused = new Map<Side, FixedThing>()
  for (const over of way?.sides ?? []) {
    const side = trySide(mover, around, over, hint)
    if (side.refused !== null) refused.set(over, side.refused)
    found.push(...side.found)
    if (found.some(isFreeAndComfortable)) break
  }
  return { found: ranked(found), refused }
}

function trySide(
  mover: Mover,
  around: Surroundings,
  over: Side,
  hint: PlanPoint | null,
): { readonly found: readonly PlacingPath[]; readonly refused: FixedThing | null } {
  const found: PlacingPath[] = []
  let refused: FixedThing | null = null
  for (const route of standUpRoutes(mover, around, over, hint)) {
    const verdict = judgeRoute(mover, route, around)
    if (verdict.ok) found.push(verdict.path)
    else refused = refused ?? verdict.inTheWay
    if (found.length >= ENOUGH || (verdict.ok && isFreeAndComfortable(verdict.path))) break
  }
  return { found, refused: found.length > 0 ? null : refused }
}

function isFreeAndComfortable(path: PlacingPath): boolean {
  return path.blockedBy.length === 0 && path.clearance >= COMFORTABLE
}

function ranked(found: readonly PlacingPath[]): readonly PlacingPath[] {
  const comfort = (path: PlacingPath): number => Math.min(path.clearance, COMFORTABLE)
  // The sort is stable, so what ties stays as tried.
  return [...found].sort((a, b) => a.blockedBy.length - b.blockedBy.length || comfort(b) - comfort(a))
}

/** Routes of one side, nearest to its place (or to where the user lets units be set down) first. */
function standUpRoutes(
  { body }: Mover,
  around: Surroundings,
  over: Side,
  hint: PlanPoint | null,
): readonly Route[] {
  const target = hint === null ? { x: 0, y: 0 } : hintOffset(body.bounds, inUnit(body.placed.pose, hint))
  const wanted = hint === null ? [] : [target]
  const spots = spotsFor(body.bounds, over, roomAround(body.placed.pose, around), wanted)
  const order = spots.map((spot, i) => ({ spot, i, far: farFrom(spot, target) }))
  order.sort((a, b) => a.far - b.far || a.i - b.i)
  return order.flatMap(({ spot }) => LIFTS.map((lift) => routeFrom(spot, over, lift)))
}

/** Walked in hardly off the floor. */
const LIFTS = [10] as const

function hintOffset(bounds: LocalBox, at: PlanPoint): PlanPoint {
  return { x: at.x - (bounds.x0 + bounds.x1) / 2, y: at.y - (bounds.y0 + bounds.y1) / 2 }
}

function farFrom({ right, out }: Offset, { x, y }: PlanPoint): number {
  return quantise(Math.abs(right - x) + Math.abs(out - y))
}

function routeFrom(spot: Offset, over: Side, lift: number): Route {
  const across = spot.right === 0 ? [] : [{ right: 0, out: spot.out }]
  return { approach: 'front', stops: [spot, ...across, { right: 0, out: 0 }], over, lift }
}

/** The outline in the unit's own plan; null: not known, then the grid alone is tried. */
function roomAround(pose: Pose, { outline }: Surroundings): Extents | null {
  return outline === null ? null : extentsOf(outline.map((point) => inUnit(pose, point)))
}

/** What it takes of the floor while it is stood up, in its own plan where it ends up upright. */
function floorTaken(bounds: LocalBox, over: Side): Extents {
  const height = bounds.z1 - bounds.z0
  return {
    x0: bounds.x0 - (over === 'left' ? height : 0),
    x1: bounds.x1 + (over === 'right' ? height : 0),
    y0: bounds.y0 - (over === 'back' ? height : 0),
    y1: bounds.y1 + (over === 'front' ? height : 0),
  }
}

/**
 * Offsets to try: where the user wants it, the grid, and in a known room also just clear of its far walls and in its
 * middle, so that a floor hardly big enough is not missed between two steps of the grid. Those that cannot lie inside
 * the room are left out.
 */
function spotsFor(
  bounds: LocalBox,
  over: Side,
  room: Extents | null,
  wanted: readonly PlanPoint[],
): readonly Offset[] {
  const taken = floorTaken(bounds, over)
  const outs = [
    ...wanted.map(({ y }) => y),
    ...steps(STEPS, (i) => bounds.y1 + 100 + i * STEP_OUT),
    COMFORTABLE - taken.y0,
    ...(room === null ? [] : tightIn(room.y0, room.y1, taken.y0, taken.y1)),
  ]
  const rights = [
    0,
    ...wanted.map(({ x }) => x),
    ...steps(STEPS / 2, (i) => (i + 1) * STEP_ALONG),
    ...steps(STEPS / 2, (i) => -(i + 1) * STEP_ALONG),
    ...(room === null ? [] : tightIn(room.x0, room.x1, taken.x0, taken.x1)),
  ]
  const fits = ({ right, out }: Offset): boolean =>
    room === null ||
    (right + taken.x0 >= room.x0 &&
      right + taken.x1 <= room.x1 &&
      out + taken.y0 >= room.y0 &&
      out + taken.y1 <= room.y1)
  return outs
    .filter((out) => out > 0)
    .flatMap((out) => rights.map((right) => ({ right: quantise(right), out: quantise(out) })))
    .filter(fits)
}

/** Just clear of the one wall, just clear of the other, in the middle between them. */
function tightIn(low: number, high: number, takenLow: number, takenHigh: number): readonly number[] {
  const first = low + COMFORTABLE - takenLow
  const last = high - COMFORTABLE - takenHigh
  return [first, last, (first + last) / 2]
}

function steps(count: number, at: (i: number) => number): readonly number[] {
  return Array.from({ length: count }, (_, i) => at(i))
}
