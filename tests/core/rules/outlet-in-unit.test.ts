import { tryRule } from '../../support/rule-trial'

// Behind base unit 2 (1 240 to 2 140 mm on Hall partition) there are 40 mm.
const outlet = (standsProud: number | null, live: boolean | null = true) =>
  ({
    add: 'walls.a.accessories',
    item: {
      id: 'old',
      kind: 'cooker-outlet',
      along: { at: 1750 },
      height: { down: 550 },
      width: 86,
      tall: 86,
      standsProud,
      live,
    },
  }) as const

tryRule('outlet-in-unit', [
  {
    what: 'an old outlet that stands out further than the space behind the back',
    inside: [outlet(35)],
    outside: [outlet(60)],
    weight: 'stop',
    about: ['base-2'],
    says: ['and live', '20 mm further'],
    waysOut: 1,
  },
  {
    what: 'nobody has said how far',
    outside: [outlet(null, null)],
    weight: 'ask',
    about: ['base-2'],
    says: ['not known to be dead'],
  },
])
