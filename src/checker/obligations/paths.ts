import type { LocalBox, Operation, PathSegment, PlacingPath, Pose } from '../../core/plan/types'
import { round } from '../agree'
import type { Case } from '../case'
import { ceilingOver, type FixedThing, fixedThings } from '../fixed-things'
import { gapBetween, holdsPoint, hull, type Polygon } from '../polygon'
import { boxesOf, finalPose, pathBlockers, saidToOverlap, standingSolid, tiltBlockers } from '../replay'
import { distance, meets, type Prism, prismsAt, samePose, turnBetween } from '../solids'
import { highestOver, highestSpanned } from '../surface'
import {
  type Feet,
  kindOfMove,
  sweptByMove,
  type Tilt,
  tiltFloor,
  tiltMeets,
  tiltOf,
  tiltSection,
  tiltTop,
} from '../sweep'

/** How much the plan's clearance may be above the one found here, mm. */
const CLEARANCE_SLACK = 0.5
/** Floor readings are good to about this, mm. */
const FLOOR_SLACK = 1
const CEILING_SLACK = 0.11
/** Where feet stand that nobody has listed, in from each side; common practice. */
const USUAL_INSET = { back: 50, front: 75, left: 50, right: 50 } as const
/** A unit set down on its legs, or on blocks, stands no higher than this. */
const ABOVE_FLOOR = 400

/**
 * Every way in, gone over again: unbroken, level or plumb, from free floor to the final pose, past everything fixed and
 * past every unit that stands by then in the plan's own order.
 */
export function checkPaths(c: Case): void {
  const fixed = fixedThings(c)
  const used = new Set(c.plan.operations.flatMap((op) => (op.path === null ? [] : [op.path])))
  c.plan.paths.forEach((path, i) => {
    if (!used.has(i)) c.refuse('path', path.unit, 'no operation goes this way')
    checkShape(c, path)
    checkAgainstFixed(c, path, fixed)
    checkSaid(c, path, fixed)
  })
  c.plan.operations.forEach((op, index) => {
    checkOperation(c, op, index)
  })
}

function checkOperation(c: Case, op: Operation, index: number): void {
  const placing = op.kind === 'place' || op.kind === 'hang'
  if (op.path === null) {
    const unit = op.on[0] ?? ''
    if (placing && finalPose(c, unit) !== null && boxesOf(c, unit) !== null && !saidToBeStuck(c, unit)) {
      c.refuse('path missing', op.id, 'its unit has a place and no way in')
    }
    return
  }
  const path = c.plan.paths[op.path]
  if (path === undefined) return
  if (!op.on.includes(path.unit)) c.refuse('path', op.id, `it goes the way of ${path.unit}`)
  const boxes = boxesOf(c, path.unit)
  if (boxes === null) return
  for (const segment of path.segments) {
    const mine = segment.kind === 'stand-up' ? op.kind === 'stand-up' : placing
    if (mine) checkAgainstUnits(c, op, path, boxes, segment, index)
  }
}

function saidToBeStuck(c: Case, unit: string): boolean {
  return c.plan.findings.some(
    (f) => (f.weight === 'stop' || f.rule === 'unit-in-something-fixed') && f.about.includes(unit),
  )
}

/** Units that have left the floor they were delivered to by an operation before this one. */
function standingBefore(c: Case, index: number, except: string): readonly string[] {
  return c.plan.operations
    .slice(0, index)
    .filter((op) => op.kind === 'place' || op.kind === 'hang')
    .flatMap((op) => op.on)
    .filter((id) => id !== except && c.units.has(id))
}

function checkAgainstUnits(
  c: Case,
  op: Operation,
  path: PlacingPath,
  boxes: readonly LocalBox[],
  segment: PathSegment,
  index: number,
): void {
  for (const id of standingBefore(c, index, path.unit)) {
    if (saidToOverlap(c, path.unit, id)) continue
    const there = standingSolid(c, id)
    const met =
      segment.kind === 'move'
        ? sweptByMove(boxes, segment.from, segment.to).some((s) => there.some((t) => meets(s, t)))
        : there.some((t) => tiltMeets(tiltOf(boxes, segment.upright, segment.over), t))
    if (met) c.refuse('path blocked', op.id, `by then ${id} stands in the way`)
  }
}

/** Unbroken, level or plumb, without turning, and ending where the unit is to be. */
function checkShape(c: Case, path: PlacingPath): void {
  const what = `path of ${path.unit}`
  const final = finalPose(c, path.unit)
  const last = path.segments.at(-1)
  if (last === undefined) {
    c.refuse('path', what, 'it has no segments')
    return
  }
  let here: Pose | null = null
  for (const segment of path.segments) {
    const start: Pose = segment.kind === 'move' ? segment.from : segment.upright
    if (here !== null && !samePose(here, start, 0.05)) {
      c.refuse('path', what, 'a segment does not start where the last one ended')
    }
    if (segment.kind === 'stand-up' && here !== null) {
      c.refuse('path', what, 'a unit is stood up before anything else')
    }
    if (segment.kind === 'move') checkMove(c, what, segment.from, segment.to)
    here = segment.kind === 'move' ? segment.to : segment.upright
  }
  if (final === null) {
    c.refuse('path', what, 'it leads to a place that is not known')
  } else if (here !== null && !samePose(here, final, 0.05)) {
    c.refuse('path', what, 'it does not end at the place that follows from the kitchen and the heights')
  }
}

function checkMove(c: Case, what: string, from: Pose, to: Pose): void {
  if (kindOfMove(from, to) === 'slanting') {
    c.refuse('path', what, 'a move is neither level nor plumb')
  }
  if (turnBetween(from.yaw, to.yaw) > 1e-3) c.refuse('path', what, 'a unit turns on the way')
}

/** Past walls, boxes, floor and ceiling: at the start, on every move, through every tilt. */
function checkAgainstFixed(c: Case, path: PlacingPath, fixed: readonly FixedThing[]): void {
  const boxes = boxesOf(c, path.unit)
  if (boxes === null) {
    c.refuse('path', `path of ${path.unit}`, 'the size of the unit is not known')
    return
  }
  for (const segment of path.segments) {
    if (segment.kind === 'move') checkSweep(c, path, sweptByMove(boxes, segment.from, segment.to), fixed)
    else checkTilt(c, path, tiltOf(boxes, segment.upright, segment.over), segment.blocks, fixed)
  }
  checkStart(c, path, boxes)
}

function checkSweep(c: Case, path: PlacingPath, swept: readonly Prism[], fixed: readonly FixedThing[]): void {
  const what = `path of ${path.unit}`
  const inPlace = standingSolid(c, path.unit)
  for (const { id, solid } of fixed) {
    // A unit whose very place is in something fixed: no way in is free, and the plan has to say so.
    if (saidToBeStuck(c, path.unit) && inPlace.some((s) => meets(s, solid))) continue
    if (swept.some((s) => meets(s, solid))) c.refuse('path blocked', what, `${id} is in the way`)
  }
  const sunk = saidToSink(c, path.unit)
  for (const { polygon, bottom, top } of swept) {
    const floor = highestOver(c.levels.floor, polygon)
    const ceiling = ceilingOver(c, polygon)
    // Where its very place is in the floor, and the plan says so, it goes in as deep as that and no deeper.
    if (floor !== null && bottom < floor - FLOOR_SLACK - sunk) {
      c.refuse('path blocked', what, `it goes ${round(floor - bottom)} under the floor`)
    }
    if (ceiling !== null && top > ceiling + CEILING_SLACK) {
      c.refuse('path blocked', what, `it goes ${round(top - ceiling)} into the ceiling`)
    }
  }
}

/**
 * How far the place of a unit lies in the floor by a plan that says so: in floor that was read only as what stops the
 * work, in floor that is guessed past the readings as what is to be asked. Nought where it is not said.
 */
function saidToSink(c: Case, unit: string): number {
  const said = c.plan.findings.filter((f) => f.about.includes(unit))
  const stopped = said.some((f) => f.weight === 'stop' && f.about.includes('floor'))
  const asked = said.some((f) => f.weight === 'ask' && f.rule === 'floor-not-read-under')
  const depths = standingSolid(c, unit).map(({ polygon, bottom }) => ({
    read: (highestSpanned(c.levels.floor, polygon) ?? bottom) - bottom,
    all: (highestOver(c.levels.floor, polygon) ?? bottom) - bottom,
  }))
  const read = Math.max(0, ...depths.map((d) => d.read))
  if (read > FLOOR_SLACK && !stopped) return 0
  return asked ? Math.max(read, ...depths.map((d) => d.all)) : read
}

function checkTilt(
  c: Case,
  path: PlacingPath,
  tilt: Tilt,
  blocks: number,
  fixed: readonly FixedThing[],
): void {
  const what = `path of ${path.unit}`
  if (c.units.get(path.unit)?.unit.kind !== 'tall') c.refuse('path', what, 'only a tall unit is stood up')
  for (const { id, solid } of fixed) {
    if (tiltMeets(tilt, solid)) c.refuse('path blocked', what, `${id} is in the way while it is stood up`)
  }
  const ceiling = ceilingOver(c, tiltFloor(tilt))
  const top = tiltTop(tilt, feetSwungOn(c, path.unit, tilt))
  if (ceiling !== null && top > ceiling + CEILING_SLACK) {
    c.refuse('path blocked', what, `its top corner goes ${round(top - ceiling)} into the ceiling`)
  }
  if (blocks < 0) c.refuse('path', what, 'it stands on blocks of less than nothing')
}

/** The first pose stands on the floor of the room, or on blocks on it, and not below. */
function checkStart(c: Case, path: PlacingPath, boxes: readonly LocalBox[]): void {
  const first = path.segments[0]
  if (first === undefined) return
  const start = first.kind === 'move' ? first.from : first.upright
  const prisms = prismsAt(start, boxes)
  const whole: Polygon = hull(prisms.flatMap((p) => p.polygon))
  const frame = c.room.frames.get(c.units.get(path.unit)?.wall ?? '')
  const out = Math.min(
    ...whole.map((p) => {
      const dx = p.x - (frame?.origin.x ?? 0)
      const dy = p.y - (frame?.origin.y ?? 0)
      return frame === undefined ? 0 : dx * frame.outDir.x + dy * frame.outDir.y
    }),
  )
  if (out < -0.1) c.refuse('path', `path of ${path.unit}`, 'it starts behind its own wall')
  const middle = { x: mean(whole.map((p) => p.x)), y: mean(whole.map((p) => p.y)) }
  const outline = [...c.room.frames.values()].map((f) => f.origin)
  const placed = [...c.room.frames.values()].every((f) => f.placed)
  if (c.room.closed && placed && !holdsPoint(outline, middle)) {
    c.refuse('path', `path of ${path.unit}`, 'it starts outside the room')
  }
  const floor = highestOver(c.levels.floor, whole)
  // A unit that stands this high in the end is set down at that height, whatever is under it.
  const final = finalPose(c, path.unit)?.z ?? start.z
  if (floor !== null && start.z > Math.max(floor + ABOVE_FLOOR, final + 0.1)) {
    c.refuse('path', `path of ${path.unit}`, `it starts ${round(start.z - floor)} above the floor`)
  }
}

function mean(values: readonly number[]): number {
  return values.reduce((total, v) => total + v, 0) / values.length
}

/** What the plan says of the path: who blocks it, and how close it comes to anything fixed. */
function checkSaid(c: Case, path: PlacingPath, fixed: readonly FixedThing[]): void {
  const what = `path of ${path.unit}`
  const blockers = new Set([...pathBlockers(c, path), ...tiltBlockers(c, path)])
  for (const id of blockers) {
    if (!path.blockedBy.includes(id)) c.refuse('path', what, `${id} would block it and is not named`)
  }
  const clearance = trueClearance(c, path, fixed)
  if (path.clearance < 0) c.refuse('path', what, 'its clearance is below nothing')
  // Walls that do not quite meet leave that much open.
  if (path.clearance > clearance + CLEARANCE_SLACK + (c.room.closed ? c.room.misses : 0)) {
    c.refuse('path', what, `it claims ${path.clearance} of clearance; there is ${round(clearance)}`)
  }
}

/** Least distance to boxes, other walls and the ceiling; its own wall, which it ends against, is left out. */
function trueClearance(c: Case, path: PlacingPath, fixed: readonly FixedThing[]): number {
  const boxes = boxesOf(c, path.unit) ?? []
  const own = c.units.get(path.unit)?.wall
  const around = fixed.filter((f) => f.wall === null || f.wall !== own)
  const distances = path.segments.flatMap((segment): readonly number[] => {
    if (segment.kind === 'stand-up')
      return tiltClearance(c, path.unit, tiltOf(boxes, segment.upright, segment.over), around)
    return sweptByMove(boxes, segment.from, segment.to).flatMap((swept) => [
      ...around.map((f) => distance(swept, f.solid)),
      headRoom(c, swept.polygon, swept.top),
    ])
  })
  return Math.max(0, Math.min(Number.POSITIVE_INFINITY, ...distances))
}

function tiltClearance(c: Case, unit: string, tilt: Tilt, around: readonly FixedThing[]): readonly number[] {
  const floor = tiltFloor(tilt)
  const top = tiltTop(tilt, feetSwungOn(c, unit, tilt))
  return [
    headRoom(c, floor, top),
    ...around.map((f) => {
      const section = tiltSection(tilt, f.solid.bottom - tilt.edge)
      return section === null ? f.solid.bottom - top : gapBetween(section, f.solid.polygon)
    }),
  ]
}

/** The feet a tall is swung on: only where its maker allows that, the plan does it, and all of them are known. */
function feetSwungOn(c: Case, unit: string, tilt: Tilt): Feet | null {
  const plan = c.plan.units.find((u) => u.unit === unit)
  const given = c.units.get(unit)?.unit
  if (plan?.standUp?.pivot !== 'feet' || given === undefined || given.legs.maySwing !== true) return null
  const leg = given.legs.min.value
  const insets =
    given.feet.length === 0
      ? [USUAL_INSET[tilt.over]]
      : given.feet.map(({ x, y }) => insetFrom(tilt, x.value, y.value))
  if (leg === null || insets.some((i) => i === null)) return null
  return { leg, inset: Math.min(...(insets as number[])) }
}

function insetFrom({ over, width, depth }: Tilt, x: number | null, y: number | null): number | null {
  if (x === null || y === null) return null
  return { back: y, front: depth - y, left: x, right: width - x }[over]
}

function headRoom(c: Case, over: Polygon, top: number): number {
  const ceiling = ceilingOver(c, over)
  return ceiling === null ? Number.POSITIVE_INFINITY : ceiling - top
}
