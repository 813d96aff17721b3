import { tryRule } from '../../support/rule-trial'

/*
 * Base unit 1: a door 597 wide and 18 thick, sides of 18, so a drawer box begins 18 + 12.5 = 30.5 in. The open leaf is
 * 1.5 + 597·cos a + 18·sin a in, and 3 is kept off it: at 89.8° 1.5 + 2.1 + 18 + 3 = 24.6, at 88° 1.5 + 20.8 + 18 + 3 = 43.3, 12.8 too
 * far. Precision: 0.1° is 1.0, sheets and runner ± 0.5 each: ± 2.6.
 */
const behind = (unit: string) =>
  [
    {
      add: `units.${unit}.drawers`,
      item: { id: 'pull-out', inner: true, travel: 450, height: 200, mass: 4 },
    },
  ] as const
const opens = (to: number | null) => [{ set: 'units.base-1.doors.door.opens', to }] as const

tryRule('inner-drawer-fouled', [
  {
    what: 'F46: hinges that do not open far enough for what is behind the door',
    given: behind('base-1'),
    inside: opens(89.8),
    outside: opens(88),
    weight: 'stop',
    about: ['base-1'],
    says: ['88°', '13 mm'],
    waysOut: 1,
  },
  {
    what: 'nobody knows how far they open',
    given: behind('base-1'),
    outside: opens(null),
    weight: 'ask',
    about: ['base-1'],
  },
  {
    what: 'F46: a wall that stops the door, its hinges opening far enough',
    given: behind('tall-1'),
    outside: ['upper', 'lower'].map(
      (which) => ({ set: `units.tall-1.doors.door-${which}.handle`, to: 60 }) as const,
    ),
    weight: 'stop',
    about: ['tall-1'],
    says: ['Side wall stops the door'],
    with: ['door-stops-short'],
    without: ['door-strikes-wall'],
  },
])
