import { expect, test } from 'vitest'
import type { Figure } from '../../../src/core/figure'
import { assumeProductDefaults } from '../../../src/core/kitchen/assume-defaults'
import type { Kitchen, KitchenFile, Region, Unit } from '../../../src/core/kitchen/schema'
import { type DefaultField, productDefaults } from '../../../src/core/region/product-defaults'
import { exampleFile, kitchenOf } from './example-file'

type TypedUnit = NonNullable<KitchenFile['units']>[number]

const REGIONS: readonly Region[] = ['uk', 'continental', 'north-america']
const bare: TypedUnit = { id: 'u', kind: 'base', wall: 'b', order: { left: { at: 0 } } }

function assumedUnit(unit: Partial<TypedUnit>, region: Region | null = 'uk'): Unit {
  const file = exampleFile({
    units: [{ ...bare, ...unit }],
    rails: [],
    finishing: [],
    worktops: [],
    appliances: [],
    wishes: {},
  })
  const found = assumeProductDefaults(kitchenOf(file), region === null ? null : { id: region }).units[0]
  if (!found) throw new Error('no unit')
  return found
}

const valueOf = (figure: Figure | undefined) =>
  figure === undefined || figure.state === 'unknown' ? null : figure.value

test('an unknown size of a unit becomes the usual one, assumed, and still names itself', () => {
  const { height, depth } = assumedUnit({})
  expect(height).toEqual({
    state: 'assumed',
    value: 720,
    pm: 2,
    unit: 'mm',
    basis: {
      kind: 'common-practice',
      why: 'common practice in Britain: base carcass 720 mm; 870 mm on a 150 mm plinth',
    },
    from: ['units.u.height'],
  })
  expect(valueOf(depth)).toBe(560)
})

test('a size that is known, or assumed by its owner, is left alone', () => {
  const { height, depth } = assumedUnit({
    height: 800,
    depth: { value: 500, assumed: true, because: 'measured once' },
  })
  expect(height).toMatchObject({ state: 'known', value: 800 })
  expect(depth).toMatchObject({ value: 500, basis: { why: 'measured once' } })
})

test.each<[string, Region, Partial<TypedUnit>, readonly (number | null)[]]>([
  ['a British base unit', 'uk', {}, [720, 560, 18, 8, 50, 18]],
  ['a British tall unit: its height is not guessed', 'uk', { kind: 'tall' }, [null, 560, 18, 8, 50, 18]],
  ['a British wall unit: its height is not guessed', 'uk', { kind: 'wall' }, [null, 300, 18, 8, null, 18]],
  ['an island', 'uk', { kind: 'island' }, [720, null, 18, 8, null, 18]],
  ['a space for an appliance', 'uk', { kind: 'appliance-space' }, [null, 560, null, null, null, null]],
  ['a continental base unit', 'continental', {}, [null, null, null, null, null, null]],
  [
    'a shimmed North American box',
    'north-america',
    { stands: 'shims' },
    [876.3, null, null, null, null, null],
  ],
  [
    'a North American unit on legs',
    'north-america',
    { stands: 'legs' },
    [null, null, null, null, null, null],
  ],
  ['a North American wall unit', 'north-america', { kind: 'wall' }, [null, 304.8, null, null, null, null]],
])('%s: height, depth, board, back, void, front', (_, region, unit, expected) => {
  const { height, depth, board, back, void: space, front } = assumedUnit(unit, region)
  expect([height, depth, board, back, space, front].map(valueOf)).toEqual(expected)
})

test('the lift to hook on is allowed for where a unit is hooked on, and nowhere else', () => {
  const lift = (stands: TypedUnit['stands']) =>
    valueOf(assumedUnit({ kind: 'wall', stands }).hanging.hookLift)
  expect([lift('rail'), lift('plates'), lift('back-rail-screws'), lift(null)]).toEqual([25, 25, null, null])
})

test('a unit on legs without feet gets four, from its own size', () => {
  const { feet } = assumedUnit({ width: { value: 600, pm: 1 }, stands: 'legs' })
  expect(feet.map(({ id, x, y }) => [id, valueOf(x), valueOf(y)])).toEqual([
    ['bl', 50, 50],
    ['br', 550, 50],
    ['fl', 50, 485],
    ['fr', 550, 485],
  ])
  expect(feet[1]?.x).toMatchObject({
    state: 'assumed',
    pm: 26,
    from: ['units.u.feet.br.x', 'units.u.width'],
  })
})

test('feet wait for a width that is not known, and are not guessed elsewhere', () => {
  const { feet } = assumedUnit({ stands: 'legs' })
  expect(feet[1]?.x).toMatchObject({ state: 'unknown', missing: ['units.u.width'] })
  expect(valueOf(feet[0]?.x)).toBe(50)
  expect(assumedUnit({ width: 600 }).feet).toEqual([])
  expect(assumedUnit({ width: 600, stands: 'shims' }).feet).toEqual([])
  expect(assumedUnit({ width: 900, stands: 'legs', kind: 'corner-base', returnLeft: 900 }).feet).toEqual([])
  const own = assumedUnit({ width: 600, stands: 'legs', feet: [{ id: 'only', x: 300, y: null }] }).feet
  expect(own.map(({ id, x, y }) => [id, valueOf(x), valueOf(y)])).toEqual([['only', 300, null]])
})

test('a plinth board is usual, another part is not', () => {
  const { finishing } = assumeProductDefaults(
    kitchenOf(
      exampleFile({
        finishing: [
          { id: 'p', kind: 'plinth' },
          { id: 'f', kind: 'filler' },
        ],
      }),
    ),
    { id: 'uk' },
  )
  expect(finishing.map(({ height }) => valueOf(height))).toEqual([150, null])
})

/** Figures of the room, and those only a maker can give, in one list. */
function neverAssumed({ walls, floor, units, ceiling, lines, rails }: Kitchen): unknown {
  const makers = units.map(({ legs, hanging }) => [legs, { ...hanging, hookLift: null }])
  return { walls, floor, ceiling, lines, rails, makers }
}

test.each(REGIONS)(
  'in %s nothing measured in the room is filled in, nor what only the maker can say',
  (id) => {
    const kitchen = kitchenOf(exampleFile())
    const after = assumeProductDefaults(kitchen, { id })
    expect(neverAssumed(after)).toEqual(neverAssumed(kitchen))
    expect(after).not.toEqual(kitchen)
  },
)

test('where the region is not known, nothing is assumed', () => {
  const kitchen = kitchenOf(exampleFile())
  expect(assumeProductDefaults(kitchen, null)).toEqual(kitchen)
})

test.each(REGIONS)('doing it twice in %s changes nothing more', (id) => {
  const once = assumeProductDefaults(kitchenOf(exampleFile()), { id })
  expect(assumeProductDefaults(once, { id })).toEqual(once)
})

test('every default says that it is common practice, and no two answer the same question', () => {
  for (const region of REGIONS) {
    const seen = new Set<string>()
    for (const { field, kinds, stands, value, pm, why } of productDefaults(region)) {
      expect(why).toMatch(/^common practice/)
      expect(value).toBeGreaterThan(pm)
      for (const kind of kinds ?? ['any']) {
        const question = `${field} ${kind} ${stands?.join() ?? 'any'}`
        expect(seen.has(question)).toBe(false)
        seen.add(question)
      }
    }
  }
  const never: readonly string[] = ['legs', 'perTurn', 'plateBelowTop', 'hangerIn', 'clockwise', 'place']
  const fields: readonly DefaultField[] = REGIONS.flatMap((region) =>
    productDefaults(region).map(({ field }) => field),
  )
  expect(fields.filter((field) => never.includes(field))).toEqual([])
})
