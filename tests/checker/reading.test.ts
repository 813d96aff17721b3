import { expect, test } from 'vitest'
import { factBook } from '../../src/checker/facts'
import { typedLength } from '../../src/checker/length'
import { stretches } from '../../src/checker/positions'
import { readKitchen } from '../../src/checker/read-kitchen'
import { readLog } from '../../src/checker/read-log'
import { buildRoom, fromLeft } from '../../src/checker/room'

test.each([
  ['2400', 2400],
  ['2 400 mm', 2400],
  ['2,4 m', 2400],
  ['2.4 m', 2400],
  ['34 1/2 in', 876.3],
  ['34 1/2"', 876.3],
  ['1/2 in', 12.7],
  [`7' 6 1/2"`, 2298.7],
  ['7 ft 6 in', 2286],
  [`7'`, 2133.6],
  ['-3', -3],
  ['12cm', 120],
] as const)('%s is %d mm', (text, value) => {
  expect(typedLength(text)).toBeCloseTo(value, 9)
})

test.each(['', 'wide', '3/0 in', '1/2/3', '5 mm 3', '4 in 2 ft', '--3'])('%j is no length', (text) => {
  expect(typedLength(text)).toBeUndefined()
})

const read = (file: unknown) => readKitchen(file, new Map())

test('walls turn by their inside angles, or by three lengths', () => {
  const given = read({
    closed: true,
    walls: [
      { id: 'a', length: 4000, cornerRight: { angle: 90 } },
      { id: 'b', length: 3000, cornerRight: { thisLeg: 900, nextLeg: 1200, across: 1500 } },
      { id: 'c', length: 4000, cornerRight: { angle: { value: 90, pm: 0.1 } } },
      { id: 'd', length: 3000, cornerRight: { angle: 90 } },
    ],
  })
  const room = buildRoom(given)
  expect(room.misses).toBeCloseTo(0, 6)
  const c = room.frames.get('c')
  expect(c?.origin.x).toBeCloseTo(4000)
  expect(c?.origin.y).toBeCloseTo(-3000)
  expect(c?.alongDir).toEqual({ x: -1, y: 0 })
  expect(c?.outDir).toEqual({ x: 0, y: 1 })
})

test('after a corner nobody measured no wall has a place', () => {
  const room = buildRoom(
    read({
      walls: [
        { id: 'a', length: 4000 },
        { id: 'b', length: 3000, cornerRight: { angle: 90 } },
      ],
    }),
  )
  expect(room.frames.get('a')?.placed).toBe(true)
  expect(room.frames.get('b')?.placed).toBe(false)
})

test('positions from either end and either face', () => {
  const [wall] = read({ walls: [{ id: 'a', length: 4000, otherFaceShift: 150 }] }).walls
  if (wall === undefined) throw new Error('no wall')
  const at = (end: 'left' | 'right', face: 'room' | 'other') =>
    fromLeft(wall, { end, face, at: { value: 700, assumed: false, missing: [] } }).value
  expect(at('left', 'room')).toBe(700)
  expect(at('right', 'room')).toBe(3300)
  expect(at('left', 'other')).toBe(3450)
  expect(at('right', 'other')).toBe(700)
})

test('units stand in chains, with gaps, to the right and to the left, round fillers', () => {
  const given = read({
    walls: [{ id: 'a', length: 4000 }],
    finishing: [{ id: 'f', kind: 'filler', wall: 'a', order: { left: { at: 20 } }, width: 30 }],
    units: [
      { id: 'u1', kind: 'base', wall: 'a', order: { rightOf: 'f' }, width: '60 cm' },
      { id: 'u2', kind: 'base', wall: 'a', order: { rightOf: 'u1', gap: 2 }, width: 400 },
      { id: 'u4', kind: 'base', wall: 'a', order: { left: { from: 'right', at: 900 } }, width: 800 },
      { id: 'u3', kind: 'base', wall: 'a', order: { leftOf: 'u4', gap: 5 }, width: 500 },
      { id: 'u5', kind: 'base', wall: 'a', order: { rightOf: 'u6' }, width: 500 },
      { id: 'u6', kind: 'base', wall: 'a', order: { rightOf: 'u5' }, width: 500 },
      { id: 'u7', kind: 'base', wall: 'a', order: { rightOf: 'u2' } },
      { id: 'u8', kind: 'base', wall: 'a', order: { rightOf: 'u7' }, width: 300 },
    ],
  })
  const { units } = stretches(given)
  const left = (id: string) => units.get(id)?.left.value
  expect(left('u1')).toBe(50)
  expect(left('u2')).toBe(652)
  expect(left('u4')).toBe(3100)
  expect(left('u3')).toBe(2595)
  expect(left('u5')).toBeNull()
  expect(left('u7')).toBe(1052)
  expect(units.get('u8')?.left.missing).toEqual(['units.u7.width'])
})

test('facts: known, not known, and none that a kitchen could hold', () => {
  const facts = factBook(
    {
      region: 'uk',
      walls: [
        { id: 'a', length: null, studs: [{ id: 's1', centre: { at: '100' }, width: { value: 38, pm: 1 } }] },
      ],
    },
    new Map([['walls.a.studs.s1.confirmed', 'both-edges']]),
    new Set(['e1']),
  )
  expect(facts('walls.a.studs.s1.centre.at')).toBe('known')
  expect(facts('walls.a.studs.s1.width')).toBe('known')
  expect(facts('walls.a.studs.s1.confirmed')).toBe('known')
  expect(facts('walls.a.length')).toBe('not known')
  expect(facts('walls.a.thickness')).toBe('not known')
  expect(facts('walls.a.cornerRight')).toBe('not known')
  expect(facts('walls.a.studs')).toBe('known')
  expect(facts('walls.a.noggings')).toBe('not known')
  expect(facts('survey.houseBuilt')).toBe('not known')
  expect(facts('lines.line')).toBe('known')
  expect(facts('log.e1')).toBe('known')
  expect(facts('log.entries.e1.down')).toBe('known')
  for (const none of [
    'walls.a.studs.s2.width',
    'walls.a.colour',
    'walls.b.length',
    'log.e2',
    'walls.a.length.value',
    '',
  ]) {
    expect(facts(none)).toBe('no such fact')
  }
})

test('a correction takes an entry back, and can itself be taken back', () => {
  const log = readLog({
    entries: [
      { id: 'e1', kind: 'done', operation: 'strike:line' },
      { id: 'e2', kind: 'floor-at-foot', unit: 'b1', foot: 'fl', drop: 1003 },
      { id: 'e3', kind: 'correct', entry: 'e1' },
      { id: 'e4', kind: 'correct', entry: 'e2' },
      { id: 'e5', kind: 'correct', entry: 'e4' },
      { id: 'e6', kind: 'observed', fact: 'walls.a.traced', value: 'whole' },
    ],
  })
  expect([...log.done]).toEqual([])
  expect(log.floorAtFoot.get('b1.fl')?.value).toBe(-1003)
  expect(log.observed.get('walls.a.traced')).toBe('whole')
})
