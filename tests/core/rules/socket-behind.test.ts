import { tryRule } from '../../support/rule-trial'

// Space 580 mm deep, dishwasher 570 mm: 10 mm for a socket and its plug.
const socket = (standsProud: number | null) =>
  ({
    add: 'walls.b.accessories',
    item: {
      id: 'socket-x',
      kind: 'socket',
      along: { at: 2200 },
      height: { down: 500 },
      width: 86,
      tall: 86,
      standsProud,
      live: true,
    },
  }) as const
const deeper = { set: 'units.dishwasher-space.depth', to: { value: 580, pm: 0 } } as const
const sheet = { set: 'appliances.dishwasher-1.depthNeeded', to: { value: 550, pm: 0 } } as const

tryRule('socket-behind', [
  {
    what: 'a plug deeper than what is left behind the dishwasher',
    given: [deeper, sheet],
    inside: [socket(28)],
    outside: [socket(45)],
    weight: 'stop',
    about: ['dishwasher-space'],
    says: ['15 mm of depth is missing'],
  },
  {
    what: 'nobody has said how far it stands out',
    given: [deeper, sheet],
    outside: [socket(null)],
    weight: 'ask',
    about: ['dishwasher-space'],
  },
])
