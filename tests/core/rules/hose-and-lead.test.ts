import { tryRule } from '../../support/rule-trial'

// Middle of the space for the dishwasher: (1 890 + 2 490) / 2 = 2 190 mm. Cold water at 1 480: 710 mm, with bends 860.
const hose = (to: number) => ({ set: 'appliances.dishwasher-1.hoseLength', to }) as const
const lead = (to: number | null) => ({ set: 'appliances.dishwasher-1.leadLength', to }) as const
const serves = (socket: string) =>
  ({ set: `walls.b.accessories.${socket}.serves`, to: 'dishwasher-1' }) as const

tryRule('hose-and-lead', [
  {
    what: 'a hose too short for the way to the water',
    inside: [hose(870)],
    outside: [hose(835)],
    weight: 'stop',
    about: ['dishwasher-1', 'dishwasher-space'],
    says: ['710 mm', '860 mm', '25 mm is missing'],
    waysOut: 1,
  },
  {
    // Its socket is at 1 560 mm: 630 mm, with bends 780.
    what: 'a lead too short for the way to its socket',
    given: [serves('dishwasher-socket')],
    inside: [lead(790)],
    outside: [lead(770)],
    weight: 'stop',
    about: ['dishwasher-1'],
    says: ['630 mm', '780 mm', '10 mm is missing'],
  },
  {
    // Socket 3 is at 850 mm: 1 340 mm away.
    what: 'a lead nobody has measured and a socket far away',
    given: [serves('socket-3')],
    inside: [],
    outside: [lead(null)],
    weight: 'ask',
    about: ['dishwasher-1'],
    says: ['1 340 mm'],
  },
])
