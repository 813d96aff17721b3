import { expect, test } from 'vitest'
import { liftOf } from '../../../src/core/lifting/lifting'
import { regionPack } from '../../../src/core/region/region'
import { say } from '../../../src/core/words/say'
import {
  baseUnit,
  exact,
  type Json,
  plain,
  tallUnit,
  wallFile,
  wallUnit,
  worked,
} from '../../support/fixed-wall'

const man = (id: string, more: Json = {}): Json => ({ id, filter: 'man', ...more })
const woman = (id: string): Json => ({ id, filter: 'woman' })

function lift(unit: Json, people: readonly Json[], lifter: number | null = null) {
  const crew = { people, lifter: lifter === null ? null : { rated: lifter } }
  const { kitchen, positions, region } = worked(wallFile({ units: [unit], rest: { crew } }))
  const position = positions[0]
  if (position === undefined) throw new Error('no unit')
  return liftOf(position, kitchen, region)
}
const said = (result: ReturnType<typeof lift>) => [
  result.lift.people,
  result.lift.aid,
  result.findings.map((f) => `${f.id} ${f.weight}`),
]
const weighing = (unit: Json, massStripped: number, more: Json = {}): Json => ({
  ...unit,
  massStripped,
  ...more,
})
const over = 'lift-over-filter:'

// Above the shoulder: a man 10, a woman 7 kg. Two thirds of the sum: two men 13.333, man and woman 11.333; three men 15.
// Just below it, with a prop: 20 and 13: two men 26.667.
test.each([
  ['two men, 13.3 kg', 13.3, [man('a'), man('b')], [2, 'none', []]],
  ['two men, 13.4 kg: with a prop', 13.4, [man('a'), man('b')], [null, 'batten-or-prop', [`${over}w warn`]]],
  [
    'two men, 26.6 kg: still with a prop',
    26.6,
    [man('a'), man('b')],
    [null, 'batten-or-prop', [`${over}w warn`]],
  ],
  ['two men, 26.7 kg', 26.7, [man('a'), man('b')], [null, 'stop', [`${over}w stop`]]],
  ['man and woman, 11.3 kg', 11.3, [man('a'), woman('b')], [2, 'none', []]],
  ['three men, 15 kg', 15, [man('a'), man('b'), man('c')], [3, 'none', []]],
  [
    'four men, 16 kg: a fourth has no room',
    16,
    ['a', 'b', 'c', 'd'].map((id) => man(id)),
    [null, 'batten-or-prop', [`${over}w warn`]],
  ],
  ['one man, 8 kg: never alone', 8, [man('a')], [null, 'stop', [`${over}w stop`]]],
])('a wall unit: %s', (_, mass, crew, expected) => {
  expect(said(lift(weighing(wallUnit, mass), crew))).toEqual(expected)
})

test('a lifter rated for all of it lets one person hang a wall unit', () => {
  expect(said(lift(weighing(wallUnit, 30), [man('a')], 30))).toEqual([1, 'lifter', [`${over}w warn`]])
  expect(said(lift(weighing(wallUnit, 30.1), [man('a')], 30))).toEqual([null, 'stop', [`${over}w stop`]])
})

// Knuckle to lower leg: a man 20, a woman 13; two women 17.333.
test.each([
  ['one man, 20 kg', 20, [man('a')], {}, [1, 'none', []]],
  ['one man, 20.1 kg, built', 20.1, [man('a')], { assembled: 'built' }, [null, 'stop', [`${over}b stop`]]],
  [
    'one man, 20.1 kg, in a flat box',
    20.1,
    [man('a')],
    { assembled: 'flat-packed' },
    [null, 'lighten-it', [`${over}b warn`]],
  ],
  ['two women, 17.3 kg', 17.3, [woman('a'), woman('b')], {}, [2, 'none', []]],
])('a base unit: %s', (_, mass, crew, more, expected) => {
  expect(said(lift(weighing(baseUnit, mass, more), crew))).toEqual(expected)
})

// A man 20, a woman 13, both together 22. Nobody has said which of them lifts it: over 13 it takes both.
test.each([
  ['man and woman, 13 kg', 13, [man('a'), woman('b')], [1, 'none', []]],
  ['man and woman, 13.1 kg', 13.1, [man('a'), woman('b')], [2, 'none', []]],
  ['man and woman, 22 kg', 22, [man('a'), woman('b')], [2, 'none', []]],
  ['man and woman, 22.1 kg, built', 22.1, [man('a'), woman('b')], [null, 'stop', [`${over}b stop`]]],
  ['two men, 20 kg', 20, [man('a'), man('b')], [1, 'none', []]],
  ['two men, 20 give or take 1', { value: 20, pm: 1 }, [man('a'), man('b')], [2, 'none', []]],
  [
    'one man, 20 give or take 1: nobody to help',
    { value: 20, pm: 1 },
    [man('a')],
    [1, 'none', ['lift-near-filter:b note']],
  ],
])('who shares a base unit: %s', (_, mass, crew, expected) => {
  expect(said(lift({ ...baseUnit, massStripped: mass, assembled: 'built' }, crew))).toEqual(expected)
})

// A man, and one who gives herself 2 kg at the elbow, where the filter has 16: 13 × 2/16 = 1.625. Two thirds of 21.625 are
// 14.417, less than he lifts alone: at 15 kg she steadies it, and the figure is his.
test('one far weaker than the other steadies it', () => {
  const { lift: plan } = lift(weighing(baseUnit, 15), [man('a'), { ...woman('b'), own: 2 }])
  expect([plan.people, plain(plan.filter)]).toEqual([2, 20])
})

// A tall unit rises at one end: half its mass, below the lower leg: two men 13.333 kg, so 26.666 in all. On blocks: 26.667
// at the end, 53.333 in all.
test.each([
  ['26 kg', 26, [man('a'), man('b')], [2, 'none', []]],
  ['45 kg, on blocks', 45, [man('a'), man('b')], [null, 'batten-or-prop', [`${over}t warn`]]],
  ['54 kg', 54, [man('a'), man('b')], [null, 'stop', [`${over}t stop`]]],
  ['10 kg, one man: never alone', 10, [man('a')], [null, 'stop', [`${over}t stop`]]],
])('a tall unit: %s', (_, mass, crew, expected) => {
  const result = lift(weighing(tallUnit, mass), crew)
  expect(said(result)).toEqual(expected)
  expect(result.lift.endLift && plain(result.lift.endLift)).toBe(mass / 2)
})

// A man who gives himself 15 kg at the elbow, where the filter has 25, has 6 of 10 above the shoulder.
test('a lower figure of their own goes down with the zone', () => {
  const { lift: plan } = lift(weighing(wallUnit, 8), [man('a', { own: 15 }), man('b', { own: 40 })])
  expect(plain(plan.filter)).toBe(Math.round(((6 + 10) * 2000) / 3) / 1000)
})

test('whose column is not known is read off the lower one, and marked', () => {
  const { lift: plan } = lift(weighing(wallUnit, 8), [{ id: 'a' }, { id: 'b' }])
  expect(plan.filter).toMatchObject({ state: 'assumed', value: 9.333 })
})

test('the filter says where it is from, and whose figures it rests on', () => {
  const { lift: plan } = lift(weighing(wallUnit, 8), [man('a'), man('b')])
  expect(plan.filter.basis).toMatchObject({ kind: 'standard' })
  expect(plan.filter.from).toEqual(expect.arrayContaining(['crew.people.a.filter', 'crew.people.b.filter']))
  expect(plan.zone).toBe('above-shoulder')
})

test('nobody to lift, or nothing known of the mass: asked about, not answered', () => {
  expect(said(lift(weighing(wallUnit, 8), []))).toEqual([null, 'none', ['lift-not-known:w ask']])
  expect(said(lift({ ...wallUnit, board: null }, [man('a'), man('b')]))).toEqual([
    null,
    'none',
    ['lift-not-known:w ask'],
  ])
})

// By hand, a wall carcass 600 × 720 × 300 of 18 mm: (2 × 0.72 × 0.3 + 2 × 0.564 × 0.3) × 0.018 × 650 = 9.01368 kg; back
// 0.6 × 0.72 × 0.008 × 860 = 2.97216: 11.986. A base 560 deep has two rails of 100 for its top:
// (0.8064 + 0.31584 + 0.1128) × 11.7 + 2.97216 = 17.422.
test('what nobody has weighed is worked out from its panels, and marked', () => {
  const { lift: wall } = lift(wallUnit, [man('a'), man('b')])
  expect(wall.massStripped).toMatchObject({ state: 'assumed', value: 11.986 })
  expect(lift(baseUnit, [man('a')]).lift.massStripped).toMatchObject({ state: 'assumed', value: 17.422 })
  expect(wall.massStripped.from).toEqual(
    expect.arrayContaining([
      'units.w.board',
      'units.w.back',
      'units.w.width',
      'units.w.height',
      'units.w.depth',
    ]),
  )
})

// With one shelf 240 deep, 0.564 × 0.24 × 11.7 = 1.584, and a door 597 × 717 × 18: 5.702: 19.272 in all.
test('the whole unit has its doors, drawers and shelves', () => {
  const door = { id: 'd', hinge: 'left', width: exact(597), height: exact(717), thickness: exact(18) }
  const full = { ...wallUnit, massEmpty: null, shelves: 1, doors: [door] }
  expect(plain(lift(full, [man('a')]).lift.massFull)).toBe(19.272)
  expect(plain(lift({ ...full, drawers: [{ id: 'r' }] }, [man('a')]).lift.massFull)).toBe(
    'lacks units.w.drawers.r.mass',
  )
  expect(plain(lift({ ...full, massEmpty: 25 }, [man('a')]).lift.massFull)).toBe(25)
})

test('an L-shaped corner unit is not guessed at', () => {
  const corner = { ...baseUnit, kind: 'corner-base', returnRight: exact(900), returnDepth: exact(560) }
  expect(plain(lift(corner, [man('a')]).lift.massStripped)).toBe('lacks units.b.massStripped')
})

test('a guessed mass that comes close to the filter is told, and a weighed one is not', () => {
  // 13.188 ± about 0.9 may be over two men’s 13.333; typed as 13.188 it is not.
  const guessed = lift({ ...wallUnit, depth: exact(340) }, [man('a'), man('b')]).lift
  expect(guessed.massStripped).toMatchObject({ value: 13.188 })
  expect(guessed.people).toBe(2)
  const near = (unit: Parameters<typeof lift>[0]) =>
    lift(unit, [man('a'), man('b')]).findings.map((f) => [f.rule, f.weight])
  expect(near({ ...wallUnit, depth: exact(340) })).toEqual([['lift-near-filter', 'note']])
  expect(near(weighing(wallUnit, 13.188))).toEqual([])
})

test('a space for an appliance is not lifted', () => {
  expect(said(lift({ ...baseUnit, kind: 'appliance-space' }, []))).toEqual([1, 'none', []])
})

test('where the country is not known the filter is the same', () => {
  const { kitchen, positions } = worked(
    wallFile({ units: [weighing(wallUnit, 8)], rest: { crew: { people: [man('a'), man('b')] } } }),
  )
  const position = positions[0]
  if (position === undefined) throw new Error('no unit')
  expect(liftOf(position, kitchen, null).lift).toEqual(liftOf(position, kitchen, regionPack('uk')).lift)
})

// The figure alone would allow it: what is wrong with it is that nobody is left to hold on, and that is what is said.
test('a light unit that one may not put up alone is not said to be too heavy', () => {
  const words = (mass: number, unit: typeof wallUnit | typeof tallUnit): string =>
    lift(weighing(unit, mass), [man('a')])
      .findings.map((f) => say(f.say))
      .join(' ')
  expect(words(8, wallUnit)).toContain('Hanging wall unit 1, 8 kg, is not for one person')
  expect(words(10, tallUnit)).toContain('is not for one person, though one end weighs only 5 kg')
  expect(words(8, wallUnit) + words(10, tallUnit)).not.toContain('over the published figure')
  expect(words(10.1, wallUnit)).toContain('over the published figure for this crew, 10 kg')
})
