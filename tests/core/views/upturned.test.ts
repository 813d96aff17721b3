import { expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import { extentOf, roomPoint } from '../../../src/core/plan/travel-path'
import { shownAt } from '../../../src/core/views/upturned'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const at = (id: string) => plan.operations.findIndex((o) => o.id === id)

test('a base unit lies on its top while its legs are set: legs up, its left on the right, its front in front', () => {
  const was = standingAt(plan, at('set-legs:base-1'), 0).units.find((u) => u.isInHand)
  const is = shownAt(plan, at('set-legs:base-1'), 0).units.find((u) => u.isInHand)
  if (was === undefined || is === undefined) throw new Error('nothing in hand')
  const extent = extentOf(is.unit.solid)
  const of = (u: typeof is, x: number, y: number, z: number) => roomPoint(u, extent, { x, y, z })
  // What was the far end of its width is where its near end is now.
  const [left, right] = [of(is, 0, 0, 0), of(is, extent.width, 0, 0)]
  expect(left).toMatchObject({ x: expect.closeTo(of(was, extent.width, 0, 0).x, 6) })
  expect(right).toMatchObject({ x: expect.closeTo(of(was, 0, 0, 0).x, 6) })
  const front = (u: typeof is) => of(u, 0, extent.depth, 0).y - of(u, 0, 0, 0).y
  expect(front(is)).toBeCloseTo(front(was), 6)
  const leg = is.unit.legs[0]
  if (leg === undefined || leg.extension.state === 'unknown') throw new Error('no leg')
  const long = leg.extension.value
  expect(of(is, leg.x, leg.y, -long).z).toBeCloseTo(of(is, leg.x, leg.y, 0).z + long, 6)
  // Its top is just over the floor that its feet stood on.
  const floor =
    was.pose.z -
    Math.max(...is.unit.legs.map((l) => (l.extension.state === 'unknown' ? 0 : l.extension.value)))
  expect(of(is, 0, 0, extent.height).z).toBeGreaterThan(floor)
  expect(of(is, 0, 0, extent.height).z).toBeLessThan(floor + 30)
})

test('a tall unit stays lying as it is, and every other step shows what stands', () => {
  for (const id of ['set-legs:tall-1', 'level:base-1', 'assemble:base-1'])
    expect(shownAt(plan, at(id), 0)).toEqual(standingAt(plan, at(id), 0))
})
