import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { hasValue } from '../../../src/core/figure'
import { workThrough } from '../../../src/core/plan/entry'
import { tellingFigures } from '../../../src/core/plan/figures-in'
import type { Plan } from '../../../src/core/plan/types'
import { ROOT } from '../../support/root'

const kitchen: unknown = JSON.parse(readFileSync(join(ROOT, 'scenes/one-wall.dryrun.json'), 'utf8'))

function planned(...entries: readonly object[]): Plan {
  const log = {
    format: 'dryrun-daylog',
    version: 1,
    entries: entries.map((e, i) => ({ id: `e${i + 1}`, ...e })),
  }
  const outcome = workThrough(kitchen, entries.length === 0 ? null : log)
  if (outcome.kind !== 'plan') throw new Error('no plan')
  return outcome.plan
}

const valueAt = (plan: Plan, name: string): number | undefined => {
  const figure = tellingFigures(plan).get(name)
  return figure !== undefined && hasValue(figure) ? figure.value : undefined
}
const base = 'heights/values/base-underside/height'
const struckOn = { kind: 'done', operation: 'set-out-heights:a' }
const lowFoot = { kind: 'floor-at-foot', unit: 'base-3', foot: 'front-right', drop: 1030 }

test('a line that is not struck yet moves with a foot found low; one on the wall stays', () => {
  // Longest leg against a floor 18 lower: the room for the base line shrinks from above, and its middle goes down.
  expect(valueAt(planned(lowFoot), base)).toBeLessThan(valueAt(planned(), base) as number)
  expect(valueAt(planned(struckOn, lowFoot), base)).toBe(valueAt(planned(), base))
})

test('a line struck after the reading is struck where the reading put it', () => {
  expect(valueAt(planned(lowFoot, struckOn), base)).toBe(valueAt(planned(lowFoot), base))
})

test('a struck line gives way, and is said to, when legs cannot reach it any more', () => {
  const plan = planned(struckOn, { ...lowFoot, drop: 1042 })
  expect(valueAt(plan, base)).not.toBe(valueAt(planned(), base))
  expect(plan.findings.map((f) => f.id)).toContain('preferred-height-given-up:struck:base-underside')
})

test('a unit levelled to its line stays there; a reading of it overrules that', () => {
  const level = { kind: 'done', operation: 'level:base-1' }
  const at = (plan: Plan) => plan.units.find((u) => u.unit === 'base-1')?.underside
  expect(at(planned(level, { ...lowFoot, drop: 1120 }))).toMatchObject({
    value: valueAt(planned(), base),
    pm: 1,
  })
  expect(at(planned(level, { kind: 'set', unit: 'base-1', edge: 'underside', down: 861 }))).toMatchObject({
    value: -861,
  })
})

test('a struck entry that is corrected holds nothing', () => {
  const plan = planned(struckOn, lowFoot, { kind: 'correct', entry: 'e1' })
  expect(valueAt(plan, base)).toBe(valueAt(planned(lowFoot), base))
})
