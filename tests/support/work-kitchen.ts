import { nothingAchieved } from '../../src/core/daylog/achieved'
import { workOutFixings } from '../../src/core/fixings/fixings'
import { workOutHeights } from '../../src/core/heights/heights'
import { workOutBands } from '../../src/core/holes/bands'
import { assumeProductDefaults } from '../../src/core/kitchen/assume-defaults'
import { normalise } from '../../src/core/kitchen/normalise'
import type { Kitchen, KitchenFile } from '../../src/core/kitchen/schema'
import type { OperationContext } from '../../src/core/operations/operation-context'
import { workThrough } from '../../src/core/plan/entry'
import type { Plan } from '../../src/core/plan/types'
import { regionPack } from '../../src/core/region/region'
import { workOutSurvey } from '../../src/core/survey/survey'
import { unitNames } from '../../src/core/units/names'
import { workOutPositions } from '../../src/core/units/positions'
import { kitchenOf } from './facts'

type FileUnit = NonNullable<KitchenFile['units']>[number]

const LEGS = { min: 80, max: 180, delivered: 100, perTurn: 1.5 }
const HANGING = {
  plateBelowTop: 35,
  plateHoleBelow: 20,
  plateHoles: 2,
  plateHolePitch: 32,
  hangerIn: 40,
  hookLift: 15,
}

function carcass(id: string, wall: string, left: number, width: number): FileUnit {
  return { id, kind: 'base', wall, order: { left: { at: left } }, width, height: 720, depth: 560 }
}

/** A base unit on four legs, with one door, as delivered flat. */
export function base(
  id: string,
  wall: string,
  left: number,
  width: number,
  more: Partial<FileUnit> = {},
): FileUnit {
  return {
    ...carcass(id, wall, left, width),
    stands: 'legs',
    legs: LEGS,
    feet: [
      { id: 'bl', x: 50, y: 50 },
      { id: 'br', x: width - 50, y: 50 },
      { id: 'fl', x: 50, y: 485 },
      { id: 'fr', x: width - 50, y: 485 },
    ],
    board: 18,
    back: 8,
    void: 50,
    backRail: { fromTop: 0, height: 100, thickness: 18 },
    doors: [{ id: 'd', width: width - 4, height: 716, thickness: 18 }],
    assembled: 'flat-packed',
    ...more,
  }
}

/** A wall unit on two plates, with one door. */
export function hung(
  id: string,
  wall: string,
  left: number,
  width: number,
  more: Partial<FileUnit> = {},
): FileUnit {
  return {
    ...carcass(id, wall, left, width),
    kind: 'wall',
    depth: 300,
    stands: 'plates',
    hanging: HANGING,
    board: 18,
    back: 8,
    void: 18,
    bottomRail: { fromBottom: 18, height: 60, thickness: 18 },
    doors: [{ id: 'd', width: width - 4, height: 716, thickness: 18 }],
    assembled: 'flat-packed',
    ...more,
  }
}

/** A tall unit on four legs. */
export function tall(id: string, wall: string, left: number, more: Partial<FileUnit> = {}): FileUnit {
  return {
    ...base(id, wall, left, 600),
    kind: 'tall',
    height: 2070,
    massStripped: 42,
    doors: [{ id: 'd', width: 596, height: 2060, thickness: 18 }],
    ...more,
  }
}

const FLOOR = [
  [100, 100, 1000],
  [100, 500, 1001],
  [2000, 100, 1003],
  [2000, 600, 1004],
  [3900, 100, 1008],
  [3900, 600, 1010],
] as const

const FIXINGS: NonNullable<KitchenFile['fixings']> = [
  {
    id: 'plug',
    kind: 'screw-and-plug',
    diameter: 6,
    length: 60,
    bit: 8,
    holeDepth: 50,
    embedment: 40,
    for: ['plate', 'rail', 'base-bracket', 'tall-restraint'],
    into: ['brick'],
  },
  {
    id: 'screw',
    kind: 'wood-screw',
    diameter: 5,
    length: 70,
    bit: 3,
    embedment: 35,
    for: ['plate', 'rail', 'base-bracket', 'tall-restraint', 'second-fixing'],
    into: ['timber-stud'],
  },
]

/**
 * An invented L of two walls: a tall, a corner base, bases, wall units on plates (brick) and on a rail (studs), a
 * dishwasher's space, worktop, panel, plinth, cornice, a gas hob and a sink. Everything known that the tests need.
 */
export function workKitchen(): KitchenFile {
  const studs = Array.from({ length: 7 }, (_, i) => ({
    id: `s${i + 1}`,
    centre: { at: 220 + i * 400 },
    width: 45,
    material: 'timber' as const,
    confirmed: 'both-edges' as const,
  }))
  return {
    format: 'dryrun-kitchen',
    version: 1,
    name: 'Invented kitchen for tests of the work',
    region: 'uk',
    survey: { houseBuilt: 1985, gas: true },
    lines: [{ id: 'line', offset: 0, closing: 0, reversal: 0.5 }],
    closed: false,
    walls: [
      {
        id: 'a',
        name: 'brick wall',
        length: 4000,
        cornerRight: { angle: 90 },
        construction: 'masonry',
        layers: [
          { id: 'p', material: 'plaster', thickness: 12 },
          { id: 'b', material: 'brick', thickness: 215 },
        ],
        thickness: 240,
        behind: 'outside',
        traced: 'not-yet',
      },
      {
        id: 'b',
        name: 'stud wall',
        length: 3000,
        construction: 'timber-stud',
        layers: [{ id: 'p', material: 'plasterboard', thickness: 12.5 }],
        studs,
        thickness: 120,
        behind: 'room',
        otherFaceChecked: true,
        traced: 'not-yet',
      },
    ],
    ceiling: [
      { id: 'c1', at: { wall: 'a', along: { at: 100 }, out: 300 }, height: { up: 1400 } },
      { id: 'c2', at: { wall: 'a', along: { at: 3900 }, out: 300 }, height: { up: 1400 } },
      { id: 'c3', at: { wall: 'a', along: { at: 2000 }, out: 3000 }, height: { up: 1400 } },
    ],
    floor: {
      kind: 'concrete',
      heating: false,
      readings: [
        ...FLOOR.map(([at, out, drop], i) => ({
          id: `f${i + 1}`,
          at: { wall: 'a', along: { at }, out },
          drop,
        })),
        { id: 'f7', at: { wall: 'a', along: { at: 3900 }, out: 2900 }, drop: 1012 },
        { id: 'f8', at: { wall: 'a', along: { at: 3300 }, out: 2900 }, drop: 1011 },
        { id: 'f9', at: { wall: 'a', along: { at: 100 }, out: 2900 }, drop: 1006 },
      ],
    },
    units: [
      tall('t1', 'a', 0),
      base('b1', 'a', 600, 600),
      { ...carcass('dw', 'a', 1200, 600), kind: 'appliance-space', applianceBay: 'dishwasher' },
      base('b2', 'a', 1800, 600),
      base('b3', 'a', 2400, 700),
      base('c1', 'a', 3100, 900, {
        kind: 'corner-base',
        returnRight: 900,
        returnDepth: 560,
        feet: [
          { id: 'bl', x: 50, y: 50 },
          { id: 'br', x: 850, y: 50 },
          { id: 'fl', x: 50, y: 485 },
          { id: 'fr', x: 850, y: 850 },
        ],
      }),
      base('b4', 'b', 900, 600),
      base('b5', 'b', 1500, 600),
      hung('w1', 'a', 700, 600),
      hung('w2', 'a', 1300, 600),
      hung('w3', 'b', 1000, 600, { stands: 'rail' }),
      hung('w4', 'b', 1600, 600, { stands: 'rail' }),
    ],
    rails: [{ id: 'r1', wall: 'b', units: ['w3', 'w4'], thickness: 8, maxSpacing: 600 }],
    appliances: [
      {
        id: 'dishwasher',
        kind: 'dishwasher',
        fuel: 'electric',
        heightMin: 815,
        heightMax: 875,
        workingGap: 3,
        mass: 35,
      },
      { id: 'hob', kind: 'hob', fuel: 'gas', over: 'top', mass: 12 },
      { id: 'sink', kind: 'sink', fuel: 'none', over: 'top' },
    ],
    finishing: [
      { id: 'end', kind: 'end-panel', wall: 'b', of: ['b5'], width: 18, height: 870 },
      { id: 'kick', kind: 'plinth', wall: 'a', of: ['b1', 'dw', 'b2', 'b3'], height: 150, length: 2500 },
      { id: 'top-trim', kind: 'cornice', wall: 'a', of: ['w1', 'w2'], height: 40, length: 1200 },
      { id: 'back', kind: 'upstand', wall: 'a', of: ['b1', 'b2', 'b3'], height: 100, length: 3300 },
    ],
    worktops: [
      {
        id: 'top',
        over: ['b1', 'dw', 'b2', 'b3', 'c1', 'b4', 'b5'],
        thickness: 38,
        depth: 620,
        material: 'laminate',
        mass: 60,
      },
    ],
    fixings: FIXINGS,
    crew: {
      people: [
        { id: 'one', filter: 'man' },
        { id: 'two', filter: 'man', alwaysThere: false },
      ],
    },
  }
}

/** A long straight room with so many units: talls, bases and wall units in turn. For speed only. */
export function longKitchen(units: number): KitchenFile {
  const file = workKitchen()
  const wall = file.walls?.[0]
  const talls = Math.max(1, Math.round(units / 10))
  const half = Math.floor((units - talls) / 2)
  const made = [
    ...Array.from({ length: talls }, (_, i) => tall(`t${i + 1}`, 'a', i * 600)),
    ...Array.from({ length: units - talls - half }, (_, i) =>
      base(`b${i + 1}`, 'a', talls * 600 + i * 600, 600),
    ),
    ...Array.from({ length: half }, (_, i) => hung(`w${i + 1}`, 'a', talls * 600 + i * 600, 600)),
  ]
  const length = (units + 1) * 600
  return {
    ...file,
    walls: wall === undefined ? [] : [{ ...wall, length }],
    floor: {
      readings: [0, length / 2, length].flatMap((at, i) => [
        { id: `n${i}`, at: { wall: 'a', along: { at }, out: 50 }, drop: 1000 + i * 4 },
        { id: `o${i}`, at: { wall: 'a', along: { at }, out: 900 }, drop: 1001 + i * 4 },
      ]),
    },
    ceiling: [0, length / 2, length].flatMap((at, i) => [
      { id: `n${i}`, at: { wall: 'a', along: { at }, out: 50 }, height: { up: 1400 } },
      { id: `o${i}`, at: { wall: 'a', along: { at }, out: 3000 }, height: { up: 1400 } },
    ]),
    units: made,
    rails: [],
    appliances: [],
    finishing: [],
    worktops: [
      { id: 'top', over: made.filter((u) => u.kind === 'base').map((u) => u.id), thickness: 38, depth: 620 },
    ],
  }
}

/** The plan of a kitchen file; fails the test where there is none. */
export function planOf(file: KitchenFile): Plan {
  const outcome = workThrough(file)
  if (outcome.kind !== 'plan') throw new Error(`no plan: ${JSON.stringify(outcome).slice(0, 2000)}`)
  return outcome.plan
}

/** What the operations of a kitchen were read off, put together again from its plan. */
export function contextOf(file: KitchenFile): {
  readonly kitchen: Kitchen
  readonly context: OperationContext
} {
  const plan = planOf(file)
  const read = kitchenOf(file)
  const region = regionPack(read.region)
  const kitchen = assumeProductDefaults(normalise(read), region)
  const survey = workOutSurvey(kitchen, region)
  const positions = workOutPositions(kitchen, survey)
  const heights = workOutHeights(kitchen, survey, positions, region, nothingAchieved)
  const bands = workOutBands(kitchen, survey, region)
  const { neededNoggings } = workOutFixings(kitchen, survey, positions, heights, bands, region)
  return {
    kitchen,
    context: {
      kitchen,
      region,
      survey,
      floor: plan.floor,
      names: unitNames(kitchen),
      heights: plan.heights,
      units: plan.units,
      parts: positions.parts,
      rails: plan.rails,
      holes: plan.holes,
      bands: plan.bands,
      lines: plan.lines,
      marks: plan.marks,
      paths: plan.paths,
      neededNoggings,
      achieved: nothingAchieved,
    },
  }
}
