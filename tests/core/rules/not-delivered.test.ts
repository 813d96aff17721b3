import { tryRule } from '../../support/rule-trial'

tryRule('not-delivered', [
  {
    what: 'the corner unit has not come',
    inside: [{ set: 'units.corner-1.delivered', to: null }],
    outside: [{ set: 'units.corner-1.delivered', to: false }],
    weight: 'ask',
    about: ['corner-1'],
    says: ['Corner base unit 1', 'Hall partition'],
  },
])
