import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import type { Figure } from '../../src/core/figure'
import { withEdits } from '../../src/core/kitchen/edit'
import { workThrough } from '../../src/core/plan/entry'
import type { Plan, PublishedPull } from '../../src/core/plan/types'
import { ROOT } from '../support/root'

const kitchen = (edits: Parameters<typeof withEdits>[1]): unknown =>
  withEdits(JSON.parse(readFileSync(join(ROOT, 'scenes/north-american.dryrun.json'), 'utf8')), edits)
const planOf = (file: unknown): Plan => {
  const outcome = workThrough(file)
  if (outcome.kind !== 'plan') throw new Error('no plan')
  return outcome.plan
}

const TIMBER = { set: 'walls.a.studTimber', to: { specificGravity: 0.42 } } as const
const file = kitchen([TIMBER, { set: 'fixings.rail-screw.thread', to: { value: 3, pm: 0 } }])
const plan = planOf(file)
const rules = (of: Plan, given: unknown = file) => [
  ...new Set(checkPlan(given, of).refusals.map((r) => r.rule)),
]

/** The plan with what it publishes of each unit made something else. */
function published(change: (one: PublishedPull) => PublishedPull | undefined): Plan {
  const units = plan.units.map((unit) => {
    const { holding } = unit
    if (holding?.published === undefined) return unit
    const { published: was, ...rest } = holding
    const is = change(was)
    return { ...unit, holding: is === undefined ? rest : { ...rest, published: is } }
  })
  return { ...plan, units }
}
const by = (figure: Figure, factor: number): Figure =>
  figure.state === 'unknown' ? figure : { ...figure, value: figure.value * factor }

test('as planned it is accepted', () => {
  expect(rules(plan)).toEqual([])
})

test('a figure that the formula does not give is refused', () => {
  expect(
    rules(published((one) => ({ ...one, pull: one.pull === null ? null : by(one.pull, 1.1) }))),
  ).toContain('published pull')
})

test('no figure, or nothing at all, where it works out is refused', () => {
  expect(rules(published((one) => ({ ...one, pull: null, outside: 'diameter' })))).toEqual(['published pull'])
  expect(rules(published(() => undefined))).toEqual(['published pull'])
})

test('a figure for timber that nobody has entered is refused', () => {
  expect(rules(plan, kitchen([]))).toContain('published pull')
})

test('more asked than the published figure, and not told, is refused', () => {
  const silent = { ...plan, findings: plan.findings.filter((f) => f.rule !== 'published-pull') }
  expect(rules(silent)).toContain('finding missing')
})
