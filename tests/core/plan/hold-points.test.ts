import { expect, test } from 'vitest'
import { finding } from '../../../src/core/plan/finding'
import { withHoldPoints } from '../../../src/core/plan/hold-points'
import type { Finding } from '../../../src/core/plan/types'
import { atStage } from '../../support/some-work'

const order = [
  atStage('strike:line', 'survey'),
  atStage('mark-holes:a', 'set-out', { wall: 'a' }),
  atStage('place:base-1', 'base-units', { wall: 'a' }),
  atStage('stand-up:tall-1', 'talls', { wall: 'a', holding: ['tall-1'] }),
  atStage('restrain:tall-1', 'talls', {
    wall: 'a',
    holding: ['tall-1'],
    holes: ['tall-restraint.tall-1.left'],
  }),
  atStage('fix:base-1', 'base-units', { wall: 'a', holes: ['base-bracket.base-1.left'] }),
]

const danger = (about: string, more: Partial<Finding> = {}): Finding => ({
  ...finding({
    rule: 'test',
    subjects: [about],
    weight: 'ask',
    dangerous: true,
    say: { key: 'test', values: {} },
    basis: { kind: 'survey' },
  }),
  ...more,
})

const stopped = (findings: readonly Finding[]) =>
  withHoldPoints(order, findings, []).flatMap((o) =>
    o.stops.length === 0 ? [] : [[o.id, o.holdPoint, ...o.stops]],
  )

test('a danger about a unit stops the first work on that unit, not the marking', () => {
  expect(stopped([danger('base-1')])).toEqual([['place:base-1', true, 'test:base-1']])
})

test('a danger about a wall stops the first hole in it, before the unit is in hand', () => {
  expect(stopped([danger('a')])).toEqual([['stand-up:tall-1', true, 'test:a']])
})

test('one that bears on no single operation stops the first work that is not looking', () => {
  expect(stopped([danger('kitchen')])).toEqual([['place:base-1', true, 'test:kitchen']])
})

test('what hurts nobody, and what only warns, stops nothing', () => {
  expect(stopped([danger('base-1', { dangerous: false }), danger('a', { weight: 'warn' })])).toEqual([])
})

test('a danger in a stud stops the fixing that found nothing to hold in, by the fact it waits for and not by its name', () => {
  const fix = (id: string, wall: string) => atStage(`fix:${id}`, 'base-units', { wall })
  const works = [
    atStage('stand-up:tall-1', 'talls', { wall: 'a', holes: ['tall-restraint.tall-1.left'] }),
    fix('base-2', 'b'),
    fix('base-3', 'a'),
  ]
  const of = (settledBy: readonly string[], about: readonly string[]) =>
    withHoldPoints(works, [danger('a', { about, settledBy })], []).find((o) => o.stops.length > 0)?.id
  expect(of(['walls.a.studs.s9.confirmed'], ['a', 's9'])).toBe('fix:base-3')
  // Of a stud, though not about it: a unit that would be held there is stopped where it is worked on.
  expect(of(['walls.a.studs.s9.confirmed'], ['a'])).toBe('stand-up:tall-1')
  expect(of(['walls.a.traced'], ['a', 's9'])).toBe('stand-up:tall-1')
})
