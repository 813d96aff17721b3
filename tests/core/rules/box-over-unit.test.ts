import { tryRule } from '../../support/rule-trial'

// Wall unit 4 from 2 940 to 3 540 mm, top at 1 112; lifted 12 mm to hook on, 10 mm for fingers: 22 mm over it, 1 134.
const boxing = (up: number) =>
  ({
    add: 'boxes',
    item: {
      id: 'box-x',
      kind: 'boxing',
      wall: 'a',
      left: { at: 3400 },
      right: { at: 3800 },
      near: 0,
      out: 200,
      bottom: { up },
      top: { up: 1391 },
    },
  }) as const

tryRule('box-over-unit', [
  {
    what: 'a boxing close over one end of a wall unit',
    inside: [boxing(1138)],
    outside: [boxing(1126)],
    weight: 'stop',
    about: ['wall-4', 'box-x'],
    says: ['22 mm', '14 mm', '8 mm is missing'],
  },
])
