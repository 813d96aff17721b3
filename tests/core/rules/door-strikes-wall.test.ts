import { tryRule } from '../../support/rule-trial'

/*
 * The corner of Side wall and Hall partition, made square; the doors of tall unit 1 are hinged 41.5 from it, 597 wide,
 * with handles of 30 that end 20 in from the free edge, 577 from the hinges. At 90.5° the handle's end is
 * 41.5 − 577·sin 0.5° − 30·cos 0.5° = 6.5 from the wall; at 95° 41.5 − 50.3 − 29.9 = −38.7. It meets it where
 * 577·sin a + 30·cos a = 41.5: a = 1.1° past square.
 */
const opens = (to: number) =>
  ['upper', 'lower'].map((which) => ({ set: `units.tall-1.doors.door-${which}.opens`, to }) as const)

tryRule('door-strikes-wall', [
  {
    what: 'F85: hinges that let a door go past square into the wall',
    given: [{ set: 'walls.d.cornerRight', to: { angle: { value: 90, pm: 0 } } }],
    inside: opens(90.5),
    outside: opens(95),
    weight: 'warn',
    about: ['tall-1', 'd'],
    says: ['95°', '91.1°', '39 mm'],
    waysOut: 1,
  },
])
