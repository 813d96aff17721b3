import { factId } from '../kitchen/fact-id'
import type { Found, Rule } from './rule'

/** F09: a unit that has not come. */
export const rule: Rule = {
  id: 'not-delivered',
  catches: ['F09'],
  dangerous: false,
  basis: { kind: 'common-practice', why: 'a run is begun when everything that stands in it is in the house' },
  why: 'A corner unit found missing on the third day stops the run on both its walls.',
  words: {
    missing:
      '{unit} was looked for and has not come. Its run on {wall} waits for it: its neighbours are set from it or against it.',
    ask: 'Ask whoever sold it for the day it comes, before the day is booked.',
  },
  check: ({ kitchen, name }) =>
    kitchen.units.flatMap((unit): readonly Found[] =>
      unit.delivered === false && unit.kind !== 'appliance-space'
        ? [
            {
              subjects: [unit.id],
              weight: 'ask',
              said: ['missing', { unit: name(unit.id), wall: name(unit.wall) }],
              from: [factId('units', unit.id, 'delivered')],
              ask: ['ask'],
            },
          ]
        : [],
    ),
}
