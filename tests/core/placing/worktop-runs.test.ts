import { expect, test } from 'vitest'
import { known, unknown } from '../../../src/core/figure'
import type { Worktop } from '../../../src/core/kitchen/schema'
import { passes, worktopRuns } from '../../../src/core/placing/worktop-runs'
import type { UnitPlan } from '../../../src/core/plan/types'

const mm = (value: number) => known(value, 0, 'mm', [])
const unit = (id: string, wall: string, left: number, right: number) =>
  ({ unit: id, wall, left: mm(left), right: mm(right) }) as UnitPlan
const UNITS = [unit('a1', 'a', 600, 1200), unit('a2', 'a', 1200, 1800), unit('b1', 'b', 640, 1090)]

test('a worktop round a corner is a run on each wall, as far as its units reach', () => {
  const worktop = { id: 'top', over: ['a1', 'a2', 'b1'] } as unknown as Worktop
  const runs = worktopRuns({ worktops: [worktop] }, UNITS)
  expect(runs.map(({ wall, left, right }) => [wall, left, right])).toMatchObject([
    ['a', { value: 600 }, { value: 1800 }],
    ['b', { value: 640 }, { value: 1090 }],
  ])
})

test('whether a run passes in front of a stretch of wall', () => {
  const run = { left: mm(600), right: mm(1800) }
  expect(passes(run, mm(0), mm(600))).toBe(false)
  expect(passes(run, mm(0), mm(601))).toBe(true)
  expect(passes(run, mm(1799), mm(2000))).toBe(true)
  expect(passes(run, mm(0), unknown('mm', ['walls.a']))).toBe(false)
})
