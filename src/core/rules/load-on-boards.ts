import { derive, hasValue } from '../figure'
import { factId } from '../kitchen/fact-id'
import { massOfWorktop } from '../lifting/worktop-mass'
import type { Found, Rule } from './rule'

const BOARDED: readonly unknown[] = ['suspended-timber', 'boards']

/** F107: a heavy top on a floor of boards: how much each leg carries, and what nobody knows of the floor. */
export const rule: Rule = {
  id: 'load-on-boards',
  heading: 'Stone on a boarded floor',
  catches: ['F107'],
  dangerous: true,
  basis: {
    kind: 'common-practice',
    why: 'a boarded floor sags under stone, and a foot between joists goes through a board; the joists and a spreader decide',
  },
  why: 'An island with a stone top puts its whole mass on a few feet in the middle of the floor.',
  words: {
    load: '{worktop} weighs {mass} and stands on {feet} feet on a boarded floor: about {each} on each foot from the top alone. Nobody has said where the joists are.',
    'not-known':
      '{worktop} is of stone and stands on a boarded floor; its mass is not known, nor where the joists are.',
    ask: 'Ask somebody competent in floors: joists, their span, and a spreader under the feet.',
  },
  check: (site) => {
    const { kitchen, unit } = site
    if (!BOARDED.includes(kitchen.floor.kind)) return []
    return kitchen.worktops.flatMap((worktop): readonly Found[] => {
      const under = worktop.over.flatMap((id) => unit(id) ?? [])
      if (worktop.material !== 'stone' || under.length === 0) return []
      const feet = under.reduce((sum, { legs }) => sum + legs.length, 0)
      const mass = massOfWorktop(worktop, site).whole
      const each = derive(
        'kg',
        { kind: 'geometry', why: 'mass shared among the feet' },
        [mass],
        (m) => (m as number) / Math.max(1, feet),
      )
      const known = hasValue(each) && feet > 0
      return [
        {
          subjects: [worktop.id],
          about: [worktop.id, ...worktop.over],
          weight: 'ask',
          said: known
            ? ['load', { worktop: site.name(worktop.id), mass, feet, each }]
            : ['not-known', { worktop: site.name(worktop.id) }],
          from: [
            'floor.kind',
            factId('worktops', worktop.id, 'material'),
            factId('worktops', worktop.id, 'mass'),
          ],
          ask: ['ask'],
        },
      ]
    })
  },
}
