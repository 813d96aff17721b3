import { describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { readJob } from '../../../src/core/operations/job'
import { cornerEnd, joints, neighbourRound, runOf, wallRound } from '../../../src/core/operations/neighbours'
import { outwardPairs } from '../../../src/core/order/runs'
import { base, contextOf, workKitchen } from '../../support/work-kitchen'

const jobOf = (file: KitchenFile) => readJob(contextOf(file).context)

describe('runs', () => {
  const job = jobOf(workKitchen())

  test('go from left to right, standing and hung apart, spaces and talls left out', () => {
    expect(runOf(job, 'a', 'base').map((u) => u.id)).toEqual(['b1', 'b2', 'b3', 'c1'])
    expect(runOf(job, 'a', 'hung').map((u) => u.id)).toEqual(['w1', 'w2'])
  })

  test('go on round the corner', () => {
    const corner = job.unit('c1')
    expect(corner && cornerEnd(job, corner)).toBe('right')
    expect(corner && neighbourRound(job, corner)?.id).toBe('b4')
    expect(wallRound(job, 'a', 'right')).toBe('b')
    expect(wallRound(job, 'b', 'right')).toBeUndefined()
  })

  test('grow outwards from the corner unit, both ways', () => {
    const pairs = outwardPairs(job).map(
      ({ from, to, corner }) => `${from.id}→${to.id}${corner ? ' (corner)' : ''}`,
    )
    expect(pairs).toEqual(
      expect.arrayContaining(['c1→b3 (corner)', 'b3→b2', 'b2→b1', 'c1→b4 (corner)', 'b4→b5']),
    )
  })

  test('without a corner unit they grow from the end nearer to its corner', () => {
    const straight = (lefts: readonly number[]): KitchenFile => ({
      ...workKitchen(),
      units: lefts.map((left, i) => base(`b${i + 1}`, 'a', left, 600)),
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
    })
    const pairs = (lefts: readonly number[]) =>
      outwardPairs(jobOf(straight(lefts))).map(({ from, to }) => `${from.id}→${to.id}`)
    expect(pairs([100, 700, 1300])).toEqual(['b1→b2', 'b2→b3'])
    expect(pairs([2100, 2700, 3300])).toEqual(['b3→b2', 'b2→b1'])
  })
})

describe('joints', () => {
  test('are named alike whichever way the units stand', () => {
    const turned = (a: number, b: number): KitchenFile => ({
      ...workKitchen(),
      units: [base('b1', 'a', a, 600), base('b2', 'a', b, 600)],
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
    })
    const [one] = joints(jobOf(turned(600, 1200)))
    const [other] = joints(jobOf(turned(1200, 600)))
    expect([one?.left.id, one?.right.id]).toEqual(['b1', 'b2'])
    expect([other?.left.id, other?.right.id]).toEqual(['b2', 'b1'])
  })
})
