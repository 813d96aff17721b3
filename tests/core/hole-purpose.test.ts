import { expect, test } from 'vitest'
import { readablePlan } from '../../src/core/plan/readable'
import { holePurpose } from '../../src/core/words/hole-purpose'
import { planOf } from '../support/kitchens'

test('a hole through the unit’s own rail is for that rail, whatever it was planned as', () => {
  expect(holePurpose({ purpose: 'base-bracket' })).toBe('base bracket')
  expect(holePurpose({ purpose: 'base-bracket', throughRail: true })).toBe('back rail')
})

test('the command line says of each hole what the sheet of its wall says', () => {
  for (const name of ['l-shape', 'galley', 'north-american'] as const) {
    const plan = planOf(name)
    const text = readablePlan(plan)
    expect(plan.holes.length).toBeGreaterThan(0)
    for (const hole of plan.holes) {
      const line = text.split('\n').find((l) => l.includes(`[${hole.id}]`) && /^ *(Hole|No hole)/.test(l))
      expect(line, hole.id).toContain(`: `)
      expect(line, hole.id).toContain(`, ${holePurpose(hole)} of `)
    }
  }
})
