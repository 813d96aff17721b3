import { tryRule } from '../../support/rule-trial'

// Wall unit 4 from 2 940 to 3 540 mm, top at 1 112; lifted 12 mm to hook on, 10 mm for fingers: 22 mm over it, 1 134.
// Its height screws wind down 8 mm: 14 mm are enough then.
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
    outside: [boxing(1120)],
    weight: 'stop',
    about: ['wall-4', 'box-x'],
    says: ['22 mm', '8 mm', '6 mm is missing'],
  },
  {
    what: 'a boxing so close over one end that it goes under with its screws wound down, and no other way',
    inside: [boxing(1138)],
    outside: [boxing(1130)],
    weight: 'warn',
    about: ['wall-4', 'box-x'],
    says: ['22 mm', '18 mm', 'down by 8 mm'],
  },
  {
    what: 'a boxing so close that it could not even be lifted is said, and the rest of the work still has an order',
    inside: [boxing(1138)],
    outside: [boxing(1115)],
    weight: 'stop',
    about: ['wall-4', 'box-x'],
    says: ['3 mm', '11 mm is missing'],
  },
])
