import { hasValue } from '../figure'
import { type Found, lessThan, margin, missing, type Rule } from './rule'

const COLD: readonly string[] = ['fridge', 'freezer', 'fridge-freezer']

/** F65: a built-in cold appliance without the openings its sheet asks. */
export const rule: Rule = {
  id: 'vent-area',
  catches: ['F65'],
  dangerous: true,
  basis: { kind: 'maker' },
  why: 'A fridge that cannot breathe runs hot, spoils food and fails.',
  words: {
    short:
      '{name} asks openings of {asked} cm² in plinth and top; {planned} cm² are planned. {short} cm² are missing.',
    near: '{name} asks openings of {asked} cm² in plinth and top; {planned} cm² are planned, too near to tell.',
    'not-known':
      '{name} asks openings of {asked} cm² in plinth and top, and nobody has said how much there will be.',
    ask: 'Its sheet, for this housing: below, above and behind.',
  },
  check: ({ kitchen, name }) =>
    kitchen.appliances.flatMap((appliance): readonly Found[] => {
      const { ventArea: asked, ventPlanned: planned } = appliance
      if (!COLD.includes(appliance.kind) || !hasValue(asked)) return []
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
