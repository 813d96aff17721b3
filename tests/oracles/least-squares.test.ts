/** Planes through readings, against a least-squares solver from elsewhere (ml-matrix, by singular values). */
import { Matrix, SVD } from 'ml-matrix'
import { expect, test } from 'vitest'
import { outOfPlane } from '../../src/core/geometry/out-of-plane'
import { fitPlane, heightOn, worstOff } from '../../src/core/geometry/plane'
import { randomFrom } from '../support/prng'

const CASES = 500
const WITHIN = 1e-6

interface Sample {
  readonly at: { readonly x: number; readonly y: number }
  readonly z: number
}

/** A floor of 3 to 12 readings over a room of up to 6 by 4 m, falling up to 20 mm a metre, each off by up to 3 mm. */
function floorOf(seed: number): readonly Sample[] {
  const random = randomFrom(seed)
  const [fallX, fallY] = [random.next() * 0.04 - 0.02, random.next() * 0.04 - 0.02]
  return Array.from({ length: random.int(3, 12) }, () => {
    const at = { x: random.next() * 6000, y: -random.next() * 4000 }
    return { at, z: -1000 + fallX * at.x + fallY * at.y + random.next() * 6 - 3 }
  })
}

/** The plane as the solver has it: z = p + q·x + r·y, in metres so that the sums are well scaled. */
function solved(samples: readonly Sample[]): (x: number, y: number) => number {
  const rows = new Matrix(samples.map(({ at }) => [1, at.x / 1000, at.y / 1000]))
  const answer = new SVD(rows, { autoTranspose: true }).solve(Matrix.columnVector(samples.map(({ z }) => z)))
  const [p, q, r] = answer.to1DArray() as [number, number, number]
  return (x, y) => p + (q * x) / 1000 + (r * y) / 1000
}

test(`${CASES} floors: the plane, and the worst reading off it`, () => {
  let worst = 0
  for (let seed = 0; seed < CASES; seed++) {
    const samples = floorOf(seed)
    const plane = fitPlane(samples)
    if (plane === null) throw new Error(`seed ${seed} has no plane`)
    const theirs = solved(samples)
    const places = [...samples.map(({ at }) => at), { x: 0, y: 0 }, { x: 6000, y: -4000 }]
    for (const at of places) worst = Math.max(worst, Math.abs(heightOn(plane, at) - theirs(at.x, at.y)))
    const off = Math.max(...samples.map(({ at, z }) => Math.abs(z - theirs(at.x, at.y))))
    worst = Math.max(worst, Math.abs(worstOff(plane, samples) - off))
  }
  console.log(`least squares: ${CASES} floors, worst difference ${worst.toExponential(1)} mm`)
  expect(worst).toBeLessThan(WITHIN)
})

test(`${CASES} floors: what the other readings would have at the place of one`, () => {
  let told = 0
  for (let seed = 0; seed < CASES; seed++) {
    const samples = floorOf(seed + 10_000)
    const ours = outOfPlane(samples, 0)
    const [one, ...others] = samples as [Sample, ...Sample[]]
    expect(ours === null, `seed ${seed}`).toBe(others.length < 4)
    if (ours === null) continue
    told++
    expect(Math.abs(ours.expected - solved(others)(one.at.x, one.at.y)), `seed ${seed}`).toBeLessThan(WITHIN)
  }
  expect(told).toBeGreaterThan(CASES / 2)
})
