import { expect, test } from 'vitest'
import { standingAt } from '../../../src/core/plan/standing-at'
import { keptIn } from '../../../src/core/views/kept'
import { roomShape } from '../../../src/core/views/room-shape'
import { viewSubject } from '../../../src/core/views/subject'
import type { View } from '../../../src/core/views/view'
import { planOf } from '../../support/kitchens'

const plan = planOf('l-shape')
const standing = standingAt(
  plan,
  plan.operations.findIndex((o) => o.id === 'join:base-1+base-2'),
  0,
)
const subject = viewSubject(plan, standing, roomShape(plan), 1.6)
const from = (x: number): View => ({
  azimuth: 0,
  elevation: 0,
  eye: { x, y: -6000, z: 500 },
  target: { x: 1600, y: -300, z: -500 },
  hidden: ['b'],
  seen: { part: 1, fixings: 1, marks: 1, place: 1 },
  score: 0,
})

test('units beside what is in hand stay though their wall is left out; those before it go', () => {
  expect(keptIn(standing, subject, from(1600))).toEqual(expect.arrayContaining(['base-4', 'base-5']))
  // From the other side of the corner they are between the eye and the work.
  const behind = { ...from(1600), eye: { x: 8000, y: -2000, z: 300 } }
  expect(keptIn(standing, subject, behind)).not.toContain('base-5')
})

test('where no wall is left out nothing is asked', () => {
  expect(keptIn(standing, subject, { ...from(1600), hidden: [] })).toEqual([])
})
