import { tryRule } from '../../support/rule-trial'

// Tall unit 1: 600 x 560 x 1970, carried built. Round a corner lying on its back: 1970 along, 560 across, 600 up; on its
// side 1970 along, 600 across, 560 up.
// Equal corridors of a: L = 2(sqrt2 * a - 560). For L = 1970: a = (985 + 560) / sqrt2 = 1092.5; with 10 mm kept for hands
// out of each width it goes from 1102.5 on.
// Upright it is 600 x 560 on the plan and wants 1970 mm of height, 1980 with 10 for hands.
const built = { set: 'units.tall-1.assembled', to: 'built' } as const
const corner = (width: number, height: number) =>
  ({
    add: 'route',
    item: {
      id: 'hall',
      kind: 'corner',
      width: { value: width, pm: 1 },
      width2: { value: width, pm: 1 },
      ceiling: { value: height, pm: 1 },
    },
  }) as const
const car = (deep: number) =>
  ({
    add: 'route',
    item: {
      id: 'lift',
      kind: 'lift-car',
      width: { value: 740, pm: 1 },
      width2: { value: deep, pm: 1 },
      height: { value: 2000, pm: 1 },
    },
  }) as const

tryRule('way-in', [
  {
    what: 'a tall unit lying down round a corner under a low ceiling',
    given: [built, { remove: 'worktops.worktop-a' }, { remove: 'worktops.worktop-b' }],
    inside: [corner(1107, 1900)],
    outside: [corner(1088, 1900)],
    weight: 'stop',
    about: ['tall-1'],
    // 2(sqrt2 * 1088 - 560) = 1957.3.
    says: ['560 mm wide, nothing longer than 1 957 mm turns'],
    waysOut: 1,
  },
  {
    // 2(sqrt2 * 1098 - 560) - 1970 = 15.6.
    what: 'a corner it turns by the tape, with too little for hands',
    given: [built, { remove: 'worktops.worktop-a' }, { remove: 'worktops.worktop-b' }],
    inside: [corner(1107, 1900)],
    outside: [corner(1098, 1900)],
    weight: 'warn',
    about: ['tall-1'],
    says: ['16 mm to spare'],
  },
  {
    what: 'upright it turns as soon as the ceiling lets it',
    given: [built, { remove: 'worktops.worktop-a' }, { remove: 'worktops.worktop-b' }],
    inside: [corner(1000, 1983)],
    outside: [corner(1000, 1967)],
    weight: 'stop',
    about: ['tall-1'],
  },
  {
    what: 'a corner nobody has measured',
    given: [built],
    outside: [{ add: 'route', item: { id: 'hall', kind: 'corner' } }],
    weight: 'ask',
    about: ['tall-1'],
  },
  {
    // Upright 600 x 560 in the car and 1970 high: the car has to be 600 wide and 560 deep, 570 with 10 mm for hands.
    what: 'a lift car as wide as it should be, and not deep enough',
    given: [built, { remove: 'worktops.worktop-a' }, { remove: 'worktops.worktop-b' }],
    inside: [car(573)],
    outside: [car(557)],
    weight: 'stop',
    about: ['tall-1'],
  },
  {
    what: 'stairs, which widths do not answer',
    given: [built, { remove: 'worktops.worktop-a' }, { remove: 'worktops.worktop-b' }],
    outside: [{ add: 'route', item: { id: 'up', kind: 'stairs', width: { value: 900, pm: 1 } } }],
    weight: 'ask',
    about: ['tall-1'],
    says: ['cannot be worked out'],
  },
])
