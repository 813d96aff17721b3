import { tryRule } from '../../support/rule-trial'

// The dishwasher space runs from 1 890 to 2 490 mm on Garden wall; the tape holds ± 1 mm and the places ± 1 or so.
const isolator = (at: number, down = 500) =>
  ({
    add: 'walls.b.accessories',
    item: {
      id: 'switch-x',
      kind: 'isolator',
      along: { at },
      height: { down },
      width: 86,
      tall: 86,
      standsProud: 10,
      live: true,
    },
  }) as const

tryRule('isolator-behind', [
  {
    what: 'the switch of a dishwasher behind the dishwasher, and one in the cupboard beside it',
    inside: [isolator(1880)],
    outside: [isolator(1900)],
    weight: 'stop',
    about: ['dishwasher-space'],
    says: ['isolator on Garden wall', '1 900 mm'],
  },
  {
    // The space is drawn from -858, where units end over their legs; the dishwasher stands on the floor, at -1 008.
    what: 'the switch near the floor, below the units beside it',
    inside: [isolator(1880, 930)],
    outside: [isolator(1900, 930)],
    weight: 'stop',
    about: ['dishwasher-space'],
  },
])
