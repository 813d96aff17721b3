/** Bodies on the plan, against a polygon-clipping library from elsewhere: by the area two shapes have in common. */
import clip, { type Polygon as Clipped } from 'polygon-clipping'
import { expect, test } from 'vitest'
import { distanceOutside, pointInPolygon } from '../../src/core/geometry/polygon'
import { type Leaf, leafAt, sweptLeaf } from '../../src/core/geometry/swept-leaf'
import { convexHull, inRoom, planDistance, planOverlap, sweptHull } from '../../src/core/placing/solid'
import type { PlanPoint } from '../../src/core/plan/types'
import { type Random, randomFrom } from '../support/prng'

const CASES = 500
type Shape = readonly PlanPoint[]

const ring = (shape: Shape): Clipped => [shape.map(({ x, y }) => [x, y])]

function areaOf(shapes: readonly Clipped[]): number {
  const ringArea = (points: readonly (readonly [number, number])[]): number =>
    points.reduce((sum, [x, y], i) => {
      const [nx, ny] = points[(i + 1) % points.length] as readonly [number, number]
      return sum + (x * ny - nx * y) / 2
    }, 0)
  return shapes.reduce((sum, [outer, ...holes]) => {
    const holed = holes.reduce((all, hole) => all + Math.abs(ringArea(hole)), 0)
    return sum + Math.abs(ringArea(outer ?? [])) - holed
  }, 0)
}

const common = (a: Shape, b: Shape): number => areaOf(clip.intersection(ring(a), ring(b)))

/** A unit's footprint somewhere in a room of 3 by 3 m, turned any way. */
function footprintOf(random: Random): Shape {
  const pose = {
    x: random.step(0, 3000, 0.5),
    y: random.step(-3000, 0, 0.5),
    z: 0,
    yaw: random.step(0, 360, 0.25),
  }
  const [w, d] = [random.step(100, 1200, 1), random.step(50, 700, 1)]
  const corners: readonly (readonly [number, number])[] = [
    [0, 0],
    [w, 0],
    [w, d],
    [0, d],
  ]
  return corners.map(([x, y]) => inRoom(pose, x, y))
}

function shifted(shape: Shape, x: number, y: number): Shape {
  return shape.map((p) => ({ x: p.x + x, y: p.y + y }))
}

test(`${CASES} pairs of units: they are in each other just where they have floor in common`, () => {
  let meeting = 0
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed)
    const [a, b] = [footprintOf(random), footprintOf(random)]
    const overlap = planOverlap(a, b)
    if (Math.abs(overlap) < 1e-6) continue
    expect(overlap > 0, `seed ${seed}`).toBe(common(a, b) > 1e-9)
    if (overlap > 0) meeting++
  }
  console.log(`clipping: ${CASES} pairs, ${meeting} meet`)
  expect(meeting).toBeGreaterThan(CASES / 20)
})

test(`${CASES} pairs that meet: pushed apart by what is said, and no less, they part`, () => {
  let pushed = 0
  for (let seed = 0; pushed < CASES && seed < CASES * 20; seed++) {
    const random = randomFrom(seed + 50_000)
    const [a, b] = [footprintOf(random), footprintOf(random)]
    const overlap = planOverlap(a, b)
    if (overlap < 1) continue
    pushed++
    // Tried every degree and at right angles to every side, half a millimetre less than said never parts them.
    const ways = [...Array.from({ length: 36 }, (_, i) => (i * Math.PI) / 18), ...[a, b].flatMap(normals)]
    const parted = (by: number) =>
      ways.filter((t) => common(shifted(a, Math.cos(t) * by, Math.sin(t) * by), b) < 1e-6).length
    expect(parted(overlap - 0.5), `seed ${seed}`).toBe(0)
    expect(parted(overlap + 0.01), `seed ${seed}`).toBeGreaterThan(0)
  }
  expect(pushed).toBe(CASES)
})

/** Sides of the many-sided figure that stands for a circle. */
const ROUND = 360

/** A convex shape and all within a distance of it. */
function grown(shape: Shape, by: number): Shape {
  return convexHull(
    shape.flatMap((p) =>
      Array.from({ length: ROUND }, (_, i) => {
        const turn = (2 * Math.PI * i) / ROUND
        return { x: p.x + by * Math.cos(turn), y: p.y + by * Math.sin(turn) }
      }),
    ),
  )
}

function normals(shape: Shape): readonly number[] {
  return shape.flatMap((p, i) => {
    const q = shape[(i + 1) % shape.length] as PlanPoint
    const across = Math.atan2(q.y - p.y, q.x - p.x) + Math.PI / 2
    return [across, across + Math.PI]
  })
}

test(`${CASES} pairs that do not: grown by their distance they touch, and not by less`, () => {
  let apart = 0
  for (let seed = 0; apart < CASES && seed < CASES * 20; seed++) {
    const random = randomFrom(seed + 90_000)
    const [a, b] = [footprintOf(random), footprintOf(random)]
    const distance = planDistance(a, b)
    if (distance < 1) continue
    apart++
    // Grown all round by a little less than the distance they have nothing in common, by a little more they have.
    expect(common(grown(a, distance - 0.05), b), `seed ${seed}`).toBe(0)
    expect(
      common(grown(a, (distance + 0.05) / Math.cos(Math.PI / ROUND)), b),
      `seed ${seed}`,
    ).toBeGreaterThan(0)
  }
  expect(apart).toBe(CASES)
})

test(`${CASES} pushes: what is passed over is what every place on the way covers, joined`, () => {
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed + 20_000)
    const shape = footprintOf(random)
    const [dx, dy] = [random.step(-900, 900, 1), random.step(-900, 900, 1)]
    const hull = sweptHull(shape, dx, dy)
    const places = Array.from({ length: 21 }, (_, i) => shifted(shape, (dx * i) / 20, (dy * i) / 20))
    const joined = areaOf(clip.union(ring(places[0] as Shape), ...places.slice(1).map(ring)))
    const swept = areaOf([ring(hull)])
    // Twenty steps leave small notches: the joined area is never more, and by less than one step's width short.
    expect(swept - joined, `seed ${seed}`).toBeGreaterThan(-1e-3)
    const notch = (Math.hypot(dx, dy) / 20) ** 2 * 20
    expect(swept - joined, `seed ${seed}`).toBeLessThan(notch + 1)
  }
})

test(`${CASES} leaves: wherever the door is, the clipping library finds it inside what it sweeps, and not much else`, () => {
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed + 30_000)
    const leaf: Leaf = {
      pivot: { x: random.step(0, 3000, 1), y: random.step(-3000, 0, 1) },
      shut: random.step(0, 360, 0.5),
      opens: random.pick(['clockwise', 'anticlockwise'] as const),
      width: random.step(200, 900, 1),
      thickness: random.step(15, 45, 1),
      handle: random.chance(0.5) ? random.step(20, 60, 1) : 0,
      handleBack: 60,
      handleEdge: 20,
    }
    const to = random.int(5, 170)
    const slices = sweptLeaf(leaf, 0, to)
    const angle = random.next() * to
    const here = slices.filter((s) => s.from <= angle && angle <= s.to)
    for (const part of leafAt(leaf, angle)) {
      const outside = here.map((s) => areaOf(clip.difference(ring(part), ring(s.polygon))))
      expect(Math.min(...outside), `seed ${seed} at ${angle}`).toBeLessThan(1e-3)
    }
    // And nothing is swept that the leaf does not come within a tenth of a millimetre of.
    const slice = random.pick(slices)
    const near = Array.from({ length: 21 }, (_, i) =>
      leafAt(leaf, slice.from + ((slice.to - slice.from) * i) / 20),
    ).flat()
    for (const point of slice.polygon) {
      const nearest = Math.min(...near.map((part) => distanceOutside(part, point)))
      expect(nearest, `seed ${seed} at ${slice.from}`).toBeLessThan(0.1)
    }
  }
})

test(`${CASES} points and hulls: inside just where a small square round the point has floor in common`, () => {
  let inside = 0
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed + 40_000)
    const points = Array.from({ length: random.int(3, 9) }, () => ({
      x: random.step(0, 1000, 1),
      y: random.step(0, 1000, 1),
    }))
    const hull = convexHull(points)
    if (hull.length < 3) continue
    const p = { x: random.step(0, 1000, 1) + 0.37, y: random.step(0, 1000, 1) + 0.41 }
    const square = [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ].map(([x = 0, y = 0]) => ({ x: p.x + x * 1e-3, y: p.y + y * 1e-3 }))
    const share = common(square, hull) / 4e-6
    if (share > 0.01 && share < 0.99) continue
    expect(pointInPolygon(hull, p), `seed ${seed}`).toBe(share > 0.5)
    if (share > 0.5) inside++
  }
  expect(inside).toBeGreaterThan(CASES / 10)
})
