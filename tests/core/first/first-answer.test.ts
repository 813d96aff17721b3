/** The first answer, worked by hand: a tape is read to ± 2, a sheet to ± 0.5. */
import { describe, expect, test } from 'vitest'
import { firstAnswer } from '../../../src/core/first/first-answer'
import type { FirstKind, FirstLine } from '../../../src/core/first/line'
import { parseKitchen } from '../../../src/core/kitchen/parse-kitchen'
import { workThrough } from '../../../src/core/plan/entry'
import { say } from '../../../src/core/words/say'
import { sceneFile } from '../../support/kitchens'

type Part = Readonly<Record<string, unknown>>

function answerOf(parts: Part = {}): readonly FirstLine[] {
  const parsed = parseKitchen({ format: 'dryrun-kitchen', version: 1, name: 'Own', ...parts })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error))
  return firstAnswer(parsed.value.kitchen)
}
const keysOf = (kind: FirstKind, parts: Part = {}): readonly string[] =>
  answerOf(parts)
    .filter((line) => line.kind === kind)
    .map((line) => line.say.key.replace('first.', ''))
const saidOf = (key: string, parts: Part): string => {
  const line = answerOf(parts).find((one) => one.say.key === `first.${key}`)
  return line === undefined ? '' : say(line.say).replaceAll('\u202f', ' ')
}

const wall = (more: Part = {}) => [{ id: 'a', ...more }]
const width = (mm: number) => wall({ widths: [{ id: 'smallest', width: mm }] })
const run = (...widths: readonly number[]) =>
  widths.map((mm, i) => ({
    id: `base-${i + 1}`,
    kind: 'base',
    wall: 'a',
    order: i === 0 ? { left: {} } : { rightOf: `base-${i}` },
    width: mm,
  }))

test('of a kitchen of which nothing is known, nothing is said but what to find out and not to drill', () => {
  expect(keysOf('fits')).toEqual([])
  expect(keysOf('book')).toEqual([])
  expect(keysOf('do-not-drill')).toEqual(['drill.region', 'drill.year-open', 'drill.nothing-traced'])
  expect(keysOf('strike')).toEqual(['strike.line'])
  expect(keysOf('borrow')).toEqual(['borrow.level'])
  expect(keysOf('measure')).toEqual(
    ['region', 'width', 'units', 'year', 'gas', 'people', 'tall', 'ceiling', 'dishwasher', 'fall'].map(
      (key) => `measure.${key}`,
    ),
  )
})

describe('units of 600, 600 and 1000: 2200 ± 1.5 together', () => {
  const units = run(600, 600, 1000)
  test.each([
    // 50 is left, more than the 3.5 that all readings can be out by.
    [2250, 'run.yes'],
    [2204, 'run.yes'],
    [2203, 'run.near'],
    [2200, 'run.near'],
    [2197, 'run.near'],
    [2196, 'run.no'],
  ])('in %i ± 2: %s', (mm, key) => {
    expect(keysOf('fits', { walls: width(mm), units })).toEqual([key])
  })

  test('say by how much', () => {
    expect(saidOf('run.no', { walls: width(2150), units })).toBe(
      'The units on wall a are 2 200 ± 1.5 mm together, and the smallest width there is 2 150 ± 2 mm. They are too long by 50 ± 3.5 mm.',
    )
  })

  test('rest on each width and on that of the wall, and on geometry', () => {
    const [line] = answerOf({ walls: width(2250), units })
    expect(line?.facts).toEqual([
      'units.base-1.width',
      'units.base-2.width',
      'units.base-3.width',
      'walls.a.widths.smallest.width',
    ])
    expect(line?.basis.kind).toBe('geometry')
  })

  test('the smallest of several widths counts; the length only where none was measured', () => {
    const two = [
      { id: 'w1', at: 'floor', depth: 'back', width: 2250 },
      { id: 'w2', at: 'wall-unit', depth: 'front', width: 2190 },
    ]
    expect(keysOf('fits', { walls: wall({ widths: two, length: 2300 }), units })).toEqual(['run.no'])
    expect(keysOf('fits', { walls: wall({ length: 2300 }), units })).toEqual(['run.yes'])
  })

  test('with one of them not read yet nothing is said of fitting, and it is asked for', () => {
    const open = units.map(({ width: mm, ...unit }) => (unit.id === 'base-2' ? unit : { ...unit, width: mm }))
    expect(keysOf('fits', { walls: width(2250), units: open })).toEqual([])
    expect(keysOf('measure', { walls: width(2250), units: open })).toContain('measure.unit-width')
  })

  test('too near asks for both again', () => {
    expect(keysOf('measure', { walls: width(2203), units })).toContain('measure.again')
    expect(keysOf('measure', { walls: width(2250), units })).not.toContain('measure.again')
  })
})

describe('a tall unit of 2100 × 600 × 560: over its back √(2100² + 560²) = 2173.4, with blocks and hands 2203.4 ± 0.6', () => {
  const tall = (more: Part = {}) => [
    {
      id: 'tall-1',
      kind: 'tall',
      wall: 'a',
      order: { left: {} },
      width: 600,
      height: 2100,
      depth: 560,
      ...more,
    },
  ]
  const under = (mm: number) => [{ id: 'lowest', at: { wall: 'a', along: {} }, height: { aboveFloor: mm } }]
  test.each([
    [2400, 'tall.yes'],
    [2206, 'tall.yes'],
    [2205, 'tall.near'],
    [2201, 'tall.near'],
    [2200, 'tall.no'],
    [2096, 'tall.taller'],
  ])('under %i ± 2: %s', (mm, key) => {
    expect(keysOf('fits', { walls: wall(), units: tall(), ceiling: under(mm) })).toEqual([key])
  })

  test('without its depth or width it waits for them, and says so', () => {
    const units = tall({ depth: null, width: null })
    expect(keysOf('fits', { walls: wall(), units, ceiling: under(2400) })).toEqual(['tall.open'])
    expect(keysOf('measure', { walls: wall(), units, ceiling: under(2400) })).toContain('measure.tall-depth')
  })

  test('in a country whose usual depth is known, that stands in and is said to be assumed', () => {
    const units = tall({ depth: null, width: null })
    const said = saidOf('tall.yes', { region: 'uk', walls: wall(), units, ceiling: under(2400) })
    expect(said).toContain('(assumed)')
    expect(said).not.toContain('2 100 ± 0.5 mm (assumed)')
  })

  test('a ceiling read from the line stands over the highest floor: 1300 up and 1000 down is 2300', () => {
    const floor = {
      readings: [1000, 1020].map((drop, i) => ({ id: `f${i}`, at: { wall: 'a', along: {} }, drop })),
    }
    const ceiling = [{ id: 'c', at: { wall: 'a', along: {} }, height: { up: 1300 } }]
    const said = saidOf('tall.yes', {
      lines: [{ id: 'line', offset: 0 }],
      walls: wall(),
      units: tall(),
      ceiling,
      floor,
    })
    expect(said).toContain('the lowest ceiling is 2 300 ± 2 mm')
  })
})

describe('legs of 100 to 150, so 50 ± 1 to give', () => {
  const units = [{ ...run(600)[0], height: 720, legs: { min: 100, max: 150 } }]
  test.each([
    [25, 'legs.yes'],
    [46, 'legs.yes'],
    [47, 'legs.near'],
    [52, 'legs.near'],
    [53, 'legs.no'],
  ])('over a floor that falls %i ± 2: %s', (worstDrop, key) => {
    expect(keysOf('fits', { walls: wall(), units, floor: { worstDrop } })).toEqual([key])
  })

  test.each([
    // 720 + 150 − 25 = 845 ± 3 at the highest floor; the sheet of the dishwasher adds 0.5.
    [841, 'dishwasher.yes'],
    [842, 'dishwasher.near'],
    [848, 'dishwasher.near'],
    [849, 'dishwasher.no'],
  ])('and a dishwasher of %i, over a floor that falls 25: %s', (heightMin, key) => {
    const appliances = [{ id: 'dishwasher', kind: 'dishwasher', heightMin }]
    const kitchen = { walls: wall(), units, appliances, floor: { worstDrop: 25 } }
    expect(keysOf('fits', kitchen)).toEqual(['legs.yes', key])
    expect(keysOf('fits', { ...kitchen, floor: {} })).toEqual([])
  })

  test('two floor readings say it better than the first look', () => {
    const readings = [1000, 1060].map((drop, i) => ({ id: `f${i}`, at: { wall: 'a', along: {} }, drop }))
    const floor = { worstDrop: 25, readings }
    const lines = [{ id: 'line', offset: 0 }]
    expect(keysOf('fits', { lines, walls: wall(), units, floor })).toEqual(['legs.no'])
  })
})

describe('whom to book', () => {
  test.each([
    ['uk', 1999, true],
    ['uk', 2000, false],
    ['north-america', 1989, true],
    ['north-america', 1990, false],
  ])('%s, a house of %i: asbestos survey %s', (region, houseBuilt, isBooked) => {
    const parts = { region, survey: { houseBuilt } }
    expect(keysOf('book', parts).includes('book.asbestos')).toBe(isBooked)
    expect(keysOf('do-not-drill', parts).includes('drill.asbestos')).toBe(isBooked)
    expect(keysOf('do-not-drill', parts)).not.toContain('drill.year-open')
  })

  test.each([
    [true, true, false],
    [false, false, false],
    [null, false, true],
  ])('gas %s: engineer %s, asked %s', (gas, isBooked, isAsked) => {
    const parts = { region: 'uk', survey: { gas } }
    expect(keysOf('book', parts).includes('book.gas')).toBe(isBooked)
    expect(keysOf('do-not-drill', parts).includes('drill.gas')).toBe(isBooked)
    expect(keysOf('measure', parts).includes('measure.gas')).toBe(isAsked)
  })

  test.each([
    [0, []],
    [1, ['book.helper']],
    [2, []],
  ])('%i people and no tall unit: %j', (many, keys) => {
    const people = ['you', 'helper'].slice(0, many).map((id) => ({ id }))
    expect(keysOf('book', { crew: { people } })).toEqual(keys)
  })

  test.each([
    [1, 'book.helper-for'],
    [2, 'book.helper-day'],
  ])('%i people and a tall unit: %s', (many, key) => {
    const people = ['you', 'helper'].slice(0, many).map((id) => ({ id }))
    const units = [{ id: 'tall-1', kind: 'tall', wall: 'a', order: { left: {} }, height: 2100 }]
    const walls = wall({ provedDead: true })
    const survey = { houseBuilt: 2010 }
    expect(keysOf('book', { survey, crew: { people }, walls, units })).toEqual([key])
  })

  // Whoever a step of the plan is only for, and whoever has to hold with you, is booked by the first answer too.
  const BOOKED_BY = {
    'asbestos-surveyor': 'book.asbestos',
    'gas-engineer': 'book.gas',
    electrician: 'book.connect.electrician',
    plumber: 'book.connect.plumber',
  } as const
  const tall = [
    { id: 'tall-1', kind: 'tall', wall: 'a', order: { left: { at: 0 } }, width: 600, height: 2100 },
  ]
  const hob = (fuel: string) => [{ id: 'hob-1', kind: 'hob', fuel }]
  const openTall = { walls: wall({ length: 3000 }), units: tall }
  test.each<readonly [string, Part, readonly string[]]>([
    ['a house of unknown age', openTall, ['asbestos-surveyor']],
    ['an old house', { ...openTall, survey: { houseBuilt: 1960 } }, ['asbestos-surveyor']],
    ['a young house', { ...openTall, survey: { houseBuilt: 2010, gas: false }, appliances: hob('none') }, []],
    [
      'a gas hob, gas not spoken of',
      { ...openTall, survey: { houseBuilt: 2010 }, appliances: hob('gas') },
      ['gas-engineer'],
    ],
    ['the kitchen of the corner', sceneFile('l-shape') as Part, ['electrician', 'plumber']],
    ['the kitchen of one wall', sceneFile('one-wall') as Part, ['plumber']],
  ])('%s', (_, parts, trades) => {
    const outcome = workThrough({ format: 'dryrun-kitchen', version: 1, name: 'Own', ...parts })
    if (outcome.kind !== 'plan') throw new Error(outcome.kind)
    const inPlan = [...new Set(outcome.plan.operations.flatMap((o) => o.trade ?? []))].sort()
    expect(inPlan).toEqual(trades)
    const keys = keysOf('book', parts)
    for (const trade of inPlan) {
      const begins = BOOKED_BY[trade]
      expect(
        keys.filter((key) => key.startsWith(begins)),
        trade,
      ).toHaveLength(1)
    }
    const isHeld = outcome.plan.operations.some(({ people }) => people > 1)
    expect(keys.some((key) => key.startsWith('book.helper'))).toBe(isHeld)
  })

  test('an electrician until every wall is proved dead', () => {
    expect(keysOf('book', { walls: wall() })).toEqual(['book.electrician'])
    expect(keysOf('book', { walls: wall({ provedDead: true }) })).toEqual([])
  })
})

describe('why not to drill', () => {
  const settled = { region: 'uk', survey: { houseBuilt: 2010, gas: false } }
  const known = { construction: 'masonry', knock: 'solid', traced: 'whole', provedDead: true }
  const plain = { ...settled, walls: wall(known) }
  test('each reason goes with its own fact, and the plan comes first where none is left', () => {
    expect(keysOf('do-not-drill', plain)).toEqual(['drill.plan-first'])
    const without = (key: string) => ({ ...settled, walls: wall({ ...known, [key]: null }) })
    expect(keysOf('do-not-drill', without('construction'))).toEqual(['drill.kind-open'])
    expect(keysOf('do-not-drill', without('traced'))).toEqual(['drill.not-traced'])
    expect(keysOf('do-not-drill', without('provedDead'))).toEqual(['drill.not-dead'])
    expect(keysOf('do-not-drill', { ...plain, region: null })).toEqual(['drill.region'])
  })

  test.each([
    ['masonry', 'hollow', 'drill.knock-hollow'],
    ['timber-stud', 'solid', 'drill.knock-solid'],
    ['masonry', 'blown', 'drill.knock-blown'],
  ])('%s that sounds %s: %s', (construction, knock, key) => {
    const walls = wall({ ...known, construction, knock })
    expect(keysOf('do-not-drill', { ...settled, walls })).toEqual([key])
  })
})

test('what is borrowed follows from the walls and the units', () => {
  const of = (more: Part) => keysOf('borrow', { walls: wall({ traced: 'whole', ...more }) })
  expect(of({})).toEqual(['borrow.level'])
  expect(of({ traced: 'part' })).toEqual(['borrow.level', 'borrow.detector'])
  expect(of({ construction: 'concrete' })).toEqual(['borrow.level', 'borrow.hammer'])
  expect(of({ construction: 'metal-stud' })).toEqual(['borrow.level', 'borrow.magnet'])
  const hung = [{ id: 'wall-1', kind: 'wall', wall: 'a', order: { left: {} }, width: 600 }]
  const crew = { people: [{ id: 'you' }] }
  expect(keysOf('borrow', { walls: wall({ traced: 'whole' }), units: hung, crew })).toEqual([
    'borrow.level',
    'borrow.prop',
  ])
})

test('the line begins on the wall with units; a floor that falls has its highest place marked', () => {
  expect(keysOf('strike', { walls: wall() })).toEqual(['strike.line-from'])
  expect(keysOf('strike', { walls: wall(), floor: { worstDrop: 2 } })).toEqual(['strike.line-from'])
  expect(keysOf('strike', { walls: wall(), floor: { worstDrop: 3 } })).toEqual([
    'strike.line-from',
    'strike.highest',
  ])
})

test('what the survey holds in another way is said at the question: not as if nobody knew', () => {
  const parts = {
    walls: wall({ length: 2400, widths: [{ id: 'floor', width: 2391 }] }),
    floor: {
      readings: [
        { id: 'f-1', line: 'line', drop: 1003, at: { wall: 'a', along: {} } },
        { id: 'f-2', line: 'line', drop: 1016, at: { wall: 'a', along: {} } },
      ],
    },
    ceiling: [{ id: 'c-1', at: { wall: 'a', along: {} }, height: { aboveFloor: 2400 } }],
  }
  expect(keysOf('measured')).toEqual([])
  expect(saidOf('measured.width', parts)).toMatch(
    /^The survey holds 2 391 ± \d mm as the smallest along wall a\.$/,
  )
  expect(saidOf('measured.ceiling', parts)).toMatch(/^The survey holds 2 400 ± \d mm as the lowest\.$/)
  expect(saidOf('measured.fall', parts)).toMatch(/^The survey holds 13 ± \d mm, from its readings\.$/)
})
