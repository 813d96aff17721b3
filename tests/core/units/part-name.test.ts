import { expect, test } from 'vitest'
import { unitNames } from '../../../src/core/units/names'
import { applianceSaid, nameSaid, partName } from '../../../src/core/units/part-name'
import { kitchenOf, wallsOf } from '../../support/surveyed'

const unit = (id: string, order: object, name?: string) => ({
  id,
  kind: 'base',
  wall: 'a',
  order,
  ...(name === undefined ? {} : { name }),
})

const units = [unit('u1', { rightOf: 'f1' }), unit('u2', { rightOf: 'f2' }), unit('u3', { rightOf: 'u2' })]

const namesOf = (finishing: readonly object[]) => {
  const kitchen = kitchenOf({ walls: wallsOf([3000]), units, finishing })
  return kitchen.finishing.map((part) => partName(kitchen, part))
}

test('fillers and panels are named by what is on their left and right', () => {
  expect(
    namesOf([
      { id: 'f1', kind: 'filler', wall: 'a', of: ['u1'], order: { left: { at: 0 } } },
      { id: 'f2', kind: 'filler', wall: 'a', of: ['u2'], order: { rightOf: 'u1' } },
      { id: 'p', kind: 'end-panel', wall: 'a', of: ['u3'], order: { rightOf: 'u3' } },
      { id: 's', kind: 'scribe', of: ['u3'] },
    ]),
  ).toEqual([
    'filler on the left of base unit 1',
    'filler between base unit 1 and base unit 2',
    'end panel on the right of base unit 3',
    'scribe at base unit 3',
  ])
})

test('no two are called alike, and none by its id', () => {
  const names = namesOf([
    { id: 'f1', kind: 'filler', of: ['u1'] },
    { id: 'f2', kind: 'filler', of: ['u1'] },
    { id: 'k1', kind: 'plinth', wall: 'a', of: ['u1', 'u2'] },
    { id: 'k2', kind: 'plinth', wall: 'a', of: ['u3'] },
    { id: 'c1', kind: 'cornice', of: [] },
    { id: 'c2', kind: 'cornice', of: [] },
  ])
  expect(new Set(names).size).toBe(names.length)
  for (const name of names) expect(name).not.toMatch(/\b[fkc][12]\b/)
  expect(names[2]).toBe('plinth under base unit 1 and base unit 2')
})

test('one that runs along units and is the only one of its kind needs no place', () => {
  const others = ['f1', 'f2'].map((id) => ({ id, kind: 'filler', of: ['u1'] }))
  expect(namesOf([...others, { id: 'k', kind: 'plinth', wall: 'a', of: ['u1'] }])[2]).toBe('plinth')
})

test('units of one name are told apart', () => {
  const twins = [unit('x', { left: { at: 0 } }, 'larder'), unit('y', { rightOf: 'x' }, 'larder')]
  expect([...unitNames(kitchenOf({ walls: wallsOf([3000]), units: twins })).values()]).toEqual([
    'larder',
    'larder (2)',
  ])
})

test('within a sentence a name has its article, once', () => {
  expect(
    [
      'hob',
      'the hob',
      'hob 2',
      'filler on the left of base unit 1',
      'my oven',
      "Ann's range",
      'worktop 2',
    ].map(nameSaid),
  ).toEqual([
    'the hob',
    'the hob',
    'hob 2',
    'the filler on the left of base unit 1',
    'my oven',
    "Ann's range",
    'worktop 2',
  ])
  expect(applianceSaid({ kind: 'fridge-freezer' })).toBe('the fridge freezer')
})
