/**
 * A figure that cites a fact cannot stand without it, and a figure that does not cite it does not move: checked by taking
 * every measured or entered quantity out of two full walls, one after another.
 */
import { expect, test } from 'vitest'
import type { Figure } from '../../../src/core/figure'
import { liftOf } from '../../../src/core/lifting/lifting'
import { figuresIn } from '../../../src/core/plan/figures-in'
import {
  at,
  baseUnit,
  brickWall,
  exact,
  type Json,
  plug,
  stud,
  studWall,
  tallUnit,
  up,
  wallFile,
  wallUnit,
  without,
  woodScrew,
  worked,
} from '../../support/fixed-wall'

const door = (mass: number | null): Json => ({
  id: 'd',
  hinge: 'left',
  width: exact(597),
  height: exact(717),
  thickness: exact(18),
  mass,
})
const units: readonly Json[] = [
  {
    ...wallUnit,
    id: 'w1',
    stands: 'rail',
    doors: [door(null)],
    massEmpty: null,
    shelves: 2,
    massStripped: 12,
  },
  { ...wallUnit, id: 'w2', stands: 'rail', order: { rightOf: 'w1', gap: exact(0) }, doors: [door(5)] },
  {
    ...wallUnit,
    id: 'w3',
    order: { left: at(1900) },
    hanging: {
      ...(wallUnit['hanging'] as Json),
      plateHoles: 2,
      plateHolePitch: exact(32),
      ratedPerHanger: 60,
    },
  },
  { ...baseUnit, id: 'b1', order: { left: at(600) } },
  { ...tallUnit, id: 't1', order: { left: { from: 'right', at: exact(500) } }, width: exact(400) },
]
const accessories: readonly Json[] = [
  { id: 's1', kind: 'socket', along: at(650), height: up(-400), width: exact(86), tall: exact(86) },
  {
    id: 's2',
    kind: 'switch',
    face: 'other',
    along: { face: 'other', at: exact(1700) },
    height: up(-300),
    width: exact(86),
    tall: exact(86),
  },
]
const services: readonly Json[] = [
  {
    id: 'p',
    kind: 'waste',
    traced: 'seen',
    width: exact(40),
    points: [
      { id: '1', along: at(1160), height: up(-1000) },
      { id: '2', along: at(1160), height: up(0) },
    ],
  },
]
const lintels: readonly Json[] = [
  { id: 'l', kind: 'concrete', left: at(1000), right: at(1600), bottom: up(1200), top: up(1350) },
]
const shared: Json = {
  accessories,
  services,
  lintels,
  otherFaceShift: exact(0),
  otherFaceChecked: true,
  behind: 'room',
}
const crew = {
  people: [
    { id: 'a', filter: 'man', own: 20 },
    { id: 'b', filter: 'woman' },
  ],
}
const rest: Json = {
  crew,
  rails: [
    {
      id: 'r',
      wall: 'a',
      units: ['w1', 'w2'],
      thickness: exact(5),
      maxSpacing: exact(500),
      overhang: exact(200),
    },
  ],
  fixings: [plug, { ...plug, id: 'long', length: exact(90) }, woodScrew],
}
const studs = [
  stud('s1', 650),
  stud('s2', 1050),
  stud('s3', 1450),
  stud('s4', 1850),
  stud('s5', 2250),
  stud('s6', 2600),
]
const noggings = [
  { id: 'n', kind: 'nogging', from: at(1850), to: at(2500), centre: up(1070), depth: exact(90) },
  { id: 'm', kind: 'nogging', from: at(1700), to: at(2500), centre: up(450), depth: exact(90) },
]
const backRail = { fromTop: exact(30), height: exact(100), thickness: exact(18) }
const otherUnits: readonly Json[] = [
  { ...wallUnit, id: 'w1', stands: 'cleat', backRail },
  {
    ...wallUnit,
    id: 'w2',
    order: { left: at(1220) },
    stands: 'back-rail-screws',
    backRail,
    standOff: exact(0),
  },
  { ...wallUnit, id: 'w3', order: { left: at(1820) } },
  { ...tallUnit, id: 't1', order: { left: at(2430) }, width: exact(400), backRail },
  { ...baseUnit, id: 'b1', order: { left: at(900) }, backRail },
]
const window: Json = {
  openings: [
    {
      id: 'win',
      kind: 'window',
      left: at(1000),
      right: at(1300),
      bottom: up(-500),
      top: up(600),
      boardLeft: {},
      boardRight: {},
    },
  ],
  lintels: [],
}
const files: readonly (readonly [string, Json])[] = [
  ['masonry', wallFile({ wall: { ...brickWall, ...shared, thickness: exact(225) }, units, rest })],
  [
    'thin masonry',
    wallFile({
      wall: {
        ...brickWall,
        ...shared,
        layers: [
          { id: 'p', material: 'plaster', thickness: exact(10) },
          { id: 'b', material: 'brick', thickness: exact(80) },
        ],
        thickness: exact(90),
      },
      units,
      rest,
    }),
  ],
  ['studs', wallFile({ wall: { ...studWall, ...shared, studs, noggings }, units, rest })],
  [
    'masonry, other ways of hanging',
    wallFile({
      wall: { ...brickWall, ...shared, ...window },
      units: otherUnits,
      rest: { ...rest, rails: [] },
    }),
  ],
  [
    'studs, other ways of hanging',
    wallFile({
      wall: { ...studWall, ...shared, ...window, studs, noggings },
      units: otherUnits,
      rest: { ...rest, rails: [] },
    }),
  ],
  [
    'studs in North America',
    wallFile({
      wall: { ...studWall, ...shared, studs, noggings },
      units: otherUnits,
      rest: { ...rest, rails: [], region: 'north-america' },
    }),
  ],
]

function figuresOf(file: Json): ReadonlyMap<string, Figure> {
  const { kitchen, positions, region, fixings } = worked(file)
  const out = new Map<string, Figure>()
  figuresIn(fixings.holes, out, '/holes')
  figuresIn(fixings.rails, out, '/rails')
  figuresIn(fixings.neededNoggings, out, '/needed')
  for (const [unit, holding] of fixings.holding) figuresIn(holding, out, `/holding/${unit}`)
  for (const position of positions)
    figuresIn(liftOf(position, kitchen, region).lift, out, `/lift/${position.unit.id}`)
  return out
}

/** Every fact that is cited and can be taken out of the file: choices and whole lists are not quantities. */
function quantitiesCited(file: Json, figures: ReadonlyMap<string, Figure>): readonly string[] {
  const cited = new Set([...figures.values()].flatMap((f) => f.from))
  return [...cited].filter((fact) => isQuantity(file, fact)).sort()
}

function isQuantity(file: Json, fact: string): boolean {
  let here: unknown = file
  for (const step of fact.split('.')) {
    here = Array.isArray(here)
      ? here.find((item: { readonly id?: string }) => item.id === step)
      : (here as Record<string, unknown> | undefined)?.[step]
    if (here === undefined || here === null) return false
  }
  return typeof here === 'number' || (typeof here === 'object' && 'value' in (here as object))
}

/**
 * A stated default stands in for these, and is marked: the number of holes of a plate, spacing, masses. A gap left out
 * says that neighbours touch, a stand-off that a unit is against the wall.
 */
const HAS_DEFAULT = /\.(gap|standOff|plateHoles|maxSpacing|massStripped|massEmpty|mass|own)$/

test.each(files)('%s: each figure stands and falls with what it cites', (_, file) => {
  const before = figuresOf(file)
  const facts = quantitiesCited(file, before)
  expect(facts.length).toBeGreaterThan(40)
  const wrong: string[] = []
  for (const fact of facts) {
    const after = figuresOf(without(file, fact))
    for (const [name, was] of before) {
      const is = after.get(name)
      const cites = was.from.includes(fact)
      if (is === undefined) {
        if (!cites && !name.startsWith('holes/') && !name.startsWith('needed/'))
          wrong.push(`${fact}: ${name} is gone`)
      } else if (!cites && JSON.stringify(worth(is)) !== JSON.stringify(worth(was))) {
        wrong.push(`${fact}: ${name} does not cite it, and moved`)
      } else if (cites && was.state !== 'unknown' && is.state !== 'unknown' && !HAS_DEFAULT.test(fact)) {
        wrong.push(`${fact}: ${name} cites it, and stands without it`)
      }
    }
  }
  expect(wrong).toEqual([])
})

/** What people act on: the value and its precision. */
function worth(figure: Figure): unknown {
  return figure.state === 'unknown' ? null : [figure.value, figure.pm]
}

test('every hole of the full walls that is not refused has a number, and no two the same', () => {
  for (const [, file] of files) {
    const { holes } = worked(file).fixings
    const numbers = holes.filter((h) => h.verdict !== 'refused').map((h) => h.number)
    expect([...numbers].sort((a, b) => Number(a) - Number(b))).toEqual(numbers.map((_, i) => i + 1))
    expect(holes.filter((h) => h.verdict === 'refused').every((h) => h.number === null)).toBe(true)
    expect(new Set(holes.map((h) => h.id)).size).toBe(holes.length)
  }
})
