import { beforeAll, expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import { workThrough } from '../../src/core/plan/entry'
import type { Plan, ShimPlan, UnitPlan } from '../../src/core/plan/types'
import { sceneFile } from '../support/scene-sheets'

const file = sceneFile('north-american')
let plan: Plan

beforeAll(() => {
  const outcome = workThrough(file)
  if (outcome.kind !== 'plan') throw new Error('no plan')
  plan = outcome.plan
})

const rules = (of: Plan): readonly string[] =>
  checkPlan(file, of).refusals.map((r) => `${r.rule} | ${r.what}`)

function withUnit(change: (unit: UnitPlan) => UnitPlan): Plan {
  return { ...plan, units: plan.units.map((u) => (u.unit === 'base-1' ? change(u) : u)) }
}
const withShims = (change: (shims: readonly ShimPlan[]) => readonly ShimPlan[]): Plan =>
  withUnit((unit) => ({ ...unit, shims: change(unit.shims ?? []) }))

test('the plan of boxes on shims is accepted as it is', () => {
  expect(rules(plan)).toEqual([])
})

test('a shim that is left out, moved, or not as high as the floor under it asks, is refused', () => {
  expect(rules(withShims((shims) => shims.slice(1)))).toContain('shim | base-1.back-left')
  expect(rules(withShims((shims) => shims.map((s, i) => (i === 0 ? { ...s, x: s.x + 50 } : s))))).toContain(
    'shim | base-1.back-left',
  )
  const higher = (s: ShimPlan): ShimPlan =>
    s.height.state === 'unknown' ? s : { ...s, height: { ...s.height, value: s.height.value + 1 } }
  expect(rules(withShims((shims) => shims.map((s, i) => (i === 0 ? higher(s) : s))))).toContain(
    'shim | base-1.back-left height',
  )
  expect(rules(withUnit(({ shims: _, ...unit }) => unit))).toContain('shim | base-1.front-right')
})

test('where the box is levelled its shims are told', () => {
  const untold = plan.operations.map((o) =>
    o.id === 'level:base-1' ? { ...o, figures: o.figures.filter((f) => !f.name.startsWith('shim.')) } : o,
  )
  expect(rules({ ...plan, operations: untold })).toContain('shim | base-1.back-right')
})

test('a unit that hangs has no shims under it', () => {
  const shims = plan.units.find((u) => u.unit === 'base-1')?.shims ?? []
  const units = plan.units.map((u) => (u.unit === 'wall-1' ? { ...u, shims } : u))
  expect(rules({ ...plan, units })).toContain('shim | wall-1.back-left')
})

test('a hole through the back rail of a base is as deep as its screw goes, with no bracket before it', () => {
  const deeper = plan.holes.map((h) =>
    h.throughRail === true && h.depth.state !== 'unknown'
      ? { ...h, depth: { ...h.depth, value: h.depth.value + 17.05 } }
      : h,
  )
  expect(rules({ ...plan, holes: deeper })).toContain('hole | base-bracket.base-1.a-s1')
})
