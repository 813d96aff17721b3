import { expect, test } from 'vitest'
import { known } from '../../../src/core/figure'
import { workOutSurvey } from '../../../src/core/survey/survey'
import { poseOf, type UnitPosition, workOutPositions } from '../../../src/core/units/positions'
import { kitchenOf, plain, sure, wallsOf } from '../../support/surveyed'

const unit = (id: string, order: object, more: object = {}) => ({
  id,
  kind: 'base',
  wall: 'a',
  order,
  width: sure(600),
  height: sure(720),
  depth: sure(560),
  ...more,
})

const worked = (units: readonly object[], more: object = {}) => {
  const kitchen = kitchenOf({ walls: wallsOf([3000, 90], [2000]), units, ...more })
  const survey = workOutSurvey(kitchen, null)
  return { survey, ...workOutPositions(kitchen, survey) }
}

const extents = (units: readonly UnitPosition[]) =>
  units.map(({ unit: { id }, left, right }) => `${id} ${plain(left)}..${plain(right)}`)

test('units follow one another along the wall, through a filler, whichever is listed first', () => {
  const { units, parts } = worked(
    [
      unit('third', { rightOf: 'filler', gap: sure(3) }),
      unit('second', { rightOf: 'first' }),
      unit('first', { left: { at: sure(40) } }),
    ],
    { finishing: [{ id: 'filler', kind: 'filler', width: sure(50), order: { rightOf: 'second' } }] },
  )
  // 40 + 600, + 600, a filler of 50, a gap of 3.
  expect(extents(units)).toEqual(['third 1293..1893', 'second 640..1240', 'first 40..640'])
  expect(parts.map(({ part, wall, left, right }) => [part.id, wall, plain(left), plain(right)])).toEqual([
    ['filler', 'a', 1240, 1290],
  ])
})

test('units stand to the left of another, and from the right end of the wall', () => {
  const { units } = worked([
    unit('right', { left: { from: 'right', at: sure(600) } }),
    unit('left', { leftOf: 'right', gap: sure(20) }),
  ])
  expect(extents(units)).toEqual(['right 2400..3000', 'left 1780..2380'])
})

test('precision grows along the chain, and every fact on the way is cited', () => {
  const loose = { width: { value: 600, pm: 0.5 } }
  const { units } = worked([
    unit('one', { left: { at: { value: 0, pm: 2 } } }, loose),
    unit('two', { rightOf: 'one' }, loose),
  ])
  expect(units[1]?.right).toMatchObject({ value: 1200, pm: 3 })
  expect(units[1]?.right.from).toEqual([
    'units.one.order.left.at',
    'units.one.order.left.face',
    'units.one.order.left.from',
    'units.one.wall',
    'units.one.width',
    'units.two.order.rightOf',
    'units.two.wall',
    'units.two.width',
  ])
})

test('a unit of unknown width leaves its own right side and its neighbours open', () => {
  const { units } = worked([
    unit('one', { left: { at: sure(0) } }, { width: null }),
    unit('two', { rightOf: 'one' }),
  ])
  expect(extents(units)).toEqual(['one 0..unknown', 'two unknown..unknown'])
  expect(units[1]?.left).toMatchObject({ missing: ['units.one.width'] })
  expect(units[0]?.boxes).toBeNull()
})

test('a unit stands against the wall unless it stands off', () => {
  const { units } = worked([
    unit('one', { left: { at: sure(0) } }),
    unit('two', { rightOf: 'one' }, { standOff: sure(40) }),
  ])
  expect(units[0]?.out).toMatchObject({ value: 0, pm: 0, from: [] })
  expect(units[1]?.out).toMatchObject({ value: 40, from: ['units.two.standOff'] })
})

test('an arm of a corner unit is a box along the wall beside it', () => {
  const corner = { kind: 'corner-base', width: sure(900), returnDepth: sure(560) }
  const { units } = worked([
    unit('left', { left: { at: sure(0) } }, { ...corner, returnLeft: sure(1000) }),
    unit('right', { rightOf: 'left' }, { ...corner, returnRight: sure(950) }),
    unit('straight', { rightOf: 'right' }, { ...corner, returnDepth: null }),
    unit('half-known', { rightOf: 'straight' }, { ...corner, returnDepth: null, returnLeft: sure(900) }),
  ])
  const box = (x0: number, x1: number, y1: number) => ({ x0, x1, y0: 0, y1, z0: 0, z1: 720 })
  expect(units.map(({ boxes }) => boxes)).toEqual([
    [box(0, 900, 560), box(0, 560, 1000)],
    [box(0, 900, 560), box(340, 900, 950)],
    [box(0, 900, 560)],
    null,
  ])
})

test.each([
  ['just up to the end', 600, 0, []],
  ['1 past the end', 599, 0, ['unit-past-end:one stop']],
  ['2 past it, read to 2 mm: it may be', 598, 2, ['unit-past-end:one note']],
  ['3 past it, read to 2 mm', 597, 2, ['unit-past-end:one stop']],
])('a unit that runs %s', (_, at, pm, found) => {
  const { findings } = worked([unit('one', { left: { from: 'right', at: { value: at, pm } } })])
  expect(findings.map(({ id, weight }) => `${id} ${weight}`)).toEqual(found)
})

test('a unit that starts before the wall does', () => {
  const { findings } = worked([unit('one', { left: { at: sure(-5) } })])
  expect(findings).toMatchObject([
    { id: 'unit-past-end:one', weight: 'stop', say: { values: { end: 'left', by: { value: 5 } } } },
  ])
})

test('a pose is the back left bottom corner in the room, turned with the wall', () => {
  const { units, survey } = worked([
    unit('one', { left: { at: sure(100) } }),
    unit('two', { left: { at: sure(100) } }, { wall: 'b', standOff: sure(10) }),
  ])
  const z = known(-850, 0, 'mm', [])
  const [one, two] = units as [UnitPosition, UnitPosition]
  expect(poseOf(one, survey, z)).toEqual({ x: 100, y: 0, z: -850, yaw: 0 })
  // Wall b runs down from (3000, 0); 10 out of it is 10 to the left.
  expect(poseOf(two, survey, z)).toEqual({ x: 2990, y: -100, z: -850, yaw: -90 })
  expect(poseOf(one, survey, { ...z, state: 'unknown', missing: ['x'] } as never)).toBeNull()
})

test('on a wall without a place in the room there is no pose', () => {
  const kitchen = kitchenOf({
    walls: [{ id: 'z' }, ...wallsOf([3000])],
    units: [unit('one', { left: { at: sure(0) } })],
  })
  const survey = workOutSurvey(kitchen, null)
  const [one] = workOutPositions(kitchen, survey).units
  expect(poseOf(one as UnitPosition, survey, known(0, 0, 'mm', []))).toBeNull()
})
