import { describe, expect, test } from 'vitest'
import { hasValue } from '../../../src/core/figure'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { cornerTaper, fillerPlace } from '../../../src/core/operations/fillers'
import { readJob } from '../../../src/core/operations/job'
import { lastGap } from '../../../src/core/operations/last-gap'
import { workOutOperations } from '../../../src/core/operations/operations'
import { workOutReasons } from '../../../src/core/order/reasons'
import { say } from '../../../src/core/words/say'
import { base, contextOf, planOf, tall, workKitchen } from '../../support/work-kitchen'

type Part = NonNullable<KitchenFile['finishing']>[number]

const filler = (id: string, of: string, order: Part['order'], width = 50): Part => ({
  id,
  kind: 'filler',
  wall: 'a',
  of: [of],
  ...(order === undefined ? {} : { order }),
  width,
  height: 720,
  depth: 18,
})

const withFillers = (finishing: readonly Part[], more: Partial<KitchenFile> = {}): KitchenFile => ({
  ...workKitchen(),
  ...more,
  finishing: [...finishing],
})

const jobOf = (file: KitchenFile) => readJob(contextOf(file).context)

function placeIn(file: KitchenFile, id: string) {
  const job = jobOf(file)
  const part = job.kitchen.finishing.find((one) => one.id === id)
  if (part === undefined) throw new Error(id)
  const place = fillerPlace(job, part)
  return place === null ? null : [place.at, place.first.id, place.next.id, place.onto.id]
}

describe('a filler', () => {
  test('of a corner unit goes in before the unit round the corner', () => {
    expect(placeIn(withFillers([filler('f', 'c1', undefined)]), 'f')).toEqual(['corner', 'c1', 'b4', 'c1'])
  })

  test('beside the unit round the corner goes on with that unit', () => {
    const f = { ...filler('f', 'b4', { leftOf: 'b4' }), wall: 'b' }
    expect(placeIn(withFillers([f]), 'f')).toEqual(['corner', 'c1', 'b4', 'b4'])
  })

  test('on the other side of the corner unit is between two units', () => {
    const units = workKitchen().units?.map((u) => (u.id === 'b3' ? base('b3', 'a', 2350, 700) : u)) ?? []
    const file = withFillers([filler('f', 'c1', { leftOf: 'c1' })], { units })
    expect(placeIn(file, 'f')).toEqual(['between', 'c1', 'b3', 'c1'])
  })

  test('at the end of a wall is scribed when the run stands fast', () => {
    const units = [base('b1', 'a', 50, 600), base('b2', 'a', 650, 600)]
    const file = withFillers([filler('f', 'b1', { left: { at: 0 } })], {
      units,
      rails: [],
      appliances: [],
      worktops: [],
    })
    expect(placeIn(file, 'f')).toBeNull()
    const ids = planOf(file).operations.map((o) => o.id)
    expect(ids.indexOf('panel:f')).toBeGreaterThan(ids.indexOf('fix:b1'))
    expect(ids.indexOf('panel:f')).toBeGreaterThan(ids.indexOf('fix:b2'))
  })

  test('in the corner is in after the corner unit is level and before the next is set', () => {
    const ids = planOf(withFillers([filler('f', 'c1', undefined)])).operations.map((o) => o.id)
    expect(ids.indexOf('panel:f')).toBeGreaterThan(ids.indexOf('level:c1'))
    expect(ids.indexOf('panel:f')).toBeLessThan(ids.indexOf('place:b4'))
  })
})

describe('a corner out of square', () => {
  const taperAt = (angle: number) => {
    const walls = workKitchen().walls?.map((w) => (w.id === 'a' ? { ...w, cornerRight: { angle } } : w)) ?? []
    const job = jobOf(withFillers([], { walls }))
    const depth = job.unit('b1')?.plan.depth
    if (depth === undefined) throw new Error('b1')
    const taper = cornerTaper(job, 'b', 'left', depth)
    return taper !== null && hasValue(taper) ? taper.value : null
  }

  test.each([
    [90, 0],
    // 560 · tan 1° = 9.775
    [91, 9.775],
    [89, -9.775],
  ])('of %d° is %d mm out over a depth of 560', (angle, mm) => {
    expect(taperAt(angle)).toBeCloseTo(mm, 2)
  })

  test('that does not exist has none', () => {
    const job = jobOf(workKitchen())
    const depth = job.unit('b1')?.plan.depth
    expect(depth && cornerTaper(job, 'a', 'left', depth)).toBeNull()
  })
})

describe('the last unit of a run between two fixed things', () => {
  const gapOf = (id: string, file: KitchenFile) => {
    const job = jobOf(file)
    const unit = job.unit(id)
    if (unit === undefined) throw new Error(id)
    return lastGap(job, unit)
  }

  test('is measured for: the gap between what stands and the tall', () => {
    const units = [tall('t1', 'a', 0), base('b1', 'a', 602, 600), base('b2', 'a', 1202, 600)]
    const floor = {
      readings: [
        { id: 'f1', at: { wall: 'a', along: { at: 100 }, out: 100 }, drop: 1010 },
        { id: 'f2', at: { wall: 'a', along: { at: 3900 }, out: 100 }, drop: 1000 },
        { id: 'f3', at: { wall: 'a', along: { at: 100 }, out: 2900 }, drop: 1010 },
        { id: 'f4', at: { wall: 'a', along: { at: 3900 }, out: 2900 }, drop: 1000 },
      ],
    }
    const file = withFillers([], { units, floor, rails: [], appliances: [], worktops: [] })
    const { figures, does, checks } = gapOf('b1', file)
    expect(figures.map((f) => (hasValue(f.figure) ? f.figure.value : null))).toEqual([602, 600])
    expect(does.map((m) => say(m)).join(' ')).toContain('between base unit 2 and tall unit 1')
    expect(checks.map((c) => c.id)).toEqual(['last-gap.b1'])
    expect(gapOf('b2', file).figures).toEqual([])
  })

  test('is not where the run ends in the open', () => {
    expect(gapOf('b5', workKitchen()).figures).toEqual([])
  })

  test('counts the filler that goes in with it', () => {
    const units = [base('b1', 'a', 40, 600), base('b2', 'a', 640, 600)]
    const walls = (workKitchen().walls ?? []).map((w) => ({ ...w }))
    const floor = {
      readings: [100, 3900].flatMap((at) =>
        [100, 2900].map((out) => ({
          id: `f${at}-${out}`,
          at: { wall: 'a', along: { at }, out },
          drop: at === 100 ? 1010 : 1000,
        })),
      ),
    }
    const closed = walls.map((w) => ({ ...w, cornerRight: { angle: 90 } }))
    const rest = [
      { id: 'c', length: 4000, cornerRight: { angle: 90 } },
      { id: 'd', length: 3000, cornerRight: { angle: 90 } },
    ]
    const file = withFillers([filler('f', 'b1', { left: { at: 0 } }, 40)], {
      closed: true,
      walls: [...closed, ...rest],
      units,
      floor,
      rails: [],
      appliances: [],
      worktops: [],
    })
    const { figures } = gapOf('b1', file)
    expect(figures.map((f) => (hasValue(f.figure) ? f.figure.value : null))).toEqual([640, 640])
  })
})

describe('words', () => {
  test('of every reason and step here can be said', () => {
    const { context } = contextOf(
      withFillers([filler('f', 'c1', undefined), { ...filler('g', 'b4', { leftOf: 'b4' }), wall: 'b' }]),
    )
    const operations = workOutOperations(context)
    for (const operation of operations.filter((o) => o.kind === 'panel' || o.kind === 'join')) {
      for (const message of [operation.title, ...operation.does])
        expect(say(message)).not.toMatch(/\[no |undefined/)
    }
    for (const { because } of workOutReasons(context, operations)) expect(say(because)).not.toMatch(/\[no /)
  })
})
