import type { LocalBox, PlacingPath, Pose } from '../core/plan/types'
import { type Case, oncePerCase, underside } from './case'
import { overlap, thinness } from './polygon'
import { isCarcass } from './positions'
import { carcassBoxes, meets, type Prism, poseAgainst, prismsAt } from './solids'
import { sweptByMove, tiltFloor, tiltMeets, tiltOf } from './sweep'

/** The final pose of a unit as it follows from the kitchen and the heights chosen; null when something of it is unknown. */
export function finalPose(c: Case, unit: string): Pose | null {
  const at = c.units.get(unit)
  const frame = at === undefined ? undefined : c.room.frames.get(at.wall)
  const z = underside(c, unit).value
  if (at === undefined || frame === undefined || !frame.placed || z === null) return null
  if (at.left.value === null || at.out.value === null) return null
  return poseAgainst(frame, at.left.value, at.out.value, z)
}

/** Carcass of a unit in its own frame: the file's sizes, or the plan's where the file leaves them open and the plan marks them assumed. */
export function boxesOf(c: Case, unit: string): readonly LocalBox[] | null {
  const at = c.units.get(unit)
  if (at === undefined || !isCarcass(at.unit)) return null
  const own = carcassBoxes(at.unit)
  if (own !== null) return own
  const plan = c.planUnits.get(unit)
  const sizes = plan === undefined ? [] : [plan.width, plan.height, plan.depth]
  return sizes.some((f) => f.state === 'assumed') ? (plan?.solid ?? null) : null
}

/** The unit as it stands in the end. */
export function standingSolid(c: Case, unit: string): readonly Prism[] {
  return standingSolids(c).get(unit) ?? []
}

const standingSolids = oncePerCase((c): ReadonlyMap<string, readonly Prism[]> => {
  const solids = [...c.units.keys()].map((unit) => {
    const pose = finalPose(c, unit)
    const boxes = boxesOf(c, unit)
    return [unit, pose === null || boxes === null ? [] : prismsAt(pose, boxes)] as const
  })
  return new Map(solids)
})

/** Everything a unit sweeps on the moves of its path. */
export function sweptSolid(c: Case, path: PlacingPath): readonly Prism[] {
  const boxes = boxesOf(c, path.unit)
  if (boxes === null) return []
  return path.segments.flatMap((s) => (s.kind === 'move' ? sweptByMove(boxes, s.from, s.to) : []))
}

function others(c: Case, unit: string): readonly string[] {
  return [...c.units.keys()].filter((id) => id !== unit)
}

/** Units that, standing in their place, would be met on the moves of a path. */
export function pathBlockers(c: Case, path: PlacingPath): readonly string[] {
  return allPathBlockers(c).get(path) ?? []
}

const allPathBlockers = oncePerCase((c) => new Map(c.plan.paths.map((path) => [path, blockersOf(c, path)])))

/** Two units whose places overlap, with a finding that stops the work for it: no order brings both in. */
export function saidToOverlap(c: Case, one: string, other: string): boolean {
  const said = c.plan.findings.some(
    (f) => f.weight === 'stop' && f.about.includes(one) && f.about.includes(other),
  )
  const solid = standingSolid(c, other)
  return said && standingSolid(c, one).some((a) => solid.some((b) => meets(a, b)))
}

function blockersOf(c: Case, path: PlacingPath): readonly string[] {
  const swept = sweptSolid(c, path)
  return others(c, path.unit)
    .filter((id) => !saidToOverlap(c, path.unit, id))
    .filter((id) => standingSolid(c, id).some((solid) => swept.some((s) => meets(s, solid))))
}

/** Units that, standing in their place, would be met while this one is stood up, or would take up the floor it needs. */
export function tiltBlockers(c: Case, path: PlacingPath): readonly string[] {
  const boxes = boxesOf(c, path.unit)
  if (boxes === null) return []
  const tilts = path.segments.flatMap((s) =>
    s.kind === 'stand-up' ? [tiltOf(boxes, s.upright, s.over)] : [],
  )
  return others(c, path.unit).filter(
    (id) =>
      !saidToOverlap(c, path.unit, id) &&
      standingSolid(c, id).some((solid) => tilts.some((tilt) => tiltMeets(tilt, solid))),
  )
}

/** Units standing on floor that is to be kept clear while another is stood up, whether or not the arc would meet them. */
export function onTiltFloor(c: Case, path: PlacingPath): readonly string[] {
  const boxes = boxesOf(c, path.unit)
  if (boxes === null) return []
  const floors = path.segments.flatMap((s) =>
    s.kind === 'stand-up' ? [tiltFloor(tiltOf(boxes, s.upright, s.over))] : [],
  )
  return others(c, path.unit).filter((id) =>
    standingSolid(c, id).some((solid) => floors.some((f) => thinness(overlap(f, solid.polygon)) > 0.11)),
  )
}
