import { expect, test } from 'vitest'
import { withEdits } from '../../../src/core/kitchen/edit'
import { workThrough } from '../../../src/core/plan/entry'
import { say } from '../../../src/core/words/say'
import { tryRule } from '../../support/rule-trial'
import { soundKitchen } from '../../support/sound-kitchen'

const box = (at: object) =>
  ({ add: 'boxes', item: { id: 'box-x', kind: 'boxing', wall: 'a', near: 0, ...at } }) as const

// Wall unit 4: 2 940 to 3 540 mm on Hall partition, sides 18 mm, 16 mm of space behind its back, 300 mm deep, 392 to 1 112 mm up.
const behindWallUnit = (out: number) =>
  box({ left: { at: 3100 }, right: { at: 3300 }, out, bottom: { up: 500 }, top: { up: 1000 } })
// Space behind base units: 40 mm. Base unit 1: 640 to 1 240 mm; its sides are 18 mm.
const behindBases = (left: number) =>
  box({ left: { at: left }, right: { at: left + 80 }, out: 30, bottom: { down: 800 }, top: { down: 300 } })
// The end panel on Garden wall ends at 1 890 + 600 + 18 = 2 508 mm.
const radiator = (left: number) =>
  box({
    kind: 'radiator',
    wall: 'b',
    left: { at: left },
    right: { at: left + 400 },
    out: 100,
    bottom: { down: 900 },
    top: { down: 400 },
  })

tryRule('unit-in-box', [
  {
    what: 'a boxing deeper than the space behind a wall unit',
    inside: [behindWallUnit(14)],
    outside: [behindWallUnit(30)],
    weight: 'stop',
    about: ['wall-4', 'box-x'],
    says: ['3 100 mm', '3 300 mm', '30 mm', '270 mm'],
  },
  {
    what: 'about as deep as that space',
    inside: [behindWallUnit(14)],
    outside: [behindWallUnit(16)],
    weight: 'ask',
    about: ['wall-4'],
  },
  {
    what: 'a pipe in the space behind the backs that meets the sides of two units',
    inside: [behindBases(700)],
    outside: [behindBases(1200)],
    weight: 'warn',
    about: ['base-1'],
    says: ['30 mm'],
  },
  {
    what: 'a radiator beside the end of a run',
    inside: [radiator(2565)],
    outside: [radiator(2540)],
    weight: 'warn',
    about: ['end-panel-1'],
    says: ['32 mm', '50 mm'],
  },
  {
    what: 'nobody has measured how high it reaches',
    inside: [behindWallUnit(14)],
    outside: [box({ left: { at: 3100 }, right: { at: 3300 }, out: 30, bottom: { up: 500 }, top: {} })],
    weight: 'ask',
    about: ['wall-4'],
  },
])

function withoutOrder(edit: ReturnType<typeof box>) {
  const outcome = workThrough(withEdits(soundKitchen(), [edit]))
  if (outcome.kind !== 'no-order') throw new Error(outcome.kind)
  return outcome.noPlan.findings.filter(({ rule }) => rule === 'unit-in-box')
}

test('unit-in-box: so deep that no unit goes in front, it says by how much beside having no order', () => {
  const [found] = withoutOrder(
    box({ left: { at: 700 }, right: { at: 1000 }, out: 200, bottom: { down: 1000 }, top: { up: 1390 } }),
  )
  // Base unit 1 is 560 mm deep: 560 - 200 = 360 mm are left.
  expect(found?.weight).toBe('stop')
  expect(say(found?.say as never).replace(/[\u202f\u202f\u00a0]/g, ' ')).toContain('360 mm')
})

test('unit-in-box: a beam that a wall unit reaches up into', () => {
  const [found] = withoutOrder(
    box({
      kind: 'beam',
      left: { at: 2900 },
      right: { at: 3900 },
      out: 350,
      bottom: { up: 1100 },
      top: { up: 1390 },
    }),
  )
  // Top of the wall units 1 112 mm, underside of the beam 1 100 mm.
  expect(found?.weight).toBe('stop')
  expect(say(found?.say as never).replace(/[\u202f\u202f\u00a0]/g, ' ')).toContain('12 mm too tall')
})
