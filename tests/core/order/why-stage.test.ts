/** Why tall units, wall units, bases, worktops and fronts come one before the other: only as far as the reasons go. */
import { describe, expect, test } from 'vitest'
import { whyStage } from '../../../src/core/order/why-stage'
import type { Operation, OrderReason } from '../../../src/core/plan/types'
import { atStage, must, rather } from '../../support/some-work'

const TALL = atStage('stand-up:t', 'talls')
const HANG = atStage('hang:w', 'wall-units')
const PLACE = atStage('place:b', 'base-units')
const FIX = atStage('fix:b', 'base-units')
const PROVE = atStage('prove:room', 'hold-point')
const TOP = atStage('worktop:top', 'worktops')
const PLINTH = atStage('plinth:p', 'fronts-and-plinths')
const FRONTS = atStage('hang-fronts:b', 'fronts-and-plinths')

const plan = (operations: readonly Operation[], reasons: readonly OrderReason[] = []) => ({
  operations,
  reasons,
})

describe('why a part of the fitting begins', () => {
  test('is nothing at any other work, and nothing where there is only one part', () => {
    expect(whyStage(plan([TALL, HANG]), 'prove:room')).toBeNull()
    expect(whyStage(plan([PROVE, TALL]), TALL.id)).toBeNull()
    expect(whyStage(plan([PLACE, FIX, TOP]), FIX.id)).toBeNull()
  })

  test('the first of all is told before the next; each other one after the one that began last', () => {
    const three = plan([TALL, HANG, PLACE])
    expect(whyStage(three, TALL.id)).toMatchObject({ part: 'talls', way: 'before', other: 'wall-units' })
    expect(whyStage(three, HANG.id)).toMatchObject({ part: 'wall-units', way: 'after', other: 'talls' })
    expect(whyStage(three, PLACE.id)).toMatchObject({ part: 'bases', way: 'after', other: 'wall-units' })
    expect(whyStage(plan([PLACE, HANG]), PLACE.id)).toMatchObject({ way: 'before', other: 'wall-units' })
  })

  test('nothing asks for it: either could come first', () => {
    expect(whyStage(plan([TALL, HANG]), HANG.id)).toMatchObject({ kind: 'free', reason: null })
  })

  test('a preference that is kept is told, the dearest first, with how many more there are', () => {
    const reasons = [{ ...rather(TALL.id, HANG.id, 5), id: 'cheap' }, rather(TALL.id, HANG.id, 30)]
    const told = whyStage(plan([TALL, HANG], reasons), HANG.id)
    expect(told).toMatchObject({ kind: 'preferred', more: 1 })
    expect(told?.reason?.cost).toBe(30)
  })

  test('a preference that the order does not keep is told as set aside', () => {
    const told = whyStage(plan([HANG, TALL], [rather(TALL.id, HANG.id, 30)]), HANG.id)
    expect(told).toMatchObject({ part: 'wall-units', way: 'before', other: 'talls', kind: 'against' })
  })

  test('a must goes before any preference, by way of other work too: its last link is told', () => {
    const reasons = [rather(PLACE.id, TOP.id, 30), must(FIX.id, PROVE.id), must(PROVE.id, TOP.id)]
    const told = whyStage(plan([PLACE, FIX, PROVE, TOP], reasons), TOP.id)
    expect(told).toMatchObject({ kind: 'must', reason: { before: PROVE.id, after: TOP.id } })
  })

  test('a must of other work of the stage is no reason why what the stage is named for comes then', () => {
    const join = atStage('join:t+w', 'wall-units')
    const told = whyStage(plan([TALL, HANG, join], [must(TALL.id, join.id)]), HANG.id)
    expect(told).toMatchObject({ kind: 'free' })
    const plinth = whyStage(plan([TOP, PLINTH, FRONTS], [must(TOP.id, PLINTH.id)]), FRONTS.id)
    expect(plinth).toMatchObject({ part: 'fronts', other: 'worktops', kind: 'free' })
  })
})
