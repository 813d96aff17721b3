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
// Base unit 4 stands from 640 mm on Garden wall.
const beside = (at: number) =>
  ({
    add: 'walls.b.accessories',
    item: {
      id: 'old',
      kind: 'cooker-outlet',
      along: { at },
      height: { down: 550 },
      width: 86,
      tall: 86,
      standsProud: 90,
      live: false,
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
    // Where readings cannot tell whether it is behind the unit, it is asked about, however far it stands out.
    what: 'an outlet at the very side of the last unit of a wall',
    inside: [beside(630)],
    outside: [beside(640)],
    weight: 'ask',
    about: ['base-4'],
    says: ['may be in the way'],
  },
  {
    what: 'nobody has said how far',
    outside: [outlet(null, null)],
    weight: 'ask',
    about: ['base-2'],
    says: ['not known to be dead'],
  },
])
