import { describe, expect, test } from 'vitest'
import { type Figure, hasValue, known, unknown } from '../../../src/core/figure'
import {
  diagonalOf,
  type LegsWhileTilting,
  leastWithLegsOn,
  legsInThePlan,
  type StandUpInput,
  standUpNeed,
  standUpOver,
  standUpPlan,
  steepestAngle,
  tallestUnder,
} from '../../../src/core/placing/stand-up'
import { placingWords } from '../../../src/core/words/en/placing'

const mm = (value: number, id = 'x', pm = 0): Figure => known(value, pm, 'mm', [id])
const valueOf = (figure: Figure): number => (hasValue(figure) ? figure.value : Number.NaN)
const tall = (
  height: number,
  depth: number,
  ceiling: number,
  more: Partial<StandUpInput> = {},
): StandUpInput => ({
  height: mm(height, 'unit.height'),
  depth: mm(depth, 'unit.depth'),
  width: mm(600, 'unit.width'),
  ceiling: mm(ceiling, 'ceiling'),
  legs: null,
  ...more,
})
const legs = (shortest: number, inset: number, maySwing: boolean | null): LegsWhileTilting => ({
  shortest: mm(shortest, 'legs.min'),
  inset: { back: mm(inset), front: mm(inset), left: mm(inset), right: mm(inset) },
  maySwing,
})

describe('diagonals, to 0.1 mm (methods G.1)', () => {
  test.each([
    [2000, 560, 2076.9],
    [2100, 580, 2178.6],
    [2130, 580, 2207.6],
    [2150, 600, 2232.2],
    [2150, 370, 2181.6],
    [2240, 600, 2319.0],
    [2260, 560, 2328.3],
    [2300, 600, 2377.0],
    [2330, 580, 2401.1],
    [2340, 600, 2415.7],
    [2400, 600, 2473.9],
    [1970, 560, 2048.0],
    [2150, 300, 2170.8],
    [2150, 580, 2226.9],
  ])('%d × %d needs %d', (height, side, diagonal) => {
    expect(diagonalOf(height, side)).toBeGreaterThan(diagonal - 0.06)
    expect(diagonalOf(height, side)).toBeLessThan(diagonal + 0.06)
    const need = standUpNeed(tall(height, side, 2400), 'back', 'none')
    expect(valueOf(need.diagonal)).toBeCloseTo(diagonal, 0)
    expect(valueOf(need.needed)).toBeCloseTo(diagonalOf(height, side) + 20 + 10, 3)
  })

  test.each([
    [2400, 600, 2323.8],
    [2400, 560, 2333.8],
    [2350, 580, 2277.3],
    [2300, 560, 2230.8],
  ])('under %d, over %d: the tallest is %d', (ceiling, side, height) => {
    expect(Math.abs((tallestUnder(ceiling, side) ?? 0) - height)).toBeLessThan(0.06)
    expect(diagonalOf(tallestUnder(ceiling, side) ?? 0, side)).toBeCloseTo(ceiling, 9)
  })
  test('a side wider than the ceiling is high leaves nothing', () => {
    expect(tallestUnder(500, 600)).toBeUndefined()
  })
  test('published in inches: 21.9 × 17.35 has a diagonal of 27.94', () => {
    expect(diagonalOf(21.9, 17.35)).toBeCloseTo(27.94, 2)
    expect(diagonalOf(79, 29)).toBeCloseTo(84.15, 1)
  })
  test('the corner is highest at 74.41° for 2150 × 600', () => {
    expect(steepestAngle(2150, 600)).toBeCloseTo(74.41, 2)
  })
  test('2330 × 580 fails under 2400 by 1.1, blocks and hands apart', () => {
    expect(diagonalOf(2330, 580) - 2400).toBeCloseTo(1.1, 1)
  })
})

describe('does it fit', () => {
  const needed = diagonalOf(2150, 580) + 30
  test.each([
    ['just', Math.ceil(needed), 'yes'],
    ['just not', Math.floor(needed), 'no'],
  ])('%s', (_, ceiling, fits) => {
    expect(standUpNeed(tall(2150, 580, ceiling), 'back', 'none').fits).toBe(fits)
  })
  test('within the precision of the readings nobody can say', () => {
    const input = tall(2150, 580, 0, { ceiling: mm(Math.ceil(needed) + 2, 'ceiling', 5) })
    expect(standUpPlan(input).plan.fits).toBe('not-known')
    expect(standUpPlan({ ...input, ceiling: mm(2300, 'ceiling', 5) }).plan.fits).toBe('yes')
    expect(standUpPlan({ ...input, ceiling: mm(2200, 'ceiling', 5) }).plan.fits).toBe('no')
  })
  test('an unknown ceiling, or height, is not known; the figure says what is missing', () => {
    const noCeiling = standUpPlan(tall(2150, 580, 0, { ceiling: unknown('mm', ['ceiling']) }))
    expect(noCeiling.plan.fits).toBe('not-known')
    expect(valueOf(noCeiling.plan.needed)).toBeCloseTo(needed, 3)
    const noHeight = standUpPlan(tall(0, 580, 2400, { height: unknown('mm', ['unit.height']) }))
    expect(noHeight.plan.needed).toMatchObject({ state: 'unknown', missing: ['unit.height'] })
  })
  test('the figure cites the height and the side it is tilted over', () => {
    expect(standUpPlan(tall(2150, 580, 2400)).plan.needed.from).toEqual(['unit.depth', 'unit.height'])
    const sideways = standUpPlan(tall(2150, 700, 2280, { width: mm(300, 'unit.width') }))
    expect(sideways.plan.needed.from).toEqual(['unit.height', 'unit.width'])
  })
})

describe('which side', () => {
  test('over the back where it fits, even when a narrower side would need less', () => {
    const choice = standUpPlan(tall(2150, 580, 2400, { width: mm(300) }))
    expect(choice.plan).toMatchObject({ over: 'back', pivot: 'carcass-edge', fits: 'yes' })
    expect(choice.sides).toEqual(['back', 'left', 'right', 'front'])
  })
  test('over the narrow side where only that fits', () => {
    const choice = standUpPlan(tall(2150, 580, 2210, { width: mm(300) }))
    expect(choice.plan).toMatchObject({ over: 'left', fits: 'yes' })
    expect(valueOf(choice.plan.needed)).toBeCloseTo(2170.8 + 30, 1)
    expect(choice.sides).toEqual(['left', 'right'])
  })
  test('none fits: the one that needs least, and it says no', () => {
    const choice = standUpPlan(tall(2150, 580, 2100, { width: mm(300) }))
    expect(choice.plan).toMatchObject({ over: 'left', fits: 'no' })
    expect(choice.sides).toEqual([])
    expect(choice.say.key).toBe('placing.stand-up.no')
  })
  test('another side, when the floor decides', () => {
    const choice = standUpPlan(tall(2150, 580, 2400, { width: mm(300) }))
    const right = standUpOver(choice, 'right')
    expect(right).toMatchObject({ over: 'right', pivot: 'carcass-edge', fits: 'yes' })
    expect(valueOf(right.needed)).toBeCloseTo(2200.8, 1)
  })
})

describe('legs', () => {
  // By hand: 2150 × 580 × 600 wide. Legs 100 wound in ask for blocks of 110: over the back √(2150² + 580²) = 2226.9, and
  // 110 + 10 make 2346.9; over the 600 side √(2150² + 600²) = 2232.2 + 120 = 2352.2. Without legs 2256.9 and 2262.2.
  test.each([false, null])(
    'nobody said it may swing (%s): legs wound in, over blocks 10 higher',
    (maySwing) => {
      const choice = standUpPlan(tall(2150, 580, 2400, { legs: legs(100, 60, maySwing) }))
      expect(choice.plan).toMatchObject({ over: 'back', pivot: 'carcass-edge', fits: 'yes' })
      expect(choice.legs).toBe('wound-in')
      expect(valueOf(choice.plan.blocks)).toBe(110)
      expect(valueOf(choice.plan.needed)).toBeCloseTo(2346.9, 1)
      expect(choice.plan.needed.from).toEqual(['legs.min', 'unit.depth', 'unit.height'])
      expect(valueOf(standUpOver(choice, 'left').needed)).toBeCloseTo(2352.2, 1)
    },
  )
  test('no height for such blocks: legs off, usual blocks', () => {
    const choice = standUpPlan(tall(2150, 580, 2340, { legs: legs(100, 60, null) }))
    expect(choice.plan).toMatchObject({ over: 'back', pivot: 'carcass-edge', fits: 'yes' })
    expect(choice.legs).toBe('off')
    expect(valueOf(choice.plan.blocks)).toBe(20)
    expect(valueOf(choice.plan.needed)).toBeCloseTo(2256.9, 1)
  })
  test('legs that would lose it a side come off too: 2350 is enough over the back, not over the sides', () => {
    const choice = standUpPlan(tall(2150, 580, 2350, { legs: legs(100, 60, null) }))
    expect(choice.legs).toBe('off')
    expect(choice.sides).toEqual(['back', 'front', 'left', 'right'])
  })
  test('legs nobody has measured come off; what fits no way is asked for the least', () => {
    const unmeasured = { ...legs(0, 60, null), shortest: unknown('mm', ['legs.min']) }
    expect(standUpPlan(tall(2150, 580, 2400, { legs: unmeasured })).legs).toBe('off')
    const low = standUpPlan(tall(2150, 580, 2100, { legs: legs(100, 60, null) }))
    expect(low.plan.fits).toBe('no')
    expect(valueOf(low.plan.needed)).toBeCloseTo(2256.9, 1)
  })
  test('least height with legs on: blocks no higher than they are, over the side that needs least', () => {
    // 2226.9 over the back, 100 of blocks and 10 for hands; legs of 8 are shorter than the usual blocks of 20.
    const least = (shortest: number, maySwing: boolean | null = null) =>
      leastWithLegsOn(tall(2150, 580, 2400, { legs: legs(shortest, 60, maySwing) }))
    expect(valueOf(least(100) ?? mm(0))).toBeCloseTo(2336.9, 1)
    expect(valueOf(least(8) ?? mm(0))).toBeCloseTo(2256.9, 1)
    expect(least(100, true)).toBeNull()
    expect(leastWithLegsOn(tall(2150, 580, 2400))).toBeNull()
  })
  test('short legs and none', () => {
    const short = standUpPlan(tall(2150, 580, 2400, { legs: legs(8, 60, null) }))
    expect([short.legs, valueOf(short.plan.blocks)]).toEqual(['wound-in', 20])
    expect(standUpPlan(tall(2150, 580, 2400)).legs).toBe('none')
  })
  test('the plan alone tells what becomes of the legs', () => {
    for (const [ceiling, shortest, maySwing] of [
      [2400, 100, null],
      [2340, 100, null],
      [2400, 100, true],
    ] as const) {
      const choice = standUpPlan(tall(2150, 580, ceiling, { legs: legs(shortest, 60, maySwing) }))
      expect(legsInThePlan(mm(shortest), choice.plan)).toBe(choice.legs)
    }
    expect(legsInThePlan(null, standUpPlan(tall(2150, 580, 2400)).plan)).toBe('none')
  })
  test('on its feet where the maker lets it: the leg counts, the blocks do not', () => {
    const choice = standUpPlan(tall(2150, 580, 2400, { legs: legs(100, 60, true) }))
    expect(choice.plan).toMatchObject({ over: 'back', pivot: 'feet', fits: 'yes' })
    expect(valueOf(choice.plan.blocks)).toBe(0)
    expect(valueOf(choice.plan.needed)).toBeCloseTo(Math.hypot(2250, 520) + 10, 3)
    expect(choice.legs).toBe('swing')
  })
  test('feet set far in: the carcass diagonal before they touch is the more', () => {
    const need = standUpNeed(tall(2150, 580, 2400, { legs: legs(10, 200, true) }), 'back', 'swing')
    expect(valueOf(need.diagonal)).toBeCloseTo(Math.hypot(2150, 580), 3)
  })
  test('too high on its feet: back on the edge, over blocks, legs off', () => {
    const choice = standUpPlan(tall(2150, 580, 2300, { legs: legs(100, 60, true) }))
    expect(choice.plan).toMatchObject({ over: 'back', pivot: 'carcass-edge', fits: 'yes' })
    expect(choice.legs).toBe('off')
  })
  test('the leg height matters as the swept angle really gives it', () => {
    // Brute force: turn the carcass about the foot and watch the top corner.
    const [h, s, leg, inset] = [2150, 580, 100, 60]
    const tops = Array.from({ length: 9001 }, (_, i) => {
      const angle = (i / 9000) * (Math.PI / 2)
      return (h + leg) * Math.sin(angle) + (s - inset) * Math.cos(angle)
    })
    const need = standUpNeed(tall(h, s, 2400, { legs: legs(leg, inset, true) }), 'back', 'swing')
    expect(valueOf(need.diagonal)).toBeCloseTo(Math.max(...tops), 2)
  })
})

test('monotone in every dimension', () => {
  for (let h = 1900; h < 2400; h += 50) {
    for (let s = 300; s < 650; s += 50) {
      expect(diagonalOf(h + 1, s)).toBeGreaterThan(diagonalOf(h, s))
      expect(diagonalOf(h, s + 1)).toBeGreaterThan(diagonalOf(h, s))
      expect(diagonalOf(h, s)).toBe(diagonalOf(s, h))
    }
  }
})

test('everything it says has words', () => {
  for (const ceiling of [2100, 2400])
    expect(placingWords[standUpPlan(tall(2150, 580, ceiling)).say.key]).toBeDefined()
})
