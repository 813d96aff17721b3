import type { LocalBox, PathSegment, Pose, RoomPoint } from './types'

/** How far a unit still leans from upright, in degrees about one bottom edge of its carcass: 90 lies, 0 stands. */
export interface Tilt {
  readonly over: 'back' | 'front' | 'left' | 'right'
  readonly angle: number
}

/** Where a unit is on its way: the pose it would have upright, and its lean. */
export interface Carriage {
  readonly pose: Pose
  readonly tilt: Tilt | null
}

/** Outer size of a unit: its width, depth and height as one box from its back left bottom corner. */
export interface Extent {
  readonly width: number
  readonly depth: number
  readonly height: number
}

/** The box round all parts of a solid. An arm that reaches behind or left of the corner doesn't occur. */
export function extentOf(solid: readonly LocalBox[]): Extent {
  return {
    width: Math.max(0, ...solid.map((b) => b.x1)),
    depth: Math.max(0, ...solid.map((b) => b.y1)),
    height: Math.max(0, ...solid.map((b) => b.z1)),
  }
}

/** The box around all boxes of a solid, mm. */
export function boxAround(solid: readonly LocalBox[]): LocalBox {
  const least = (of: (b: LocalBox) => number) => Math.min(...solid.map(of))
  const most = (of: (b: LocalBox) => number) => Math.max(...solid.map(of))
  return {
    x0: least((b) => b.x0),
    x1: most((b) => b.x1),
    y0: least((b) => b.y0),
    y1: most((b) => b.y1),
    z0: least((b) => b.z0),
    z1: most((b) => b.z1),
  }
}

const radians = (degrees: number) => (degrees * Math.PI) / 180

/** A point of the unit's own frame, turned about the edge it leans over. Upright it stays as it is. */
function leaned(tilt: Tilt | null, extent: Extent, p: RoomPoint): RoomPoint {
  if (tilt === null || tilt.angle === 0) return p
  const c = Math.cos(radians(tilt.angle))
  const s = Math.sin(radians(tilt.angle))
  const turned = (out: number) => ({ out: out * c - p.z * s, z: out * s + p.z * c })
  switch (tilt.over) {
    case 'back': {
      const { out, z } = turned(p.y)
      return { x: p.x, y: out, z }
    }
    case 'front': {
      const { out, z } = turned(extent.depth - p.y)
      return { x: p.x, y: extent.depth - out, z }
    }
    case 'left': {
      const { out, z } = turned(p.x)
      return { x: out, y: p.y, z }
    }
    case 'right': {
      const { out, z } = turned(extent.width - p.x)
      return { x: extent.width - out, y: p.y, z }
    }
  }
}

/** A point of the unit's own frame, in the room. */
export function roomPoint(at: Carriage, extent: Extent, local: RoomPoint): RoomPoint {
  const { pose } = at
  const p = leaned(at.tilt, extent, local)
  const c = Math.cos(radians(pose.yaw))
  const s = Math.sin(radians(pose.yaw))
  return { x: pose.x + p.x * c + p.y * s, y: pose.y + p.x * s - p.y * c, z: pose.z + p.z }
}

/** Where a piece of a path begins. */
export function startOf(segment: PathSegment): Carriage {
  if (segment.kind === 'move') return { pose: segment.from, tilt: null }
  return { pose: segment.upright, tilt: { over: segment.over, angle: 90 } }
}

/** Where a piece of a path ends: always upright. */
export function endOf(segment: PathSegment): Carriage {
  return { pose: segment.kind === 'move' ? segment.to : segment.upright, tilt: null }
}

/** Length of a piece, mm: of a move straight, of a stand-up the arc of the unit's middle about the edge. */
function lengthOf(segment: PathSegment, extent: Extent): number {
  if (segment.kind === 'move') {
    const { from, to } = segment
    return Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z)
  }
  const across = segment.over === 'back' || segment.over === 'front' ? extent.depth : extent.width
  return (Math.PI / 4) * Math.hypot(extent.height, across)
}

function between(a: number, b: number, f: number): number {
  return f === 0 ? a : f === 1 ? b : a + (b - a) * f
}

/** Part-way through one piece, f in 0..1. A turn of yaw goes the shorter way round. */
function within(segment: PathSegment, f: number): Carriage {
  if (f <= 0) return startOf(segment)
  if (f >= 1) return endOf(segment)
  if (segment.kind === 'stand-up') {
    return { pose: segment.upright, tilt: { over: segment.over, angle: 90 * (1 - f) } }
  }
  const { from, to } = segment
  const turn = ((((to.yaw - from.yaw) % 360) + 540) % 360) - 180
  return {
    pose: {
      x: between(from.x, to.x, f),
      y: between(from.y, to.y, f),
      z: between(from.z, to.z, f),
      yaw: turn === 0 ? from.yaw : from.yaw + turn * f,
    },
    tilt: null,
  }
}

/**
 * Where a unit is at t in 0..1 of a path, counted by length so that it moves at one pace. Exactly the path's own start
 * and end at 0 and 1. Null for a path without pieces.
 */
export function travel(segments: readonly PathSegment[], extent: Extent, t: number): Carriage | null {
  const first = segments[0]
  const last = segments[segments.length - 1]
  if (first === undefined || last === undefined) return null
  if (t <= 0) return startOf(first)
  if (t >= 1) return endOf(last)
  const lengths = segments.map((s) => lengthOf(s, extent))
  let left = t * lengths.reduce((sum, l) => sum + l, 0)
  for (const [i, segment] of segments.entries()) {
    const length = lengths[i] ?? 0
    if (left <= length && length > 0) return within(segment, left / length)
    left -= length
  }
  return endOf(last)
}
