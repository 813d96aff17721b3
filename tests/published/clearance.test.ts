/**
 * Clearances: what stands up under a ceiling and what goes round a corner.
 *
 * Sources: tilting a box from lying to standing needs √(h² + s²), and no motion needs less for the smallest side s
 * (Mathematics Stack Exchange 339221); the ladder round a corner L = (a^⅔ + b^⅔)^(3/2) (any calculus textbook; unit
 * width 2√2). The vectors for a rectangle were worked out by hand from the formula and confirmed by an independent
 * search with clipped polygons over 1 800 angles, to 0.1 mm, before this code was written.
 */
import { describe, expect, test } from 'vitest'
import { longestRoundCorner } from '../../src/core/placing/round-a-corner'
import { randomFrom } from '../support/prng'

describe('round a corner', () => {
  test.each([
    [1, 1, 2.8284],
    [2, 4, 8.3239],
    [3, 4, 9.8657],
    [5, 3, 11.1941],
  ])('a ladder from %d into %d: %d', (a, b, longest) => {
    expect(longestRoundCorner(a, b, 0)).toBeCloseTo(longest, 3)
    expect((a ** (2 / 3) + b ** (2 / 3)) ** 1.5).toBeCloseTo(longest, 3)
  })

  test.each([
    [900, 900, 300, 1945.6],
    [900, 900, 560, 1425.6],
    [900, 900, 600, 1345.6],
    [1000, 900, 600, 1483.9],
    [1200, 900, 600, 1747.4],
    [1200, 1200, 600, 2194.1],
    [850, 850, 370, 1664.2],
  ])('from %d into %d, a box %d wide: %d mm', (a, b, w, longest) => {
    expect(longestRoundCorner(a, b, w)).toBeCloseTo(longest, 0)
    expect(Math.abs((longestRoundCorner(a, b, w) ?? 0) - longest)).toBeLessThan(0.1)
  })

  test('equal corridors: 2(√2·a − w)', () => {
    expect(longestRoundCorner(900, 900, 600)).toBeCloseTo(2 * (Math.SQRT2 * 900 - 600), 4)
  })

  test('wider than a corridor does not enter', () => {
    expect(longestRoundCorner(900, 700, 701)).toBeNull()
  })

  test('a wider corridor never shortens it, a wider box never lengthens it, and the two ways are alike', () => {
    const random = randomFrom(7)
    for (let i = 0; i < 500; i++) {
      const [a, b] = [600 + random.next() * 1000, 600 + random.next() * 1000]
      const w = random.next() * Math.min(a, b) * 0.9
      const here = longestRoundCorner(a, b, w) as number
      expect(longestRoundCorner(a + 20, b, w) as number).toBeGreaterThanOrEqual(here - 1e-6)
      expect(longestRoundCorner(a, b, w + 20 > Math.min(a, b) ? w : w + 20) as number).toBeLessThanOrEqual(
        here + 1e-6,
      )
      expect(longestRoundCorner(b, a, w) as number).toBeCloseTo(here, 4)
    }
  })
})
