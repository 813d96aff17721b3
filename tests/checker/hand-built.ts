/**
 * A kitchen small enough to be worked out with a pencil, and the plan for it, put together figure by figure: one brick
 * wall, a base unit on four legs, a wall unit on two plates, a worktop. Nothing here comes from the planner.
 */
import type { UnknownFigure, ValueFigure } from '../../src/core/figure'
import type { Message } from '../../src/core/message'
import type {
  Hole,
  Operation,
  OrderReason,
  Plan,
  Pose,
  StateChange,
  UnitPlan,
} from '../../src/core/plan/types'

const survey = { kind: 'survey' } as const
export const mm = (value: number, ...from: readonly string[]): ValueFigure => ({
  state: 'known',
  value,
  pm: 1,
  unit: 'mm',
  basis: survey,
  from,
})
const unknown = (...missing: readonly string[]): UnknownFigure => ({
  state: 'unknown',
  unit: 'mm',
  basis: survey,
  from: missing,
  missing,
})
const say = (key: string): Message => ({ key, values: {} })

const readings = [
  { id: 'r1', along: 0, out: 0, drop: 1000 },
  { id: 'r2', along: 2400, out: 0, drop: 1012 },
  { id: 'r3', along: 0, out: 1600, drop: 1004 },
  { id: 'r4', along: 2400, out: 1600, drop: 1016 },
]

export const kitchen = {
  format: 'dryrun-kitchen',
  version: 1,
  name: 'Hand-built',
  region: 'uk',
  survey: { houseBuilt: 2010, gas: false },
  lines: [{ id: 'line' }],
  walls: [
    {
      id: 'a',
      length: 2400,
      construction: 'masonry',
      layers: [
        { id: 'plaster', material: 'plaster', thickness: 12 },
        { id: 'brick', material: 'brick', thickness: 100 },
      ],
      thickness: 250,
      accessories: [
        { id: 'socket', kind: 'socket', along: { at: 1500 }, height: { up: 60 }, width: 86, tall: 86 },
      ],
      traced: 'whole',
    },
  ],
  ceiling: [{ id: 'c1', at: { wall: 'a', along: { at: 600 }, out: 300 }, height: { up: 1400 } }],
  boxes: [] as readonly unknown[],
  floor: {
    readings: readings.map(({ id, along, out, drop }) => ({
      id,
      at: { wall: 'a', along: { at: along }, out },
      drop,
    })),
  },
  units: [
    {
      id: 'b1',
      kind: 'base',
      wall: 'a',
      order: { left: { at: 300 } },
      width: 600,
      height: 720,
      depth: 560,
      board: 18,
      stands: 'legs',
      feet: [
        { id: 'bl', x: 40, y: 60 },
        { id: 'br', x: 560, y: 60 },
        { id: 'fl', x: 40, y: 500 },
        { id: 'fr', x: 560, y: 500 },
      ],
      legs: { min: 120, max: 180, delivered: 150, perTurn: 1.5 },
      assembled: 'flat-packed',
    },
    {
      id: 'w1',
      kind: 'wall',
      wall: 'a',
      order: { left: { at: '300 mm' } },
      width: 600,
      height: 720,
      depth: 300,
      board: 18,
      void: 16,
      stands: 'plates',
      hanging: { plateBelowTop: 40, plateHoleBelow: 10, plateHoles: 1, hangerIn: 40, hookLift: 12 },
      assembled: 'built',
    },
  ],
  worktops: [{ id: 't1', over: ['b1'], thickness: 38 }],
  fixings: [
    {
      id: 'plug',
      kind: 'screw-and-plug',
      length: 50,
      holeDepth: 36,
      embedment: 30,
      for: ['plate', 'base-bracket'],
      into: ['brick'],
      bit: 7,
    },
  ],
} as const

/** Floor of the hand-built kitchen: 5 mm per metre along, 2.5 mm per metre out. */
const floorAt = (along: number, out: number): number => -1000 - along * 0.005 - out * 0.0025

const UNDERSIDE = -850
const BASE_TOP = -130
const WORKTOP = -92
const WALL_UNDERSIDE = 368
const WALL_TOP = 1088
const order = ['units.b1.order.left.at']

const pose = (out: number, z: number): Pose => ({ x: 300, y: -out + 0, z, yaw: 0 })
const heightValue = (of: string, value: number): Plan['heights']['values'][number] =>
  ({
    of,
    height: { ...mm(value, 'units.b1.legs.min'), pm: 0 },
    lowest: null,
    highest: null,
    lowestBy: [],
    highestBy: [],
    marginal: false,
    achieved: false,
  }) as Plan['heights']['values'][number]

const lift: UnitPlan['lift'] = {
  massStripped: { ...mm(18, 'units.b1.board'), unit: 'kg' },
  massFull: { ...mm(20, 'units.b1.board'), unit: 'kg' },
  people: 2,
  filter: { ...mm(20, 'units.b1.board'), unit: 'kg' },
  zone: 'knuckle-lower-leg',
  aid: 'none',
  endLift: null,
}

function unitPlan(id: 'b1' | 'w1', depth: number, underside: number): UnitPlan {
  const fact = `units.${id}`
  return {
    unit: id,
    name: id,
    kind: id === 'b1' ? 'base' : 'wall',
    wall: 'a',
    left: mm(300, `${fact}.order.left.at`),
    right: mm(900, `${fact}.order.left.at`, `${fact}.width`),
    width: mm(600, `${fact}.width`),
    height: mm(720, `${fact}.height`),
    depth: mm(depth, `${fact}.depth`),
    underside: mm(underside, `${fact}.height`),
    top: mm(underside + 720, `${fact}.height`),
    stands: id === 'b1' ? 'legs' : 'plates',
    pose: pose(0, underside),
    solid: [{ x0: 0, x1: 600, y0: 0, y1: depth, z0: 0, z1: 720 }],
    adjusters: [],
    legs: id === 'b1' ? kitchen.units[0].feet.map(leg) : [],
    lift,
    holding: null,
    standUp: null,
    hookOn:
      id === 'b1'
        ? null
        : { needed: mm(22, `${fact}.hanging.hookLift`), there: mm(312, 'ceiling.c1.height.up'), fits: 'yes' },
    achieved: null,
  }
}

function leg(foot: {
  readonly id: string
  readonly x: number
  readonly y: number
}): UnitPlan['legs'][number] {
  const floor = floorAt(300 + foot.x, foot.y)
  const from = readings.map((r) => `floor.readings.${r.id}.drop`)
  return {
    foot: foot.id,
    x: foot.x,
    y: foot.y,
    floor: mm(floor, ...from),
    extension: mm(UNDERSIDE - floor, ...from),
    min: mm(120, 'units.b1.legs.min'),
    max: mm(180, 'units.b1.legs.max'),
    delivered: mm(150, 'units.b1.legs.delivered'),
    turns: { ...mm((UNDERSIDE - floor - 150) / 1.5, ...from), unit: 'turn' },
    within: 'yes',
  }
}

function hole(
  id: string,
  purpose: Hole['purpose'],
  unit: string,
  along: number,
  height: number,
  number: number,
): Hole {
  return {
    id,
    wall: 'a',
    purpose,
    for: [unit],
    along: mm(along, ...order),
    height: mm(height, `units.${unit}.height`),
    bit: mm(7, 'fixings.plug.bit'),
    depth: { ...mm(48, 'fixings.plug.length'), pm: 1 },
    screwLength: mm(50, 'fixings.plug.length'),
    fixing: 'plug',
    into: 'brick',
    stud: null,
    verdict: 'trace first',
    against: [],
    hitBands: [],
    number,
  }
}

interface OperationParts {
  readonly changes?: readonly StateChange[]
  readonly holding?: readonly string[]
  readonly holes?: readonly string[]
  readonly path?: number
  readonly holdPoint?: boolean
}

function operation(id: string, parts: OperationParts = {}): Operation {
  const [kind = '', on = ''] = id.split(':')
  return {
    id,
    kind,
    on: [on],
    stage: 'survey',
    title: say(`operation.${kind}`),
    does: [],
    figures: [],
    checks: [],
    cautions: [],
    tools: [],
    people: 2,
    trade: null,
    minutes: { low: 5, typical: 10, high: 20 },
    holdPoint: parts.holdPoint ?? false,
    stops: [],
    changes: parts.changes ?? [],
    path: parts.path ?? null,
    holding: parts.holding ?? [],
    lines: [],
    marks: [],
    holes: parts.holes ?? [],
    rails: [],
    wall: null,
    from: [],
    done: false,
  }
}

const change = (unit: string, from: StateChange['from'], to: StateChange['to']): StateChange => ({
  unit,
  from,
  to,
})

const plates = ['plate.w1.left.1', 'plate.w1.right.1']
const brackets = ['base-bracket.b1.left', 'base-bracket.b1.right']

const operations: readonly Operation[] = [
  operation('check-delivery:room'),
  operation('isolate:room'),
  operation('strike:line'),
  operation('read-floor:room'),
  operation('set-out-heights:a'),
  operation('set-out-widths:a'),
  operation('trace:a'),
  operation('mark-holes:a', { holes: [...plates, ...brackets] }),
  operation('assemble:b1', { changes: [change('b1', 'delivered', 'assembled')] }),
  operation('set-legs:b1'),
  operation('fit-hangers:w1'),
  operation('drill-plates:w1', { holes: plates }),
  operation('fix-plates:w1'),
  operation('hang:w1', { changes: [change('w1', 'carried', 'hooked')], holding: ['w1'], path: 0 }),
  operation('level:w1', { changes: [change('w1', 'hooked', 'levelled')], holding: ['w1'] }),
  operation('lock:w1', { changes: [change('w1', 'levelled', 'secured')] }),
  operation('place:b1', { changes: [change('b1', 'carried', 'standing')], path: 1 }),
  operation('level:b1', { changes: [change('b1', 'standing', 'levelled')] }),
  operation('fix:b1', { changes: [change('b1', 'levelled', 'secured')], holes: brackets }),
  operation('prove:room', { holdPoint: true }),
  operation('worktop:t1'),
  operation('restore-supply:room'),
  operation('snag:room'),
]

const HARD: readonly (readonly [string, string, OrderReason['kind'], string])[] = [
  ['check-delivery:room', 'assemble:b1', 'support', 'delivery-before-assembly'],
  ['check-delivery:room', 'fit-hangers:w1', 'support', 'delivery-before-assembly'],
  ...['drill-plates:w1', 'fix:b1'].flatMap((drill) =>
    (
      [
        ['isolate:room', 'safety', 'isolate-before-hole'],
        ['trace:a', 'safety', 'trace-before-hole'],
        ['set-out-heights:a', 'datum', 'heights-before-holes'],
        ['mark-holes:a', 'datum', 'heights-before-holes'],
      ] as const
    ).map(([before, kind, rule]) => [before, drill, kind, rule] as const),
  ),
  ['strike:line', 'read-floor:room', 'datum', 'line-before-marks'],
  ['strike:line', 'set-out-heights:a', 'datum', 'line-before-marks'],
  ['strike:line', 'set-out-widths:a', 'datum', 'line-before-marks'],
  ['read-floor:room', 'set-out-heights:a', 'datum', 'floor-before-heights'],
  ['set-out-heights:a', 'mark-holes:a', 'datum', 'line-before-marks'],
  ['set-out-widths:a', 'mark-holes:a', 'datum', 'line-before-marks'],
  ['assemble:b1', 'set-legs:b1', 'support', 'assembled-before-placed'],
  ['set-legs:b1', 'place:b1', 'datum', 'legs-before-placed'],
  ['fit-hangers:w1', 'hang:w1', 'support', 'hangers-before-hung'],
  ['drill-plates:w1', 'fix-plates:w1', 'support', 'drill-before-fix'],
  ['fix-plates:w1', 'hang:w1', 'support', 'plates-before-hung'],
  ['hang:w1', 'level:w1', 'support', 'placed-before-levelled'],
  ['level:w1', 'lock:w1', 'datum', 'levelled-before-locked'],
  ['place:b1', 'level:b1', 'support', 'placed-before-levelled'],
  ['level:b1', 'fix:b1', 'datum', 'levelled-before-fixed'],
  ['fix:b1', 'prove:room', 'support', 'all-secured-before-hold-point'],
  ['prove:room', 'worktop:t1', 'safety', 'hold-point-before-worktop'],
  ['drill-plates:w1', 'restore-supply:room', 'safety', 'supply-after-holes'],
  ['fix:b1', 'restore-supply:room', 'safety', 'supply-after-holes'],
  ['restore-supply:room', 'snag:room', 'finish', 'snag-last'],
  ['worktop:t1', 'snag:room', 'finish', 'snag-last'],
  ['lock:w1', 'snag:room', 'finish', 'snag-last'],
]

function reason([before, after, kind, rule]: (typeof HARD)[number]): OrderReason {
  return {
    id: `${before} < ${after}: ${kind}.${rule}`,
    before,
    after,
    kind,
    rule,
    hard: true,
    cost: 0,
    basis: survey,
    from: ['lines.line'],
    figures: [],
    because: say(`because.${rule}`),
    minLag: 0,
    maxLag: null,
  }
}

function lines(): Plan['lines'] {
  const struck = [
    ['line', 0],
    ['base-top', BASE_TOP],
    ['wall-top', WALL_TOP],
    ['plate', WALL_TOP - 40],
    ['bracket', BASE_TOP - 40],
  ] as const
  return struck.map(([of, height]) => ({
    id: `a.${of}`,
    wall: 'a',
    of,
    height: mm(height, 'lines.line'),
    from: 0,
    to: 2400,
  }))
}

function bands(): Plan['bands'] {
  const common = {
    wall: 'a',
    about: ['socket'],
    face: 'room',
    pm: 1,
    unknownBecause: [],
    from: [],
    basis: survey,
  } as const
  return [
    { ...common, id: 'v', kind: 'accessory-vertical', left: 1447, right: 1553, bottom: null, top: null },
    { ...common, id: 'h', kind: 'accessory-horizontal', left: null, right: null, bottom: 7, top: 113 },
  ]
}

/** The hand-built plan, fresh for every test that bends it. */
export function handBuiltPlan(): Plan {
  return {
    stamp: { hash: 'x', rules: '1', region: 'uk' },
    name: 'Hand-built',
    demo: false,
    walls: [
      {
        wall: 'a',
        name: 'a',
        origin: { x: 0, y: 0 },
        alongDir: { x: 1, y: 0 },
        outDir: { x: 0, y: -1 },
        length: mm(2400, 'walls.a.length'),
        cornerRight: { ...unknown('walls.a.cornerRight.angle'), unit: 'deg' },
        ceiling: mm(1400, 'ceiling.c1.height.up'),
        placed: true,
      },
    ],
    floor: {
      points: readings.map((r) => ({
        id: r.id,
        at: { x: r.along, y: -r.out },
        z: mm(-r.drop, `floor.readings.${r.id}.drop`),
      })),
      triangles: [{ readings: ['r1', 'r2', 'r3'] }, { readings: ['r2', 'r4', 'r3'] }],
      plane: { a: -1000, b: -0.005, c: 0.0025, worst: 0 },
      highPoint: { z: mm(floorAt(340, 60), 'floor.readings.r1.drop'), where: 'b1.bl' },
      fall: mm(4, 'floor.readings.r1.drop'),
    },
    heights: {
      demands: [],
      values: [
        heightValue('base-underside', UNDERSIDE),
        heightValue('base-top', BASE_TOP),
        heightValue('worktop-top', WORKTOP),
        heightValue('wall-underside', WALL_UNDERSIDE),
        heightValue('wall-top', WALL_TOP),
      ],
      conflicts: [],
      unmet: [],
    },
    lines: lines(),
    marks: [300, 900].flatMap((along, i) => [
      { id: `m.b1.${i}`, wall: 'a', kind: 'unit-edge' as const, about: 'b1', along: mm(along, ...order) },
    ]),
    units: [unitPlan('b1', 560, UNDERSIDE), unitPlan('w1', 300, WALL_UNDERSIDE)],
    rails: [],
    bands: bands(),
    holes: [
      hole('plate.w1.left.1', 'plate', 'w1', 340, WALL_TOP - 50, 1),
      hole('plate.w1.right.1', 'plate', 'w1', 860, WALL_TOP - 50, 2),
      ...(
        [
          ['left', 348, 3],
          ['right', 852, 4],
        ] as const
      ).map(([side, along, n]) => ({
        ...hole(`base-bracket.b1.${side}`, 'base-bracket', 'b1', along, BASE_TOP - 40, n),
        depth: mm(48, 'fixings.plug.length'),
      })),
    ],
    obstacles: [],
    paths: [
      {
        unit: 'w1',
        approach: 'front',
        segments: [
          { kind: 'move', from: pose(900, -990), to: pose(900, WALL_UNDERSIDE + 12) },
          { kind: 'move', from: pose(900, WALL_UNDERSIDE + 12), to: pose(0, WALL_UNDERSIDE + 12) },
          { kind: 'move', from: pose(0, WALL_UNDERSIDE + 12), to: pose(0, WALL_UNDERSIDE) },
        ],
        blockedBy: [],
        clearance: 0,
      },
      {
        unit: 'b1',
        approach: 'front',
        segments: [
          { kind: 'move', from: pose(860, UNDERSIDE), to: pose(860, UNDERSIDE + 30) },
          { kind: 'move', from: pose(860, UNDERSIDE + 30), to: pose(0, UNDERSIDE + 30) },
          { kind: 'move', from: pose(0, UNDERSIDE + 30), to: pose(0, UNDERSIDE) },
        ],
        blockedBy: [],
        clearance: 0,
      },
    ],
    operations,
    reasons: HARD.map(reason),
    order: { cost: 0, parts: {}, setAside: [], method: 'by hand' },
    findings: [],
    measureNext: [],
    changes: [],
  }
}
