import { expect, test } from 'vitest'
import { known } from '../../../src/core/figure'
import type { Appliance, Kitchen, Worktop } from '../../../src/core/kitchen/schema'
import { hoodPlaces } from '../../../src/core/placing/hood-places'
import type { UnitPlan } from '../../../src/core/plan/types'

const mm = (value: number) => known(value, 0, 'mm', [])
const appliance = (id: string, kind: string, over: string | null = null) =>
  ({ id, kind, over }) as unknown as Appliance
const along = (_: string, { at }: { at: ReturnType<typeof mm> }) => at
const HOLE = { id: 'hole', for: 'hob', wall: 'a', left: { at: mm(2260) }, width: mm(560) }
const TOP = { id: 'top', over: [], cutouts: [HOLE] } as unknown as Worktop
const UNITS = [{ unit: 'space', wall: 'a', left: mm(2100), right: mm(2900) } as UnitPlan]
const kitchen = (appliances: readonly Appliance[]) =>
  ({ appliances, worktops: [TOP], units: [] }) as unknown as Kitchen

test('over the middle of the hole of the only hob', () => {
  const places = hoodPlaces(
    kitchen([appliance('hob', 'hob'), appliance('hood', 'hood')]),
    { along: along as never },
    UNITS,
  )
  // 2260 + 560 / 2.
  expect(places).toMatchObject([{ wall: 'a', middle: { value: 2540 }, within: null }])
})

test('in the space it is stated to go in, whatever the hob', () => {
  const hood = appliance('hood', 'hood', 'space')
  const places = hoodPlaces(kitchen([appliance('hob', 'hob'), hood]), { along: along as never }, UNITS)
  expect(places).toMatchObject([{ middle: { value: 2500 }, within: 'space' }])
})

test('with two hobs nobody knows over which', () => {
  const two = [appliance('hob', 'hob'), appliance('hob-2', 'hob'), appliance('hood', 'hood')]
  expect(hoodPlaces(kitchen(two), { along: along as never }, UNITS)).toEqual([])
})
