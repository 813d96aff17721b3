import { tryRule } from '../../support/rule-trial'

// Trap 300 mm below the worktop's top, worktop 38: 262 mm into the sink unit.
const drawer = (boxTop: number | null) =>
  ({
    add: 'units.base-5.drawers',
    item: {
      id: 'pull-out',
      travel: 450,
      height: 350,
      mass: 6,
      handle: 30,
      boxTop: boxTop === null ? null : { value: boxTop, pm: 0 },
    },
  }) as const
const trap = { set: 'appliances.sink-1.outlet', to: { value: 300, pm: 0 } } as const

tryRule('drawer-and-trap', [
  {
    what: 'a pull-out whose box begins above the underside of the trap',
    given: [trap],
    inside: [drawer(264)],
    outside: [drawer(255)],
    weight: 'stop',
    about: ['base-5', 'sink-1'],
    says: ['262 mm', '7 mm is missing'],
  },
  {
    what: 'drawers under a sink, and nobody knows how deep the trap hangs',
    outside: [drawer(255)],
    weight: 'ask',
    about: ['base-5'],
  },
])
