import { expect, test } from 'vitest'
import { withEdits } from '../../../src/core/kitchen/edit'
import { workThrough } from '../../../src/core/plan/entry'
import { tryRule } from '../../support/rule-trial'
import { soundKitchen } from '../../support/sound-kitchen'

const trim = (at: object) =>
  ({ add: 'boxes', item: { id: 'trim-x', kind: 'skirting', near: 0, ...at } }) as const

// The tall unit begins 40 mm from Side wall, whose right end is that corner; its carcass begins at -858 mm.
const onSideWall = (out: number) =>
  trim({
    wall: 'd',
    left: { at: 2640 },
    right: { at: 3113 },
    out,
    bottom: { down: 1003 },
    top: { down: 800 },
  })
// Base unit 1 stands from 640 to 1 240 mm and its carcass begins at -858 mm.
const behindBase = (top: number) =>
  trim({
    wall: 'a',
    left: { at: 700 },
    right: { at: 1200 },
    out: 18,
    bottom: { down: 1003 },
    top: { down: top },
  })

tryRule('trim-in-the-way', [
  {
    what: 'a skirting on the wall beside the end of a run',
    inside: [onSideWall(36)],
    outside: [onSideWall(46)],
    weight: 'stop',
    about: ['tall-1', 'trim-x'],
    says: ['46 mm', '40 mm', '6 mm is missing'],
    waysOut: 1,
  },
  {
    what: 'a skirting higher than the underside of the carcass behind it',
    inside: [behindBase(865)],
    outside: [behindBase(850)],
    weight: 'warn',
    about: ['base-1'],
    says: ['18 mm'],
    waysOut: 1,
  },
])

test('trim-in-the-way: a coving that the top of a wall unit goes up into', () => {
  const coving = trim({
    kind: 'coving',
    wall: 'a',
    left: { at: 2900 },
    right: { at: 3900 },
    out: 60,
    bottom: { up: 1100 },
    top: { up: 1391 },
  })
  const outcome = workThrough(withEdits(soundKitchen(), [coving]))
  const findings =
    outcome.kind === 'plan'
      ? outcome.plan.findings
      : outcome.kind === 'no-order'
        ? outcome.noPlan.findings
        : []
  const found = findings.find(({ rule }) => rule === 'trim-in-the-way')
  // Top of the wall units 1 112 mm, underside of the coving 1 100 mm.
  expect(found?.weight).toBe('stop')
  expect(found?.say.values['over']).toMatchObject({ value: 12 })
})
