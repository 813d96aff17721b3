import { derive, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import type { Found, Rule } from './rule'

/** F106: a breakfast bar or end that reaches further past what carries it than its maker allows. */
export const rule: Rule = {
  id: 'overhang',
  heading: 'A worktop that reaches too far',
  catches: ['F106'],
  dangerous: true,
  basis: { kind: 'maker' },
  why: 'People lean and sit on an overhang; stone breaks without warning.',
  words: {
    over: '{worktop} reaches {reach} past what carries it; its maker allows {most}. It is {over} too far without supports.',
    'may-be-over':
      '{worktop} reaches {reach} past what carries it and its maker allows {most}: too near to tell. Measure again, or plan supports.',
    'not-known':
      '{worktop} reaches {reach} past what carries it, and nobody has entered how far its maker allows. It may need supports.',
    ask: 'Ask the maker of the worktop, for this material and thickness.',
  },
  check: ({ kitchen }) =>
    kitchen.worktops.flatMap((worktop): readonly Found[] => {
      const { freeOverhang: reach, freeOverhangMax: most } = worktop
      if (!hasValue(reach) || reach.value <= 0) return []
      const name = worktop.name ?? 'The worktop'
      const over = derive(
        'mm',
        { kind: 'geometry', why: 'reach less what is allowed' },
        [reach, most],
        (r, m) => (r as number) - (m as number),
      )
      const common = { subjects: [worktop.id], about: [worktop.id, ...worktop.over], ask: ['ask'] as const }
      const from = [factId('worktops', worktop.id, 'freeOverhangMax')]
      if (!hasValue(over)) {
        return [{ ...common, weight: 'ask', said: ['not-known', { worktop: name, reach }], from }]
      }
      if (over.value <= -over.pm) return []
      const sure = over.value > over.pm
      return [
        {
          ...common,
          weight: sure ? 'stop' : 'ask',
          said: [sure ? 'over' : 'may-be-over', { worktop: name, reach, most, over }],
          figures: [over],
        },
      ]
    }),
}
