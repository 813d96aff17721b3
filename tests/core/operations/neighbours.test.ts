import { describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { readJob } from '../../../src/core/operations/job'
import { cornerEnd, joints, neighbourRound, runOf, wallRound } from '../../../src/core/operations/neighbours'
import { outwardPairs } from '../../../src/core/operations/runs'
import { base, contextOf, hung, tall, workKitchen } from '../../support/work-kitchen'

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

  const straight = (lefts: readonly number[], more: Partial<KitchenFile> = {}): KitchenFile => ({
    ...workKitchen(),
    units: lefts.map((left, i) => base(`b${i + 1}`, 'a', left, 600)),
    rails: [],
    appliances: [],
    finishing: [],
    worktops: [],
    ...more,
  })
  const pairs = (file: KitchenFile) =>
    outwardPairs(jobOf(file)).map(({ from, to, start }) => `${from.id}→${to.id} (${start})`)
  const sloping = (drops: readonly number[]): KitchenFile['floor'] => ({
    readings: drops.flatMap((drop, i) =>
      [0, 700].map((out) => ({ id: `f${i}-${out}`, at: { wall: 'a', along: { at: i * 1300 }, out }, drop })),
    ),
  })

  test('of bases without a corner unit grow from the one over the highest floor', () => {
    const lefts = [100, 700, 1300]
    expect(pairs(straight(lefts, { floor: sloping([1000, 1010, 1020, 1030]) }))).toEqual([
      'b1→b2 (high-point)',
      'b2→b3 (high-point)',
    ])
    expect(pairs(straight(lefts, { floor: sloping([1030, 1020, 1010, 1000]) }))).toEqual([
      'b3→b2 (high-point)',
      'b2→b1 (high-point)',
    ])
    expect(pairs(straight(lefts, { floor: sloping([1030, 1000, 1030, 1030]) }))).toEqual([
      'b2→b3 (high-point)',
      'b2→b1 (high-point)',
    ])
  })

  test('grow from the end nearer to its corner while the floor is not known', () => {
    const floor = { readings: [] }
    expect(pairs(straight([100, 700], { floor }))).toEqual(['b1→b2 (near-end)'])
    expect(pairs(straight([2700, 3300], { floor }))).toEqual(['b2→b1 (near-end)'])
  })

  test('of wall units begin beside the tall whose top they share, else nearer their corner', () => {
    const hungRun = (top: number) =>
      straight([], {
        units: [
          tall('t1', 'a', 3400, { height: top }),
          hung('w1', 'a', 1600, 600),
          hung('w2', 'a', 2200, 600),
          hung('w3', 'a', 2800, 600),
        ],
        wishes: {
          heights: [
            { id: 'tops', of: 'wall-top', min: { up: 1180 }, max: { up: 1180 } },
            { id: 'tall', of: 'tall-underside', min: { down: 890 }, max: { down: 890 } },
          ],
        },
      })
    expect(pairs(hungRun(2070))).toEqual(['w3→w2 (tall)', 'w2→w1 (tall)'])
    expect(pairs(hungRun(2000))).toEqual(['w3→w2 (near-end)', 'w2→w1 (near-end)'])
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

  test('reach to the side of a tall, for bases and for wall units that hang as high', () => {
    const beside: KitchenFile = {
      ...workKitchen(),
      units: [
        tall('t1', 'a', 0),
        base('b1', 'a', 600, 600),
        hung('w1', 'a', 600, 600),
        tall('t2', 'a', 1200),
      ],
      rails: [],
      appliances: [],
      finishing: [],
      worktops: [],
    }
    const named = joints(jobOf(beside)).map(({ left, right }) => `${left.id}+${right.id}`)
    expect(named.sort()).toEqual(['b1+t2', 't1+b1', 't1+w1', 'w1+t2'])
  })
})
