import type { KitchenFile } from '../../src/core/kitchen/schema'
import { type Random, randomFrom } from './prng'
import {
  cornerFile,
  isNotSquare,
  type Levels,
  randomCeiling,
  randomFloor,
  randomLevels,
  randomShape,
  type Shape,
  type Tag,
  typedLength,
  type WallFile,
} from './random-room'
import { type Trouble, withTrouble, withUnknowns } from './random-troubles'
import { type RunSpace, randomUnits, type UnitOptions } from './random-units'
import { randomFixings, randomWall } from './random-walls'

/** An invented kitchen file, valid, and what is particular about it. The same for the same seed. */
export interface RandomKitchen {
  readonly seed: number
  readonly file: KitchenFile
  readonly tags: ReadonlySet<Tag>
}

export interface RandomOptions {
  /** So many units at most. */
  readonly most?: number
  /** As many as there is room for, up to the most. */
  readonly full?: boolean
  /** Rooms so small that units are in each other's way. */
  readonly tight?: boolean
  /** Troubles, unknowns and wishes left out. */
  readonly plain?: boolean
}

export function randomKitchen(seed: number, options: RandomOptions = {}): RandomKitchen {
  const random = randomFrom(seed)
  const tags = new Set<Tag>()
  const region = random.weighted([
    ['uk', 11],
    ['north-america', 4],
    ['continental', 3],
    [null, 2],
  ] as const)
  const tight = options.tight === true
  const shape = randomShape(
    random,
    tight
      ? random.int(3, 4)
      : random.weighted([
          [1, 2],
          [2, 3],
          [3, 3],
          [4, 5],
          [5, 2],
          [6, 2],
        ]),
    { tight },
  )
  const levels = randomLevels(random, random.chance(0.15) ? 12 : 5)
  const most = options.most ?? 14
  const count = options.full === true ? most : random.int(1, random.chance(0.35) ? most : Math.min(most, 6))
  const spaces = spacesIn(random, shape, levels, tight)
  const units = randomUnits(random, {
    spaces,
    count,
    withTall: random.chance(0.3),
    region,
    isVague: random.chance(0.25) && options.plain !== true,
    island: islandIn(random, shape),
  })
  for (const tag of units.tags) tags.add(tag)
  const walls = wallsOf(random, shape, levels, spaces, region === 'north-america', tags)
  if (isNotSquare(shape) || tags.has('three-lengths')) tags.add('not-square')
  if (shape.closed) tags.add('closed')
  const file: KitchenFile = {
    format: 'dryrun-kitchen',
    version: 1,
    name: `Invented kitchen ${seed}`,
    region,
    ...(region === 'north-america' ? { display: 'inch' } : {}),
    survey: {
      ...(random.chance(0.5) ? { tapePrecision: random.pick([1, 2]) } : {}),
      houseBuilt: random.pick([null, 1930, 1985, 2006]),
      gas: random.pick([true, false, null]),
    },
    lines: linesOf(random),
    closed: shape.closed,
    walls,
    ceiling: randomCeiling(random, shape, levels),
    floor: randomFloor(
      random,
      shape,
      levels,
      [...new Set(spaces.map((s) => s.wall))],
      options.plain === true,
    ),
    units: units.units,
    rails: units.rails,
    appliances: units.appliances,
    finishing: units.finishing,
    worktops: units.worktops,
    fixings: randomFixings(random),
    crew: crewOf(random),
  }
  return { seed, ...troubled(random, file, tags, options.plain === true) }
}

function troubled(
  random: Random,
  plain: KitchenFile,
  tags: Set<Tag>,
  isPlain: boolean,
): Pick<RandomKitchen, 'file' | 'tags'> {
  if (isPlain) return { file: plain, tags }
  const trouble = random.weighted<Trouble | null>([
    [null, 68],
    ['clash-order', 14],
    ['clash-heights', 10],
    ['shut-in', 8],
  ])
  const worse = trouble === null ? null : withTrouble(random, plain, trouble)
  if (trouble !== null && worse !== null) tags.add(trouble).add('infeasible')
  const file = worse ?? withWishes(random, plain)
  if (!random.chance(0.4)) return { file, tags }
  tags.add('unknown')
  return { file: withUnknowns(random, file), tags }
}

/** Where runs stand: along most walls, clear of the run before and after them. */
function spacesIn(random: Random, shape: Shape, levels: Levels, tight: boolean): readonly RunSpace[] {
  const most = shape.closed ? Math.min(3, shape.walls.length - 1) : shape.walls.length
  const used = shape.walls.slice(0, tight ? most : random.int(1, most))
  return used.flatMap((wall, i): RunSpace[] => {
    const next = used[i + 1]
    const from = i > 0 ? 660 : shape.closed ? random.int(0, 30) : random.int(0, 60)
    const to =
      Math.round(wall.length) - (next === undefined && shape.closed ? random.int(10, 700) : random.int(5, 30))
    if (to - from < 320) return []
    const corner = wall.corner !== null && wall.corner < 180
    return [
      {
        wall: wall.id,
        from,
        to,
        length: wall.length,
        toCorner: next !== undefined && corner && random.chance(0.7),
        ceiling: levels.highest,
      },
    ]
  })
}

function islandIn(random: Random, shape: Shape): UnitOptions['island'] {
  const [wall] = shape.walls
  if (wall === undefined || shape.walls.length < 3 || wall.length < 3000 || !random.chance(0.6)) return null
  return { wall: wall.id, along: Math.round(wall.length / 2 - 300), out: random.int(1350, 1500) }
}

function wallsOf(
  random: Random,
  shape: Shape,
  levels: Levels,
  spaces: readonly RunSpace[],
  inches: boolean,
  tags: Set<Tag>,
): WallFile[] {
  return shape.walls.map((wall): WallFile => {
    const carriesUnits = spaces.some((s) => s.wall === wall.id)
    const threeLengths = wall.corner !== null && wall.corner < 180 && random.chance(0.25)
    if (threeLengths) tags.add('three-lengths')
    const made = randomWall(random, {
      id: wall.id,
      length: wall.length,
      ceiling: levels.ceilingUp,
      floor: levels.drop,
      carriesUnits,
      mayOpen: true,
    })
    if ((made.studs ?? []).length > 0) tags.add('studs')
    if ((made.accessories ?? []).some((a) => a.face === 'other')) tags.add('other-face')
    return {
      id: wall.id,
      length: typedLength(random, Math.round(wall.length), inches),
      ...(wall.corner === null ? {} : { cornerRight: cornerFile(random, wall.corner, threeLengths) }),
      ...made,
    }
  })
}

function linesOf(random: Random): NonNullable<KitchenFile['lines']> {
  return [
    { id: 'line', offset: 0, ...(random.chance(0.5) ? { closing: random.int(0, 3), reversal: 0.5 } : {}) },
    ...(random.chance(0.15) ? [{ id: 'second', offset: random.int(-300, 300) }] : []),
  ]
}

function crewOf(random: Random): NonNullable<KitchenFile['crew']> {
  const people = random.some(
    [
      { id: 'one', filter: 'man' as const },
      { id: 'two', filter: 'woman' as const },
      { id: 'three', filter: 'man' as const, own: 15, alwaysThere: false },
    ],
    random.int(0, 3),
  )
  return { people, ...(random.chance(0.15) ? { lifter: { rated: random.int(20, 80) } } : {}) }
}

/** Wishes that mostly can be met. */
function withWishes(random: Random, file: KitchenFile): KitchenFile {
  if (!random.chance(0.3)) return file
  const [unit] = file.units ?? []
  if (unit === undefined) return file
  return {
    ...file,
    wishes: {
      heights: random.chance(0.3)
        ? [{ id: 'comfortable', of: 'worktop-top', max: { up: random.int(-60, 60) } }]
        : [],
      order: [
        {
          id: 'early',
          before: { kind: 'assemble', on: unit.id },
          after: { kind: 'prove' },
          ...(random.chance(0.3) ? { minLag: random.int(0, 60) } : {}),
          hard: random.chance(0.5),
        },
      ],
    },
  }
}

// ------------------------------------------------------------------------------------------------ shuffled

const IN_ORDER: readonly string[] = [
  'lines',
  'walls',
  'layers',
  'layersToCome',
  'points',
  'route',
  'keptOrder',
]

/** The same file with every list shuffled whose order says nothing. */
export function shuffledSets<T>(random: Random, value: T, key = ''): T {
  if (Array.isArray(value)) {
    const items = value.map((item: unknown) => shuffledSets(random, item, key))
    return (IN_ORDER.includes(key) ? items : random.shuffled(items)) as T
  }
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => [name, shuffledSets(random, inner as unknown, name)]),
  ) as T
}
