import { expect, test } from 'vitest'
import { type Figure, known } from '../../../src/core/figure'
import { type Survey, workOutSurvey } from '../../../src/core/survey/survey'
import { kitchenOf, placeOn, plain, sure, wallsOf } from '../../support/surveyed'

const at = (value: number): Figure => known(value, 0, 'mm', [])
const ceilingOf = (readings: readonly object[], walls = wallsOf([6000])): Survey =>
  workOutSurvey(kitchenOf({ walls, ceiling: readings }), null)
const over = (survey: Survey, from: number, to: number, out: number) =>
  survey.ceilingOver('a', at(from), at(to), at(out))
const reading = (id: string, along: number, out: number, up: number | null) => ({
  id,
  at: placeOn('a', along, out),
  height: up === null ? {} : { up: sure(up) },
})

/** Two squares side by side, 2000 each, the far end lower. */
const SIX = [
  reading('c1', 0, 0, 1400),
  reading('c2', 2000, 0, 1398),
  reading('c3', 4000, 0, 1350),
  reading('c4', 0, 2000, 1399),
  reading('c5', 2000, 2000, 1397),
  reading('c6', 4000, 2000, 1390),
]

test('among the readings: the lowest place of the surface over the part, not the lowest reading about it', () => {
  const survey = ceilingOf(SIX)
  // The first square is a plane: 1 mm a metre down along the wall, 0.5 out from it. At 700 and 300: 1400 - 0.7 - 0.15.
  expect(plain(over(survey, 100, 700, 300))).toBe(1399.15)
  // Reaches into the second square by 100, where the ceiling along the wall falls 48 in 2000: 1398 - 2.4.
  expect(plain(over(survey, 1500, 2100, 300))).toBe(1395.6)
  expect(over(survey, 1500, 2100, 300).from).toContain('ceiling.c3.height.up')
  expect(over(survey, 100, 700, 300).from).not.toContain('ceiling.c3.height.up')
})

test('a reading over the part counts, however high the ceiling is round about it', () => {
  // A beam's end at 1000, 200 out: no corner of the part and no side of it meets it.
  const survey = ceilingOf([...SIX, reading('c7', 1000, 200, 1300)])
  expect(plain(over(survey, 700, 1300, 400))).toBe(1300)
})

test('a ridge between two readings that runs across the part is met where its sides cross it', () => {
  // Four corners at 1400 and a dip of 1340 at 2000, 1000: along the fold from there to the corner, 1340 + 0.03 x 400.
  const corners = [
    [0, 0],
    [4000, 0],
    [0, 2000],
    [4000, 2000],
  ].map(([along = 0, out = 0], i) => reading(`c${i}`, along, out, 1400))
  const survey = ceilingOf([...corners, reading('dip', 2000, 1000, 1340)])
  // From 0 to 300 out over 1500..2500 only the front face of the dip is over the part: 1400 - 60 x 300 / 1000.
  expect(plain(over(survey, 1500, 2500, 300))).toBe(1382)
})

test('its precision is that of the readings it lies between, and of the place on a slope', () => {
  const sloping = [
    [0, 0, 1340],
    [3000, 0, 1205],
    [0, 3000, 1340],
    [3000, 3000, 1205],
  ].map(([along = 0, out = 0, up = 0], i) => ({
    ...reading(`c${i}`, along, out, up),
    height: { up: { value: up, pm: 0.2 } },
  }))
  // 45 mm a metre: at 2900 it is 1340 - 130.5. The readings shares add up to 0.2; 2 mm of place make 0.09 more.
  const end = known(2900, 2, 'mm', ['there'])
  const figure = ceilingOf(sloping).ceilingOver('a', at(2300), end, at(600))
  expect(figure).toMatchObject({ value: 1209.5, pm: 0.29 })
  expect(figure.from).toContain('there')
})

test('an area that begins out from the wall has nothing of what is nearer', () => {
  const eaves = [
    ['c1', 0, 0, 1000],
    ['c2', 3000, 0, 1000],
    ['c3', 0, 2000, 1400],
    ['c4', 3000, 2000, 1400],
  ].map(([id, along, out, up]) => reading(id as string, along as number, out as number, up as number))
  const survey = ceilingOf(eaves)
  expect(plain(survey.ceilingOver('a', at(500), at(1100), at(1500)))).toBe(1000)
  // 200 mm a metre: 1000 + 0.2 x 800.
  expect(plain(survey.ceilingOver('a', at(500), at(1100), at(1500), at(800)))).toBe(1160)
})

test('past the outermost readings the lowest of those round it stands, for nobody knows how the ceiling goes on', () => {
  const survey = ceilingOf(SIX)
  // 3900 to 4100: 100 of it past c3 and c6. By the surface up to 4000 it would be 1350 as well; 3000 to 3600 and beyond
  // the readings out from the wall, 1350 and not the 1364.4 over the part.
  expect(plain(over(survey, 3900, 4100, 300))).toBe(1350)
  expect(plain(over(survey, 3000, 3400, 2500))).toBe(1350)
  // Over by no more than a tape is out it counts as among them: 1398 - 48 x 1400 / 2000.
  expect(plain(over(survey, 3000, 3400, 2000.5))).toBe(1364.4)
})

test('outside all readings, and with fewer than three, the lowest of all', () => {
  expect(plain(over(ceilingOf(SIX), 4500, 5000, 300))).toBe(1350)
  const two = ceilingOf(SIX.slice(1, 3))
  expect(plain(over(two, 100, 700, 300))).toBe(1350)
  expect(over(two, 100, 700, 300).from).toEqual(
    ['c2', 'c3'].flatMap((id) => [`ceiling.${id}.height.line`, `ceiling.${id}.height.up`]),
  )
})

test('an unknown reading round the place leaves its ceiling unknown, and no other', () => {
  const survey = ceilingOf(SIX.map((one) => (one.id === 'c3' ? { ...one, height: {} } : one)))
  expect(plain(over(survey, 100, 700, 300))).toBe(1399.15)
  expect(over(survey, 3000, 3600, 300)).toMatchObject({ state: 'unknown' })
})

test('no readings: the ceiling is asked for', () => {
  expect(over(ceilingOf([]), 0, 600, 300)).toMatchObject({ state: 'unknown', missing: ['ceiling'] })
})

test('every wall tells the lowest ceiling over it', () => {
  // At its right end, 3900: 1398 - 48 x 1900 / 2000.
  expect(plain(ceilingOf(SIX, wallsOf([3900])).frame('a')?.ceiling)).toBe(1352.4)
})

test('a ceiling may be read up from the floor', () => {
  const kitchen = kitchenOf({
    walls: wallsOf([3000]),
    floor: { readings: [{ id: 'f', at: placeOn('a', 10, 10), drop: sure(1000) }] },
    ceiling: [{ id: 'c', at: placeOn('a', 10, 10), height: { aboveFloor: sure(2400) } }],
  })
  const figure = over(workOutSurvey(kitchen, null), 0, 600, 300)
  expect(plain(figure)).toBe(1400)
  expect(figure.from).toContain('floor.readings.f.drop')
})

test('over one place the ceiling lies straight between the readings round it', () => {
  const survey = ceilingOf(SIX)
  // Half-way from c1 (1400) to c2 (1398), and on c3 itself.
  expect(plain(survey.ceilingAt('a', at(1000), at(0)))).toBe(1399)
  expect(plain(survey.ceilingAt('a', at(4000), at(0)))).toBe(1350)
  expect(survey.ceilingAt('z', at(0), at(0)).state).toBe('unknown')
})
