/** Where a tall is laid and stood up is in its step, and not only in the picture: before its own place it may hit the ceiling. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { workThrough } from '../../../src/core/plan/entry'
import type { Plan } from '../../../src/core/plan/types'
import { say } from '../../../src/core/words/say'
import { ROOT } from '../../support/root'

function planOf(file: string): Plan {
  const outcome = workThrough(JSON.parse(readFileSync(join(ROOT, file), 'utf8')))
  if (outcome.kind !== 'plan') throw new Error(`${file} gives no plan`)
  return outcome.plan
}

const doesAt = (plan: Plan, id: string): string =>
  plan.operations
    .find((o) => o.id === id)
    ?.does.map((m) => say(m))
    .join(' ') ?? ''

// Its height of 1 970 and 10 to spare lie to the right of it; its front is 560 out, and 100 more are kept before it.
test('to the side of its place, where that is where the floor is', () => {
  expect(doesAt(planOf('scenes/l-shape.dryrun.json'), 'stand-up:tall-1')).toContain(
    'stands 1\u202f980 mm to the right of its place and 660 mm further out from the wall.',
  )
})

// Under the sloping ceiling of this kitchen the second tall goes up only further left; the first straight out of its place.
test('elsewhere for the ceiling, and that it can hurt someone', () => {
  const plan = planOf('tests/adversarial/kitchens/10-sloping-ceiling-tall.dryrun.json')
  expect(doesAt(plan, 'stand-up:tall-2')).toContain('stands 1\u202f800 mm to the left of its place')
  expect(doesAt(plan, 'stand-up:tall-1')).toContain(
    'stands straight in front of its place, 2\u202f150 mm further out',
  )
  expect(plan.findings.find((f) => f.id === 'stand-up-elsewhere:tall-2')?.dangerous).toBe(true)
})
