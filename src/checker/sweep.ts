import type { LocalBox, Pose } from '../core/plan/types'
import { hull, overlap, type Polygon, thinness } from './polygon'
import { boxPolygon, type Prism } from './solids'

/**
 * What a unit sweeps on its way. A level move of a box sweeps the smallest convex polygon round its two ends, over its
 * own height; a move straight up or down sweeps its own polygon over both heights. Both are exact.
 */
export function sweptByMove(boxes: readonly LocalBox[], from: Pose, to: Pose): readonly Prism[] {
  return boxes.map((box) => ({
    polygon: hull([...boxPolygon(from, box), ...boxPolygon(to, box)]),
    bottom: Math.min(from.z, to.z) + box.z0,
    top: Math.max(from.z, to.z) + box.z1,
  }))
}

/** How a move goes: level, straight up or down, or neither, which nobody can carry. */
export function kindOfMove(from: Pose, to: Pose): 'level' | 'plumb' | 'slanting' {
  const along = Math.hypot(to.x - from.x, to.y - from.y)
  const up = Math.abs(to.z - from.z)
  if (up < 1e-3) return 'level'
  return along < 1e-3 ? 'plumb' : 'slanting'
}

export type Side = 'back' | 'front' | 'left' | 'right'

/**
 * What a unit sweeps while it is stood up, turning through a quarter about one bottom edge. In the plane of the turn,
 * with the edge at the origin, the lying unit reaching to −H and the upright one to +s, every point of the swept shape
 * lies between those two and within R = √(H² + s²) of the edge, and every such point above the edge is swept: the far top
 * corner runs on the arc of radius R, and below the arc all is passed over. The shape is convex and narrows upwards.
 */
export interface Tilt {
  readonly upright: Pose
  readonly over: Side
  readonly height: number
  /** Size of the unit in the plane of the turn, and across it. */
  readonly reach: number
  readonly across: number
  readonly width: number
  readonly depth: number
  readonly radius: number
  /** Height of the edge it turns about. */
  readonly edge: number
}

export function tiltOf(boxes: readonly LocalBox[], upright: Pose, over: Side): Tilt {
  const width = Math.max(...boxes.map((b) => b.x1))
  const depth = Math.max(...boxes.map((b) => b.y1))
  const height = Math.max(...boxes.map((b) => b.z1))
  const endOn = over === 'back' || over === 'front'
  const reach = endOn ? depth : width
  return {
    upright,
    over,
    height,
    reach,
    across: endOn ? width : depth,
    width,
    depth,
    radius: Math.hypot(height, reach),
    edge: upright.z,
  }
}

/** Cut through the swept shape at a height above the edge: a rectangle on the plan, null above the arc. */
export function tiltSection(tilt: Tilt, above: number): Polygon | null {
  const z = Math.max(0, above)
  if (z >= tilt.radius) return null
  const arc = Math.sqrt(tilt.radius ** 2 - z ** 2)
  const lying = Math.min(tilt.height, arc)
  const standing = Math.min(tilt.reach, arc)
  return sectionPolygon(tilt, lying, standing)
}

function sectionPolygon(tilt: Tilt, lying: number, standing: number): Polygon {
  const { upright, width, depth } = tilt
  const corners: Readonly<Record<Side, readonly [number, number, number, number]>> = {
    back: [0, width, -lying, standing],
    front: [0, width, depth - standing, depth + lying],
    left: [-lying, standing, 0, depth],
    right: [width - standing, width + lying, 0, depth],
  }
  const [x0, x1, y0, y1] = corners[tilt.over]
  return boxPolygon(upright, { x0, x1, y0, y1, z0: 0, z1: 1 })
}

/** Floor that must be kept clear while it is stood up. */
export function tiltFloor(tilt: Tilt): Polygon {
  return sectionPolygon(tilt, tilt.height, tilt.reach)
}

/** Exact: the swept shape narrows upwards, so a solid is touched first at its own lowest level. */
export function tiltMeets(tilt: Tilt, solid: Prism): boolean {
  if (solid.top - tilt.edge < 0.11) return false
  const section = tiltSection(tilt, solid.bottom - tilt.edge + 0.11)
  return section !== null && thinness(overlap(section, solid.polygon)) > 0.11
}

/** Legs wound right in, and how far in from the edge it turns over the nearest foot stands. */
export interface Feet {
  readonly leg: number
  readonly inset: number
}

/**
 * Top of the arc over the floor it passes, re the line. Swung on its feet it turns about its bare edge on the floor until
 * they touch and about the foot from then on, so it never stands a leg and a whole diagonal high at once.
 */
export function tiltTop(tilt: Tilt, feet: Feet | null = null): number {
  if (feet === null) return tilt.edge + tilt.radius
  const floor = tilt.edge - feet.leg
  return floor + Math.max(tilt.radius, Math.hypot(tilt.height + feet.leg, tilt.reach - feet.inset))
}
