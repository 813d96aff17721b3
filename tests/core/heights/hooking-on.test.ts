import { expect, test } from 'vitest'
import { nothingAchieved } from '../../../src/core/daylog/achieved'
import { known } from '../../../src/core/figure'
import { woundDownToHookOn } from '../../../src/core/heights/hooking-on'
import { ceilingAt, rowKitchen, wallUnit } from '../../support/row-kitchen'
import { atLeft, sure, workThrough } from '../../support/surveyed'

/** One wall unit hung at 345, its top at 1065, its hook lift 25; 10 are kept for fingers. */
function hungUnder(ceiling: number, down: number) {
  const hanging = { hookLift: sure(25), down: sure(down) }
  const kitchen = rowKitchen({
    units: [wallUnit('wall-1', { left: atLeft(0) }, { hanging })],
    ceiling: ceilingAt(ceiling),
  })
  const undersides = new Map([['wall-1', known(345, 0, 'mm', ['log.1'])]])
  const { worked } = workThrough(kitchen, { ...nothingAchieved, undersides })
  const hookOn = worked.hookOn.get('wall-1') ?? null
  const unit = kitchen.units[0] as (typeof kitchen.units)[number]
  return { hookOn, down: woundDownToHookOn(unit, hookOn), findings: worked.findings.map(({ id }) => id) }
}

test('with room enough it goes on as it is', () => {
  const { hookOn, down } = hungUnder(1100, 8)
  expect(hookOn).toMatchObject({ needed: { value: 35 }, there: { value: 35 }, fits: 'yes' })
  expect(down).toBeNull()
})

test('with too little it goes on with its height screws wound right down', () => {
  // 27 over its top: 35 − 8 are just there.
  const { hookOn, down, findings } = hungUnder(1092, 8)
  expect(hookOn).toMatchObject({ needed: { value: 35 }, there: { value: 27 }, fits: 'yes' })
  expect(down).toMatchObject({ value: 8 })
  expect(findings).not.toContain('cannot-hook-on:wall-1')
})

test('and not where winding down is still not enough', () => {
  const { hookOn, down, findings } = hungUnder(1091, 8)
  expect(hookOn?.fits).toBe('no')
  expect(down).toBeNull()
  expect(findings).toContain('cannot-hook-on:wall-1')
})
