import { hasValue } from '../figure'
import { type Found, lessThan, margin, missing, type Rule } from './rule'

/** Whatever is built in and has to breathe: what is cold, and what is hot. */
const BREATHING: readonly string[] = ['fridge', 'freezer', 'fridge-freezer', 'oven', 'microwave']

/** F65, F55: a built-in cold appliance, or an oven, without the openings its sheet asks. */
export const rule: Rule = {
  id: 'vent-area',
  heading: 'Air for an appliance',
  catches: ['F55', 'F65'],
  dangerous: true,
  basis: { kind: 'maker' },
  why: 'A fridge that cannot breathe runs hot, spoils food and fails; an oven cooks its housing.',
  words: {
    short:
      '{name} asks openings of {asked} cm² in its housing; {planned} cm² are planned. {short} cm² are missing.',
    near: '{name} asks openings of {asked} cm² in its housing; {planned} cm² are planned, too near to tell.',
    'not-known':
      '{name} asks openings of {asked} cm² in its housing, and nobody has said how much there will be.',
    ask: 'Read its sheet for this housing: below, above and behind.',
  },
  check: ({ kitchen, name }) =>
    kitchen.appliances.flatMap((appliance): readonly Found[] => {
      const { ventArea: asked, ventPlanned: planned } = appliance
      if (!BREATHING.includes(appliance.kind) || !hasValue(asked)) return []
      const left = lessThan(planned, asked, 'openings planned less openings asked')
      const key = margin(left)
      if (key === null) return []
      return [
        {
          subjects: [appliance.id],
          about: [appliance.id, ...(appliance.over === null ? [] : [appliance.over])],
          weight: key === 'short' ? 'stop' : 'ask',
          said: [
            key,
            {
              name: name(appliance.id),
              asked,
              planned,
              ...(key === 'short' ? { short: missing(left) } : {}),
            },
          ],
          figures: [left],
          ask: ['ask'],
        },
      ]
    }),
}
