import { expect, test } from 'vitest'
import { exactly } from '../../src/checker/measure'
import {
  area,
  depthInside,
  distanceTo,
  gapBetween,
  holdsPoint,
  hull,
  overlap,
  thinness,
} from '../../src/checker/polygon'
import { boxPolygon, centreOf, distance, inRoom, meets, samePose, sameSolid } from '../../src/checker/solids'
import {
  highestOver,
  isDelaunay,
  lowestOver,
  nearestLevel,
  ownTriangles,
  planeThrough,
  type Reading,
  surfaceOver,
  triangulationFault,
} from '../../src/checker/surface'
import { kindOfMove, sweptByMove, tiltFloor, tiltMeets, tiltOf, tiltTop } from '../../src/checker/sweep'
import type { LocalBox, Pose } from '../../src/core/plan/types'

/** Repeatable chance, so that a failure can be looked at again. */
function chance(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}

const square = (x: number, y: number, side: number) => [
  { x, y },
  { x: x + side, y },
  { x: x + side, y: y + side },
  { x, y: y + side },
]

test('areas, overlaps and gaps of plain squares', () => {
  expect(area(square(0, 0, 10))).toBe(100)
  expect(area(overlap(square(0, 0, 10), square(6, 7, 10)))).toBeCloseTo(12)
  expect(thinness(overlap(square(0, 0, 10), square(6, 7, 10)))).toBeCloseTo(3)
  expect(thinness(overlap(square(0, 0, 10), square(10, 0, 10)))).toBe(0)
  expect(gapBetween(square(0, 0, 10), square(13, 14, 10))).toBeCloseTo(5)
  expect(gapBetween(square(0, 0, 10), square(2, 2, 3))).toBe(0)
  expect(depthInside(square(0, 0, 10), { x: 2, y: 5 })).toBeCloseTo(2)
  expect(depthInside(square(0, 0, 10), { x: -1, y: 5 })).toBeCloseTo(-1)
  expect(distanceTo({ x: 3, y: 4 }, { x: 0, y: 0 }, { x: 0, y: 0 })).toBe(5)
  const ell = [
    ...square(0, 0, 10).slice(0, 2),
    { x: 10, y: 4 },
    { x: 4, y: 4 },
    { x: 4, y: 10 },
    { x: 0, y: 10 },
  ]
  expect(holdsPoint(ell, { x: 2, y: 8 })).toBe(true)
  expect(holdsPoint(ell, { x: 8, y: 8 })).toBe(false)
})

test('overlap of turned rectangles is the share of points that lie in both', () => {
  const next = chance(7)
  for (let i = 0; i < 8; i++) {
    const rectangle = () => {
      const pose: Pose = { x: next() * 100, y: next() * 100, z: 0, yaw: next() * 360 }
      return boxPolygon(pose, { x0: 0, x1: 20 + next() * 80, y0: 0, y1: 20 + next() * 80, z0: 0, z1: 1 })
    }
    const a = rectangle()
    const b = rectangle()
    expect(area(a)).toBeGreaterThan(0)
    let both = 0
    const step = 2
    for (let x = -200; x < 300; x += step)
      for (let y = -200; y < 300; y += step)
        if (depthInside(a, { x, y }) > 0 && depthInside(b, { x, y }) > 0) both += step * step
    expect(Math.abs(area(overlap(a, b)) - both)).toBeLessThan(400)
  }
})

test('a local point goes to the room as the frame says', () => {
  expect(inRoom({ x: 100, y: 50, z: 0, yaw: 0 }, 10, 20)).toEqual({ x: 110, y: 30 })
  const turned = inRoom({ x: 100, y: 50, z: 0, yaw: -90 }, 10, 20)
  expect(turned.x).toBeCloseTo(80)
  expect(turned.y).toBeCloseTo(40)
})

const box = (w: number, d: number, h: number): LocalBox => ({ x0: 0, x1: w, y0: 0, y1: d, z0: 0, z1: h })

test('solids that touch do not meet', () => {
  const at = (x: number, z: number) => ({ polygon: square(x, 0, 600), bottom: z, top: z + 720 })
  expect(meets(at(0, 0), at(600, 0))).toBe(false)
  expect(meets(at(0, 0), at(599, 0))).toBe(true)
  expect(meets(at(0, 0), at(0, 720))).toBe(false)
  expect(distance(at(0, 0), at(603, 724))).toBeCloseTo(5)
  expect(distance(at(0, 0), at(10, 10))).toBe(0)
})

test('a solid of several boxes is told by the space it fills', () => {
  const whole = [box(900, 560, 720)]
  const halves = [box(400, 560, 720), { ...box(900, 560, 720), x0: 300 }]
  expect(sameSolid(whole, halves)).toBe(true)
  expect(sameSolid(whole, [box(899, 560, 720)])).toBe(false)
  expect(centreOf(whole)).toEqual({ x: 450, y: 280 })
  expect(samePose({ x: 0, y: 0, z: 0, yaw: 180 }, { x: 0, y: 0.04, z: 0, yaw: -180 }, 0.05)).toBe(true)
})

test('a level move sweeps the hull of its ends, a plumb one its height', () => {
  const from: Pose = { x: 0, y: -900, z: 0, yaw: 0 }
  const to: Pose = { x: 0, y: 0, z: 0, yaw: 0 }
  const [swept] = sweptByMove([box(600, 300, 720)], from, to)
  expect(area(swept?.polygon ?? [])).toBeCloseTo(600 * 1200)
  expect(kindOfMove(from, to)).toBe('level')
  expect(kindOfMove(from, { ...from, z: 5 })).toBe('plumb')
  expect(kindOfMove(from, { ...to, z: 5 })).toBe('slanting')
})

test.each([
  [2000, 560, 2076.9],
  [2100, 580, 2178.6],
  [2150, 600, 2232.2],
  [2150, 370, 2181.6],
  [2330, 580, 2401.1],
])('stood up, %d by %d needs %d', (height, depth, needed) => {
  const tilt = tiltOf([box(600, depth, height)], { x: 0, y: 0, z: 0, yaw: 0 }, 'back')
  expect(tiltTop(tilt)).toBeCloseTo(needed, 1)
})

test('the swept shape of a stand-up is what turning the unit degree by degree passes over', () => {
  const next = chance(11)
  for (const over of ['back', 'front', 'left', 'right'] as const) {
    for (let i = 0; i < 60; i++) {
      const w = 300 + next() * 400
      const d = 300 + next() * 400
      const h = 1800 + next() * 500
      const upright: Pose = { x: next() * 1000, y: next() * 1000, z: 20, yaw: next() * 360 }
      const tilt = tiltOf([box(w, d, h)], upright, over)
      // A small cube somewhere about; it is met when one of its points lies in the unit at some angle.
      const lx = -h + next() * (2 * h + w)
      const ly = -h + next() * (2 * h + d)
      const lz = next() * 2600
      const side = 60
      const cube = {
        polygon: boxPolygon(upright, { x0: lx, x1: lx + side, y0: ly, y1: ly + side, z0: 0, z1: 1 }),
        bottom: 20 + lz,
        top: 20 + lz + side,
      }
      const passed = passesOver(over, w, d, h, [lx, ly, lz], side)
      expect(tiltMeets(tilt, cube)).toBe(passed)
    }
  }
})

/** Turns the unit about its bottom edge in quarter degrees and looks whether a point of the cube comes inside it. */
function passesOver(
  over: 'back' | 'front' | 'left' | 'right',
  w: number,
  d: number,
  h: number,
  [lx, ly, lz]: readonly [number, number, number],
  side: number,
): boolean {
  const endOn = over === 'back' || over === 'front'
  const along = endOn ? d : w
  const across = endOn ? w : d
  // In the plane of the turn: u from the edge towards where the unit stands, v across it.
  const flip = over === 'front' || over === 'right'
  const u0 = endOn ? ly : lx
  const [ua, ub] = flip ? [along - u0 - side, along - u0] : [u0, u0 + side]
  const v0 = endOn ? lx : ly
  if (v0 + side <= 0.2 || v0 >= across - 0.2) return false
  for (let angle = 0; angle <= 90; angle += 0.25) {
    const turn = (angle * Math.PI) / 180
    for (let i = 0; i <= 12; i++)
      for (let k = 0; k <= 12; k++) {
        const u = ua + ((ub - ua) * i) / 12
        const z = lz + (side * k) / 12
        // Turned back by the angle, is the point in the upright unit?
        const pu = u * Math.cos(turn) + z * Math.sin(turn)
        const pz = -u * Math.sin(turn) + z * Math.cos(turn)
        if (pu > 0.2 && pu < along - 0.2 && pz > 0.2 && pz < h - 0.2) return true
      }
  }
  return false
}

test('floor to keep clear is as long as the unit is high', () => {
  const tilt = tiltOf([box(600, 560, 2000)], { x: 0, y: 0, z: 0, yaw: 0 }, 'left')
  expect(area(tiltFloor(tilt))).toBeCloseTo((2000 + 600) * 560)
})

const reading = (id: string, x: number, y: number, z: number): Reading => ({
  id,
  at: { x, y },
  z: exactly(z),
})

test('the floor over a plane is that plane, inside the readings and outside', () => {
  const z = (x: number, y: number): number => -1000 + 0.004 * x - 0.003 * y
  const next = chance(3)
  const readings = Array.from({ length: 12 }, (_, i) => {
    const x = next() * 3000
    const y = next() * 600
    return reading(`r${i}`, x, y, z(x, y))
  })
  const floor = surfaceOver(readings, null, 'floor.readings')
  expect(triangulationFault(readings, floor.triangles)).toBeNull()
  for (let i = 0; i < 50; i++) {
    const p = { x: -500 + next() * 4000, y: -500 + next() * 1600 }
    expect(floor.at(p).value).toBeCloseTo(z(p.x, p.y), 6)
  }
  expect(planeThrough(readings)?.worst).toBeCloseTo(0, 6)
})

test('four readings on one circle: either pair of triangles will do, two overlapping ones will not', () => {
  const [a, b, c, d] = [
    reading('a', 0, 0, 0),
    reading('b', 600, 0, 5),
    reading('c', 600, 600, 0),
    reading('d', 0, 600, 0),
  ] as const
  const readings = [a, b, c, d]
  expect(ownTriangles(readings)).toHaveLength(2)
  expect(
    triangulationFault(readings, [
      [a, b, c],
      [a, c, d],
    ]),
  ).toBeNull()
  expect(
    triangulationFault(readings, [
      [a, b, d],
      [b, c, d],
    ]),
  ).toBeNull()
  expect(
    triangulationFault(readings, [
      [a, b, c],
      [a, b, d],
    ]),
  ).not.toBeNull()
  expect(triangulationFault(readings, [[a, b, c]])).not.toBeNull()
  // The choice matters: the middle of the square is 2.5 or 0.
  expect(
    surfaceOver(
      readings,
      [
        [a, b, d],
        [b, c, d],
      ],
      'f',
    ).at({ x: 300, y: 300 }).value,
  ).toBeCloseTo(2.5)
  expect(
    surfaceOver(
      readings,
      [
        [a, b, c],
        [a, c, d],
      ],
      'f',
    ).at({ x: 300, y: 300 }).value,
  ).toBeCloseTo(0)
  const inside = reading('e', 300, 100, 0)
  expect(isDelaunay([a, b, c], [...readings, inside])).toBe(false)
})

test('one unknown reading makes its triangles unknown, and everything outside', () => {
  const unread: Reading = {
    ...reading('d', 0, 600, 0),
    z: { value: null, assumed: false, missing: ['d'] },
  }
  const readings = [reading('a', 0, 0, 0), reading('b', 600, 0, 0), reading('c', 600, 500, 0), unread]
  const floor = surfaceOver(readings, null, 'f')
  expect(floor.at({ x: 500, y: 50 }).value).toBeCloseTo(0)
  expect(floor.at({ x: 50, y: 500 }).missing).toEqual(['d'])
  expect(floor.at({ x: 900, y: 50 }).missing).toEqual(['d'])
  // On the side between two that are known the third says nothing.
  expect(floor.at({ x: 300, y: 0 }).value).toBeCloseTo(0)
})

test('four on one circle, one of them unknown: known over one pair of triangles, not over the other', () => {
  const unread: Reading = { ...reading('c', 600, 600, 0), z: { value: null, assumed: false, missing: ['c'] } }
  const readings = [reading('a', 0, 0, 0), reading('b', 600, 0, 6), unread, reading('d', 0, 600, 0)]
  expect(nearestLevel(readings, { x: 200, y: 100 }, 2)?.value).toBeCloseTo(2)
  expect(nearestLevel(readings, { x: 200, y: 100 }, null)?.missing).toEqual(['c'])
})

test('two readings tell only of the straight between them', () => {
  const floor = surfaceOver([reading('a', 0, 0, -10), reading('b', 1000, 0, -20)], null, 'floor.readings')
  expect(floor.at({ x: 500, y: 0 }).value).toBeCloseTo(-15)
  expect(floor.at({ x: 0.5, y: 0.5 }).value).toBe(-10)
  expect(floor.at({ x: 500, y: 40 }).missing).toEqual(['floor.readings'])
})

test('highest and lowest over an area look at readings inside it, not only at its corners', () => {
  const readings = [
    ...square(0, 0, 1000).map((p, i) => reading(`r${i}`, p.x, p.y, 0)),
    reading('hump', 500, 500, 8),
  ]
  const floor = surfaceOver(readings, null, 'f')
  expect(highestOver(floor, square(300, 300, 400))).toBeCloseTo(8)
  expect(lowestOver(floor, square(300, 300, 400))).toBeCloseTo(4.8)
  expect(hull(readings.map((r) => r.at))).toHaveLength(4)
})
