import { expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { exampleFile, linesOf, problemsOf } from './example-file'

type Walls = NonNullable<KitchenFile['walls']>
type Units = NonNullable<KitchenFile['units']>

const told = (change: Partial<KitchenFile>) => linesOf(problemsOf(exampleFile(change)))
const base = exampleFile()
const [base1, base2, wall1] = base.units as [Units[number], Units[number], Units[number]]

/** A file of walls alone, and of units alone on the example's walls. */
const wallsOnly = (walls: Walls, change: Partial<KitchenFile> = {}) =>
  told({
    walls,
    units: [],
    rails: [],
    appliances: [],
    finishing: [],
    worktops: [],
    wishes: {},
    floor: {},
    ...change,
  })
const unitsOnly = (units: Units, change: Partial<KitchenFile> = {}) =>
  told({ units, rails: [], appliances: [], finishing: [], worktops: [], wishes: {}, ...change })
const standing = (id: string, order: Units[number]['order'], wall = 'b'): Units[number] => ({
  id,
  kind: 'base',
  wall,
  order,
})
const at = (left: number) => ({ left: { at: left } })

test('the example holds together', () => {
  expect(told({})).toEqual([])
})

test('an id twice in a list', () => {
  expect(unitsOnly([standing('u', at(0)), standing('v', at(600)), standing('u', at(1200))])).toEqual([
    'units: The id "u" stands 2 times in this list (#1, #3, counted from 1).',
  ])
  expect(
    wallsOnly([
      {
        id: 'a',
        studs: [
          { id: 's', centre: {} },
          { id: 's', centre: {} },
        ],
      },
    ]),
  ).toEqual(['walls "a" › studs: The id "s" stands 2 times in this list (#1, #2, counted from 1).'])
})

test('the same id in two lists that name steps of the work, but not in two walls', () => {
  expect(told({ worktops: [{ id: 'base-1' }] })).toEqual([
    'worktops "base-1": The id "base-1" stands in more than one list: "units" and "worktops". Steps of the work are named by these ids.',
  ])
  expect(told({ appliances: [{ id: 'b', kind: 'hob' }] })).toHaveLength(1)
  expect(
    wallsOnly([
      { id: 'a', studs: [{ id: 's', centre: {} }] },
      { id: 'b', studs: [{ id: 's', centre: {} }] },
    ]),
  ).toEqual([])
})

test.each<[string, Partial<KitchenFile>, string]>([
  [
    'a unit on a wall that is not there',
    { units: [base1, base2, { ...wall1, wall: 'e' }] },
    'units "wall-1" › wall: There is no wall "e". Listed: "a", "b", "c" and "d".',
  ],
  [
    'a rail with a unit that is not there',
    { rails: [{ id: 'rail-1', wall: 'b', units: ['wall-1', 'wall-2'] }] },
    'rails "rail-1" › units #2: There is no unit "wall-2". Listed: "base-1", "base-2" and "wall-1".',
  ],
  [
    'a neighbour that is not there',
    { units: [base1, base2, { ...wall1, order: { leftOf: 'tall-1' } }] },
    'units "wall-1" › order › leftOf: There is no unit or finishing part "tall-1". Listed: "base-1", "base-2", "wall-1" and "plinth-1".',
  ],
  [
    'a line that is not there',
    { wishes: { heights: [{ id: 'h', of: 'worktop-top', max: { line: 'low', up: 5 } }] } },
    'wishes › heights "h" › max › line: There is no line "low". Listed: "line".',
  ],
  [
    'the first line under another name',
    { lines: [{ id: 'main' }], walls: base.walls?.map((wall) => ({ ...wall, accessories: [] })) ?? [] },
    'floor › readings "f1" › line: There is no line "line". Listed: "main".',
  ],
  [
    'a floor reading on a wall that is not there',
    { floor: { readings: [{ id: 'f', at: { wall: 'z', along: {} } }] } },
    'floor › readings "f" › at › wall: There is no wall "z". Listed: "a", "b", "c" and "d".',
  ],
  [
    'an appliance that is not there',
    { units: [base1, { ...base2, applianceBay: 'hob' }, wall1] },
    'units "base-2" › applianceBay: There is no appliance "hob". Listed: "sink".',
  ],
  [
    'an appliance in a unit that is not there',
    { appliances: [{ id: 'sink', kind: 'sink', over: 'base-3' }] },
    'appliances "sink" › over: There is no unit or worktop "base-3". Listed: "base-1", "base-2", "wall-1" and "top-1".',
  ],
  [
    'a plinth of a unit that is not there',
    { finishing: [{ id: 'p', kind: 'plinth', of: ['base-7'] }] },
    'finishing "p" › of #1: There is no unit "base-7". Listed: "base-1", "base-2" and "wall-1".',
  ],
  [
    'a worktop over a unit that is not there',
    { worktops: [{ id: 't', over: ['base-1', 'x'] }] },
    'worktops "t" › over #2: There is no unit "x". Listed: "base-1", "base-2" and "wall-1".',
  ],
  [
    'a cut-out for an appliance that is not there',
    { worktops: [{ id: 't', cutouts: [{ id: 'c', for: 'hob', wall: 'b', left: {} }] }] },
    'worktops "t" › cutouts "c" › for: There is no appliance "hob". Listed: "sink".',
  ],
  [
    'a wish about something that is not there',
    { wishes: { order: [{ id: 'o', before: { on: 'base-9' }, after: {} }] } },
    'wishes › order "o" › before › on: There is no wall, unit or other part "base-9". Listed: "base-1", "base-2", "wall-1", "a", "b", "c", "d", "sink", "plinth-1", "top-1" and "rail-1".',
  ],
])('%s', (_, change, line) => {
  expect(told(change)).toContain(line)
})

test('a slip in a name is answered with the one most like it', () => {
  const [problem] = problemsOf(exampleFile({ worktops: [{ id: 't', over: ['bsae-1'] }] }))
  expect(problem?.mend).toBe('Did you mean "base-1"?')
})

test('a line nobody read a height from need not be there', () => {
  const walls: Walls = [
    { id: 'a', noggings: [{ id: 'n', kind: 'nogging', from: {}, to: {}, centre: { line: 'x' } }] },
  ]
  expect(wallsOnly(walls)).toEqual([])
})

test('a file that lists no lines has the line all the same, and no other', () => {
  const read = (line?: string): Walls => [
    {
      id: 'a',
      noggings: [{ id: 'n', kind: 'nogging', from: {}, to: {}, centre: { up: 5, ...(line && { line }) } }],
    },
  ]
  expect(wallsOnly(read(), { lines: [] })).toEqual([])
  expect(wallsOnly(read('low'), { lines: [] })).toEqual([
    'walls "a" › noggings "n" › centre › line: There is no line "low". Listed: "line".',
  ])
})

test('a unit stands in exactly one way', () => {
  expect(unitsOnly([standing('u', {})])).toEqual([
    'units "u" › order: It is not said where along the wall this stands.',
  ])
  expect(unitsOnly([standing('u', at(0)), standing('v', { left: { at: 1 }, rightOf: 'u' })])).toEqual([
    'units "v" › order: It is said in 2 ways where along the wall this stands: "left" and "rightOf".',
  ])
  expect(unitsOnly([standing('u', { left: {} })])).toEqual([])
})

test('neighbours stand on the same wall', () => {
  expect(unitsOnly([standing('u', at(0), 'a'), standing('v', { rightOf: 'u' })])).toEqual([
    'units "v" › order: This stands on wall "b", its neighbour "u" on wall "a".',
  ])
})

test('neighbours in a ring are told once, with the whole ring', () => {
  const ring = [
    standing('w', { rightOf: 'v' }),
    standing('u', { leftOf: 'w' }),
    standing('v', { rightOf: 'u' }),
    standing('x', { rightOf: 'w' }),
  ]
  expect(unitsOnly(ring)).toEqual([
    'units "u" › order: "u", "w" and "v" stand beside each other in a ring, so that none of them has a place.',
  ])
  expect(unitsOnly([standing('u', { leftOf: 'u' })])).toEqual([
    'units "u" › order: "u" is its own neighbour.',
  ])
})

test('a filler may stand in the chain, and a ring through it is seen', () => {
  const filler = (rightOf: string) => ({ id: 'f', kind: 'filler' as const, wall: 'b', order: { rightOf } })
  expect(
    unitsOnly([standing('u', at(0)), standing('v', { rightOf: 'f' })], { finishing: [filler('u')] }),
  ).toEqual([])
  expect(unitsOnly([standing('v', { rightOf: 'f' })], { finishing: [filler('v')] })).toEqual([
    'finishing "f" › order: "f" and "v" stand beside each other in a ring, so that none of them has a place.',
  ])
})

test('a height is given in one way at most', () => {
  const nogging = (centre: object): Walls => [
    { id: 'a', noggings: [{ id: 'n', kind: 'nogging', from: {}, to: {}, centre }] },
  ]
  expect(wallsOnly(nogging({}))).toEqual([])
  expect(wallsOnly(nogging({ up: 100, down: null }))).toEqual([])
  expect(wallsOnly(nogging({ up: 100, aboveFloor: 1100 }))).toEqual([
    'walls "a" › noggings "n" › centre: This height is given in 2 ways: "up" and "aboveFloor".',
  ])
})

const corner = (cornerRight: NonNullable<Walls[number]['cornerRight']>): Walls => [{ id: 'a', cornerRight }]
const lengths = (thisLeg: number, nextLeg: number, across: number) => ({ thisLeg, nextLeg, across })

test.each<[string, NonNullable<Walls[number]['cornerRight']>, number]>([
  ['900, 1200, 1500 is a right angle', { angle: 90, ...lengths(900, 1200, 1500) }, 0],
  ['just within a degree', { angle: 90.99, ...lengths(900, 1200, 1500) }, 0],
  ['just past a degree', { angle: 91.01, ...lengths(900, 1200, 1500) }, 1],
  ['just past a degree the other way', { angle: 88.99, ...lengths(900, 1200, 1500) }, 1],
  ['an outer corner', { angle: 270, ...lengths(900, 1200, 1500) }, 0],
  ['an outer corner that is not', { angle: 265, ...lengths(900, 1200, 1500) }, 1],
  ['lengths alone', lengths(900, 1200, 1500), 0],
  ['two lengths only', { angle: 45, thisLeg: 900, across: 1500 }, 0],
  ['too long across', lengths(900, 1200, 2101), 1],
  ['straight on', { angle: 180, ...lengths(900, 1200, 2100) }, 0],
  ['too short across', lengths(900, 1200, 299), 1],
  ['no length at all', lengths(0, 1200, 1200), 1],
])('a corner: %s', (_, cornerRight, problems) => {
  expect(wallsOnly(corner(cornerRight))).toHaveLength(problems)
})

test('what is wrong with a corner is said in figures', () => {
  expect(wallsOnly(corner({ angle: 100, ...lengths(900, 1200, 1500) }))).toEqual([
    'walls "a" › cornerRight: The angle is given as 100°, but its three lengths make it 90.0°.',
  ])
  expect(wallsOnly(corner(lengths(900, 1200, 2101)))).toEqual([
    'walls "a" › cornerRight: No corner has these three lengths: 900 and 1200 along the walls, 2101 across.',
  ])
})

/** Walls a, b, c … of these lengths, each with the inside angle at its right end. */
const room = (...sides: readonly (readonly [number | null, number | null])[]): Walls =>
  sides.map(([length, angle], i) => ({ id: 'abcdefgh'[i] ?? '', length, cornerRight: { angle } }))

test.each<[string, Walls]>([
  ['a square', room([3000, 90], [3000, 90], [3000, 90], [3000, 90])],
  ['an L', room([4000, 90], [2000, 90], [2000, 270], [1000, 90], [2000, 90], [3000, 90])],
  [
    'a chimney breast 60 deep',
    room([1000, 270], [60, 90], [900, 90], [60, 270], [1000, 90], [3000, 90], [2900, 90], [3060, 90]),
  ],
  ['a square that runs 49 past its start', room([3000, 90], [3000, 90], [2940, 90], [3049, 90])],
  [
    'one that would cross, were a length known',
    room([3000, 90], [2000, 90], [1000, 90], [null, 90], [500, 90]),
  ],
  ['one that would cross, were a corner known', room([3000, 90], [2000, null], [1000, 90], [3000, 90])],
  ['two walls', room([3000, 90], [2000, 90])],
])('%s is an outline', (_, walls) => {
  expect(wallsOnly(walls)).toEqual([])
})

test('an outline that runs through itself', () => {
  const bow = room([3000, 45], [3000, 45], [3000, 90], [1000, 90])
  const hook = room([3000, 90], [2000, 90], [1000, 90], [3000, 90])
  expect(wallsOnly(hook, { closed: null })).toEqual([
    'walls "d": This wall crosses wall "a": the outline of the room runs through itself.',
  ])
  expect(wallsOnly(bow, { closed: false })).toEqual([
    'walls "c": This wall crosses wall "a": the outline of the room runs through itself.',
  ])
})

test('an outline that misses its start crosses itself only when it misses by more than 50 both ways', () => {
  expect(wallsOnly(room([3000, 90], [3000, 90], [2940, 90], [3051, 90]))).toHaveLength(1)
  expect(wallsOnly(room([3000, 90], [3000, 90], [2951, 90], [3060, 90]))).toEqual([])
})

test('corners in lengths and a length in text count in the walk', () => {
  const walls = room([3000, 90], [2000, 90], [1000, 90], [null, 90])
  const typed = walls.map((wall) =>
    wall.id === 'd'
      ? { ...wall, length: '3 m' }
      : wall.id === 'a'
        ? { ...wall, cornerRight: lengths(900, 1200, 1500) }
        : wall,
  )
  expect(wallsOnly(typed)).toHaveLength(1)
})

test('walls listed anticlockwise, by the angles or by the walk', () => {
  const line =
    'walls: The walls go round the room anticlockwise, seen from above: their corners are those of its outside.'
  const round = room([3000, 270], [3000, 270], [3000, 270], [3000, 270])
  const lastUnknown = room([3000, 270], [3000, 270], [3000, 270], [3000, null])
  const lengthUnknown = room([3000, 270], [null, 270], [3000, 270], [3000, 270])
  expect(wallsOnly(round)).toEqual([line])
  expect(wallsOnly(round, { closed: null })).toEqual([line])
  expect(wallsOnly(round, { closed: false })).toEqual([])
  expect(wallsOnly(lastUnknown)).toEqual([line])
  expect(wallsOnly(lengthUnknown)).toEqual([line])
  const [problem] = problemsOf(
    exampleFile({
      walls: round,
      units: [],
      rails: [],
      finishing: [],
      floor: {},
      worktops: [],
      appliances: [],
      wishes: {},
    }),
  )
  expect(problem?.mend).toContain('left to right as seen from inside')
})

test.each<[string, Partial<KitchenFile>, readonly string[]]>([
  [
    'legs',
    { units: [{ ...base1, legs: { min: 170, max: 100 } }, base2, wall1] },
    ['units "base-1" › legs: min is 170, more than max, which is 100.'],
  ],
  ['legs of one length', { units: [{ ...base1, legs: { min: 100, max: 100 } }, base2, wall1] }, []],
  [
    'an appliance',
    { appliances: [{ id: 'sink', kind: 'sink', heightMin: 870, heightMax: 820 }] },
    ['appliances "sink": heightMin is 870, more than heightMax, which is 820.'],
  ],
  [
    'a wish',
    { wishes: { order: [{ id: 'o', before: {}, after: {}, minLag: 60, maxLag: 30 }] } },
    ['wishes › order "o": minLag is 60, more than maxLag, which is 30.'],
  ],
])('the least of %s is no more than the most', (_, change, lines) => {
  expect(told(change)).toEqual(lines)
})

test('a wall is no thinner than its known layers, readings allowed for', () => {
  const layers = (...thicknesses: readonly (number | null)[]): Walls => [
    {
      id: 'a',
      thickness: 100,
      layers: thicknesses.map((thickness, i) => ({ id: `l${i}`, material: 'plasterboard', thickness })),
    },
  ]
  expect(wallsOnly(layers(12.5, 75, 12.5))).toEqual([])
  expect(wallsOnly(layers(14, 81.9, 12))).toEqual([])
  expect(wallsOnly(layers(14, 82.1, 12))).toHaveLength(1)
  expect(wallsOnly(layers(12.5, 97, null, 12.5))).toEqual([
    'walls "a" › thickness: The wall is 100 mm thick, but its known layers come to 122 mm.',
  ])
})
