import { expect, test } from 'vitest'
import { known, unknown } from '../../../src/core/figure'
import { finding } from '../../../src/core/plan/finding'
import { settledBy } from '../../../src/core/plan/settled-by'

const found = (more: Partial<Parameters<typeof finding>[0]> = {}) =>
  finding({
    rule: 'test',
    subjects: ['base-1'],
    weight: 'ask',
    say: { key: 'test', values: {} },
    basis: { kind: 'survey' },
    ...more,
  })

const MANY = ['units.base-1.width', 'units.base-1.depth', 'walls.a.length', 'walls.b.length', 'floor.drop']

test('what its rule names goes before all it rests on', () => {
  expect(settledBy(found({ from: ['walls.a.traced'], settledBy: ['walls.a.provedDead'] }))).toEqual([
    'walls.a.provedDead',
  ])
})

test('else it is what an unknown figure waits for, once', () => {
  const figures = [
    known(5, 0, 'mm', ['walls.a.length'], { kind: 'survey' }),
    unknown('mm', ['units.base-1.width']),
    unknown('mm', ['units.base-1.width']),
  ]
  expect(settledBy(found({ figures }))).toEqual(['units.base-1.width'])
})

test('else the few facts it rests on; of many those of what it is about, or the thing itself', () => {
  expect(settledBy(found({ from: ['walls.a.traced'] }))).toEqual(['walls.a.traced'])
  expect(settledBy(found({ from: MANY }))).toEqual(['units.base-1.depth', 'units.base-1.width'])
  const more = ['height', 'back', 'board', 'front'].map((key) => `units.base-1.${key}`)
  expect(settledBy(found({ from: [...MANY, ...more] }))).toEqual(['units.base-1'])
  expect(settledBy(found({ from: MANY, about: ['other'] }))).toEqual([])
})
