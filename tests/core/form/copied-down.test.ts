/** What is open in a listed thing is filled from the one before it, and nothing that was said is touched. */
import { expect, test } from 'vitest'
import { copiedDown } from '../../../src/core/form/copied-down'
import { units } from '../../../src/core/form/units'

const things = units.kind === 'list' ? units.things : (undefined as never)
const feet = [
  { id: 'back-left', x: 50, y: 100 },
  { id: 'back-right', x: 450, y: 100 },
]
const first = {
  id: 'base-1',
  kind: 'base',
  wall: 'a',
  width: 500,
  height: 720,
  depth: 560,
  stands: 'legs',
  feet,
}

test('of the same kind, as far as it is open', () => {
  const file = { units: [first, { id: 'base-2', kind: 'base', wall: 'a', width: 800, depth: 580 }] }
  const copied = copiedDown(things, file, 'units', 'base-2')
  expect(copied?.from).toBe('base-1')
  const set = new Map(copied?.edits.map((e) => ('set' in e ? [e.set, e.to] : ['', ''])))
  expect(set.get('units.base-2.height')).toBe(720)
  expect(set.get('units.base-2.stands')).toBe('legs')
  // Its depth was said, and its width is its own.
  expect([...set.keys()].filter((key) => /depth|width/.test(key))).toEqual([])
})

test('feet on the right stand as far from the right side of a wider unit', () => {
  const file = { units: [first, { id: 'base-2', kind: 'base', wall: 'a', width: 800 }] }
  const edits = copiedDown(things, file, 'units', 'base-2')?.edits ?? []
  expect(edits.find((e) => 'set' in e && e.set === 'units.base-2.feet')).toMatchObject({
    to: [
      { id: 'back-left', x: 50, y: 100 },
      { id: 'back-right', x: 750, y: 100 },
    ],
  })
})

test('in inches and with what each may be off: 558.8 + (914.4 − 609.6) = 863.6, 590 + 304.8 = 894.8', () => {
  const inches = [
    { id: 'back-left', x: '2 in' },
    { id: 'back-right', x: '22 in' },
    { id: 'front-right', x: { value: 590, pm: 2 } },
  ]
  const file = {
    units: [
      { ...first, width: '24 in', feet: inches },
      { id: 'base-2', kind: 'base', wall: 'a', width: '3 ft' },
    ],
  }
  const edits = copiedDown(things, file, 'units', 'base-2')?.edits ?? []
  expect(edits.find((e) => 'set' in e && e.set === 'units.base-2.feet')).toMatchObject({
    to: [
      { id: 'back-left', x: '2 in' },
      { id: 'back-right', x: 863.6 },
      { id: 'front-right', x: { value: 894.8, pm: 2 } },
    ],
  })
})

test('no feet while it is not known how wide it is', () => {
  const file = { units: [first, { id: 'base-2', kind: 'base', wall: 'a' }] }
  const set = copiedDown(things, file, 'units', 'base-2')?.edits.map((e) => ('set' in e ? e.set : ''))
  expect(set).toContain('units.base-2.height')
  expect(set).not.toContain('units.base-2.feet')
})

test('a wall unit takes nothing from a base unit, the first nothing from anybody, a full one nothing', () => {
  const file = {
    units: [first, { id: 'wall-1', kind: 'wall', wall: 'a' }, { ...first, id: 'base-2', board: 18 }],
  }
  expect(copiedDown(things, file, 'units', 'base-1')).toBeUndefined()
  expect(copiedDown(things, file, 'units', 'wall-1')).toBeUndefined()
  expect(copiedDown(things, file, 'units', 'base-2')).toBeUndefined()
})
