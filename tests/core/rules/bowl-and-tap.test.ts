import { tryRule } from '../../support/rule-trial'

// Sink unit 800 wide of 18 mm board: 800 - 36 - 20 = 744 mm for a hole.
const hole = (width: number) =>
  ({ set: 'worktops.worktop-b.cutouts.sink-hole.width', to: { value: width, pm: 0 } }) as const
const tap = (fromWall: number) =>
  [
    { set: 'appliances.sink-1.tapFromWall', to: { value: fromWall, pm: 0 } },
    { set: 'appliances.sink-1.tapLever', to: { value: 70, pm: 0 } },
  ] as const

tryRule('bowl-and-tap', [
  {
    what: 'a hole wider than there is between the sides',
    inside: [hole(740)],
    outside: [hole(750)],
    weight: 'stop',
    about: ['sink-1', 'base-5'],
    says: ['744 mm', '6 mm is missing'],
  },
  {
    what: 'a lever that hits the wall',
    inside: [...tap(70)],
    outside: [...tap(65)],
    weight: 'stop',
    about: ['sink-1'],
    says: ['5 mm is missing'],
  },
])
