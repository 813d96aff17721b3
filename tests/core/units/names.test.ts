import { expect, test } from 'vitest'
import { UNIT_KINDS } from '../../../src/core/kitchen/kinds'
import { unitNames } from '../../../src/core/units/names'
import { kitchenOf, wallsOf } from '../../support/surveyed'

const unit = (id: string, kind: string, name?: string) => ({
  id,
  kind,
  wall: 'a',
  order: { left: { at: 0 } },
  ...(name === undefined ? {} : { name }),
})

const namesOf = (units: readonly object[]) => [
  ...unitNames(kitchenOf({ walls: wallsOf([3000]), units })).values(),
]

test('kinds are written out and counted one by one, in the order of the file', () => {
  expect(namesOf([unit('x', 'wall'), unit('y', 'tall'), unit('z', 'wall'), unit('q', 'base')])).toEqual([
    'wall unit 1',
    'tall unit 1',
    'wall unit 2',
    'base unit 1',
  ])
})

test('a name of its own stands, and renumbers nobody', () => {
  expect(namesOf([unit('x', 'wall'), unit('y', 'wall', 'the one by the door'), unit('z', 'wall')])).toEqual([
    'wall unit 1',
    'the one by the door',
    'wall unit 3',
  ])
})

test('every kind has a name without letters and numbers run together', () => {
  const names = namesOf(UNIT_KINDS.map((kind) => unit(kind, kind)))
  expect(names).toEqual([
    'tall unit 1',
    'wall unit 1',
    'base unit 1',
    'corner base unit 1',
    'corner wall unit 1',
    'open end unit 1',
    'bridging unit 1',
    'island unit 1',
    'space for appliance 1',
  ])
})
