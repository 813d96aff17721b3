import { hasValue } from '../figure'
import { type Found, lessThan, margin, missing, type Rule } from './rule'

/** F98: a hood duct longer, or with more bends, than its sheet allows. */
export const rule: Rule = {
  id: 'duct',
  heading: 'The duct of the hood',
  catches: ['F98'],
  dangerous: false,
  basis: { kind: 'maker' },
  why: 'Past its length and bends a hood only makes a noise.',
  words: {
    length: 'The duct of {hood} is {length} long; its sheet allows {most}. It is {over} too long.',
    bends: 'The duct of {hood} has {bends} bends; its sheet allows {most}.',
    ask: 'Find another way out for it, clear of joists and lintels, or take a hood that cleans the air and gives it back.',
  },
  check: ({ kitchen, name }) =>
    kitchen.appliances
      .filter(({ kind }) => kind === 'hood')
      .flatMap((hood): readonly Found[] => {
        const length = lessThan(hood.ductLengthMax, hood.ductLength, 'allowed less planned')
        const bends = lessThan(hood.ductBendsMax, hood.ductBends, 'allowed less planned')
        const common = { about: [hood.id], weight: 'warn' as const, ask: ['ask'] as const }
        const values = { hood: name(hood.id) }
        return [
          ...(hasValue(length) && margin(length) === 'short'
            ? [
                {
                  ...common,
                  subjects: [hood.id, 'length'],
                  said: [
                    'length',
                    { ...values, length: hood.ductLength, most: hood.ductLengthMax, over: missing(length) },
                  ] as const,
                },
              ]
            : []),
          ...(hasValue(bends) && bends.value < 0
            ? [
                {
                  ...common,
                  subjects: [hood.id, 'bends'],
                  said: ['bends', { ...values, bends: hood.ductBends, most: hood.ductBendsMax }] as const,
                },
              ]
            : []),
        ]
      }),
}
