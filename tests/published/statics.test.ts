import { expect, test } from 'vitest'
import { known } from '../../src/core/figure'
import { pullOn, rowTensions, weightOf } from '../../src/core/fixings/pull-and-shear'
import { plain } from '../support/fixed-wall'

/** Worked examples of brackets about their lower edge: rows from the top down, lengths in mm, loads in N. */
const published = [
  {
    source: 'statics textbook, problem 5.87 (600 N = 4 kPa × 0.2 × 0.75)',
    load: 600,
    out: 100,
    rows: [{ height: 150, count: 1 }],
    top: 400,
    shearEach: 600,
    within: 0.5,
  },
  {
    source: 'machine-design textbook pp. 237-239, example 7.6',
    load: 25_000,
    out: 500,
    rows: [
      { height: 550, count: 2 },
      { height: 50, count: 2 },
    ],
    top: 11_270.5,
    shearEach: 6250,
    within: 0.05,
  },
  {
    source: 'machine-design textbook pp. 237-239, example 7.7',
    load: 50_000,
    out: 250,
    rows: [
      { height: 300, count: 2 },
      { height: 200, count: 2 },
      { height: 100, count: 2 },
    ],
    top: 13_392.9,
    shearEach: 8333.3,
    within: 0.05,
  },
  {
    source: 'own arithmetic on the same formula: one row',
    load: 600,
    out: 160,
    rows: [{ height: 640, count: 1 }],
    top: 150.0,
    shearEach: 600,
    within: 0.05,
  },
  {
    source: 'own arithmetic: an equal lower row hardly helps',
    load: 600,
    out: 160,
    rows: [
      { height: 640, count: 1 },
      { height: 60, count: 1 },
    ],
    top: 148.7,
    shearEach: 300,
    within: 0.05,
  },
] as const

test.each(published)(
  '$source: tension in the top row, shear shared',
  ({ load, out, rows, top, shearEach, within }) => {
    const count = rows.reduce((sum, row) => sum + row.count, 0)
    const tension = rowTensions(load, out, rows)[0] ?? Number.NaN
    expect(Math.abs(tension - top)).toBeLessThanOrEqual(within)
    expect(Math.abs(load / count - shearEach)).toBeLessThanOrEqual(within)
  },
)

test('5.87: the resultant at the upper fixing is 721 N', () => {
  const [pull = Number.NaN] = rowTensions(600, 0.1, [{ height: 0.15, count: 1 }])
  expect(Math.abs(Math.hypot(pull, 600) - 721)).toBeLessThanOrEqual(0.5)
})

test('7.6: the larger principal is 14 050.6 N, 401.446 mm² at 35 N/mm²', () => {
  const [pull = Number.NaN] = rowTensions(25_000, 500, [
    { height: 550, count: 2 },
    { height: 50, count: 2 },
  ])
  const principal = pull / 2 + Math.hypot(pull / 2, 6250)
  expect(Math.abs(principal - 14_050.6)).toBeLessThanOrEqual(0.05)
  expect(Math.abs(principal / 35 - 401.446)).toBeLessThanOrEqual(0.0005)
})

test('7.7: 133.93 mm² at 100 N/mm²', () => {
  const [pull = Number.NaN] = rowTensions(50_000, 250, [
    { height: 300, count: 2 },
    { height: 200, count: 2 },
    { height: 100, count: 2 },
  ])
  expect(Math.abs(pull / 100 - 133.93)).toBeLessThanOrEqual(0.005)
})

test('tensions are as the heights, and their moments about the edge come to the load’s', () => {
  const rows = [
    { height: 300, count: 2 },
    { height: 200, count: 3 },
    { height: 100, count: 1 },
  ]
  const tensions = rowTensions(1000, 120, rows)
  const moment = rows.reduce((sum, { height, count }, i) => sum + count * height * (tensions[i] ?? 0), 0)
  expect(moment).toBeCloseTo(1000 * 120, 6)
  expect((tensions[0] ?? 0) / (tensions[2] ?? 1)).toBeCloseTo(3, 9)
})

const mm = (value: number) => known(value, 0, 'mm', [])
const kg = (value: number) => known(value, 0, 'kg', [])

test('pull falls as one over the height, and grows with mass and with how far out it stands', () => {
  const pull = (mass: number, out: number, height: number) =>
    Number(plain(pullOn(weightOf(kg(mass)), mm(out), mm(height))))
  const base = pull(60, 150, 600)
  expect(base).toBeCloseTo(147.15, 3)
  expect(pull(60, 150, 300)).toBeCloseTo(2 * base, 2)
  expect(pull(60, 75, 600)).toBeCloseTo(base / 2, 2)
  expect(pull(120, 150, 600)).toBeCloseTo(2 * base, 2)
})
