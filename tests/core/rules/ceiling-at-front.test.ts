import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'

/** A ceiling read along one wall only: 1396 at the wall, and so high 300 out from it. */
const slope = (at300: number): readonly Edit[] => [
  ...['ceiling-4', 'ceiling-5', 'ceiling-6'].map((id): Edit => ({ remove: `ceiling.${id}` })),
  ...[300, 3600].map(
    (along, i): Edit => ({
      add: 'ceiling',
      item: { id: `at-wall-${i}`, at: { wall: 'a', along: { at: along }, out: 0 }, height: { up: 1396 } },
    }),
  ),
  ...['ceiling-1', 'ceiling-2', 'ceiling-3'].map(
    (id): Edit => ({ set: `ceiling.${id}.height`, to: { up: at300 } }),
  ),
]

// Hand-worked: the units end at 1112. The tall unit's front is 560 + 19 = 579 out; its door, 597 wide, reaches 1176 out.
// 1340 at 300 falls 0.187 a millimetre: at 1176 the ceiling is at 1176. 1300 falls 0.32: at 579 it is at 1211, and the open
// door meets it at 1020, 92 too high. 1235 falls 0.537: at 579 it is at 1085, 27 too low for the front.
tryRule('ceiling-at-front', [
  {
    what: 'a door that meets the slope as it opens',
    inside: slope(1340),
    outside: slope(1300),
    weight: 'stop',
    about: ['tall-1'],
    says: ['The door of tall unit 1', '92 mm'],
  },
  {
    what: 'a front that does not fit under the slope',
    inside: slope(1340),
    outside: slope(1235),
    weight: 'stop',
    about: ['tall-1'],
    says: ['The front of tall unit 1', '27 mm'],
  },
])
