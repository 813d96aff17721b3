import { quantise } from '../figure'
import type { LocalBox, PlacingPath, PlanPoint } from '../plan/types'
import { judgeRoute, type Mover } from './judge'
import { standUpWayOf } from './placed'
import type { Offset, Route } from './routes'
import { extentsOf, inUnit } from './solid'
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
function roomAround(
  pose: Parameters<typeof inUnit>[0],
  { outline }: Surroundings,
): ReturnType<typeof extentsOf> | null {
  return outline === null ? null : extentsOf(outline.map((point) => inUnit(pose, point)))
}

/**
 * Offsets to try: the grid, and where the lying head or the foot comes just clear of the far walls, so that a floor
 * hardly big enough is not missed between two steps of the grid. Those that cannot lie inside the room are left out.
 */
function spotsFor(
  bounds: LocalBox,
  over: Side,
  room: ReturnType<typeof extentsOf> | null,
  wanted: readonly PlanPoint[],
): readonly Offset[] {
  const height = bounds.z1 - bounds.z0
  const takes = {
    left: over === 'left' ? height : 0,
    right: over === 'right' ? height : 0,
    back: over === 'back' ? height : 0,
    front: over === 'front' ? height : 0,
  }
  const outs = [
    ...wanted.map(({ y }) => y),
    ...steps(STEPS, (i) => bounds.y1 + 100 + i * STEP_OUT),
    takes.back - bounds.y0 + COMFORTABLE,
    ...(room === null ? [] : [room.y1 - COMFORTABLE - takes.front - bounds.y1]),
  ]
  const rights = [
    0,
    ...wanted.map(({ x }) => x),
    ...steps(STEPS / 2, (i) => (i + 1) * STEP_ALONG),
    ...steps(STEPS / 2, (i) => -(i + 1) * STEP_ALONG),
    ...(room === null
      ? []
      : [room.x0 + COMFORTABLE + takes.left - bounds.x0, room.x1 - COMFORTABLE - takes.right - bounds.x1]),
  ]
  const fits = ({ right, out }: Offset): boolean =>
    room === null ||
    (right + bounds.x0 - takes.left >= room.x0 &&
      right + bounds.x1 + takes.right <= room.x1 &&
      out + bounds.y0 - takes.back >= room.y0 &&
      out + bounds.y1 + takes.front <= room.y1)
  return outs
    .filter((out) => out > 0)
    .flatMap((out) => rights.map((right) => ({ right: quantise(right), out: quantise(out) })))
    .filter(fits)
}

function steps(count: number, at: (i: number) => number): readonly number[] {
  return Array.from({ length: count }, (_, i) => at(i))
}
