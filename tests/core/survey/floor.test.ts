import { expect, test } from 'vitest'
import { type Figure, known, type ValueFigure } from '../../../src/core/figure'
import { type Survey, workOutSurvey } from '../../../src/core/survey/survey'
import { kitchenOf, placeOn, plain, readingOf, sure, wallsOf } from '../../support/surveyed'

const exactly = (value: number, id: string): Figure => known(value, 0, 'mm', [id])
const floorOf = (readings: readonly object[], walls: readonly object[] = wallsOf([4000])): Survey =>
  workOutSurvey(kitchenOf({ walls, floor: { readings } }), null)
const floorAt = (survey: Survey, along: number, out: number, wall = 'a'): Figure =>
  survey.floorAt(wall, exactly(along, 'p.x'), exactly(out, 'p.y'))

/** Falls 10 in 1000 along the wall, 4 in 1000 away from it. */
const THREE = [
  readingOf('f1', 'a', 0, 0, 1000, 1),
  readingOf('f2', 'a', 1000, 0, 1010, 1),
  readingOf('f3', 'a', 0, 1000, 1004, 1),
]

test.each([
  ['inside: −1000 − 2.5 − 1', 250, 250, -1003.5],
  ['on an edge: −1000 − 5', 500, 0, -1005],
  ['on a reading', 1000, 0, -1010],
  ['on the far edge: half of each', 500, 500, -1007],
])('straight between three readings, %s', (_, along, out, z) => {
  expect(plain(floorAt(floorOf(THREE), along, out))).toBe(z)
})

test('a height between readings is as good as they are, and as the place is on the slope', () => {
  const survey = floorOf(THREE)
  // Shares ½, ¼, ¼ of ±1 each.
  expect((floorAt(survey, 250, 250) as ValueFigure).pm).toBe(1)
  // 2 mm along a fall of 1 in 100 is 0.02.
  const loose = survey.floorAt('a', known(250, 2, 'mm', ['p.x']), exactly(250, 'p.y')) as ValueFigure
  expect(loose.pm).toBe(1.02)
})

const ids = (...readings: readonly string[]) =>
  readings.flatMap((r) =>
    ['at.along.at', 'at.along.face', 'at.along.from', 'at.out', 'at.wall', 'drop', 'line'].map(
      (fact) => `floor.readings.${r}.${fact}`,
    ),
  )

test('a height rests on the readings round it and on no others', () => {
  const survey = floorOf([...THREE, readingOf('f4', 'a', 2000, 1000, 1020)])
  const cited = (along: number, out: number) =>
    floorAt(survey, along, out).from.filter((id) => !id.startsWith('p.'))
  expect(cited(250, 250)).toEqual(ids('f1', 'f2', 'f3'))
  expect(cited(500, 0)).toEqual(ids('f1', 'f2'))
  expect(cited(1000, 0.5)).toEqual(ids('f2'))
  expect(floorAt(survey, 250, 250).from).toContain('p.x')
})

test('an unknown drop takes its triangles with it and leaves the others', () => {
  const fourth = { id: 'f4', at: placeOn('a', 1000, 1000) }
  const survey = floorOf([...THREE, fourth])
  expect(survey.triangles.map(({ readings }) => readings.join(' '))).toEqual(['f1 f3 f4', 'f1 f4 f2'])
  expect(floorAt(survey, 800, 500)).toMatchObject({ state: 'unknown', missing: ['floor.readings.f4.drop'] })
  expect(plain(floorAt(survey, 500, 0))).toBe(-1005)
  expect(survey.plane).toBeNull()
})

/** −1000 at three corners of a square and −996 at the fourth: the plane is −1001 + 0.002 along + 0.002 out, each 1 off. */
const WARPED = [
  readingOf('w1', 'a', 0, 0, 1000, 1),
  readingOf('w2', 'a', 1000, 0, 1000, 1),
  readingOf('w3', 'a', 0, 1000, 1000, 1),
  readingOf('w4', 'a', 1000, 1000, 996, 1),
]

test('outside the readings a plane through all of them is used', () => {
  const survey = floorOf(WARPED)
  const beyond = floorAt(survey, 2000, 0) as ValueFigure
  expect(beyond.value).toBe(-997)
  expect(beyond.from.filter((id) => !id.startsWith('p.'))).toEqual(ids('w1', 'w2', 'w3', 'w4'))
  // Shares of the four there: ¼ + slopes: −½·… = −0.75, 1.25, −0.25, 0.75: |shares| add to 3.
  expect(beyond.pm).toBe(3)
  // The room lies at −y: 0.002 out of the wall is −0.002 along y.
  expect(survey.plane).toEqual({ a: -1001, b: 0.002, c: -0.002, worst: 1 })
  expect(survey.floorOutsideBy('a', exactly(2000, 'x'), exactly(0, 'y'))).toBe(1000)
  expect(survey.floorOutsideBy('a', exactly(500, 'x'), exactly(500, 'y'))).toBe(0)
})

test('outside the readings one that is unknown, or has no place, leaves the floor unknown', () => {
  const noDrop = floorOf([...WARPED, { id: 'w5', at: placeOn('a', 500, 500) }])
  expect(floorAt(noDrop, 2000, 0)).toMatchObject({ missing: ['floor.readings.w5.drop'] })
  const noPlace = floorOf([...WARPED, { id: 'w5', at: { wall: 'a', along: {}, out: sure(0) }, drop: 1000 }])
  expect(floorAt(noPlace, 2000, 0)).toMatchObject({ missing: ['floor.readings.w5.at.along.at'] })
  expect(plain(floorAt(noPlace, 500, 0))).toBe(-1000)
})

test('two readings hold what lies over the line between them, to 1 mm, and nothing else', () => {
  const survey = floorOf(THREE.slice(0, 2))
  expect(plain(floorAt(survey, 250, 0))).toBe(-1002.5)
  expect(plain(floorAt(survey, 250, 1))).toBe(-1002.5)
  expect(plain(floorAt(survey, 0.4, 0.4))).toBe(-1000)
  expect(floorAt(survey, 250, 2)).toMatchObject({ state: 'unknown', missing: ['floor.readings'] })
  expect(floorAt(survey, 1002, 0)).toMatchObject({ state: 'unknown' })
  expect(survey.floorOutsideBy('a', exactly(0, 'x'), exactly(9, 'y'))).toBeNull()
})

test('one reading holds its own place; none, nothing', () => {
  expect(plain(floorAt(floorOf(THREE.slice(0, 1)), 0.5, 0.5))).toBe(-1000)
  expect(plain(floorAt(floorOf(THREE.slice(0, 1)), 5, 0))).toBe('unknown')
  expect(floorAt(floorOf([]), 5, 0)).toMatchObject({ missing: ['floor.readings'] })
})

test('readings on a row are taken one stretch at a time', () => {
  const row = [0, 1000, 2000].map((x, i) => readingOf(`r${i}`, 'a', x, 0, [1000, 1010, 1000][i] as number))
  expect(plain(floorAt(floorOf(row), 1500, 0))).toBe(-1005)
})

test('an unknown place leaves the floor there unknown, and asks for the place', () => {
  const survey = floorOf(THREE)
  const lost: Figure = { ...exactly(0, 'p.x'), state: 'unknown', missing: ['p.x'] } as Figure
  expect(survey.floorAt('a', lost, exactly(0, 'p.y'))).toMatchObject({ state: 'unknown', missing: ['p.x'] })
  expect(survey.floorOutsideBy('a', lost, exactly(0, 'p.y'))).toBeNull()
})

/** Two walls in a square corner: a 2000 long, then b, on which 500 along and 400 out is 1600 along a and 500 out. */
const CORNER = wallsOf([2000, 90], [3000])
const ROUND = [
  readingOf('a1', 'a', 1000, 100, 1000),
  readingOf('a2', 'a', 1900, 100, 1009),
  readingOf('b1', 'b', 900, 500, 1016),
  readingOf('b2', 'b', 2000, 0, 1020),
  readingOf('b3', 'b', 2000, 600, 1026),
  readingOf('b4', 'b', 1500, 300, 1020),
]

test('readings on two walls make one floor, which rests on the corner between them', () => {
  const survey = floorOf(ROUND, CORNER)
  // In the triangle a1 a2 b1 the shares at (1500, −400) are 0.27778, 0.34722, 0.375: −1000 − 3.125 − 6.
  const seen = floorAt(survey, 1500, 400)
  expect(plain(seen)).toBe(-1009.125)
  expect(plain(floorAt(survey, 400, 500, 'b'))).toBe(-1009.125)
  expect(seen.from).toContain('walls.a.length')
  expect(seen.from).toContain('walls.a.cornerRight.angle')
})

test('a place and readings all on one wall rest on no corner', () => {
  const survey = floorOf(ROUND, CORNER)
  const seen = floorAt(survey, 1800, 250, 'b')
  expect(seen.state).toBe('known')
  expect(seen.from.filter((id) => id.startsWith('walls.'))).toEqual([])
})

test('past an unknown corner the readings of each wall stand alone', () => {
  const survey = floorOf(ROUND, [
    { id: 'a', length: sure(2000) },
    { id: 'b', length: sure(3000) },
  ])
  const whole = floorOf(ROUND, CORNER)
  expect(floorAt(survey, 1800, 250, 'b')).toEqual(floorAt(whole, 1800, 250, 'b'))
  expect(floorAt(survey, 400, 500, 'b')).toMatchObject({ missing: ['walls.a.cornerRight.angle'] })
  expect(survey.points.map(({ id }) => id)).toEqual(['a1', 'a2'])
})

test('the order of the readings in the file changes nothing', () => {
  const there = floorOf(ROUND, CORNER)
  const back = floorOf([...ROUND].reverse(), CORNER)
  expect(back.triangles).toEqual(there.triangles)
  expect(floorAt(back, 1500, 400)).toEqual(floorAt(there, 1500, 400))
})

test.each([
  ['15 in a metre is not yet a step', 1015, []],
  ['16 in a metre may be one', 1016, ['floor-step:f1+f2']],
])('%s', (_, drop, found) => {
  const survey = floorOf([
    readingOf('f1', 'a', 0, 0, 1000),
    readingOf('f2', 'a', 1000, 0, drop),
    readingOf('f3', 'a', 500, 4000, 1008),
  ])
  expect(survey.findings.map(({ id }) => id)).toEqual(found)
})

test('readings off another line are brought to the first', () => {
  const lines = [{ id: 'line' }, { id: 'low', offset: sure(-200) }]
  const readings = [{ id: 'f1', at: placeOn('a', 0, 0), drop: sure(800), line: 'low' }]
  const survey = workOutSurvey(kitchenOf({ lines, walls: wallsOf([4000]), floor: { readings } }), null)
  expect(plain(floorAt(survey, 0, 0))).toBe(-1000)
  expect(floorAt(survey, 0, 0).from).toContain('lines.low.offset')
})

test('a steep bit between readings close together is no step while it may be their precision', () => {
  const near = (pm: number) =>
    floorOf([
      readingOf('f1', 'a', 0, 0, 1000, pm),
      readingOf('f2', 'a', 50, 0, 1002, pm),
      readingOf('f3', 'a', 0, 3000, 1000),
    ]).findings
  // 2 in 50 is 40 in a metre; read to 1 mm each it may be nothing.
  expect(near(1)).toEqual([])
  expect(near(0.5).map(({ id }) => id)).toEqual(['floor-step:f1+f2'])
})

test('readings that may all lie on one line say nothing beside it', () => {
  const out = (value: number) => ({ value, pm: 2 })
  const readings = [0, 1000, 500].map((x, i) => ({
    id: `f${i}`,
    at: { wall: 'a', along: { at: sure(x) }, out: out(i === 2 ? 2 : 0) },
    drop: sure(1000 + i),
  }))
  expect(floorAt(floorOf(readings), 500, 300)).toMatchObject({
    state: 'unknown',
    missing: ['floor.readings'],
  })
})

// A fourth reading at f3 that is 8 lower: between them it is not known which is right, and f3 comes first.
test('two readings of one place: the first counts, and the plane is laid through both', () => {
  const survey = floorOf([...THREE, readingOf('f4', 'a', 0, 1000, 1012)])
  expect(plain(floorAt(survey, 0, 1000))).toBe(-1004)
  // Half-way between the two over that place: −1008, 8 below f1.
  expect(survey.plane).toMatchObject({ a: -1000, b: -0.01, c: 0.008 })
  expect(survey.findings.map(({ id }) => id)).toEqual(['floor-step:f3+f4'])
})

test('the same height read twice is no finding', () => {
  expect(floorOf([...THREE, readingOf('f4', 'a', 0, 1000, 1004)]).findings).toEqual([])
})
