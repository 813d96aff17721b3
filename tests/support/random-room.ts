import type { KitchenFile } from '../../src/core/kitchen/schema'
import type { Random } from './prng'

/** Invented rooms of one to six walls, as they would be measured. */

export type WallFile = NonNullable<KitchenFile['walls']>[number]
export type Tag =
  | 'not-square'
  | 'tall'
  | 'unknown'
  | 'infeasible'
  | 'clash-order'
  | 'clash-heights'
  | 'shut-in'
  | 'closed'
  | 'island'
  | 'arm'
  | 'hung'
  | 'studs'
  | 'other-face'
  | 'three-lengths'
  | 'tight'

export interface Shape {
  /** True place of each wall's left end, the way it runs, and its length. */
  readonly walls: readonly {
    readonly id: string
    readonly x: number
    readonly y: number
    readonly heading: number
    readonly length: number
    /** Inside angle at its right end; null at the open end of a row of walls. */
    readonly corner: number | null
  }[]
  readonly closed: boolean
}

interface Point {
  readonly x: number
  readonly y: number
}

const DEGREE = Math.PI / 180

/** How far it turns clockwise from one heading to another. */
function clockwise(from: number, to: number): number {
  return (((from - to) % 360) + 360) % 360
}

function shapeThrough(points: readonly Point[], closed: boolean): Shape {
  const ends = closed ? [...points, points[0] as Point] : points
  const walls = ends.slice(1).map((to, i) => {
    const from = ends[i] as Point
    return {
      id: 'abcdef'[i] as string,
      ...from,
      heading: Math.atan2(to.y - from.y, to.x - from.x) / DEGREE,
      length: Math.hypot(to.x - from.x, to.y - from.y),
    }
  })
  return {
    closed,
    walls: walls.map((wall, i) => {
      const next = walls[i + 1] ?? (closed ? walls[0] : undefined)
      const turn = next === undefined ? null : clockwise(wall.heading, next.heading)
      return { ...wall, corner: turn === null ? null : 180 - (turn > 180 ? turn - 360 : turn) }
    }),
  }
}

/** A point so far on from another, along a heading. */
function onwards({ x, y }: Point, heading: number, by: number): Point {
  return { x: x + by * Math.cos(heading * DEGREE), y: y + by * Math.sin(heading * DEGREE) }
}

/** Where the line from `a` along one heading meets the line through the origin along another. */
function meet(a: Point, heading: number, other: number): Point {
  const [u, v] = [onwards({ x: 0, y: 0 }, heading, 1), onwards({ x: 0, y: 0 }, other, 1)]
  const along = (a.x * u.y - a.y * u.x) / (v.x * u.y - v.y * u.x)
  return { x: v.x * along, y: v.y * along }
}

const askew = (random: Random, isAskew: boolean) => (isAskew ? random.step(85, 95, 0.1) : 90)

/** Four walls with the corners given at the right ends of the first, second and last. */
function fourCorners(
  wide: number,
  deep: number,
  corners: readonly [number, number, number],
): readonly Point[] {
  const second = { x: wide, y: 0 }
  const headingTwo = -(180 - corners[0])
  const third = onwards(second, headingTwo, deep)
  const fourth = meet(third, headingTwo - (180 - corners[1]), 180 - corners[2])
  return [{ x: 0, y: 0 }, second, third, fourth]
}

export function randomShape(random: Random, count: number, size: { readonly tight: boolean }): Shape {
  const isAskew = random.chance(0.6)
  const angle = () => askew(random, isAskew)
  const [low, high] = size.tight ? [1700, 3000] : [2200, 5000]
  const wide = random.step(low, high, 7)
  const deep = random.step(size.tight ? 1500 : 2000, size.tight ? 2600 : 4200, 7)
  const origin = { x: 0, y: 0 }
  const four = fourCorners(wide, deep, [angle(), angle(), angle()])
  if (count === 1) return shapeThrough([origin, { x: wide, y: 0 }], false)
  if (count <= 3) return shapeThrough(four.slice(0, count + 1), false)
  if (count === 4) return shapeThrough(four, true)
  const [, , third, fourth] = four as readonly [Point, Point, Point, Point]
  if (count === 5) return shapeThrough(cutOff(four, Math.min(700, deep / 3)), true)
  const [inX, inY] = [Math.min(wide, third.x) * 0.55, Math.max(third.y, fourth.y) * 0.55]
  return shapeThrough(
    [origin, { x: wide, y: 0 }, { x: wide, y: inY }, { x: inX, y: inY }, { x: inX, y: fourth.y }, fourth],
    true,
  )
}

/** The last corner of four cut off. */
function cutOff(four: readonly Point[], by: number): readonly Point[] {
  const [a, b, c, d] = four as readonly [Point, Point, Point, Point]
  const towards = (from: Point, to: Point): Point => {
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    return { x: from.x + ((to.x - from.x) * by) / length, y: from.y + ((to.y - from.y) * by) / length }
  }
  return [a, b, c, towards(d, c), towards(d, a)]
}

/** A place on the plan from a wall, and the other way round. */
export function toPlan(wall: Shape['walls'][number], along: number, out: number): Point {
  return onwards(onwards(wall, wall.heading, along), wall.heading - 90, out)
}

export function isNotSquare(shape: Shape): boolean {
  return shape.walls.some(
    ({ corner }) => corner !== null && corner >= 85 && corner <= 95 && Math.abs(corner - 90) >= 0.05,
  )
}

// ------------------------------------------------------------------------------------------------ as measured

/** A length as people type it. */
export function typedLength(
  random: Random,
  mm: number,
  inches: boolean,
): number | string | { value: number; pm: number } {
  if (inches && random.chance(0.7)) return `${Math.round((mm / 25.4) * 8) / 8} in`
  return random.weighted<number | string | { value: number; pm: number }>([
    [mm, 8],
    [{ value: mm, pm: random.pick([1, 2, 3]) }, 1],
    [`${mm} mm`, 1],
  ])
}

export function cornerFile(
  random: Random,
  corner: number,
  threeLengths: boolean,
): NonNullable<WallFile['cornerRight']> {
  if (!threeLengths || corner >= 180) {
    const value = Math.round(corner * 10) / 10
    return { angle: random.chance(0.5) ? value : { value, pm: 0.2 } }
  }
  const [thisLeg, nextLeg] = [900, 1200]
  const across = Math.sqrt(thisLeg ** 2 + nextLeg ** 2 - 2 * thisLeg * nextLeg * Math.cos(corner * DEGREE))
  return { thisLeg, nextLeg, across: Math.round(across) }
}

// ------------------------------------------------------------------------------------------------ floor and ceiling

export interface Levels {
  /** Fall from the line to the floor at a point of the plan. */
  readonly dropAt: (at: Point) => number
  readonly ceilingUp: number
  readonly drop: number
  readonly highest: number
}

export function randomLevels(random: Random, fall: number): Levels {
  const drop = random.int(880, 1100)
  const [fallX, fallY] = [random.step(-fall, fall, 0.5) / 1000, random.step(-fall, fall, 0.5) / 1000]
  const high = random.int(2200, 2650)
  return {
    drop,
    highest: high,
    ceilingUp: high - drop,
    dropAt: ({ x, y }) => Math.round(drop + fallX * x + fallY * y + random.step(-1.5, 1.5, 0.5)),
  }
}

type Floor = NonNullable<KitchenFile['floor']>
type Readings = NonNullable<Floor['readings']>

function gridAlong(random: Random, length: number): readonly number[] {
  const out: number[] = []
  for (let at = random.int(5, 60); at < length; at += random.int(450, 850)) out.push(at)
  return [...out, Math.round(length) - random.int(5, 40)]
}

/** Readings in a grid before each wall that is to carry units; or few, or only one row of them. */
export function randomFloor(
  random: Random,
  shape: Shape,
  levels: Levels,
  walls: readonly string[],
  isWhole: boolean,
): Floor {
  const drawn = random.weighted([
    ['grid', 21],
    ['row', 1],
    ['few', 1],
    ['none', 1],
  ] as const)
  const manner = isWhole ? 'grid' : drawn
  const readings: Readings = []
  const read = (wall: Shape['walls'][number], along: number, out: number) => {
    const fromRight = random.chance(0.15)
    const at = Math.round(fromRight ? wall.length - along : along)
    readings.push({
      id: `f${readings.length + 1}`,
      at: { wall: wall.id, along: fromRight ? { at, from: 'right' } : { at }, out },
      drop: levels.dropAt(toPlan(wall, along, out)),
    })
  }
  for (const wall of shape.walls.filter(({ id }) => walls.includes(id))) {
    if (manner === 'none') break
    const row = gridAlong(random, wall.length)
    if (manner === 'few') {
      for (const along of row.slice(0, random.int(1, 2))) read(wall, along, 300)
      break
    }
    const outs = manner === 'row' ? [300] : [random.int(0, 40), random.int(600, 690)]
    for (const out of outs) for (const along of row) read(wall, along, out)
  }
  const where = random.pick(['everywhere', 'bays-and-front', 'up-to-plinth', 'none'] as const)
  return {
    kind: random.pick(['concrete', 'screed', 'suspended-timber', 'boards', 'not-known'] as const),
    finishToCome: random.chance(0.3) ? random.int(0, 20) : 0,
    finishWhere: where,
    readings,
  }
}

export function randomCeiling(
  random: Random,
  shape: Shape,
  levels: Levels,
): NonNullable<KitchenFile['ceiling']> {
  if (random.chance(0.1)) return []
  return shape.walls.slice(0, 4).flatMap((wall) =>
    [0.1, 0.9].map((part) => ({
      id: `c-${wall.id}-${part * 10}`,
      at: { wall: wall.id, along: { at: Math.round(wall.length * part) }, out: random.int(50, 600) },
      height: { up: levels.ceilingUp + random.int(-4, 4) },
    })),
  )
}
