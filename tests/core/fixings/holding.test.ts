import { expect, test } from 'vitest'
import { type Figure, known, unknown } from '../../../src/core/figure'
import { tributaryLengths } from '../../../src/core/fixings/tributary'
import { capacityVerdict } from '../../../src/core/fixings/verdict'
import {
  at,
  exact,
  type Json,
  kitchenOf,
  plain,
  plug,
  stud,
  studWall,
  wallFile,
  wallUnit,
  worked,
} from '../../support/fixed-wall'

const holding = (unit: Json = wallUnit, rest: Json = {}) => {
  const { fixings } = worked(wallFile({ units: [unit], rest }))
  const found = fixings.holding.get('w')
  if (found === undefined) throw new Error('nothing holds it')
  return { ...found, findings: fixings.findings }
}

// By hand: 20 kg empty, 40 kg in it: 60 × 9.81 = 588.6 N. Depth 300, no doors: centre 150 out. Holes at 1070, underside
// 400: 670 above it. Pull 588.6 × 150 / 670 = 131.776; two plates of one hole: 65.888 and 294.3 each.
test('pull and shear of a unit on two plates', () => {
  const held = holding()
  expect([held.pull, held.shear, held.pullPerFixing, held.shearPerFixing].map(plain)).toEqual([
    131.776, 588.6, 65.888, 294.3,
  ])
})

// Doors 8 kg of the 20, 18 thick: they act at 300 + 9 = 309. Centre (150 × 52 + 309 × 8) / 60 = 171.2 out.
test('doors act in front of the carcass', () => {
  const held = holding({ ...wallUnit, doors: [{ id: 'd', hinge: 'left', mass: 8 }] })
  expect(plain(held.pull)).toBe(Math.round(((588.6 * 171.2) / 670) * 1000) / 1000)
})

test('off the wall by a stand-off it pulls more', () => {
  const held = holding({ ...wallUnit, standOff: exact(30) })
  expect(plain(held.pull)).toBe(Math.round(((588.6 * 180) / 670) * 1000) / 1000)
})

test('an appliance built into it counts as what stands in it', () => {
  const rest = { appliances: [{ id: 'm', kind: 'microwave', mass: 10 }] }
  expect(plain(holding({ ...wallUnit, applianceBay: 'm' }, rest).shear)).toBe(686.7)
})

test('nobody knows what will stand in it: nothing is known, and the contents are what is missing', () => {
  const held = holding({ ...wallUnit, contents: null })
  expect(plain(held.pull)).toBe('lacks units.w.contents')
  expect(held.verdict).toBe('unknown')
  expect(held.lacking).toEqual(['units.w.contents'])
  expect(held.findings.find((f) => f.id === 'no-figure-entered:w')).toMatchObject({
    weight: 'ask',
    dangerous: true,
  })
})

// 65.888/500 + 294.3/500 = 0.72 of what was entered; against 300 each: 1.2.
test.each([
  ['500 each', { pull: 500, shear: 500 }, 'below the figure you entered'],
  ['300 each', { pull: 300, shear: 300 }, 'exceeds'],
  ['no pull entered', { pull: null, shear: 500 }, 'unknown'],
  ['no shear entered', { pull: 500, shear: null }, 'unknown'],
])('against %s: %s', (_, figures, verdict) => {
  expect(holding(wallUnit, { fixings: [{ ...plug, ...figures }] }).verdict).toBe(verdict)
})

test('what is missing of the entered figures is named', () => {
  expect(holding(wallUnit, { fixings: [{ ...plug, pull: null }] }).lacking).toEqual(['fixings.plug.pull'])
  expect(holding(wallUnit, { fixings: [] }).lacking).toEqual(['fixings'])
})

test('more than was entered is a stop', () => {
  const { findings } = holding(wallUnit, { fixings: [{ ...plug, pull: 100, shear: 100 }] })
  expect(findings.find((f) => f.id === 'capacity-exceeded:w')).toMatchObject({
    weight: 'stop',
    dangerous: true,
  })
})

// 60 kg on two hangers: 30 each.
test('more than was entered for one hanger exceeds too', () => {
  const rated = (ratedPerHanger: number) =>
    holding({ ...wallUnit, hanging: { ...(wallUnit['hanging'] as Json), ratedPerHanger } }).verdict
  expect(rated(29)).toBe('exceeds')
  expect(rated(30)).toBe('below the figure you entered')
})

// The interaction is straight: 0.6 of the pull and 0.4 of the shear is all of it.
const N = (value: number, pm = 0): Figure => known(value, pm, 'N', ['load'])
const screw = () => {
  const [fixing] = kitchenOf(wallFile({ rest: { fixings: [{ ...plug, pull: 100, shear: 100 }] } })).fixings
  if (fixing === undefined) throw new Error('no fixing')
  return fixing
}
test.each([
  [60, 40, 0, 'below the figure you entered'],
  [60, 40.1, 0, 'exceeds'],
  [100, 0, 0, 'below the figure you entered'],
  [0, 101, 0, 'exceeds'],
  [60, 38, 1, 'below the figure you entered'],
  [60, 38, 3, 'unknown'],
  [60, 45, 1, 'exceeds'],
])('pull %d and shear %d ± %d of 100 each: %s', (pull, shear, pm, verdict) => {
  expect(capacityVerdict(N(pull), N(shear, pm), screw(), null).verdict).toBe(verdict)
})

test('an entered figure of nothing is exceeded by any load', () => {
  const nothing = { ...screw(), pull: N(0) }
  expect(capacityVerdict(N(1), N(0), nothing, null).verdict).toBe('exceeds')
  expect(capacityVerdict(unknown('N', ['x']), N(0), nothing, null).verdict).toBe('unknown')
})

// A rail 0 to 1000 with fixings at 100, 400, 900: 250, 400 and 350 of it.
test('each fixing of a rail carries the length nearest to it', () => {
  expect(tributaryLengths(0, 1000, [100, 400, 900])).toEqual([250, 400, 350])
})

test('the lengths always come to the whole rail', () => {
  expect(tributaryLengths(20, 1780, [40, 333, 700, 1500]).reduce((a, b) => a + b, 0)).toBe(1760)
})

// Two units of 600, 60 kg and 90 kg full, on a rail 620 to 1780 (1160) with studs at 700, 1100, 1500:
// lengths 280, 400, 480. Loads: shear 588.6 + 882.9 = 1471.5. The first unit (600 to 1200) hangs near the first two
// fixings only (to 900, to 1300): worst 400: 1471.5 × 400 / 1160 = 507.414; the second near the last two: 480: 608.897.
test('a unit on a rail is judged by the worst fixing it hangs near, under the load of the whole rail', () => {
  const on = (id: string, left: number, contents: number): Json => ({
    ...wallUnit,
    id,
    order: { left: at(left) },
    stands: 'rail',
    contents,
  })
  const rails = [{ id: 'r', wall: 'a', units: ['w1', 'w2'], thickness: exact(5) }]
  const studs = [stud('s1', 700), stud('s2', 1100), stud('s3', 1500)]
  const { fixings } = worked(
    wallFile({
      wall: { ...studWall, studs },
      units: [on('w1', 600, 40), on('w2', 1200, 70)],
      rest: { rails },
    }),
  )
  const [first, second] = ['w1', 'w2'].map((id) => fixings.holding.get(id))
  expect(first && [first.shear, first.shearPerFixing].map(plain)).toEqual([588.6, 507.414])
  expect(second && [second.shear, second.shearPerFixing].map(plain)).toEqual([882.9, 608.897])
  const pull = (weight: number) => (weight * 150) / 670
  expect(first && Number(plain(first.pullPerFixing))).toBeCloseTo((pull(588.6 + 882.9) * 400) / 1160, 2)
})
