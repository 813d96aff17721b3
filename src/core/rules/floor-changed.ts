import type { Rule } from './rule'

/** F108: a floor made higher after it was read. */
export const rule: Rule = {
  id: 'floor-changed',
  heading: 'The floor has changed since it was read',
  catches: ['F108'],
  dangerous: false,
  basis: {
    kind: 'geometry',
    why: 'legs, plinths and spaces for appliances are counted from the floor as it was read',
  },
  why: 'Levelling compound poured after the survey takes its thickness off every leg, plinth and appliance space.',
  words: {
    changed:
      'The floor was changed after it was read: screed, levelling compound or a new covering. Every leg, plinth and appliance height here is counted from the old floor.',
    ask: 'Read the drops again at the same places, enter them, and say that the floor has not changed since.',
  },
  check: ({ kitchen }) =>
    kitchen.floor.changed === true && kitchen.units.length > 0
      ? [
          {
            subjects: ['floor'],
            weight: 'stop',
            said: ['changed'],
            from: ['floor.changed', ...kitchen.floor.readings.map(({ id }) => `floor.readings.${id}.drop`)],
            ask: ['ask'],
          },
        ]
      : [],
}
