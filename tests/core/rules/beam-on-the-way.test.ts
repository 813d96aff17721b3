import { expect, test } from 'vitest'
import { withEdits } from '../../../src/core/kitchen/edit'
import { workThrough } from '../../../src/core/plan/entry'
import { tryRule } from '../../support/rule-trial'
import { soundKitchen } from '../../support/sound-kitchen'

// A beam across the whole room, 700 to 900 mm out from Hall partition. The tall unit reaches 1 112 mm and is walked in 10 mm
// higher: 1 122 mm.
const beam = (up: number, near = 700) =>
  ({
    add: 'boxes',
    item: {
      id: 'beam-x',
      kind: 'beam',
      wall: 'a',
      left: { at: 0 },
      right: { at: 3900 },
      near,
      out: 900,
      bottom: { up },
      top: { up: 1391 },
    },
  }) as const

tryRule('beam-on-the-way', [
  {
    what: 'a tall unit that goes under a beam by a hair',
    inside: [beam(1140)],
    outside: [beam(1122.5)],
    weight: 'ask',
    about: ['tall-1', 'beam-x'],
  },
])

test('beam-on-the-way: a beam that shuts the only way says by how much it is too low', () => {
  const outcome = workThrough(withEdits(soundKitchen(), [beam(1100, 600)]))
  if (outcome.kind !== 'no-order') throw new Error(outcome.kind)
  const found = outcome.noPlan.findings.find(({ rule }) => rule === 'beam-on-the-way')
  expect(found?.weight).toBe('stop')
  expect(found?.say.values['short']).toMatchObject({ value: 22 })
})
