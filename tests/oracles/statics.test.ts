/** Pull and shares, each worked a second way: by springs and a matrix, and by adding up every millimetre. */
import { Matrix, solve } from 'ml-matrix'
import { expect, test } from 'vitest'
import { known } from '../../src/core/figure'
import { rowTensions } from '../../src/core/fixings/pull-and-shear'
import { tributaryLengths, worstShare } from '../../src/core/fixings/tributary'
import { randomFrom } from '../support/prng'

const CASES = 500

/**
 * The unit as a stiff board held to the wall by equal springs at its fixings and pressed against a very stiff stop at its
 * lower edge: two unknowns, how far it moves off the wall and how far it turns, from equilibrium of forces and moments.
 */
function bySprings(
  load: number,
  out: number,
  rows: readonly { height: number; count: number }[],
): readonly number[] {
  const [spring, stop] = [1, 1e9]
  const sum = (power: number) =>
    rows.reduce((all, { height, count }) => all + spring * count * height ** power, 0)
  const stiffness = new Matrix([
    [sum(0) + stop, sum(1)],
    [sum(1), sum(2)],
  ])
  const [moved, turned] = solve(stiffness, Matrix.columnVector([0, load * out])).to1DArray() as [
    number,
    number,
  ]
  return rows.map(({ height }) => spring * (moved + turned * height))
}

test(`${CASES} hung units: the pull of every row, against springs on a stiff board`, () => {
  let worst = 0
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed)
    const rows = Array.from({ length: random.int(1, 4) }, () => ({
      height: random.step(20, 900, 1),
      count: random.int(1, 4),
    }))
    const [load, out] = [random.step(50, 2000, 1), random.step(50, 400, 1)]
    const theirs = bySprings(load, out, rows)
    const ours = rowTensions(load, out, rows)
    for (const [i, pull] of ours.entries())
      worst = Math.max(worst, Math.abs(pull / (theirs[i] as number) - 1))
    // And the moments about the lower edge balance.
    const held = rows.reduce((sum, { height, count }, i) => sum + count * height * (ours[i] as number), 0)
    expect(held / (load * out), `seed ${seed}`).toBeCloseTo(1, 9)
  }
  console.log(`statics: ${CASES} units, worst difference ${(worst * 100).toExponential(1)} %`)
  expect(worst).toBeLessThan(1e-5)
})

const length = (mm: number) => known(mm, 0, 'mm', [], { kind: 'survey' })

test(`${CASES} rails: each fixing carries the rail that is nearest to it, millimetre by millimetre`, () => {
  for (let seed = 0; seed < CASES; seed++) {
    const random = randomFrom(seed + 5000)
    const end = random.int(300, 3000)
    const places = [
      ...new Set(Array.from({ length: random.int(1, 8) }, () => random.int(20, end - 20))),
    ].sort((a, b) => a - b)
    const counted = places.map(() => 0)
    for (let at = 0.5; at < end; at++) {
      const apart = places.map((p) => Math.abs(p - at))
      const nearest = apart.indexOf(Math.min(...apart))
      counted[nearest] = (counted[nearest] as number) + 1
    }
    const ours = tributaryLengths(0, end, places)
    for (const [i, share] of ours.entries()) {
      expect(Math.abs(share - (counted[i] as number)), `seed ${seed}, fixing ${i}`).toBeLessThanOrEqual(1)
    }
    // Reactions add up to the load, and the worst of all of them is what is said of a unit as long as the rail.
    expect(ours.reduce((a, b) => a + b, 0)).toBeCloseTo(end, 9)
    const load = random.step(100, 1500, 1)
    const worst = worstShare({
      loads: [known(load, 0, 'N', [], { kind: 'survey' })],
      from: length(0),
      to: length(end),
      places: places.map(length),
      left: length(0),
      right: length(end),
    })
    const expected = (load * Math.max(...counted)) / end
    expect(worst.state === 'known' ? Math.abs(worst.value - expected) : Number.NaN).toBeLessThan(
      load / end + 0.01,
    )
  }
})
