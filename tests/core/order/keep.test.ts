import { beforeAll, describe, expect, test } from 'vitest'
import type { KitchenFile } from '../../../src/core/kitchen/schema'
import { movedFrom } from '../../../src/core/order/keep'
import { withFact } from '../../support/facts'
import { hung, planOf, workKitchen } from '../../support/work-kitchen'

const idsOf = (file: KitchenFile) => planOf(file).operations.map((operation) => operation.id)

describe('the order last accepted', () => {
  let kept: readonly string[]
  let file: KitchenFile
  beforeAll(() => {
    kept = idsOf(workKitchen())
    file = { ...workKitchen(), keptOrder: [...kept] }
  })

  test('stands as it is while nothing changes, and when a reading moves a little', () => {
    expect(idsOf(file)).toEqual(kept)
    expect(idsOf(withFact(file, 'floor.readings.f3.drop', 1004))).toEqual(kept)
  })

  test('stands round a unit that is put in or taken out', () => {
    const more = idsOf({ ...file, units: [...(file.units ?? []), hung('w9', 'a', 2400, 600)] })
    expect(more.filter((id) => kept.includes(id))).toEqual(kept)
    expect(more).toContain('hang:w9')
    const without = (ids: readonly string[] | undefined) => (ids ?? []).filter((id) => id !== 'b5')
    const fewer = idsOf({
      ...file,
      units: (file.units ?? []).filter((u) => u.id !== 'b5'),
      finishing: (file.finishing ?? []).filter((part) => part.id !== 'end'),
      worktops: (file.worktops ?? []).map((top) => ({ ...top, over: without(top.over) })),
    })
    expect(fewer).toEqual(kept.filter((id) => fewer.includes(id)))
  })

  test('an order of one’s own is kept where nothing hard speaks against it', () => {
    const own = [...kept]
    const [a, b] = [own.indexOf('set-out-heights:a'), own.indexOf('set-out-heights:b')]
    own[a] = 'set-out-heights:b'
    own[b] = 'set-out-heights:a'
    expect(idsOf({ ...file, keptOrder: own })).toEqual(own)
  })

  test('one that breaks a hard reason is mended by moving little', () => {
    const own = kept.filter((id) => id !== 'assemble:b1')
    own.splice(own.indexOf('fix:b1') + 1, 0, 'assemble:b1')
    const made = idsOf({ ...file, keptOrder: own })
    const place = new Map(own.map((id, i) => [id, i]))
    expect(
      movedFrom(
        Int32Array.from(own.keys()),
        Int32Array.from(made, (id) => place.get(id) ?? -1),
      ),
    ).toBeLessThanOrEqual(2)
  })
})

test('moved is what is not in the longest run that still is in its old order', () => {
  const moved = (order: readonly number[]) => movedFrom(Int32Array.from(order.keys()), Int32Array.from(order))
  expect(moved([0, 1, 2, 3])).toBe(0)
  expect(moved([3, 0, 1, 2])).toBe(1)
  expect(moved([3, 2, 1, 0])).toBe(3)
})
