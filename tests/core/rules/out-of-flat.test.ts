import { tryRule } from '../../support/rule-trial'

/** A new home in Britain: its walls may be 3 mm out under a straightedge of 2 m. */
const given = [{ set: 'survey.houseBuilt', to: 2022 }] as const
const bow = (value: number) =>
  [
    {
      add: 'walls.b.straightness',
      // Above all units: nothing is packed for it.
      item: { id: 'bow-x', along: { at: 900 }, height: { up: 1200 }, bow: { value, pm: 0 }, over: 2000 },
    },
  ] as const

tryRule('out-of-flat', [
  {
    what: 'a plastered wall further out than its builder may leave it',
    given,
    inside: bow(3),
    outside: bow(3.5),
    weight: 'warn',
    about: ['b'],
    says: ['2 000 mm', '3 mm'],
  },
  {
    what: 'a belly of the same',
    given,
    inside: bow(-3),
    outside: bow(-4),
    weight: 'warn',
    about: ['b'],
    says: ['bellies out', '1 mm more'],
  },
])
