/** What one person is recommended to lift in North America, reckoned again by the checker. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import type { Figure } from '../../src/core/figure'
import { workThrough } from '../../src/core/plan/entry'
import type { LiftPlan, Plan } from '../../src/core/plan/types'
import { ROOT } from '../support/root'

const scene = (name: string): Record<string, unknown> =>
  JSON.parse(readFileSync(join(ROOT, 'scenes', `${name}.dryrun.json`), 'utf8')) as Record<string, unknown>

const kitchen = scene('north-american')
let plan: Plan

beforeAll(() => {
  const outcome = workThrough(kitchen)
  if (outcome.kind !== 'plan') throw new Error('no plan')
  plan = outcome.plan
}, 60_000)

const refused = (file: unknown, judged: unknown): readonly string[] =>
  checkPlan(file, judged)
    .refusals.filter((r) => r.rule === 'lift')
    .map((r) => r.what)

function withLift(unit: string, more: (lift: LiftPlan) => Partial<LiftPlan>): Plan {
  const units = plan.units.map((u) => (u.unit === unit ? { ...u, lift: { ...u.lift, ...more(u.lift) } } : u))
  return { ...plan, units }
}
const nudged = (figure: Figure): Figure =>
  figure.state === 'unknown' ? figure : { ...figure, value: figure.value + 0.1 }

test('the plan as it is made is accepted', () => {
  expect(checkPlan(kitchen, plan)).toEqual({ ok: true, refusals: [] })
})

test.each(['lifting', 'placing', 'lower'] as const)('a tenth of a kilogram more at %s is refused', (end) => {
  const spoilt = withLift('wall-1', ({ alone }) =>
    alone === undefined ? {} : { alone: { ...alone, [end]: nudged(alone[end]) } },
  )
  expect(refused(kitchen, spoilt)).toEqual(['wall-1'])
})

test('one person left with a base unit of 21 kg is refused', () => {
  expect(
    refused(
      kitchen,
      withLift('base-1', () => ({ people: 1, aid: 'none' })),
    ),
  ).toEqual(['base-1'])
})

test('the weight left out is refused', () => {
  const units = plan.units.map((u) => {
    const { alone: _, ...lift } = u.lift
    return u.unit === 'base-1' ? { ...u, lift } : u
  })
  expect(refused(kitchen, { ...plan, units })).toEqual(['base-1'])
})

test('shown in Britain, where nothing recommends it, it is refused', () => {
  expect(refused({ ...kitchen, region: 'uk' }, plan)).toContain('base-1')
})
