import { describe, expect, test } from 'vitest'
import { levelOn } from '../../../src/core/levelling/level-on'
import { lieOf } from '../../../src/core/levelling/lie'
import { levelChecks, nextStep, verdictOf } from '../../../src/core/levelling/next-step'
import { beginTrial, givenReading, ordersNow, readingOf, withTurn } from '../../../src/core/levelling/trial'
import { heightsNow, type Trial } from '../../../src/core/levelling/trial-heights'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const levelled = plan.operations.flatMap((operation) => {
  const unit = plan.units.find((u) => operation.on.includes(u.unit))
  return operation.kind === 'level' && unit !== undefined ? [{ operation, unit }] : []
})

test('every unit that is levelled is brought true from twenty readings by what is said, in turns of a quarter', () => {
  expect(levelled.length).toBeGreaterThan(8)
  for (const { operation, unit } of levelled) {
    let trial: Trial = beginTrial(operation.id, unit)
    for (let reading = 0; reading < 20; reading++) {
      trial = givenReading(trial, unit)
      // A second round takes what the quarters of the first, or a short leg, have left.
      for (let round = 0; round < 2; round++) {
        for (const { axis } of levelChecks(operation, unit)) {
          const slope = lieOf(unit, heightsNow(trial, unit))?.[axis] ?? Number.NaN
          const orders = ordersNow(trial, unit, readingOf(slope, axis, levelOn(unit, axis)?.length ?? 0))
          for (const { adjuster, turns, way } of orders) {
            if (turns.state === 'unknown') throw new Error(unit.unit)
            const made = Math.round(turns.value * 4) / 4
            trial = withTurn(trial, unit, adjuster.id, way === 'down' ? -made : made)
          }
        }
      }
      const lie = lieOf(unit, heightsNow(trial, unit))
      if (lie === null) throw new Error(unit.unit)
      for (const check of levelChecks(operation, unit)) {
        expect(verdictOf(check, lie)?.isWithin, `${unit.unit} ${check.axis}, reading ${reading}`).toBe(true)
      }
      expect(['grip', 'read-on']).toContain(nextStep(operation, unit, lie, 'along').kind)
    }
  }
})

describe('where the level lies', () => {
  test.each([
    ['base-2', 'on-top', 600],
    ['wall-2', 'inside', 250],
    ['tall-1', 'upright', 1000],
  ] as const)('%s: %s, %i mm', (id, way, length) => {
    const unit = plan.units.find((u) => u.unit === id)
    if (unit === undefined) throw new Error(id)
    const put = levelOn(unit, 'along')
    expect(put).toMatchObject({ way, length })
    const { x0, x1, z0, z1 } = put?.body ?? { x0: 0, x1: 0, z0: 0, z1: 0 }
    expect(Math.max(x1 - x0, z1 - z0)).toBeCloseTo(length, 6)
  })
})
