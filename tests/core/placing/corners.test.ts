import { expect, test } from 'vitest'
import { pieceGap } from '../../../src/core/placing/corners'

const radians = (angle: number) => (angle * Math.PI) / 180

/** The trade's own: f from where the two fronts meet, travel s, fronts d and D out from their walls. */
function tradesGap(f: number, s: number, t: number): number {
  return f * Math.sin(radians(t)) + s * Math.sin(radians(t - 90))
}

test.each([
  [90, 60, 0],
  [90, 60, 450],
  [80, 150, 0],
  [80, 150, 450],
  [100, 60, 0],
  [135, 90, 450],
])(
  'at a corner of %s°, a drawer %s from where the fronts meet and %s out stands as the trade’s formula says',
  (t, f, s) => {
    const d = 579
    // The fronts of both runs, d out, cross at d / tan(t/2) from the corner.
    const x = d / Math.tan(radians(t / 2)) + f
    const at = [x, d + s] as const
    expect(pieceGap([at, at], t, -5000, 5000, d)).toBeCloseTo(tradesGap(f, s, t), 6)
  },
)

test('only what is before a block counts, and the tightest place before it', () => {
  // Square corner: along the other wall is y, out from it x. A slanting piece from (100, 0) to (50, 500).
  const piece = [
    [100, 0],
    [50, 500],
  ] as const
  expect(pieceGap(piece, 90, 0, 250, 20)).toBeCloseTo(55, 9)
  expect(pieceGap(piece, 90, 0, 900, 20)).toBeCloseTo(30, 9)
  expect(pieceGap(piece, 90, 600, 900, 20)).toBe(Number.POSITIVE_INFINITY)
})

/** A second way: walk along the piece, measure each place from the other wall by a rotation of the plan. */
test.each([70, 90, 118])('the same by walking along it, corner of %s°', (t) => {
  const [from, to, reach] = [300, 620, 40]
  const piece = [
    [410, 80],
    [360, 700],
  ] as const
  let least = Number.POSITIVE_INFINITY
  for (let i = 0; i <= 20000; i++) {
    const share = i / 20000
    const x = piece[0][0] + (piece[1][0] - piece[0][0]) * share
    const y = piece[0][1] + (piece[1][1] - piece[0][1]) * share
    const [r, bearing] = [Math.hypot(x, y), Math.atan2(y, x)]
    const along = r * Math.cos(radians(t) - bearing)
    if (along >= from && along <= to) least = Math.min(least, r * Math.sin(radians(t) - bearing) - reach)
  }
  expect(pieceGap(piece, t, from, to, reach)).toBeCloseTo(least, 1)
})
