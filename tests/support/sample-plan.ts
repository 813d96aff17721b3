/**
 * A plan written out by hand for the 3D view's own tests: two walls of an invented room with a tall unit, three wall
 * units on a rail and four base units. It only has to be well formed; nothing in it was planned.
 */
import { assumed, type Figure, known, unknown } from '../../src/core/figure'
import { message } from '../../src/core/message'
import type {
  Band,
  FittedPart,
  Hole,
  LegPlan,
  LiftPlan,
  Operation,
  PathSegment,
  PlacingPath,
  Plan,
  PlanPoint,
  Pose,
  UnitPlan,
  WallFrame,
  WallThing,
} from '../../src/core/plan/types'

export const mm = (value: number, pm = 1): Figure => known(value, pm, 'mm', ['sample'])
const kg = (value: number): Figure =>
  assumed(value, 1, 'kg', ['sample'], { kind: 'common-practice', why: 'sample' })
const none = unknown('mm', ['sample'])

const FLOOR = -1004
const UNDERSIDE = { tall: -850, base: -850, wall: 400 }
const TOP = { tall: 1120, base: -130, wall: 1120 }
const DEPTH = { tall: 580, base: 560, wall: 330 }

function wall(
  id: string,
  name: string,
  origin: PlanPoint,
  alongDir: PlanPoint,
  length: number,
  ceiling = 1400,
): WallFrame {
  const outDir = { x: alongDir.y, y: -alongDir.x || 0 }
  return {
    wall: id,
    name,
    origin,
    alongDir,
    outDir,
    length: mm(length),
    cornerRight: known(90, 0.2, 'deg', ['sample']),
    ceiling: mm(ceiling),
    placed: true,
  }
}

const WALLS: readonly WallFrame[] = [
  wall('window', 'window wall', { x: 0, y: 0 }, { x: 1, y: 0 }, 3000),
  wall('long', 'long wall', { x: 3000, y: 0 }, { x: 0, y: -1 }, 4200),
]

function on(id: string, along: number, out: number): PlanPoint {
  const frame = WALLS.find((w) => w.wall === id) as WallFrame
  return {
    x: frame.origin.x + along * frame.alongDir.x + out * frame.outDir.x,
    y: frame.origin.y + along * frame.alongDir.y + out * frame.outDir.y,
  }
}

function pose(id: string, along: number, out: number, z: number): Pose {
  return { ...on(id, along, out), z, yaw: id === 'window' ? 0 : -90 }
}

const lift: LiftPlan = {
  massStripped: kg(18),
  massFull: kg(60),
  people: 2,
  filter: kg(22),
  zone: 'shoulder',
  aid: 'none',
  endLift: null,
}

/** Floor under a place of the sample: it falls by 4 mm a metre away from the corner. */
export const sampleFloor = (p: PlanPoint): number => FLOOR - 0.004 * (3000 - p.x) + 0.003 * p.y

function legs(
  id: string,
  along: number,
  width: number,
  depth: number,
  underside: number,
): readonly LegPlan[] {
  const corners = [
    [50, 60],
    [width - 50, 60],
    [50, depth - 60],
    [width - 50, depth - 60],
  ] as const
  return corners.map(([x, y], i) => {
    const floor = sampleFloor(on(id, along + x, y))
    return {
      foot: `foot-${i + 1}`,
      x,
      y,
      floor: mm(floor),
      extension: mm(underside - floor),
      min: mm(100, 0),
      max: mm(180, 0),
      delivered: mm(150, 0),
      turns: unknown('turn', ['sample']),
      within: 'yes' as const,
    }
  })
}

function unit(
  id: string,
  kind: 'tall' | 'wall' | 'base',
  name: string,
  onWall: string,
  left: number,
  width: number,
): UnitPlan {
  const depth = DEPTH[kind]
  const z0 = UNDERSIDE[kind]
  const height = TOP[kind] - z0
  return {
    unit: id,
    name,
    kind,
    wall: onWall,
    left: mm(left),
    right: mm(left + width),
    width: mm(width, 0.5),
    height: mm(height, 0.5),
    depth: mm(depth, 0.5),
    underside: mm(z0),
    top: mm(TOP[kind]),
    stands: kind === 'wall' ? 'rail' : 'legs',
    pose: pose(onWall, left, 0, z0),
    solid: [{ x0: 0, x1: width, y0: 0, y1: depth, z0: 0, z1: height }],
    legs: kind === 'wall' ? [] : legs(onWall, left, width, depth, z0),
    adjusters: [],
    lift,
    holding: null,
    standUp: null,
    hookOn: null,
    achieved: null,
  }
}

const UNITS: readonly UnitPlan[] = [
  unit('tall-1', 'tall', 'tall unit 1', 'long', 0, 600),
  unit('wall-1', 'wall', 'wall unit 1', 'long', 620, 600),
  unit('wall-2', 'wall', 'wall unit 2', 'long', 1220, 600),
  unit('wall-3', 'wall', 'wall unit 3', 'long', 1820, 600),
  unit('base-1', 'base', 'base unit 1', 'long', 620, 600),
  unit('base-2', 'base', 'base unit 2', 'long', 1220, 600),
  unit('base-3', 'base', 'base unit 3', 'long', 1820, 600),
  unit('base-4', 'base', 'base unit 4', 'window', 1100, 600),
]
const unitOf = (id: string): UnitPlan => UNITS.find((u) => u.unit === id) as UnitPlan
const leftOf = (id: string): number => (unitOf(id).left as { value: number }).value

function moves(...poses: readonly Pose[]): readonly PathSegment[] {
  return poses.slice(1).map((to, i) => ({ kind: 'move', from: poses[i] as Pose, to }))
}

function path(unitId: string): PlacingPath {
  const u = unitOf(unitId)
  const along = leftOf(unitId)
  const place = u.pose as Pose
  const at = (out: number, z: number): Pose => pose(u.wall, along, out, z)
  if (u.kind === 'wall') {
    return {
      unit: unitId,
      approach: 'front',
      segments: moves(at(900, FLOOR + 20), at(900, place.z + 12), at(0, place.z + 12), place),
      blockedBy: [],
      clearance: 20,
    }
  }
  const out = u.kind === 'tall' ? 2000 : 900
  const brought = moves(at(out, place.z), at(out, place.z + 30), at(0, place.z + 30), place)
  const raised: PathSegment = { kind: 'stand-up', upright: at(out, place.z), over: 'back', blocks: 20 }
  return {
    unit: unitId,
    approach: 'front',
    segments: u.kind === 'tall' ? [raised, ...brought] : brought,
    blockedBy: [],
    clearance: 20,
  }
}

const PATHS: readonly PlacingPath[] = UNITS.map((u) => path(u.unit))
const pathOf = (id: string): number => PATHS.findIndex((p) => p.unit === id)

const STUDS = [200, 600, 1000, 1400, 1800, 2200, 2600, 3000, 3400, 3800]
const NOGGING = 'nogging-1'
const WALL_THINGS: readonly WallThing[] = [
  ...STUDS.map(
    (at, i): WallThing => ({
      id: `stud-${i + 1}`,
      wall: 'long',
      kind: 'stud',
      left: mm(at - 23),
      right: mm(at + 23),
      bottom: null,
      top: null,
    }),
  ),
  {
    id: NOGGING,
    wall: 'long',
    kind: 'nogging',
    left: mm(1423),
    right: mm(1777),
    bottom: mm(395),
    top: mm(485),
  },
  {
    id: 'socket-1',
    wall: 'long',
    kind: 'accessory',
    left: mm(2927),
    right: mm(3073),
    bottom: mm(87),
    top: mm(173),
  },
  {
    id: 'window-1',
    wall: 'window',
    kind: 'window',
    left: mm(700),
    right: mm(2100),
    bottom: mm(60),
    top: mm(1150),
  },
]

function band(
  id: string,
  onWall: string,
  kind: Band['kind'],
  left: number | null,
  right: number | null,
  bottom: number | null,
  top: number | null,
): Band {
  return {
    id,
    wall: onWall,
    kind,
    about: [],
    pm: 2,
    face: 'room',
    left,
    right,
    bottom,
    top,
    unknownBecause: [],
    from: ['sample'],
    basis: { kind: 'standard', source: 'sample', where: '' },
  }
}

const BANDS: readonly Band[] = [
  band('ceiling.long', 'long', 'ceiling', null, null, 1250, 1400),
  band('corner.long.left', 'long', 'corner', 0, 150, null, null),
  band('corner.window.right', 'window', 'corner', 2850, 3000, null, null),
  band('ceiling.window', 'window', 'ceiling', null, null, 1250, 1400),
  band('socket-1.vertical', 'long', 'accessory-vertical', 2917, 3083, null, null),
  band('socket-1.horizontal', 'long', 'accessory-horizontal', null, null, 77, 183),
  band('pipe-1', 'long', 'service', 1600, 1650, -1004, -560),
]

function hole(
  id: string,
  purpose: Hole['purpose'],
  units: readonly string[],
  along: number,
  height: number,
): Hole {
  return {
    id,
    wall: 'long',
    purpose,
    for: units,
    along: mm(along),
    height: mm(height),
    bit: mm(4, 0),
    depth: mm(70),
    screwLength: mm(80, 0),
    fixing: null,
    into: 'timber-stud',
    stud: null,
    verdict: 'trace first',
    against: [],
    hitBands: [],
    number: 1,
  }
}

const RAIL_UNITS = ['wall-1', 'wall-2', 'wall-3']
const HOLES: readonly Hole[] = [
  ...[1000, 1400, 1800, 2200].map((at, i) => ({
    ...hole(`rail.rail-1.stud-${i + 3}`, 'rail', RAIL_UNITS, at, 1050),
    number: i + 1,
  })),
  { ...hole('second.wall-2.stud-4', 'second-fixing', ['wall-2'], 1400, 440), number: 5 },
  { ...hole(`second.wall-2.${NOGGING}-1`, 'second-fixing', ['wall-2'], 1730, 440), number: 6 },
  { ...hole('tall-restraint.tall-1.stud-1', 'tall-restraint', ['tall-1'], 200, 1060), number: 7 },
  { ...hole('tall-restraint.tall-1.stud-2', 'tall-restraint', ['tall-1'], 570, 1060), number: 8 },
  { ...hole('base-bracket.base-2.stud-4', 'base-bracket', ['base-2'], 1400, -170), number: 9 },
  { ...hole('base-bracket.base-2.stud-5', 'base-bracket', ['base-2'], 1790, -170), number: 10 },
  {
    ...hole('rail.rail-1.stud-8', 'rail', RAIL_UNITS, 3000, 1050),
    verdict: 'refused',
    hitBands: ['socket-1.vertical'],
    number: null,
  },
]

const LINES: Plan['lines'] = [
  { id: 'line.window', wall: 'window', of: 'line', height: mm(0, 0), from: null, to: null },
  { id: 'line.long', wall: 'long', of: 'line', height: mm(0, 0), from: null, to: null },
  { id: 'base-top.long', wall: 'long', of: 'base-top', height: mm(-130, 0), from: 600, to: null },
  { id: 'wall-underside.long', wall: 'long', of: 'wall-underside', height: mm(400, 0), from: 600, to: null },
  { id: 'wall-top.long', wall: 'long', of: 'wall-top', height: mm(1120, 0), from: null, to: null },
  { id: 'base-top.window', wall: 'window', of: 'base-top', height: mm(-130, 0), from: null, to: 2400 },
]
const MARKS: Plan['marks'] = [
  ...[620, 1220, 1820, 2420].map((at, i) => ({
    id: `edge-${i + 1}.long`,
    wall: 'long',
    kind: 'unit-edge' as const,
    about: `wall-${Math.min(3, i + 1)}`,
    along: mm(at),
  })),
  ...STUDS.map((at, i) => ({
    id: `stud-${i + 1}.long`,
    wall: 'long',
    kind: 'stud' as const,
    about: `stud-${i + 1}`,
    along: mm(at),
  })),
]

const PARTS: readonly FittedPart[] = [
  {
    part: 'worktop-1',
    name: 'worktop 1',
    kind: 'worktop',
    of: ['base-1', 'base-2', 'base-3'],
    pose: pose('long', 620, 0, -130),
    solid: [{ x0: 0, x1: 1800, y0: 0, y1: 600, z0: 0, z1: 38 }],
  },
  ...[0, 303].map(
    (x, i): FittedPart => ({
      part: `door-${i + 1}.base-2`,
      name: `door ${i + 1}`,
      kind: 'front',
      of: ['base-2'],
      pose: unitOf('base-2').pose,
      solid: [{ x0: x + 2, x1: x + 297, y0: 562, y1: 580, z0: 3, z1: 715 }],
    }),
  ),
]

function operation(kind: string, object: string, more: Partial<Operation> = {}): Operation {
  return {
    id: `${kind}:${object}`,
    kind,
    on: object.split('+'),
    stage: 'wall-units',
    title: message('sample', {}),
    does: [],
    figures: [],
    checks: [],
    cautions: [],
    tools: [],
    people: 2,
    trade: null,
    minutes: { low: 1, typical: 2, high: 3 },
    holdPoint: false,
    stops: [],
    changes: [],
    path: null,
    holding: [],
    lines: [],
    marks: [],
    holes: [],
    rails: [],
    wall: 'long',
    from: [],
    done: false,
    ...more,
  }
}

const idsOf = (of: string, all: readonly { readonly id: string }[]) =>
  all.map((x) => x.id).filter((x) => x.startsWith(of))

function hang(id: string): readonly Operation[] {
  return [
    operation('hang', id, {
      path: pathOf(id),
      changes: [{ unit: id, from: 'carried', to: 'hooked' }],
      holding: [id],
    }),
    operation('level', id, { changes: [{ unit: id, from: 'hooked', to: 'levelled' }], holding: [id] }),
    operation('lock', id, { changes: [{ unit: id, from: 'levelled', to: 'locked' }], holding: [id] }),
    operation('second-fix', id, {
      changes: [{ unit: id, from: 'locked', to: 'secured' }],
      holding: [id],
      holes: idsOf(`second.${id}.`, HOLES),
    }),
  ]
}

function stand(id: string): readonly Operation[] {
  const onWall = unitOf(id).wall
  return [
    operation('place', id, {
      stage: 'base-units',
      wall: onWall,
      path: pathOf(id),
      changes: [{ unit: id, from: 'carried', to: 'standing' }],
    }),
    operation('level', id, {
      stage: 'base-units',
      wall: onWall,
      changes: [{ unit: id, from: 'standing', to: 'levelled' }],
    }),
    operation('fix', id, {
      stage: 'base-units',
      wall: onWall,
      changes: [{ unit: id, from: 'levelled', to: 'secured' }],
      holes: idsOf(`base-bracket.${id}.`, HOLES),
    }),
  ]
}

const OPERATIONS: readonly Operation[] = [
  operation('check-delivery', 'room', { stage: 'check-delivery', wall: null }),
  operation('trace', 'long', { stage: 'make-safe' }),
  operation('strike', 'line', { stage: 'set-out', wall: null, lines: idsOf('line.', LINES) }),
  operation('set-out-heights', 'long', {
    stage: 'set-out',
    lines: ['base-top.long', 'wall-underside.long', 'wall-top.long'],
  }),
  operation('set-out-heights', 'window', { stage: 'set-out', wall: 'window', lines: ['base-top.window'] }),
  operation('set-out-widths', 'long', { stage: 'set-out', marks: idsOf('edge-', MARKS) }),
  operation('find-studs', 'long', { stage: 'set-out', marks: idsOf('stud-', MARKS) }),
  operation('mark-holes', 'long', { stage: 'set-out', holes: HOLES.map((h) => h.id) }),
  operation('fit-nogging', `long.${NOGGING}`, { stage: 'walls-ready' }),
  operation('assemble', 'tall-1', { stage: 'assemble' }),
  operation('set-legs', 'tall-1', { stage: 'assemble' }),
  operation('stand-up', 'tall-1', {
    stage: 'talls',
    path: pathOf('tall-1'),
    changes: [{ unit: 'tall-1', from: 'assembled', to: 'held' }],
    holding: ['tall-1'],
  }),
  operation('place', 'tall-1', {
    stage: 'talls',
    path: pathOf('tall-1'),
    changes: [{ unit: 'tall-1', from: 'held', to: 'standing' }],
    holding: ['tall-1'],
  }),
  operation('level', 'tall-1', {
    stage: 'talls',
    changes: [{ unit: 'tall-1', from: 'standing', to: 'levelled' }],
    holding: ['tall-1'],
  }),
  operation('restrain', 'tall-1', {
    stage: 'talls',
    changes: [{ unit: 'tall-1', from: 'levelled', to: 'secured' }],
    holding: ['tall-1'],
    holes: idsOf('tall-restraint.', HOLES),
  }),
  operation('drill-rail', 'rail-1', {
    holes: idsOf('rail.rail-1.', HOLES).filter((h) => h !== 'rail.rail-1.stud-8'),
    rails: ['rail-1'],
  }),
  operation('fix-rail', 'rail-1', { rails: ['rail-1'] }),
  ...['wall-1', 'wall-2', 'wall-3'].flatMap(hang),
  operation('join', 'wall-1+wall-2'),
  ...['base-1', 'base-2', 'base-3', 'base-4'].flatMap(stand),
  operation('join', 'base-1+base-2', { stage: 'base-units' }),
  operation('prove', 'room', { stage: 'hold-point', wall: null, holdPoint: true }),
  operation('worktop', 'worktop-1', { stage: 'worktops' }),
  operation('hang-fronts', 'base-2', { stage: 'fronts-and-plinths' }),
  operation('snag', 'room', { stage: 'snag', wall: null }),
]

export const samplePlan: Plan = {
  stamp: { hash: 'sample', rules: '1', region: 'uk' },
  name: 'Sample',
  demo: true,
  walls: WALLS,
  floor: {
    points: [
      ['a', on('long', 100, 50)],
      ['b', on('long', 4000, 50)],
      ['c', on('long', 100, 2800)],
      ['d', on('long', 4000, 2800)],
    ].map(([id, at]) => ({
      id: id as string,
      at: at as PlanPoint,
      z: mm(sampleFloor(at as PlanPoint)),
    })),
    triangles: [{ readings: ['a', 'b', 'c'] }, { readings: ['b', 'd', 'c'] }],
    plane: { a: FLOOR - 12, b: 0.004, c: 0.003, worst: 0 },
    highPoint: { z: mm(FLOOR), where: 'tall-1.foot-1' },
    fall: mm(12),
  },
  heights: { demands: [], values: [], conflicts: [], unmet: [] },
  lines: LINES,
  marks: MARKS,
  units: UNITS,
  rails: [
    {
      rail: 'rail-1',
      wall: 'long',
      units: RAIL_UNITS,
      from: mm(640),
      to: mm(2400),
      edge: mm(1070),
      studs: ['stud-3', 'stud-4', 'stud-5', 'stud-6'],
    },
  ],
  bands: BANDS,
  holes: HOLES,
  obstacles: [],
  wallThings: WALL_THINGS,
  parts: PARTS,
  paths: PATHS,
  operations: OPERATIONS,
  reasons: [],
  order: { cost: 0, parts: {}, setAside: [], method: 'sample' },
  findings: [],
  measureNext: [],
  changes: [],
}

/** Position of an operation of the sample, by id. */
export function sampleIndex(id: string): number {
  const at = OPERATIONS.findIndex((o) => o.id === id)
  if (at < 0) throw new Error(`the sample has no operation ${id}`)
  return at
}

/** The sample with a unit whose place isn't known. */
export function withoutPose(id: string): Plan {
  return {
    ...samplePlan,
    units: samplePlan.units.map((u) => (u.unit === id ? { ...u, pose: null, left: none, right: none } : u)),
  }
}
