import { expect, test } from 'vitest'
import { type Figure, hasValue, known } from '../../../src/core/figure'
import type { CornerSide } from '../../../src/core/placing/corners'
import { bareWall, type HungLeaf, leafGap, meetsWallAt } from '../../../src/core/placing/doors-at-corners'

const mm = (value: number, pm = 0) => known(value, pm, 'mm', [])
const degrees = (value: number) => known(value, 0, 'deg', [])
const side = (angle: number): CornerSide => ({
  own: 'a',
  other: 'b',
  end: 'left',
  otherEnd: 'right',
  angle: degrees(angle),
  ownLength: mm(4000),
  otherLength: mm(3000),
})
const leaf = (edge: number, handle: number): HungLeaf => ({
  edge: mm(edge),
  face: mm(579),
  width: mm(597),
  handle: mm(handle),
})
const value = (figure: Figure | null) => (figure !== null && hasValue(figure) ? figure.value : Number.NaN)

test('square, at a square corner: what the filler leaves of the handle', () => {
  expect(value(leafGap(side(90), leaf(41.5, 30), bareWall(side(90)), degrees(90)))).toBeCloseTo(11.5, 3)
  expect(value(leafGap(side(90), leaf(41.5, 0), bareWall(side(90)), degrees(90)))).toBeCloseTo(41.5, 3)
})

test('past square, the free edge leans to the wall', () => {
  // Of the handle, which ends 20 in from the free edge: 41.5 − 577·sin 20° − 30·cos 20° = 41.5 − 197.3 − 28.2
  expect(value(leafGap(side(90), leaf(41.5, 30), bareWall(side(90)), degrees(110)))).toBeCloseTo(-184.04, 1)
})

/** A second way: every tenth of a degree, every tenth of leaf and handle, measured from the wall by rotation. */
function firstTouch(edge: number, handle: number, t: number): number {
  const rad = (a: number) => (a * Math.PI) / 180
  for (let tenth = 0; tenth <= 1800; tenth++) {
    const a = rad(tenth / 10)
    for (let i = 0; i <= 10; i++) {
      const spots = [
        [(597 * i) / 10, 0],
        [537 + 4 * i, handle],
      ] as const
      for (const [along, ahead] of spots) {
        const x = edge + along * Math.cos(a) - ahead * Math.sin(a)
        const y = 579 + along * Math.sin(a) + ahead * Math.cos(a)
        if (Math.hypot(x, y) * Math.sin(rad(t) - Math.atan2(y, x)) < 0) return tenth / 10
      }
    }
  }
  return 180
}

test.each([
  [41.5, 30, 90],
  [41.5, 60, 90],
  [20, 0, 90],
  [120, 40, 85],
  [60, 40, 100],
])(
  'the angle at which a leaf %s from the corner with a handle of %s meets a wall at %s°',
  (edge, handle, t) => {
    const met = value(meetsWallAt(side(t), leaf(edge, handle)))
    expect(Math.abs(met - firstTouch(edge, handle, t))).toBeLessThan(0.15)
  },
)

test('a door that is a leaf’s width away never meets the wall', () => {
  expect(value(meetsWallAt(side(90), leaf(700, 30)))).toBe(180)
})

test('its angle is known no better than the filler is', () => {
  const met = meetsWallAt(side(90), { ...leaf(41.5, 30), edge: mm(41.5, 2) })
  // 2 mm at 597 from the hinge are 0.19°.
  expect(hasValue(met) && met.pm).toBeCloseTo(0.19, 1)
})
