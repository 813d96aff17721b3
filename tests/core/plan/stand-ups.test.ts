import { expect, test } from 'vitest'
import { workThrough } from '../../../src/core/plan/entry'
import type { Plan } from '../../../src/core/plan/types'
import { kitchenOf } from '../../support/adversarial-sheets'

/**
 * Two talls of 2100 × 600 × 600 on a 3 m wall, under a ceiling that falls 45 mm a metre along it, read over all the floor;
 * the far one where 2209.5 are over the floor, and 2214.03 are needed: √(2100² + 600²), 20 of blocks, 10 for hands.
 */
const file = kitchenOf('10-sloping-ceiling-tall')

type Ceiling = NonNullable<typeof file.ceiling>

function planned(ceiling: (reading: Ceiling[number]) => Ceiling[number] = (one) => one): Plan {
  const outcome = workThrough({ ...file, ceiling: (file.ceiling ?? []).map(ceiling) })
  if (outcome.kind !== 'plan') throw new Error('no plan')
  return outcome.plan
}

const told = (plan: Plan) =>
  plan.findings.filter((f) => f.rule.includes('stand-up')).map((f) => `${f.weight} ${f.id}`)

test('where its own place is too low, a tall unit is stood up further along and walked in, and that is said', () => {
  const plan = planned()
  expect(told(plan)).toEqual(['warn stand-up-elsewhere:tall-2'])
  const way = plan.units.find((u) => u.unit === 'tall-2')?.standUp
  expect(way?.fits).toBe('yes')
  const path = plan.paths.find((p) => p.unit === 'tall-2')
  const turn = path?.segments.find((s) => s.kind === 'stand-up')
  if (turn?.kind !== 'stand-up') throw new Error('it is not stood up')
  // Its right side there, and the ceiling over it by the slope: 2340 − 0.045 a millimetre.
  const right = turn.upright.x + 600
  expect(right).toBeLessThanOrEqual(2799.3)
  expect(way?.ceiling).toMatchObject({ state: 'known' })
  expect(way?.ceiling.state === 'known' && way.ceiling.value).toBeCloseTo(2340 - 0.045 * right, 2)
})

test('the finding says by how much its own place is too low, and which way to go', () => {
  const said = planned().findings.find((f) => f.rule === 'stand-up-elsewhere')
  expect(said?.say.key).toBe('stand-up-elsewhere.left')
  expect(said?.figures.map((f) => (f.state === 'unknown' ? null : f.value))).toEqual([
    2214.033, 2209.5, 4.533,
  ])
})

test('under a ceiling that is as low everywhere it cannot be stood up at all', () => {
  // 2200 over the floor everywhere: 14 short; the units themselves end under it.
  const plan = planned((one) => ({ ...one, height: { up: 1200 } }))
  expect(told(plan).filter((id) => id.startsWith('stop cannot-stand-up'))).toHaveLength(2)
})

test('with a reading open over its place, whether it can be stood up there is not known', () => {
  const plan = planned((one) => (one.id === 'ceiling-6' ? { ...one, height: {} } : one))
  expect(told(plan)).toContain('ask stand-up-not-known:tall-2')
  expect(told(plan).some((id) => id.includes('tall-1'))).toBe(false)
})

/**
 * A larder of 2230 × 600 × 580 on legs that wind in to 110: with them on it needs √(2230² + 580²) = 2304.19, 110 of blocks
 * and 10 for hands, 2424.19 known to 1.11; with them off 2334.19. Its neighbour, 430 wide, needs 2391.08 with them on.
 */
test('where there is height only with its legs off, that is said', () => {
  const larders = kitchenOf('43-over-the-narrow-side')
  const under = (up: number) => {
    const ceiling = (larders.ceiling ?? []).map((one) => ({ ...one, height: { up } }))
    const outcome = workThrough({ ...larders, ceiling })
    if (outcome.kind !== 'plan') throw new Error('no plan')
    return told(outcome.plan)
  }
  // The ceiling is read to 0.5 and the floor to 0.5: 2422.0 are too low by 2.19 ± 2.11, 2422.1 by less than they are known to.
  expect(under(1422)).toEqual(['warn stand-up-legs-off:tall-2'])
  expect(under(1422.1)).toEqual([])
})
