/**
 * The placing against slow, independent reckoning: sampled motion, every order tried, random rooms with fixed seeds.
 */
import { describe, expect, test } from 'vitest'
import { blockingGraphs, knots, type RoomBox, SIX_WAYS } from '../../src/core/placing/blocking'
import { choosePaths } from '../../src/core/placing/eliminate'
import { candidatePaths, type PlacedUnit, pathRefusedBy, type Room } from '../../src/core/placing/paths'
import { inUnit, type Prism, prismOver, rectangleInRoom } from '../../src/core/placing/solid'
import { type Side, sweepOf } from '../../src/core/placing/sweep'
import type { LocalBox, Obstacle, PathSegment, PlacingPath, PlanPoint } from '../../src/core/plan/types'
import { aBase, aRoom, aTall, aWallUnit, FLOOR, pose } from '../core/placing/rooms'

/** A small generator with a seed, so that a failure names the room it happened in. */
function randomFrom(seed: number): (low: number, high: number) => number {
  let state = seed * 2654435761 + 1
  const next = (): number => {
    state = (Math.imul(state ^ (state >>> 15), 2246822519) + 3266489917) >>> 0
    return (state ^ (state >>> 13)) >>> 0
  }
  for (let i = 0; i < 4; i += 1) next()
  return (low, high) => low + (next() / 4294967296) * (high - low)
}
const whole = (random: (low: number, high: number) => number, low: number, high: number): number =>
  Math.floor(random(low, high + 1))
const pick = <T>(random: (low: number, high: number) => number, list: readonly T[]): T =>
  list[Math.min(list.length - 1, Math.floor(random(0, list.length)))] as T

interface Point extends PlanPoint {
  readonly z: number
}

/** Where a point of a unit (local mm) is at a moment 0..1 of a segment: the definition, written out. */
function pointAt(segment: PathSegment, bounds: LocalBox, local: Point, t: number): Point {
  if (segment.kind === 'move') {
    const { from, to } = segment
    const at = {
      ...from,
      x: from.x + t * (to.x - from.x),
      y: from.y + t * (to.y - from.y),
      z: from.z + t * (to.z - from.z),
    }
    return { ...toRoom(at, local.x, local.y), z: at.z + local.z }
  }
  const angle = (t * Math.PI) / 2
  const h = local.z - bounds.z0
  const s = {
    back: local.y - bounds.y0,
    front: bounds.y1 - local.y,
    left: local.x - bounds.x0,
    right: bounds.x1 - local.x,
  }[segment.over]
  const away = s * Math.sin(angle) - h * Math.cos(angle)
  const x = { back: local.x, front: local.x, left: bounds.x0 + away, right: bounds.x1 - away }[segment.over]
  const y = { back: bounds.y0 + away, front: bounds.y1 - away, left: local.y, right: local.y }[segment.over]
  return {
    ...toRoom(segment.upright, x, y),
    z: segment.upright.z + bounds.z0 + h * Math.sin(angle) + s * Math.cos(angle),
  }
}
function toRoom(at: { x: number; y: number; yaw: number }, x: number, y: number): PlanPoint {
  const a = (at.yaw * Math.PI) / 180
  return { x: at.x + x * Math.cos(a) + y * Math.sin(a), y: at.y + x * Math.sin(a) - y * Math.cos(a) }
}
const within = (prism: Prism, { x, y, z }: Point, slack = 1e-6): boolean => {
  if (z < prism.bottom - slack || z > prism.top + slack) return false
  const signs = prism.polygon.map((p, i) => {
    const q = prism.polygon[(i + 1) % prism.polygon.length] ?? p
    return ((q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x)) / Math.hypot(q.x - p.x, q.y - p.y)
  })
  return signs.every((s) => s > -slack) || signs.every((s) => s < slack)
}
function boundsOf(boxes: readonly LocalBox[]): LocalBox {
  const low = (key: 'x0' | 'y0' | 'z0'): number => Math.min(...boxes.map((b) => b[key]))
  const high = (key: 'x1' | 'y1' | 'z1'): number => Math.max(...boxes.map((b) => b[key]))
  return { x0: low('x0'), x1: high('x1'), y0: low('y0'), y1: high('y1'), z0: low('z0'), z1: high('z1') }
}
function randomBox(random: (low: number, high: number) => number): LocalBox {
  const [x0, y0, z0] = [random(-100, 100), random(-100, 100), random(0, 100)]
  return { x0, x1: x0 + random(200, 900), y0, y1: y0 + random(200, 700), z0, z1: z0 + random(200, 2300) }
}
const pointIn = (random: (low: number, high: number) => number, b: LocalBox): Point => ({
  x: pick(random, [b.x0, b.x1, random(b.x0, b.x1)]),
  y: pick(random, [b.y0, b.y1, random(b.y0, b.y1)]),
  z: pick(random, [b.z0, b.z1, random(b.z0, b.z1)]),
})

describe('what a segment passes through holds every place it is ever in', () => {
  test.each(['move', 'stand-up'] as const)('%s', (kind) => {
    for (let seed = 1; seed <= 400; seed += 1) {
      const random = randomFrom(seed)
      const boxes = Array.from({ length: whole(random, 1, 2) }, () => randomBox(random))
      const bounds = boundsOf(boxes)
      const at = pose(random(-5000, 5000), random(-5000, 5000), random(-900, 0), random(0, 360))
      const level = random(0, 1) < 0.6
      const to = level
        ? { ...at, x: at.x + random(-2000, 2000), y: at.y + random(-2000, 2000) }
        : { ...at, z: at.z + random(-500, 500) }
      const over = pick(random, ['back', 'front', 'left', 'right'] as readonly Side[])
      const segment: PathSegment =
        kind === 'move' ? { kind, from: at, to } : { kind, upright: at, over, blocks: random(0, 60) }
      const swept = sweepOf(boxes, segment)
      for (let i = 0; i < 40; i += 1) {
        const t = pick(random, [0, 1, random(0, 1)])
        const point = pointAt(segment, bounds, pointIn(random, pick(random, boxes)), t)
        expect(
          swept.some((prism) => within(prism, point)),
          `seed ${seed}, point ${i}`,
        ).toBe(true)
      }
      if (kind === 'stand-up') {
        const side = over === 'back' || over === 'front' ? bounds.y1 - bounds.y0 : bounds.x1 - bounds.x0
        const most = Math.max(...swept.map((prism) => prism.top)) - at.z - bounds.z0
        const diagonal = Math.hypot(bounds.z1 - bounds.z0, side)
        if (boxes.length === 1) expect(most).toBeCloseTo(diagonal, 9)
        else expect(most).toBeLessThanOrEqual(diagonal + 1e-9)
      }
    }
  })
})

interface Scene {
  readonly unit: PlacedUnit
  readonly room: Room
  readonly path: PlacingPath
}
/** A room of any size turned any way, with one unit against its first wall. */
function randomScene(seed: number): Scene {
  const random = randomFrom(seed)
  const [width, depth, yaw] = [random(3500, 6000), random(3200, 5000), random(0, 360)]
  const corner = pose(random(-3000, 3000), random(-3000, 3000), 0, yaw)
  const outline = rectangleInRoom(corner, 0, width, 0, depth)
  const at = (x: number, z: number) => ({ ...toRoom(corner, x, 0.05), z, yaw })
  const x = random(1, width - 650)
  const unit = pick(random, [
    aBase('u', at(x, FLOOR + 150)),
    aWallUnit('u', at(x, FLOOR + 1400)),
    aTall('u', at(x, FLOOR + 60), 600, random(1900, 2200)),
  ])
  const room = aRoom(outline, 2400)
  const path = candidatePaths([unit], room).candidates.get('u')?.[0]
  if (path === undefined) throw new Error(`no path in the room of seed ${seed}`)
  return { unit, room, path }
}
const cube = (middle: Point, half: number, yaw: number): Obstacle => ({
  id: 'mutation',
  polygon: rectangleInRoom(
    { ...toRoom({ ...middle, yaw }, -half, -half), z: 0, yaw },
    0,
    2 * half,
    0,
    2 * half,
  ),
  bottom: middle.z - half,
  top: middle.z + half,
})

describe('an obstacle put in the way', () => {
  test('on any path, anywhere on it: the path is refused, and none found instead goes through it (1,000 rooms)', () => {
    for (let seed = 1; seed <= 1000; seed += 1) {
      const { unit, room, path } = randomScene(seed)
      expect(pathRefusedBy(path, unit, room), `seed ${seed}`).toBeNull()
      const random = randomFrom(seed + 5000)
      const bounds = boundsOf(unit.solid)
      const on = pointAt(pick(random, path.segments), bounds, pointIn(random, bounds), random(0, 1))
      const obstacle = cube(on, random(5, 120), random(0, 360))
      const changed = { ...room, obstacles: [obstacle] }
      expect(pathRefusedBy(path, unit, changed)?.id, `seed ${seed}`).toBe('mutation')
      for (const other of candidatePaths([unit], changed).candidates.get('u') ?? []) {
        expect(other.segments).not.toEqual(path.segments)
        expect(touches(other, unit, obstacle), `seed ${seed}: ${other.approach}`).toBe(false)
      }
    }
  })

  test('beside the way it refuses nothing: no path is lost for something a hand away from it', () => {
    let beside = 0
    for (let seed = 1; seed <= 300; seed += 1) {
      const { unit, room, path } = randomScene(seed)
      const random = randomFrom(seed + 9000)
      const { pose: stood } = unit
      const middle = { ...toRoom(stood, random(-1500, 2500), random(0, 2500)), z: FLOOR + random(50, 2300) }
      const obstacle = cube(middle, 40, random(0, 360))
      if (nearerThan(path, unit, obstacle, 150)) continue
      beside += 1
      expect(pathRefusedBy(path, unit, { ...room, obstacles: [obstacle] }), `seed ${seed}`).toBeNull()
    }
    expect(beside).toBeGreaterThan(100)
  })
})

/** Samples an obstacle's points against the unit's boxes through the whole motion, pulled back into the unit's frame. */
function nearerThan(
  path: PlacingPath,
  unit: PlacedUnit,
  { polygon, bottom, top }: Obstacle,
  than: number,
): boolean {
  const [a, b, c, d] = polygon as [PlanPoint, PlanPoint, PlanPoint, PlanPoint]
  const [low, high] = [bottom ?? 0, top ?? 0]
  const middle = { x: (a.x + c.x) / 2, y: (a.y + c.y) / 2, z: (low + high) / 2 }
  const corners = [a, b, c, d].flatMap((p) => [low, high].map((z) => ({ ...p, z })))
  const points = [middle, ...corners]
  const bounds = boundsOf(unit.solid)
  return path.segments.some((segment) =>
    Array.from({ length: 41 }, (_, i) => i / 40).some((t) =>
      points.some((point) => isIn(bounds, localAt(segment, bounds, point, t), than)),
    ),
  )
}
function touches(path: PlacingPath, unit: PlacedUnit, obstacle: Obstacle): boolean {
  return nearerThan(path, unit, obstacle, -0.2)
}
function isIn(b: LocalBox, { x, y, z }: Point, by: number): boolean {
  return x > b.x0 - by && x < b.x1 + by && y > b.y0 - by && y < b.y1 + by && z > b.z0 - by && z < b.z1 + by
}
/** The other way round of `pointAt`. */
function localAt(segment: PathSegment, bounds: LocalBox, point: Point, t: number): Point {
  if (segment.kind === 'move') {
    const { from, to } = segment
    const at = { ...from, x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }
    return { ...inUnit(at, point), z: point.z - from.z - t * (to.z - from.z) }
  }
  const angle = (t * Math.PI) / 2
  const p = inUnit(segment.upright, point)
  const up = point.z - segment.upright.z - bounds.z0
  const away = {
    back: p.y - bounds.y0,
    front: bounds.y1 - p.y,
    left: p.x - bounds.x0,
    right: bounds.x1 - p.x,
  }[segment.over]
  const h = up * Math.sin(angle) - away * Math.cos(angle)
  const s = up * Math.cos(angle) + away * Math.sin(angle)
  const x = { back: p.x, front: p.x, left: bounds.x0 + s, right: bounds.x1 - s }[segment.over]
  const y = { back: bounds.y0 + s, front: bounds.y1 - s, left: p.y, right: p.y }[segment.over]
  return { x, y, z: bounds.z0 + h }
}

test('no loops in any of the six blocking graphs of boxes that are apart (methods A.2)', () => {
  let arcs = 0
  for (let seed = 1; seed <= 500; seed += 1) {
    const random = randomFrom(seed)
    const boxes: RoomBox[] = []
    for (let i = 0; i < 40; i += 1) {
      const [x0, y0, z0] = [whole(random, 0, 40), whole(random, 0, 40), whole(random, 0, 20)]
      const box = {
        x0,
        x1: x0 + whole(random, 1, 12),
        y0,
        y1: y0 + whole(random, 1, 12),
        z0,
        z1: z0 + whole(random, 1, 9),
      }
      const apart = (b: RoomBox): boolean =>
        box.x1 <= b.x0 ||
        b.x1 <= box.x0 ||
        box.y1 <= b.y0 ||
        b.y1 <= box.y0 ||
        box.z1 <= b.z0 ||
        b.z1 <= box.z0
      if (boxes.every(apart)) boxes.push(box)
    }
    const graphs = blockingGraphs(boxes)
    for (const way of SIX_WAYS) {
      arcs += graphs[way].flat().length
      expect(knots(graphs[way]), `seed ${seed}, ${way}`).toEqual([])
    }
  }
  expect(arcs).toBeGreaterThan(20_000)
})

describe('taking the kitchen apart again', () => {
  interface Puzzle {
    readonly units: readonly string[]
    readonly candidates: ReadonlyMap<string, readonly PlacingPath[]>
    readonly before: readonly (readonly [string, string])[]
  }
  function randomPuzzle(seed: number): Puzzle {
    const random = randomFrom(seed)
    const units = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].slice(0, whole(random, 1, 7))
    const thick = random(0.05, 0.6)
    const candidates = units.map((unit) => {
      const ways = Array.from({ length: whole(random, random(0, 1) < 0.04 ? 0 : 1, 3) }, (_, i) => ({
        unit,
        approach: 'front' as const,
        segments: [],
        blockedBy: units.filter((other) => other !== unit && random(0, 1) < thick),
        clearance: i,
      }))
      return [unit, ways] as const
    })
    const before = Array.from(
      { length: whole(random, 0, 3) },
      () => [pick(random, units), pick(random, units)] as const,
    )
    return { units, candidates: new Map(candidates), before: before.filter(([a, b]) => a !== b) }
  }
  /** Every order there is, by sets: a set of units can stand if one of them can come in last. */
  function canBeOrdered({ units, candidates, before }: Puzzle): boolean {
    const stands = new Set([0])
    for (let set = 0; set < 2 ** units.length; set += 1) {
      if (!stands.has(set)) continue
      units.forEach((unit, i) => {
        const standing = (other: string): boolean => (set & (1 << units.indexOf(other))) !== 0
        if (standing(unit)) return
        const ready = before.every(([first, then]) => then !== unit || standing(first))
        const open = candidates.get(unit)?.some((path) => !path.blockedBy.some(standing)) ?? false
        if (ready && open) stands.add(set | (1 << i))
      })
    }
    return stands.has(2 ** units.length - 1)
  }
  /** Any order that keeps the arcs and pairs, or undefined when they go round in a ring. */
  function anOrder(
    units: readonly string[],
    arcs: readonly (readonly [string, string])[],
  ): readonly string[] | undefined {
    const order: string[] = []
    while (order.length < units.length) {
      const next = units.find(
        (unit) =>
          !order.includes(unit) && arcs.every(([first, then]) => then !== unit || order.includes(first)),
      )
      if (next === undefined) return undefined
      order.push(next)
    }
    return order
  }

  test('finds an order exactly when there is one, and its arcs alone give one that works (3,000 puzzles)', () => {
    const counts = { possible: 0, impossible: 0 }
    for (let seed = 1; seed <= 3000; seed += 1) {
      const puzzle = randomPuzzle(seed)
      const result = choosePaths(puzzle.units, puzzle.candidates, puzzle.before)
      expect(result.ok, `seed ${seed}`).toBe(canBeOrdered(puzzle))
      counts[result.ok ? 'possible' : 'impossible'] += 1
      if (!result.ok) {
        expect(result.stuck.length).toBeGreaterThan(0)
        continue
      }
      // Backwards through the alphabet, so that it is not the order it was found in.
      const order = anOrder([...puzzle.units].reverse(), [...result.arcs, ...puzzle.before])
      expect(order, `seed ${seed}: a ring`).toBeDefined()
      const standing = new Set<string>()
      for (const unit of order ?? []) {
        expect(result.chosen.get(unit)?.blockedBy.some((other) => standing.has(other))).toBe(false)
        standing.add(unit)
      }
    }
    expect(counts.possible).toBeGreaterThan(500)
    expect(counts.impossible).toBeGreaterThan(500)
  })

  test('the same whatever order the units and pairs are given in', () => {
    for (let seed = 1; seed <= 200; seed += 1) {
      const { units, candidates, before } = randomPuzzle(seed)
      const print = (result: ReturnType<typeof choosePaths>): string =>
        JSON.stringify(result.ok ? [[...result.chosen], result.arcs] : result)
      const turned = choosePaths(
        [...units].reverse(),
        new Map([...candidates].reverse()),
        [...before].reverse(),
      )
      expect(print(turned)).toBe(print(choosePaths(units, candidates, before)))
    }
  })
})

test('prisms and points agree on what is inside', () => {
  const prism = prismOver(rectangleInRoom(pose(0, 0, 0, 30), 0, 600, 0, 560), 0, 720)
  expect(within(prism, { ...toRoom({ x: 0, y: 0, yaw: 30 }, 300, 280), z: 300 })).toBe(true)
  expect(within(prism, { ...toRoom({ x: 0, y: 0, yaw: 30 }, 300, 561), z: 300 })).toBe(false)
})
