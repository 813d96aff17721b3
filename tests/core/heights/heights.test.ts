import { expect, test } from 'vitest'
import type { HeightName } from '../../../src/core/kitchen/kinds'
import type { HeightValue } from '../../../src/core/plan/types'
import {
  baseUnit,
  ceilingAt,
  foot,
  rowKitchen,
  TWO_BASES,
  WORKTOP,
  wallUnit,
  withDishwasher,
} from '../../support/row-kitchen'
import {
  atLeft,
  heightIn,
  placeOn,
  plain,
  readingOf,
  sure,
  type WorkedThrough,
  workThrough,
} from '../../support/surveyed'

const valueOf = ({ worked }: WorkedThrough, of: HeightName) =>
  worked.heights.values.find((value) => value.of === of) as HeightValue
const findingsOf = ({ worked }: WorkedThrough, rule: string) =>
  worked.findings.filter((finding) => finding.rule === rule).map(({ id }) => id)
const wishes = (...heights: readonly object[]) => ({ wishes: { heights } })
const wish = (id: string, of: HeightName, limits: object) => ({ id, of, ...limits })

test('legs alone: the middle of their reach', () => {
  const kitchen = workThrough(rowKitchen({ units: TWO_BASES }))
  // Feet at 50, 550, 650, 1150: floors −1000.1, −1001.1, −1001.3, −1002.3.
  // −1000.1 + 130 = −870.1 ≤ underside ≤ −1002.3 + 180 = −822.3. Middle −846.2: −846. Top 720 over it.
  expect(valueOf(kitchen, 'base-underside')).toMatchObject({
    height: { state: 'known', value: -846, pm: 0 },
    lowest: -870.1,
    highest: -822.3,
    lowestBy: ['leg-reach:base-1.bl'],
    highestBy: ['leg-reach:base-2.br'],
    marginal: false,
    achieved: false,
  })
  expect(heightIn(kitchen, 'base-top')).toBe(-126)
  expect(heightIn(kitchen, 'worktop-top')).toBe('none')
  expect(kitchen.worked.heights.conflicts).toEqual([])
  expect(kitchen.worked.heights.unmet).toEqual([])
})

test('a dishwasher narrows the room from both sides; half-way goes down', () => {
  const kitchen = workThrough(withDishwasher())
  // Highest floor of the bay −1002.4 + 850 + 5 = −147.4 ≤ base-top: underside ≥ −867.4.
  // Lowest −1003.6 + 890 = −113.6 ≥ base-top: underside ≤ −833.6. Middle −850.5: −851.
  expect(valueOf(kitchen, 'base-underside')).toMatchObject({
    height: { value: -851 },
    lowest: -867.4,
    highest: -833.6,
    lowestBy: ['bay-in:dw', 'carcass-height:base'],
    highestBy: ['bay-max:dw', 'carcass-height:base'],
  })
  expect(heightIn(kitchen, 'base-top')).toBe(-131)
  expect(heightIn(kitchen, 'worktop-top')).toBe(-93)
})

test('a wish above the floor at a place', () => {
  const limits = {
    min: { aboveFloor: sure(905) },
    max: { aboveFloor: sure(915) },
    place: placeOn('a', 1500, 600),
  }
  const kitchen = workThrough(withDishwasher(wishes(wish('mine', 'worktop-top', limits))))
  // Floor there −1003: worktop from −98 to −88, underside from −856 to −846. Middle −851.
  expect(valueOf(kitchen, 'worktop-top')).toMatchObject({ lowest: -98, highest: -88, height: { value: -93 } })
  expect(valueOf(kitchen, 'base-underside')).toMatchObject({
    lowest: -856,
    highest: -846,
    height: { value: -851 },
  })
})

test('legs wind out by the floor under each foot', () => {
  const { worked } = workThrough(withDishwasher())
  const legs = worked.legs.get('base-1') ?? []
  // Underside −851 over floors −1000.1 and −1001.1; delivered at 150, 1.5 mm a turn.
  expect(legs.map(({ foot: id, extension, within }) => [id, plain(extension), within])).toEqual([
    ['bl', 149.1, 'yes'],
    ['br', 150.1, 'yes'],
    ['fl', 149.1, 'yes'],
    ['fr', 150.1, 'yes'],
  ])
  expect(plain(legs[0]?.turns)).toBe(-0.6)
  expect(plain(legs[1]?.turns)).toBe(0.067)
})

test('the high point is the highest floor under a foot or bay, and the fall goes down from there', () => {
  const { worked } = workThrough(withDishwasher())
  expect(worked.highPoint).toMatchObject({ z: { value: -1000.1 }, where: 'base-1.bl' })
  // Down to the far corners of the bay: −1003.6.
  expect(plain(worked.fall)).toBe(3.5)
})

test('a clash through a chain of three, by how much, and the wish gives way', () => {
  const kitchen = workThrough(
    withDishwasher(wishes(wish('low', 'worktop-top', { max: { down: sure(120) } }))),
  )
  // base-top ≥ −147.4, worktop 38 over it ≥ −109.4, wished ≤ −120: 10.6 too much.
  // (The legs and the carcass clash with it too, by 7.9, but that takes four.)
  expect(kitchen.worked.heights.conflicts).toEqual([
    { demands: ['bay-in:dw', 'wish:low', 'worktop-thickness:top'], by: 10.6 },
  ])
  expect(kitchen.worked.heights.unmet).toEqual(['wish:low'])
  expect(findingsOf(kitchen, 'heights-clash')).toEqual([
    'heights-clash:bay-in:dw+wish:low+worktop-thickness:top',
  ])
  expect(heightIn(kitchen, 'base-underside')).toBe(-851)
})

test('contradictions that share nothing are all told', () => {
  const kitchen = workThrough(
    withDishwasher(
      wishes(
        wish('high', 'tall-top', { min: { up: sure(1300) } }),
        wish('low', 'worktop-top', { max: { down: sure(120) } }),
        wish('lower', 'tall-top', { max: { up: sure(1250) } }),
      ),
    ),
  )
  expect(kitchen.worked.heights.conflicts).toEqual([
    { demands: ['wish:high', 'wish:lower'], by: 50 },
    { demands: ['bay-in:dw', 'wish:low', 'worktop-thickness:top'], by: 10.6 },
  ])
  expect(kitchen.worked.heights.unmet).toEqual(['wish:high', 'wish:low'])
})

/** One unit on two feet, 600 apart, over a floor that falls by so much between them, read at the feet to so much. */
function onTwoFeet(fall: number, pm: number) {
  const unit = baseUnit('u', { left: atLeft(0) }, { feet: [foot('l', 0, 0), foot('r', 600, 0)] })
  const readings = [
    readingOf('f1', 'a', 0, 0, 1000, pm),
    readingOf('f2', 'a', 600, 0, 1000 + fall, pm),
    readingOf('f3', 'a', 0, 700, 1000),
  ]
  return workThrough(rowKitchen({ units: [unit], floor: { readings } }))
}

test('the reach of the legs is 50: over a fall of 51 the room is empty by 1', () => {
  const kitchen = onTwoFeet(51, 0)
  // At least −1000 + 130 = −870, at most −1051 + 180 = −871.
  expect(kitchen.worked.heights.conflicts).toEqual([{ demands: ['leg-reach:u.l', 'leg-reach:u.r'], by: 1 }])
  // The left leg is let go: −921 ≤ underside ≤ −871, middle −896, which leaves 104 over it.
  expect(kitchen.worked.heights.unmet).toEqual(['leg-reach:u.l'])
  expect(heightIn(kitchen, 'base-underside')).toBe(-896)
  expect(findingsOf(kitchen, 'leg-out-of-reach')).toEqual(['leg-out-of-reach:u.l'])
  expect(kitchen.worked.legs.get('u')?.map(({ extension, within }) => [plain(extension), within])).toEqual([
    [104, 'too-short'],
    [155, 'yes'],
  ])
})

test.each([
  // −870 … −869, each good to 1: less than their precision. Middle −869.5, down: −870.
  ['1 wide, read to 1', 49, 1, -870, true],
  // −870 … −868, drawn in by 1 at each end: −869 remains.
  ['2 wide, read to 1', 48, 1, -869, false],
  ['nothing wide, read exactly', 50, 0, -870, false],
])('a room %s', (_, fall, pm, height, marginal) => {
  const kitchen = onTwoFeet(fall, pm)
  expect(valueOf(kitchen, 'base-underside')).toMatchObject({ height: { value: height, pm: 0 }, marginal })
  // The top of the carcass has the same two ends: told once.
  expect(findingsOf(kitchen, 'height-marginal')).toEqual(marginal ? ['height-marginal:base-underside'] : [])
})

test('each end is drawn in by the precision of what sets it', () => {
  const limits = { min: { up: { value: 100, pm: 8 } }, max: { up: { value: 120, pm: 2 } } }
  const kitchen = workThrough(rowKitchen(wishes(wish('w', 'wall-top', limits))))
  // 108 … 118: 113, and not 110.
  expect(valueOf(kitchen, 'wall-top')).toMatchObject({ height: { value: 113 }, lowest: 100, highest: 120 })
})

test('a height with one end is set 10 off it, to the whole millimetre away', () => {
  const at = (limits: object) =>
    heightIn(workThrough(rowKitchen(wishes(wish('w', 'wall-top', limits)))), 'wall-top')
  expect(at({ min: { up: sure(100.3) } })).toBe(111)
  expect(at({ max: { up: sure(100.3) } })).toBe(90)
  expect(at({ min: { up: { value: 100, pm: 2 } } })).toBe(112)
})

test('a height that nothing bounds is not known', () => {
  const kitchen = workThrough(rowKitchen(wishes({ id: 'w', of: 'wall-top', equals: 'tall-top' })))
  expect(valueOf(kitchen, 'wall-top').height).toMatchObject({ state: 'unknown', missing: ['wishes.heights'] })
})

test('where no whole millimetre lies in the room its middle is taken', () => {
  const limits = { min: { up: sure(100.2) }, max: { up: sure(100.7) } }
  expect(heightIn(workThrough(rowKitchen(wishes(wish('w', 'wall-top', limits)))), 'wall-top')).toBe(100.45)
})

test('a ceiling over the wall units reaches down to the legs, through six demands', () => {
  const kitchen = workThrough(
    withDishwasher({ units: [wallUnit('wall-1', { left: atLeft(0) })], ceiling: ceilingAt(1100) }),
  )
  // Hooked on with 25 + 10 over its top: wall-top ≤ 1065, underside ≤ 345, worktop ≤ −105, base-underside ≤ −863.
  expect(valueOf(kitchen, 'base-underside')).toMatchObject({
    lowest: -867.4,
    highest: -863,
    highestBy: [
      'hook-on:wall-1',
      'carcass-height:wall',
      'gap-over-worktop:wall',
      'worktop-thickness:top',
      'carcass-height:base',
    ],
    // Middle −865.2.
    height: { value: -865 },
  })
  // Worktop −107: underside from 343 to 345.
  expect(heightIn(kitchen, 'wall-underside')).toBe(344)
  expect(kitchen.worked.hookOn.get('wall-1')).toMatchObject({
    needed: { value: 35 },
    there: { value: 36 },
    fits: 'yes',
  })
})

test('a usual gap that cannot be is given up, and said', () => {
  const kitchen = workThrough(
    withDishwasher({ units: [wallUnit('wall-1', { left: atLeft(0) })], ceiling: ceilingAt(1090) }),
  )
  // wall-top ≤ 1055; but the lowest worktop −109.4 + 450 + 720 is 1060.6.
  expect(findingsOf(kitchen, 'preferred-height-given-up')).toEqual([
    'preferred-height-given-up:gap-over-worktop:wall',
  ])
  expect(kitchen.worked.heights.unmet).toEqual(['gap-over-worktop:wall'])
  expect(kitchen.worked.heights.conflicts).toEqual([])
  expect(heightIn(kitchen, 'base-underside')).toBe(-851)
  // Only an upper end is left: 1055 − 10.
  expect(heightIn(kitchen, 'wall-top')).toBe(1045)
})

const tall = (height: number) => [
  baseUnit('tall-1', { rightOf: 'space' }, { kind: 'tall', height: sure(height) }),
  wallUnit('wall-1', { left: atLeft(0) }),
]

test('tall units stand on the line of the plinth and hung ones end level with them', () => {
  const kitchen = workThrough(withDishwasher({ units: tall(1970), ceiling: ceilingAt(1400) }))
  // Gap 450 … 500 under a wall unit of 720 that ends at underside + 1970: 1970 − 720 − 758 = 492 between, always.
  expect(kitchen.worked.heights.unmet).toEqual([])
  expect(heightIn(kitchen, 'base-underside')).toBe(-851)
  expect(heightIn(kitchen, 'tall-underside')).toBe(-851)
  expect(heightIn(kitchen, 'tall-top')).toBe(1119)
  expect(heightIn(kitchen, 'wall-top')).toBe(1119)
  expect(heightIn(kitchen, 'wall-underside')).toBe(399)
})

test('of the preferred the later is given up: the top line, for the gap, while the plinth line holds', () => {
  const kitchen = workThrough(withDishwasher({ units: tall(2100), ceiling: ceilingAt(1400) }))
  expect(kitchen.worked.heights.unmet).toEqual(['top-line:wall-tall'])
  expect(heightIn(kitchen, 'tall-underside')).toBe(-851)
  // −93 + 450 + 720 = 1077 … 1127.
  expect(heightIn(kitchen, 'wall-top')).toBe(1102)
})

test('tops line up: a lower hung unit has an underside of its own', () => {
  const units = [
    wallUnit('wall-1', { left: atLeft(0) }),
    wallUnit('short', { rightOf: 'wall-1' }, { height: sure(360) }),
  ]
  const { worked } = workThrough(rowKitchen({ units, ceiling: ceilingAt(1200) }))
  // Top 10 off 1200 − 35 = 1165: 1155.
  expect(plain(worked.undersides.get('wall-1'))).toBe(435)
  expect(plain(worked.undersides.get('short'))).toBe(795)
})

const boxOn = (stands: string) =>
  workThrough(
    rowKitchen({
      units: [baseUnit('box', { left: atLeft(600) }, { stands, height: sure(876.3), feet: [] })],
    }),
  ).worked

test('a box on shims goes down on the highest floor under it, and is shimmed up at the others', () => {
  const worked = boxOn('shims')
  // Highest corners at 600: −1001.2. 600 further on the floor is 1.2 lower.
  const tops = worked.heights.values.map(({ of, height }) => [of, plain(height)])
  expect(tops).toEqual([
    ['base-underside', -1001.2],
    ['base-top', -124.9],
  ])
  const shims = worked.shims.get('box')?.map(({ foot, floor, height }) => [foot, plain(floor), plain(height)])
  expect(shims).toEqual([
    ['back-left', -1001.2, 0],
    ['back-right', -1002.4, 1.2],
    ['front-left', -1001.2, 0],
    ['front-right', -1002.4, 1.2],
  ])
  expect(worked.legs.has('box')).toBe(false)
})

test('a box on a frame stands clear of the floor, and the frame with its shims is told', () => {
  const worked = boxOn('plinth-frame')
  // 10 over −1001.2 is −991.2, away from it −991.
  expect(plain(worked.heights.values[0]?.height)).toBe(-991)
  expect(worked.shims.get('box')?.map(({ height }) => plain(height))).toEqual([10.2, 11.4, 10.2, 11.4])
})

test('two worktops: the thicker one is the worktop height', () => {
  const thin = { id: 'thin', over: ['base-2'], thickness: sure(20) }
  const kitchen = workThrough(
    rowKitchen({ units: TWO_BASES, worktops: [{ ...WORKTOP, over: ['base-1'] }, thin] }),
  )
  expect(kitchen.worked.heights.conflicts).toEqual([])
  expect(heightIn(kitchen, 'worktop-top')).toBe(-88)
})

test('an assumed size that sets an end leaves the height assumed', () => {
  const assumedMin = {
    min: { value: 130, assumed: true, because: 'a guess' },
    max: sure(180),
    delivered: sure(150),
  }
  const units = (legs: object) => [baseUnit('base-1', { left: atLeft(0) }, { legs })]
  const kitchen = workThrough(rowKitchen({ units: units(assumedMin) }))
  expect(valueOf(kitchen, 'base-underside').height.state).toBe('assumed')
  expect(valueOf(kitchen, 'base-top').height.state).toBe('assumed')
})

test('what is asked and warned of outside the readings', () => {
  const kitchen = workThrough(
    rowKitchen({ units: [baseUnit('far', { left: atLeft(0) }, { standOff: sure(600) })] }),
  )
  // Front feet at 600 + 500 = 1100 out; readings end at 700: 400 outside.
  expect(findingsOf(kitchen, 'floor-outside-readings')).toEqual(['floor-outside-readings:far'])
  expect(
    kitchen.worked.findings.find(({ rule }) => rule === 'floor-outside-readings')?.say.values,
  ).toMatchObject({
    outside: 400,
    worst: 0,
  })
  const near = workThrough(
    rowKitchen({ units: [baseUnit('near', { left: atLeft(0) }, { standOff: sure(500) })] }),
  )
  expect(findingsOf(near, 'floor-outside-readings')).toEqual([])
})

test('a wish that leaves no unit the room to hook on yields', () => {
  const kitchen = workThrough(
    rowKitchen({
      units: [wallUnit('wall-1', { left: atLeft(0) }), wallUnit('wall-2', { rightOf: 'wall-1' })],
      ceiling: ceilingAt(1100),
      ...wishes(wish('w', 'wall-top', { min: { up: sure(1080) } })),
    }),
  )
  // Hooking on allows 1065.
  expect(kitchen.worked.heights.conflicts).toEqual([{ demands: ['hook-on:wall-1', 'wish:w'], by: 15 }])
  expect(kitchen.worked.heights.unmet).toEqual(['wish:w'])
})

test('one unit that does not hook on where the others do leaves the wish, and is stopped', () => {
  const kitchen = workThrough(
    rowKitchen({
      units: [
        wallUnit('wall-1', { left: atLeft(0) }),
        wallUnit('wall-2', { rightOf: 'wall-1' }, { hanging: { hookLift: sure(5) } }),
      ],
      ceiling: ceilingAt(1100),
      ...wishes(wish('w', 'wall-top', { min: { up: sure(1080) } })),
    }),
  )
  // The first may end at 1065, the second at 1085; both end where wished, and over the first there is too little.
  expect(kitchen.worked.heights.conflicts).toEqual([{ demands: ['hook-on:wall-1', 'wish:w'], by: 15 }])
  expect(kitchen.worked.heights.unmet).toEqual(['hook-on:wall-1'])
  expect(findingsOf(kitchen, 'cannot-hook-on')).toEqual(['cannot-hook-on:wall-1'])
})
