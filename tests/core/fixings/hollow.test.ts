import { expect, test } from 'vitest'
import {
  at,
  exact,
  type Json,
  stud,
  studWall,
  up,
  wallFile,
  wallUnit,
  worked,
} from '../../support/fixed-wall'

const bow = (along: number, mm: number, { height = 450, pm = 0 } = {}): Json => ({
  id: `bow-${along}-${height}`,
  along: at(along),
  height: up(height),
  bow: { value: mm, pm },
  over: exact(1200),
})

const found = (...straightness: readonly Json[]) =>
  worked(
    wallFile({
      wall: { ...studWall, studs: [stud('s1', 700), stud('s2', 1100)], straightness },
      units: [wallUnit],
    }),
  ).fixings.findings.filter(({ rule }) => rule === 'screw-over-hollow')

// Second fixings at 450 over the line: the rail 20, board 12.5 and 35 in the stud want 67.5 of 70, so 2.5 are to spare. The
// plates at 1070: 2 + 12.5 + 35 want 49.5, so 20.5 are.
test('a screw takes the packing over a hollow as deep as what it has to spare, and no deeper one', () => {
  expect(found(bow(500, 0), bow(1100, 2.5), bow(1300, 0))).toEqual([])
  const [one, ...more] = found(bow(500, 0), bow(1100, 2.6), bow(1300, 0))
  expect(more).toEqual([])
  expect(one).toMatchObject({ id: 'screw-over-hollow:w', weight: 'stop', about: ['w'] })
  expect(one?.say.values).toMatchObject({
    hollow: { value: 2.6 },
    needed: { value: 70.1 },
    short: { value: 0.1 },
    along: { value: 1100 },
  })
})

// From 0 at 500 to 8 at 1300 there are 6 at the stud at 1100, and 2 at that at 700.
test('between two readings a hollow runs straight', () => {
  const [one] = found(bow(500, 0), bow(1300, 8))
  expect(one?.say.values).toMatchObject({ hollow: { value: 6 }, short: { value: 3.5 } })
})

test('it is asked about where the readings cannot tell', () => {
  const read = (mm: number) => found(bow(500, 0), bow(1100, mm, { pm: 0.5 }), bow(1300, 0))
  expect(read(3.1).map(({ weight }) => weight)).toEqual(['stop'])
  expect(read(3).map(({ weight }) => weight)).toEqual(['ask'])
  expect(read(2.5)).toEqual([])
})

test('a belly, readings on one side only, and a straightedge laid far above say nothing', () => {
  expect(found(bow(500, 0), bow(1100, -9), bow(1300, 0))).toEqual([])
  expect(found(bow(500, 9), bow(600, 9))).toEqual([])
  expect(found(...[500, 1100, 1300].map((along) => bow(along, 9, { height: 851 })))).toEqual([])
  expect(found(...[500, 1100, 1300].map((along) => bow(along, 9, { height: 850 })))).toHaveLength(1)
})
