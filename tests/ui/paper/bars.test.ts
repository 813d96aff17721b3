import { expect, test } from 'vitest'
import { barsFor, reachOf, roundStep } from '../../../src/ui/paper/heights/bars'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')

test('a chosen height lies within every bar that is met', () => {
  const checked = plan.heights.values.flatMap((value) => {
    const chosen = value.height.state === 'unknown' ? Number.NaN : value.height.value
    return barsFor(plan, value)
      .filter((bar) => bar.isMet)
      .map((bar) => {
        expect(chosen, bar.title).toBeGreaterThanOrEqual((bar.min ?? Number.NEGATIVE_INFINITY) - 0.01)
        expect(chosen, bar.title).toBeLessThanOrEqual((bar.max ?? Number.POSITIVE_INFINITY) + 0.01)
        return bar
      })
  })
  expect(checked.length).toBeGreaterThan(10)
})

test('legs stand together, with the feet that decide named', () => {
  const base = plan.heights.values.find((v) => v.of === 'base-underside')
  const bars = base === undefined ? [] : barsFor(plan, base)
  const legs = bars.find((b) => b.id === 'heights.leg-reach')
  expect(legs?.title).toMatch(/^Reach of the legs, at \d+ places$/)
  expect(legs?.deciding.length).toBeGreaterThan(0)
})

test('an unmet demand always stands by itself', () => {
  const [value] = plan.heights.values
  const [demand] = plan.heights.demands.filter((d) => d.because.key === 'heights.leg-reach')
  if (value === undefined || demand === undefined) throw new Error('the scene has no legs')
  const unmet = { ...plan, heights: { ...plan.heights, unmet: [demand.id] } }
  const bars = barsFor(unmet, { ...value, of: demand.to as typeof value.of })
  expect(bars.filter((b) => !b.isMet).map((b) => b.id)).toEqual([demand.id])
})

test('the scale holds the chosen height and goes in round steps', () => {
  expect(reachOf([], -858)).toEqual([-863, -853])
  expect(roundStep(60, 7)).toBe(10)
  expect(roundStep(1000, 7)).toBe(200)
})
