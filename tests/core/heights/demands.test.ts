import { expect, test } from 'vitest'
import type { Demand } from '../../../src/core/plan/types'
import {
  baseUnit,
  ceilingAt,
  DISHWASHER,
  rowKitchen,
  SPACE,
  TWO_BASES,
  WORKTOP,
  wallUnit,
  withDishwasher,
} from '../../support/row-kitchen'
import { atLeft, plain, sure, workThrough } from '../../support/surveyed'

type Kitchen = ReturnType<typeof rowKitchen>

const demandsOf = (kitchen: Kitchen) => workThrough(kitchen).worked.heights.demands
const written = ({ id, from, to, min, max, hard }: Demand) => {
  const end = (limit: Demand['min']) => (limit === null ? '…' : plain(limit))
  return `${id}: ${to} − ${from} ${end(min)} to ${end(max)}${hard ? '' : ' preferred'}`
}
const made = (kitchen: Kitchen, rule: string) =>
  demandsOf(kitchen)
    .filter(({ id }) => id.startsWith(`${rule}:`))
    .map(written)

test('leg-reach: one at every foot', () => {
  expect(made(rowKitchen({ units: TWO_BASES.slice(0, 1) }), 'leg-reach')).toEqual([
    'leg-reach:base-1.bl: base-underside − line -870.1 to -820.1',
    'leg-reach:base-1.br: base-underside − line -871.1 to -821.1',
    'leg-reach:base-1.fl: base-underside − line -870.1 to -820.1',
    'leg-reach:base-1.fr: base-underside − line -871.1 to -821.1',
  ])
})

test('leg-reach: a tall unit is held at its own underside', () => {
  const units = [baseUnit('t', { left: atLeft(0) }, { kind: 'tall' })]
  expect(made(rowKitchen({ units }), 'leg-reach')[0]).toBe(
    'leg-reach:t.bl: tall-underside − line -870.1 to -820.1',
  )
})

test('leg-reach: feet or a way of standing that are not known are asked for', () => {
  const without = (more: object) => rowKitchen({ units: [baseUnit('u', { left: atLeft(0) }, { ...more })] })
  const missing = (kitchen: Kitchen) =>
    demandsOf(kitchen)
      .filter(({ id }) => id === 'leg-reach:u')
      .flatMap(({ min }) => (min?.state === 'unknown' ? min.missing : []))
  expect(missing(without({ feet: [] }))).toEqual(['units.u.feet'])
  expect(missing(without({ stands: null }))).toEqual(['units.u.stands'])
})

test('shim-floor: the underside lies on the floor or over it, at each corner', () => {
  const units = [baseUnit('box', { left: atLeft(0) }, { stands: 'plinth-frame', feet: [] })]
  expect(made(rowKitchen({ units }), 'shim-floor')).toEqual([
    'shim-floor:box.back-left: base-underside − line -1000 to …',
    'shim-floor:box.back-right: base-underside − line -1001.2 to …',
    'shim-floor:box.front-left: base-underside − line -1000 to …',
    'shim-floor:box.front-right: base-underside − line -1001.2 to …',
  ])
})

test('shim-floor: where it is said to bear, it bears there and not at its corners', () => {
  const feet = [{ id: 'toe', x: sure(0), y: sure(100) }]
  const units = [baseUnit('box', { left: atLeft(600) }, { stands: 'shims', feet })]
  expect(made(rowKitchen({ units }), 'shim-floor')).toEqual([
    'shim-floor:box.toe: base-underside − line -1001.2 to …',
  ])
})

test('shim-floor: the arm of a corner unit stands too', () => {
  const arm = {
    stands: 'shims',
    feet: [],
    kind: 'corner-base',
    returnRight: sure(700),
    returnDepth: sure(200),
  }
  const ids = demandsOf(rowKitchen({ units: [baseUnit('box', { left: atLeft(0) }, arm)] })).map(
    ({ id }) => id,
  )
  expect(ids).toContain('shim-floor:box.arm-right-outer')
  expect(ids).toContain('shim-floor:box.arm-right-inner')
})

test('carcass-height: the tallest of each group, and one of its own for each lower unit', () => {
  const units = [
    ...TWO_BASES,
    baseUnit('low', { rightOf: 'base-2' }, { height: sure(480) }),
    wallUnit('w', { left: atLeft(0) }),
  ]
  expect(made(rowKitchen({ units }), 'carcass-height')).toEqual([
    'carcass-height:base: base-top − base-underside 720 to 720',
    'carcass-height:low: base-top − unit:low 480 to 480',
    'carcass-height:wall: wall-top − wall-underside 720 to 720',
  ])
  expect(made(rowKitchen({ units }), 'leg-reach').at(-1)).toContain('unit:low − line')
})

test('worktop-thickness', () => {
  const thin = { id: 'thin', thickness: sure(20) }
  const worktops = [{ ...WORKTOP, over: [] }, thin]
  expect(made(rowKitchen({ worktops }), 'worktop-thickness')).toEqual([
    'worktop-thickness:top: worktop-top − base-top 38 to 38',
    'worktop-thickness:thin: worktop-top − base-top 20 to …',
  ])
})

test('bay-in and bay-max: over the highest and from the lowest floor of the bay', () => {
  // −1002.4 + 850 + 5; −1003.6 + 890.
  expect(made(withDishwasher(), 'bay-in')).toEqual(['bay-in:dw: base-top − line -147.4 to …'])
  expect(made(withDishwasher(), 'bay-max')).toEqual(['bay-max:dw: base-top − line … to -113.6'])
  const { heightMax: _, ...noMax } = DISHWASHER
  expect(made(withDishwasher({ appliances: [noMax] }), 'bay-max')).toEqual([])
})

test('bay-in: a finish to be laid in the bay lifts its floor', () => {
  const floor = (finishWhere: string) => ({ floor: { finishToCome: sure(12), finishWhere } })
  expect(made(withDishwasher(floor('bays-and-front')), 'bay-in')).toEqual([
    'bay-in:dw: base-top − line -135.4 to …',
  ])
  expect(made(withDishwasher(floor('everywhere')), 'bay-in')).toEqual([
    'bay-in:dw: base-top − line -135.4 to …',
  ])
  expect(made(withDishwasher(floor('up-to-plinth')), 'bay-in')).toEqual([
    'bay-in:dw: base-top − line -147.4 to …',
  ])
  // Laid everywhere it lies under the feet too.
  expect(made(withDishwasher(floor('everywhere')), 'leg-reach')[0]).toContain('-858.1 to -808.1')
})

test('bay-in: an appliance that stands free under no worktop bounds nothing', () => {
  const fridge = { id: 'dw', kind: 'fridge-freezer', heightMin: sure(1800), workingGap: sure(10) }
  const free = { ...WORKTOP, over: ['base-1', 'base-2'] }
  expect(made(withDishwasher({ appliances: [fridge], worktops: [free] }), 'bay-in')).toEqual([])
  // A dishwasher does, whether or not a worktop names its space.
  expect(made(withDishwasher({ worktops: [free] }), 'bay-in')).toHaveLength(1)
})

test('bay-out: over the lip of a finish that stops at the plinth', () => {
  const plinth = {
    id: 'plinth',
    kind: 'plinth',
    of: ['base-1', 'space'],
    height: sure(150),
    setBack: sure(50),
  }
  const floor = { finishToCome: sure(12), finishWhere: 'up-to-plinth' }
  // −1002.4 + 12 + 850 + 5.
  const expected = ['bay-out:dw: base-top − line -135.4 to …']
  expect(made(withDishwasher({ floor, finishing: [plinth] }), 'bay-out')).toEqual(expected)
  expect(made(withDishwasher({ floor }), 'bay-out')).toEqual(expected)
  expect(made(withDishwasher({ floor: { ...floor, finishToCome: sure(0) } }), 'bay-out')).toEqual([])
  expect(made(withDishwasher({ floor: { ...floor, finishWhere: 'none' } }), 'bay-out')).toEqual([])
})

test('plinth-cover: down to the lowest floor along the plinth', () => {
  const plinth = {
    id: 'plinth',
    kind: 'plinth',
    of: ['base-1', 'base-2'],
    height: sure(150),
    setBack: sure(50),
  }
  // Lowest at the right end, 1200: −1002.4 + 150.
  expect(made(withDishwasher({ finishing: [plinth] }), 'plinth-cover')).toEqual([
    'plinth-cover:plinth: base-underside − line … to -852.4',
  ])
})

test('plinth-cover: one for tall units and one for bases under the same plinth', () => {
  const plinth = { id: 'plinth', kind: 'plinth', of: ['base-1', 't'], height: sure(150), setBack: sure(50) }
  const units = [baseUnit('t', { rightOf: 'base-2' }, { kind: 'tall' })]
  expect(made(rowKitchen({ units: [...TWO_BASES, ...units], finishing: [plinth] }), 'plinth-cover')).toEqual([
    'plinth-cover:plinth: base-underside − line … to -851.2',
    'plinth-cover:plinth.tall-underside: tall-underside − line … to -853.6',
  ])
})

test('ceiling and hook-on: under the lowest ceiling, with room to lift', () => {
  const units = [
    wallUnit('w', { left: atLeft(0) }),
    wallUnit('screwed', { rightOf: 'w' }, { stands: 'back-rail-screws' }),
    baseUnit('t', { rightOf: 'screwed' }, { kind: 'tall', height: sure(2000) }),
    baseUnit('t2', { rightOf: 't' }, { kind: 'tall', height: sure(1900) }),
  ]
  const kitchen = rowKitchen({ units, ceiling: ceilingAt(1400) })
  expect(made(kitchen, 'ceiling')).toEqual([
    'ceiling:w: wall-top − line … to 1400',
    'ceiling:screwed: wall-top − line … to 1400',
    'ceiling:t: tall-underside − line … to -600',
    'ceiling:t2: tall-underside − line … to -500',
  ])
  expect(made(kitchen, 'hook-on')).toEqual(['hook-on:w: wall-top − line … to 1365'])
})

test('hook-on: not known how it hangs, or how far it is lifted', () => {
  const kitchen = (more: object) =>
    rowKitchen({ units: [wallUnit('w', { left: atLeft(0) }, { ...more })], ceiling: ceilingAt(1400) })
  expect(made(kitchen({ stands: null }), 'hook-on')).toEqual(['hook-on:w: wall-top − line … to unknown'])
  expect(made(kitchen({ hanging: {} }), 'hook-on')).toEqual(['hook-on:w: wall-top − line … to unknown'])
})

test('gap over the worktop by region; none where the region is not known', () => {
  const units = [...TWO_BASES, wallUnit('w', { left: atLeft(0) })]
  const kitchen = (region: string | null) =>
    rowKitchen({ region, units, worktops: [{ ...WORKTOP, over: [] }] })
  expect(made(kitchen('uk'), 'gap-over-worktop')).toEqual([
    'gap-over-worktop:wall: wall-underside − worktop-top 450 to 500 preferred',
  ])
  expect(made(kitchen('north-america'), 'gap-over-worktop')).toEqual([
    'gap-over-worktop:wall: wall-underside − worktop-top 457.2 to 457.2 preferred',
  ])
  expect(made(kitchen(null), 'gap-over-worktop')).toEqual([])
})

test('top-line and same-plinth only where both kinds are there', () => {
  const tallOne = baseUnit('t', { rightOf: 'base-2' }, { kind: 'tall' })
  const hung = wallUnit('w', { left: atLeft(0) })
  const ids = (units: readonly object[]) =>
    demandsOf(rowKitchen({ units }))
      .filter(({ hard }) => !hard)
      .map(written)
  expect(ids(TWO_BASES)).toEqual([])
  expect(ids([...TWO_BASES, tallOne])).toEqual([
    'same-plinth:tall-base: tall-underside − base-underside 0 to 0 preferred',
  ])
  expect(ids([tallOne, ...TWO_BASES, hung])).toEqual([
    'top-line:wall-tall: wall-top − tall-top 0 to 0 preferred',
    'same-plinth:tall-base: tall-underside − base-underside 0 to 0 preferred',
  ])
})

test('wishes: limits, in line with another height, and what is missing', () => {
  const heights = [
    { id: 'a', of: 'wall-top', min: { up: sure(1000) } },
    { id: 'b', of: 'wall-top', equals: 'tall-top' },
    { id: 'c', of: 'wall-top', max: { up: sure(1200) }, equals: 'tall-top' },
    { id: 'd', of: 'worktop-top', min: { aboveFloor: sure(900) } },
  ]
  const kitchen = rowKitchen({ wishes: { heights } })
  expect(made(kitchen, 'wish')).toEqual([
    'wish:a: wall-top − line 1000 to …',
    'wish:b: wall-top − tall-top 0 to 0',
    'wish:c: wall-top − line … to 1200',
    'wish:c.equals: wall-top − tall-top 0 to 0',
    'wish:d: worktop-top − line unknown to …',
  ])
  expect(demandsOf(kitchen).at(-1)?.min).toMatchObject({ missing: ['wishes.heights.d.place'] })
})

test('every demand cites the facts it comes from', () => {
  const cited = demandsOf(withDishwasher()).find(({ id }) => id === 'bay-in:dw')?.min?.from ?? []
  expect(cited).toContain('appliances.dw.heightMin')
  expect(cited).toContain('units.space.applianceBay')
  expect(cited).toContain('units.base-1.width')
  expect(cited).not.toContain('units.base-1.height')
  const reach = demandsOf(withDishwasher()).find(({ id }) => id === 'leg-reach:base-1.bl')
  expect(reach?.min?.from).toContain('units.base-1.stands')
  expect(reach?.min?.from).toContain('units.base-1.legs.min')
  expect(reach?.min?.from).not.toContain('units.base-1.legs.max')
  expect(SPACE.applianceBay).toBe(DISHWASHER.id)
})
