import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'

const drop = (mm: number): Edit => ({ set: 'floor.readings.floor-b-back-4.drop', to: mm })

/** The readings along the front of the second wall, from a line so far above the first. */
const fromUpper = (offset: number): readonly Edit[] => [
  { add: 'lines', item: { id: 'upper', offset } },
  ...(
    [
      [1, 1258],
      [2, 1260],
      [3, 1261],
      [4, 1262],
    ] as const
  ).flatMap(([n, mm]): readonly Edit[] => [
    { set: `floor.readings.floor-b-front-${n}.line`, to: 'upper' },
    { set: `floor.readings.floor-b-front-${n}.drop`, to: mm },
  ]),
]

// Hand-worked: the highest floor read is at −1000, and this one at −1013: 13 lower. With the 13 the other way it is −987,
// 13 higher than any other, 26 above the plane through all of them (about −1013).
tryRule('doubtful-reading', [
  {
    what: 'a difference from the highest floor taken with the wrong sign',
    inside: [drop(1013)],
    outside: [drop(987)],
    weight: 'ask',
    about: ['b'],
    with: ['floor-step'],
    says: ['2 520 mm', '26 mm', '987 mm', '1 013 mm'],
  },
  {
    what: 'a floor above the line',
    inside: [drop(1013)],
    outside: [drop(-1013)],
    weight: 'stop',
    about: ['b'],
    with: [
      'cannot-stand-up',
      'floor-step',
      'heights-clash',
      'leg-out-of-reach',
      'preferred-height-given-up',
      'run-at-opening',
      'unit-in-something-fixed',
    ],
    // Without an order nothing is late in it.
    without: ['heavy-lift-late'],
    says: ['above the line', '−1 013 mm'],
  },
  {
    what: 'a second line that is not as far from the first as was entered',
    // 1258 … 1262 from a line 250 up are 1008 … 1012, as read from the first; from one 262 up they are 12 higher.
    inside: fromUpper(250),
    outside: fromUpper(262),
    weight: 'ask',
    about: ['b'],
    with: ['floor-step'],
    says: ['All 4 floor readings'],
  },
])
