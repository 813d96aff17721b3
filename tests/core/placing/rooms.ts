/** Invented rooms and units for the tests of the placing. */
import type { PlacedUnit, Room } from '../../../src/core/placing/paths'
import type { LocalBox, PlanPoint, Pose } from '../../../src/core/plan/types'

export const FLOOR = -900

export function box(width: number, depth: number, height: number): LocalBox {
  return { x0: 0, x1: width, y0: 0, y1: depth, z0: 0, z1: height }
}

/** A rectangle clockwise from above, its first wall along +x, the room at −y of it. */
export function rectangle(width: number, depth: number): readonly PlanPoint[] {
  return [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: -depth },
    { x: 0, y: -depth },
  ]
}

export function aRoom(
  outline: readonly PlanPoint[] | null,
  ceiling: number | null,
  more: Partial<Room> = {},
): Room {
  return {
    outline,
    obstacles: [],
    floorHighUnder: () => FLOOR,
    ceilingLowUnder: () => (ceiling === null ? null : FLOOR + ceiling),
    ...more,
  }
}

export function pose(x: number, y: number, z: number, yaw = 0): Pose {
  return { x, y, z, yaw }
}

export function aBase(unit: string, at: Pose, width = 600, depth = 560): PlacedUnit {
  return {
    unit,
    kind: 'base',
    wall: 'a',
    pose: at,
    solid: [box(width, depth, 720)],
    hung: false,
    hookLift: 0,
  }
}

export function aWallUnit(unit: string, at: Pose, width = 600): PlacedUnit {
  return { unit, kind: 'wall', wall: 'a', pose: at, solid: [box(width, 330, 720)], hung: true, hookLift: 15 }
}

export function aTall(unit: string, at: Pose, width = 600, height = 2000): PlacedUnit {
  return {
    unit,
    kind: 'tall',
    wall: 'a',
    pose: at,
    solid: [box(width, 580, height)],
    hung: false,
    hookLift: 0,
  }
}

/** A room with units round three walls: a run of talls, bases and wall units on each, `count` in all. */
export function aFullKitchen(count: number): { readonly units: readonly PlacedUnit[]; readonly room: Room } {
  const size = Math.max(5000, count * 170)
  const units: PlacedUnit[] = []
  const walls = [
    (s: number, z: number) => pose(s, 0, z, 0),
    (s: number, z: number) => pose(size, -s, z, 270),
    (s: number, z: number) => pose(size - s, -size, z, 180),
  ]
  for (const [w, at] of walls.entries()) {
    units.push(aTall(`tall-${w}`, at(700, FLOOR + 100)))
    for (let i = 0; units.length < ((w + 1) * count) / 3; i += 1) {
      units.push(aBase(`base-${w}-${i}`, at(1300 + i * 600, FLOOR + 150)))
      units.push(aWallUnit(`wall-${w}-${i}`, at(1300 + i * 600, FLOOR + 1400)))
    }
  }
  return { units: units.slice(0, count), room: aRoom(rectangle(size, size), 2400) }
}
