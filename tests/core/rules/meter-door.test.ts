import { tryRule } from '../../support/rule-trial'

/*
 * A consumer unit on Hall partition, level with wall unit 1, which runs from 640 to 1 240 with sides of 18. A flap of w
 * in the middle, at 940, wants w / 2 + 5 each side of it and has 300 − 18 = 282: 554 is the most. Precision: the left end
 * ± 1.5, half a flap ± 1, board ± 0.5, its place ± 1.
 */
const board = (edits: Readonly<Record<string, unknown>>) => ({
  id: 'board',
  kind: 'consumer-unit',
  wall: 'a',
  along: { at: 940 },
  height: { up: 700 },
  out: 100,
  door: 300,
  panel: true,
  ...edits,
})
const set = (name: string, to: unknown) => [{ set: `access.board.${name}`, to }] as const

tryRule('meter-door', [
  {
    what: 'F111: a flap too wide for the unit its box is in',
    given: [{ add: 'access', item: board({}) }],
    inside: set('door', 540),
    outside: set('door', 570),
    weight: 'stop',
    about: ['wall-1'],
    says: ['570 mm', '8 mm'],
  },
  {
    what: 'F111: a flap that comes across the sides of two units at 1 240',
    given: [{ add: 'access', item: board({}) }],
    inside: set('along.at', 940),
    outside: set('along.at', 1300),
    weight: 'stop',
    about: ['wall-2'],
  },
  {
    what: 'a flap nobody has measured',
    given: [{ add: 'access', item: board({}) }],
    outside: set('door', null),
    weight: 'ask',
    about: ['wall-1'],
  },
  {
    // On Side wall, 3 113 long: the front and handle of tall unit 1 stand 609 out from Hall partition, so from 3 113 − 609 = 2 504 on it
    // is 40 in front of that wall. Somebody 600 wide before the middle of the box reaches 300 past it: 2 204.
    what: 'F111: nobody can stand in front of it',
    given: [{ add: 'access', item: board({ wall: 'd', along: { at: 1500 }, height: { up: 300 } }) }],
    inside: set('along.at', 2190),
    outside: set('along.at', 2225),
    weight: 'ask',
    about: ['tall-1'],
    says: ['700 mm'],
  },
])
