import { tryRule } from '../../support/rule-trial'

/*
 * The dishwasher on Garden wall looks across at Side wall, about 3 910 from it there (3 900 at Hall partition, 3 918 at
 * Dining wall). Its front is 580 out. A pier on Side wall, 0.7 to 1.1 m from Dining wall, leaves an aisle of about 3 330
 * less its own depth. The open door takes 600 of it, somebody before it 400.
 */
const pier = (out: number) => ({
  id: 'pier',
  kind: 'boxing',
  wall: 'd',
  left: { at: 700 },
  right: { at: 1100 },
  near: 0,
  out,
  bottom: { down: 1000 },
  top: { up: 200 },
})
const given = [
  { set: 'appliances.dishwasher-1.doorOut', to: 600 },
  { add: 'boxes', item: pier(2000) },
] as const
const out = (to: number) => [{ set: 'boxes.pier.out', to }] as const

tryRule('aisle', [
  {
    what: 'F68: nobody passes the open door of the dishwasher',
    given,
    inside: out(2300),
    outside: out(2360),
    weight: 'warn',
    about: ['dishwasher-space', 'pier'],
    says: ['400 mm'],
  },
  {
    what: 'F68: the door of the dishwasher does not come all the way open',
    given: [{ add: 'boxes', item: pier(2000) }],
    outside: [{ set: 'appliances.dishwasher-1.doorOut', to: 600 }, ...out(2780)],
    weight: 'stop',
    about: ['dishwasher-space', 'pier'],
    says: ['600 mm'],
  },
  {
    what: 'an aisle in which the door matters, and its sheet was not read',
    given,
    inside: out(2000),
    outside: [{ set: 'appliances.dishwasher-1.doorOut', to: null }, ...out(2500)],
    weight: 'ask',
    about: ['dishwasher-space'],
  },
])
