import type { CONSTRUCTIONS, KitchenFile } from '../../src/core/kitchen/schema'
import type { Random } from './prng'
import type { WallFile } from './random-room'

/** What is in and on the walls of an invented room: layers, studs, accessories, services, openings. */

type Layer = NonNullable<WallFile['layers']>[number]
export type Construction = (typeof CONSTRUCTIONS)[number]

const layer = (id: string, material: Layer['material'], thickness: number): Layer => ({
  id,
  material,
  thickness,
})

type MakeUp = (random: Random) => Layer[]

const board = (id: string) => layer(id, 'plasterboard', 12.5)

const MAKE_UP: Readonly<Record<Construction, MakeUp>> = {
  masonry: (r) => [
    layer('plaster', 'plaster', r.int(10, 16)),
    layer('inner', r.pick(['brick', 'dense-block'] as const), 100),
    ...(r.chance(0.5) ? [layer('cavity', 'void', 60), layer('outer', 'brick', 100)] : []),
  ],
  aircrete: (r) => [layer('plaster', 'plaster', 12), layer('block', 'aircrete', r.pick([100, 140]))],
  'old-brick': (r) => [layer('lime', 'lime-plaster', r.int(15, 25)), layer('brick', 'old-brick', 225)],
  'dot-and-dab': (r) => [
    board('board'),
    layer('dabs', 'void', r.int(10, 25)),
    layer('block', 'dense-block', 100),
  ],
  'timber-stud': (r) => [
    board('board'),
    layer('stud', 'timber-stud', r.pick([63, 75, 89, 140])),
    board('far-board'),
  ],
  'metal-stud': () => [board('board'), layer('stud', 'metal-stud', 70), board('far-board')],
  'lath-and-plaster': () => [
    layer('plaster', 'lime-plaster', 14),
    layer('lath', 'lath', 8),
    layer('stud', 'timber-stud', 89),
    layer('far-lath', 'lath', 8),
    layer('far-plaster', 'lime-plaster', 14),
  ],
  concrete: () => [layer('skim', 'plaster-skim', 3), layer('concrete', 'concrete', 150)],
  'insulated-lining': () => [
    board('board'),
    layer('insulation', 'insulation', 40),
    layer('brick', 'brick', 100),
  ],
  'over-opening': () => [board('board'), layer('frame', 'timber-stud', 45), layer('far', 'void', 50)],
  'chimney-breast': () => [layer('plaster', 'lime-plaster', 18), layer('brick', 'old-brick', 112)],
}

const WITH_STUDS: readonly (Construction | null)[] = ['timber-stud', 'metal-stud', 'lath-and-plaster']

const LIKELY: readonly (readonly [Construction | null, number])[] = [
  ['masonry', 6],
  ['timber-stud', 8],
  ['metal-stud', 3],
  ['lath-and-plaster', 2],
  ['dot-and-dab', 2],
  ['aircrete', 2],
  ['old-brick', 2],
  ['concrete', 2],
  ['insulated-lining', 1],
  ['over-opening', 1],
  ['chimney-breast', 1],
  [null, 1],
]

export interface WallPlan {
  readonly id: string
  readonly length: number
  /** Up from the line to the ceiling, and down to the floor. */
  readonly ceiling: number
  readonly floor: number
  readonly carriesUnits: boolean
  readonly mayOpen: boolean
}

/** Everything about a wall but its length and corner. */
export function randomWall(random: Random, plan: WallPlan): Omit<WallFile, 'id' | 'length' | 'cornerRight'> {
  const construction = random.weighted(LIKELY)
  const layers = construction === null ? [] : MAKE_UP[construction](random)
  const whole = layers.reduce((sum, { thickness }) => sum + Number(thickness), 0)
  const traced = random.weighted([
    ['not-yet', 4],
    ['part', 1],
    ['whole', 4],
    [null, 1],
  ] as const)
  return {
    construction,
    layers,
    layersToCome: random.chance(0.1) ? [layer('tile', 'tile', 8), layer('adhesive', 'adhesive', 4)] : [],
    ...(whole > 0 && random.chance(0.85) ? { thickness: whole } : {}),
    behind: random.pick(['outside', 'room', 'neighbour', 'void', null]),
    otherFaceChecked: random.weighted([
      [true, 4],
      [false, 1],
      [null, 1],
    ] as const),
    ...(random.chance(0.5) ? { otherFaceShift: random.int(-200, 300) } : {}),
    traced,
    ...(traced === 'whole' && random.chance(0.5) ? { tracedDepth: 80, provedDead: true } : {}),
    studs: WITH_STUDS.includes(construction) ? randomStuds(random, plan, construction === 'metal-stud') : [],
    noggings: WITH_STUDS.includes(construction) && random.chance(0.4) ? [randomNogging(random, plan)] : [],
    accessories: Array.from({ length: plan.carriesUnits ? random.int(0, 4) : random.int(0, 1) }, (_, i) =>
      randomAccessory(random, plan, i),
    ),
    services: random.chance(0.3) ? [randomService(random, plan)] : [],
    ...randomOpening(random, plan),
  }
}

type Stud = NonNullable<WallFile['studs']>[number]

/** Studs as they are found: now here, now there, some of them only beeped at. */
function randomStuds(random: Random, { length }: WallPlan, steel: boolean): Stud[] {
  const studs: Stud[] = []
  for (let at = random.int(20, 300); at < length - 20; at += random.int(290, 620)) {
    const fromRight = random.chance(0.2)
    studs.push({
      id: `s${studs.length + 1}`,
      centre: fromRight ? { at: Math.round(length - at), from: 'right' } : { at },
      ...(random.chance(0.96) ? { width: steel ? 50 : random.pick([38, 38, 45, 50]) } : {}),
      material: steel ? 'steel' : 'timber',
      confirmed: random.weighted([
        ['both-edges', 12],
        ['fixings-seen', 2],
        ['seen-open', 1],
        ['one-beep', 2],
        ['not-found', 1],
        [null, 1],
      ] as const),
    })
  }
  return studs
}

function randomNogging(random: Random, { length }: WallPlan): NonNullable<WallFile['noggings']>[number] {
  const from = random.int(50, Math.max(60, Math.round(length) - 900))
  return {
    id: 'n1',
    kind: random.pick(['nogging', 'pattress'] as const),
    from: { at: from },
    to: { at: from + random.int(250, 800) },
    centre: { up: random.int(300, 1100) },
    depth: random.pick([95, 145, 200]),
    thickness: 45,
  }
}

type Height = NonNullable<NonNullable<WallFile['accessories']>[number]['height']>

function randomHeight(random: Random, floor: number): Height {
  const above = random.pick([150, 300, 450, 1050, 1100, 1200, 1500])
  return random.weighted<Height>([
    [above >= floor ? { up: above - floor } : { down: floor - above }, 8],
    [{ aboveFloor: above }, 1],
  ])
}

function randomAccessory(
  random: Random,
  { length, floor }: WallPlan,
  index: number,
): NonNullable<WallFile['accessories']>[number] {
  const face = random.chance(0.3) ? 'other' : 'room'
  const twin = random.chance(0.4)
  return {
    id: `acc-${index + 1}`,
    kind: random.pick([
      'socket',
      'switch',
      'spur',
      'cooker-outlet',
      'isolator',
      'light',
      'aerial',
      'data',
      'other',
    ]),
    face,
    along: {
      at: random.int(40, Math.max(60, Math.round(length) - 40)),
      from: random.pick(['left', 'right'] as const),
      face: random.chance(0.9) ? face : 'room',
    },
    height: randomHeight(random, floor),
    ...(random.chance(0.92) ? { width: twin ? 146 : 86, tall: 86 } : {}),
    live: random.pick([true, false, null]),
  }
}

function randomService(
  random: Random,
  { length, floor }: WallPlan,
): NonNullable<WallFile['services']>[number] {
  const at = random.int(60, Math.max(80, Math.round(length) - 60))
  const along = (by: number) => ({ at: Math.max(20, at + by) })
  const up = { id: 'up', along: along(0), height: { down: floor - random.int(200, 600) } }
  return {
    id: 'service-1',
    kind: random.pick(['cable', 'water-cold', 'water-hot', 'heating', 'gas', 'waste', 'duct', 'not-known']),
    face: random.chance(0.15) ? 'other' : 'room',
    points: [
      { id: 'low', along: along(0), height: { down: floor } },
      up,
      ...(random.chance(0.4) ? [{ id: 'on', along: along(random.int(-400, 400)), height: up.height }] : []),
    ],
    ...(random.chance(0.8) ? { width: random.pick([10, 15, 22, 40]), depth: random.int(10, 60) } : {}),
    traced: random.pick(['seen', 'detector', 'drawing', 'guessed', null]),
  }
}

function randomOpening(
  random: Random,
  { length, ceiling, floor, carriesUnits, mayOpen }: WallPlan,
): Pick<WallFile, 'openings' | 'lintels'> {
  if (!mayOpen || length < 1500 || !random.chance(carriesUnits ? 0.25 : 0.6)) return {}
  const kind = carriesUnits ? 'window' : random.pick(['door', 'window', 'arch'] as const)
  const wide = random.int(700, 1100)
  const left = random.int(150, Math.round(length) - wide - 150)
  const top = Math.min(ceiling - 100, 2000 - floor + random.int(0, 100))
  const bottom: Height = kind === 'window' ? { up: 1050 - floor } : { down: floor }
  return {
    openings: [
      {
        id: 'opening-1',
        kind,
        left: { at: left },
        right: { at: left + wide },
        bottom,
        top: { up: top },
        boardLeft: {},
        boardRight: {},
      },
    ],
    lintels: random.chance(0.5)
      ? [
          {
            id: 'lintel-1',
            kind: random.pick(['timber', 'concrete', 'prestressed', 'steel', null]),
            left: { at: left - 100 },
            right: { at: left + wide + 100 },
            bottom: { up: top },
            top: { up: top + 150 },
          },
        ]
      : [],
  }
}

type FixingFile = NonNullable<KitchenFile['fixings']>[number]

const HARD: NonNullable<FixingFile['into']> = ['brick', 'dense-block', 'aircrete', 'old-brick', 'concrete']
const SOFT: NonNullable<FixingFile['into']> = ['timber-stud', 'timber-batten']

/** Screws and plugs for every use, some of them missing, some without a figure from their maker. */
export function randomFixings(random: Random): FixingFile[] {
  const uses = [
    'rail',
    'plate',
    'second-fixing',
    'base-bracket',
    'tall-restraint',
    'back-rail',
    'cleat',
  ] as const
  return uses.flatMap((use): FixingFile[] => {
    const figures = random.chance(0.75)
      ? { pull: random.int(2, 12) * 100, shear: random.int(2, 12) * 100 }
      : {}
    const common = { for: [use], ...figures }
    const plug: FixingFile = {
      id: `${use}-plug`,
      kind: 'screw-and-plug',
      diameter: 6,
      length: random.int(50, 90),
      bit: 8,
      holeDepth: random.int(45, 70),
      embedment: random.int(35, 60),
      into: HARD,
      ...common,
    }
    const screw: FixingFile = {
      id: `${use}-screw`,
      kind: 'wood-screw',
      diameter: 5,
      length: random.int(40, 90),
      bit: 3,
      holeDepth: 35,
      embedment: 35,
      into: [...SOFT, ...(random.chance(0.5) ? (['metal-stud'] as const) : [])],
      ...common,
    }
    return [...(random.chance(0.9) ? [plug] : []), ...(random.chance(0.9) ? [screw] : [])]
  })
}
