import { expect, test } from 'vitest'
import { checkPlan } from '../../src/checker/check-plan'
import type { Figure } from '../../src/core/figure'
import { workThrough } from '../../src/core/plan/entry'
import type { Plan, UnitPlan } from '../../src/core/plan/types'
import { kitchenOf } from '../support/adversarial-sheets'

/** Room over a unit's head, claimed greater than it is: each of these plans is right but for one figure. */

function planOf(name: string): Plan {
  const outcome = workThrough(kitchenOf(name))
  if (outcome.kind !== 'plan') throw new Error('no plan')
  return outcome.plan
}

function refusals(name: string, unit: string, spoil: (plan: UnitPlan) => UnitPlan): readonly string[] {
  const plan = planOf(name)
  const units = plan.units.map((one) => (one.unit === unit ? spoil(one) : one))
  return checkPlan(kitchenOf(name), { ...plan, units }).refusals.map(({ rule, say }) => `${rule}: ${say}`)
}

const more = (figure: Figure, by: number): Figure =>
  figure.state === 'unknown' ? figure : { ...figure, value: figure.value + by }

const withRoom = (by: number) => (unit: UnitPlan) =>
  unit.hookOn === null ? unit : { ...unit, hookOn: { ...unit.hookOn, there: more(unit.hookOn.there, by) } }

const withCeiling = (by: number) => (unit: UnitPlan) =>
  unit.standUp === null
    ? unit
    : { ...unit, standUp: { ...unit.standUp, ceiling: more(unit.standUp.ceiling, by) } }

test('the room under a sloping ceiling, 2 mm more than there is at the lower side of the unit', () => {
  expect(refusals('23-slope-over-the-last-unit', 'wall-3', withRoom(0))).toEqual([])
  expect(refusals('23-slope-over-the-last-unit', 'wall-3', withRoom(2))).toEqual([
    'hook-on: there are 19 over it, not 21',
  ])
})

test('the room to the ceiling, where a boxing hangs over a part of the unit', () => {
  expect(refusals('06-boxing-over-wall-unit', 'wall-1', withRoom(0))).toEqual([])
  expect(refusals('06-boxing-over-wall-unit', 'wall-1', withRoom(207))).toContain(
    'hook-on: there are 3 over it, not 210',
  )
})

test('the ceiling over the floor a tall unit sweeps, 2 mm more than there is', () => {
  expect(refusals('10-sloping-ceiling-tall', 'tall-2', withCeiling(0))).toEqual([])
  expect(
    refusals('10-sloping-ceiling-tall', 'tall-2', withCeiling(2)).some((r) => r.includes('floor it sweeps')),
  ).toBe(true)
})

test('a tall unit swung on its feet, whose maker has not been asked', () => {
  const name = '24-tall-tilting-on-its-feet'
  const file = kitchenOf(name)
  const legsOf = (unit: NonNullable<typeof file.units>[number]) =>
    unit.id === 'tall-1' ? { ...unit, legs: { ...unit.legs, maySwing: null } } : unit
  const other = { ...file, units: (file.units ?? []).map(legsOf) }
  const said = checkPlan(other, planOf(name)).refusals.map(({ say }) => say)
  expect(said).toContain('it is swung on its feet, and nobody has said its maker allows that')
  expect(said.some((s) => s.includes('into the ceiling'))).toBe(true)
})

test('the floor is not read for units that all hang, and is for one that stands', () => {
  const hung = planOf('01-mirrored-thin-wall')
  expect(hung.operations.some((op) => op.id === 'read-floor:room')).toBe(false)
  expect(checkPlan(kitchenOf('01-mirrored-thin-wall'), hung).ok).toBe(true)
  const name = '24-tall-tilting-on-its-feet'
  const plan = planOf(name)
  const without = { ...plan, operations: plan.operations.filter((op) => op.id !== 'read-floor:room') }
  const said = checkPlan(kitchenOf(name), without).refusals.map(({ rule, what }) => `${rule} | ${what}`)
  expect(said).toContain('operation missing | read-floor:room')
})

test('a restraint into a pattress is one the checker knows, and misses when it is gone', () => {
  const name = '18-metal-stud-tall'
  const plan = planOf(name)
  const hole = 'tall-restraint.tall-2.pattress-1-1'
  expect(plan.holes.map((h) => h.id)).toContain(hole)
  const without = { ...plan, holes: plan.holes.filter((h) => h.id !== hole) }
  const said = checkPlan(kitchenOf(name), without).refusals.map(({ what }) => what)
  expect(said.some((what) => what.includes(hole))).toBe(true)
})
