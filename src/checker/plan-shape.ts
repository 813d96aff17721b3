import {
  anything,
  byWord,
  flag,
  leftOut,
  list,
  maybe,
  number,
  oneOf,
  record,
  type Shape,
  text,
} from './shape'

/** What a plan must look like for the checker to read it at all. */

const basis = record({ kind: text })
const common = { unit: text, basis, from: list(text) }
const valued = record({ ...common, value: number, pm: number })
const figure = byWord('state', {
  known: valued,
  assumed: valued,
  unknown: record({ ...common, missing: list(text) }),
})
const message = record({ key: text, values: record({}) })
const point = record({ x: number, y: number })
const pose = record({ x: number, y: number, z: number, yaw: number })
const box = record({ x0: number, x1: number, y0: number, y1: number, z0: number, z1: number })
const sides = oneOf('back', 'front', 'left', 'right')
const states = oneOf(
  'delivered',
  'assembled',
  'carried',
  'held',
  'hooked',
  'standing',
  'levelled',
  'locked',
  'secured',
)

const wall = record({
  wall: text,
  name: text,
  origin: point,
  alongDir: point,
  outDir: point,
  length: figure,
  cornerRight: figure,
  ceiling: figure,
  placed: flag,
})

const ids = list(text)
const threeIds: Shape = (d) =>
  ids(d) ?? (Array.isArray(d) && d.length === 3 ? null : ' is not three readings')

const floor = record({
  points: list(record({ id: text, at: point, z: figure })),
  triangles: list(record({ readings: threeIds })),
  plane: maybe(record({ a: number, b: number, c: number, worst: number })),
  highPoint: record({ z: figure, where: text }),
  fall: figure,
})

const heights = record({
  demands: list(
    record({
      id: text,
      from: text,
      to: text,
      min: maybe(figure),
      max: maybe(figure),
      because: message,
      basis,
      hard: flag,
      about: list(text),
    }),
  ),
  values: list(
    record({
      of: text,
      height: figure,
      lowest: maybe(number),
      highest: maybe(number),
      lowestBy: list(text),
      highestBy: list(text),
      marginal: flag,
      achieved: flag,
    }),
  ),
  conflicts: list(record({ demands: list(text), by: number })),
  unmet: list(text),
})

const leg = record({
  foot: text,
  x: number,
  y: number,
  floor: figure,
  extension: figure,
  min: figure,
  max: figure,
  delivered: figure,
  turns: figure,
  within: oneOf('yes', 'too-short', 'too-long', 'not-known'),
})
const holding = record({
  pull: figure,
  shear: figure,
  pullPerFixing: figure,
  shearPerFixing: figure,
  verdict: text,
  lacking: list(text),
  published: leftOut(
    record({
      screw: text,
      wall: text,
      formula: oneOf('eurocode', 'american'),
      pull: maybe(figure),
      thread: figure,
      timber: figure,
      outside: maybe(oneOf('diameter', 'core', 'penetration')),
    }),
  ),
})
const lift = record({
  massStripped: figure,
  massFull: figure,
  people: maybe(number),
  filter: figure,
  zone: text,
  aid: oneOf('none', 'lifter', 'batten-or-prop', 'lighten-it', 'stop'),
  endLift: maybe(figure),
  alone: leftOut(record({ lifting: figure, placing: figure, lower: figure })),
})
const fits = oneOf('yes', 'no', 'not-known')

const adjuster = record({
  kind: oneOf('leg', 'height-screw'),
  id: text,
  x: figure,
  y: figure,
  perTurn: figure,
  clockwise: maybe(oneOf('raises', 'lowers')),
  place: maybe(text),
  upLeft: figure,
  downLeft: figure,
})

const unit = record({
  unit: text,
  name: text,
  kind: text,
  wall: text,
  left: figure,
  right: figure,
  width: figure,
  height: figure,
  depth: figure,
  underside: figure,
  top: figure,
  stands: maybe(text),
  pose: maybe(pose),
  solid: list(box),
  legs: list(leg),
  shims: leftOut(list(record({ foot: text, x: number, y: number, floor: figure, height: figure }))),
  adjusters: list(adjuster),
  lift,
  holding: maybe(holding),
  standUp: maybe(record({ over: sides, pivot: text, blocks: figure, needed: figure, ceiling: figure, fits })),
  hookOn: maybe(record({ needed: figure, there: figure, fits })),
  achieved: anything,
})

const rail = record({
  rail: text,
  wall: text,
  units: list(text),
  from: figure,
  to: figure,
  edge: figure,
  studs: list(text),
})
const band = record({
  id: text,
  wall: text,
  kind: text,
  about: list(text),
  face: oneOf('room', 'other'),
  left: maybe(number),
  right: maybe(number),
  bottom: maybe(number),
  top: maybe(number),
  unknownBecause: list(text),
  from: list(text),
  basis,
})
const hole = record({
  id: text,
  wall: text,
  purpose: text,
  for: list(text),
  along: figure,
  height: figure,
  bit: figure,
  depth: figure,
  screwLength: figure,
  fixing: maybe(text),
  into: maybe(text),
  stud: maybe(text),
  verdict: oneOf('refused', 'ask', 'trace first'),
  against: list(message),
  hitBands: list(text),
  number: maybe(number),
})

const path = record({
  unit: text,
  approach: oneOf('front', 'left', 'right', 'back', 'above'),
  segments: list(
    byWord('kind', {
      move: record({ from: pose, to: pose }),
      'stand-up': record({ upright: pose, over: sides, blocks: number }),
    }),
  ),
  blockedBy: list(text),
  clearance: number,
})

const operation = record({
  id: text,
  kind: text,
  on: list(text),
  stage: text,
  title: message,
  does: list(message),
  figures: list(record({ name: text, figure, label: message })),
  checks: list(record({ id: text, ask: message, target: maybe(figure), tolerance: maybe(figure) })),
  cautions: list(record({ sign: text, say: message })),
  tools: list(text),
  people: number,
  trade: maybe(text),
  minutes: record({ low: number, typical: number, high: number }),
  holdPoint: flag,
  stops: list(text),
  changes: list(record({ unit: text, from: states, to: states })),
  path: maybe(number),
  holding: list(text),
  lines: list(text),
  marks: list(text),
  holes: list(text),
  rails: list(text),
  wall: maybe(text),
  from: list(text),
  done: flag,
})

const reason = record({
  id: text,
  before: text,
  after: text,
  kind: text,
  rule: text,
  hard: flag,
  cost: number,
  basis,
  from: list(text),
  figures: list(figure),
  because: message,
  minLag: number,
  maxLag: maybe(number),
})

const finding = record({
  id: text,
  rule: text,
  weight: oneOf('stop', 'ask', 'warn', 'note'),
  dangerous: flag,
  about: list(text),
  say: message,
  figures: list(figure),
  from: list(text),
  basis,
})

export const PLAN_SHAPE: Shape = record({
  stamp: record({ hash: text, rules: text, region: maybe(text) }),
  name: text,
  demo: flag,
  walls: list(wall),
  floor,
  heights,
  lines: list(
    record({ id: text, wall: text, of: text, height: figure, from: maybe(number), to: maybe(number) }),
  ),
  marks: list(
    record({
      id: text,
      wall: text,
      kind: oneOf('unit-edge', 'stud', 'bay-edge'),
      about: text,
      along: figure,
    }),
  ),
  units: list(unit),
  rails: list(rail),
  bands: list(band),
  holes: list(hole),
  obstacles: list(record({ id: text, polygon: list(point), bottom: maybe(number), top: maybe(number) })),
  paths: list(path),
  operations: list(operation),
  reasons: list(reason),
  order: record({ cost: number, setAside: list(text), method: text }),
  findings: list(finding),
  measureNext: list(record({ input: text })),
  changes: list(anything),
})
