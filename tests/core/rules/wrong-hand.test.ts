import { tryRule } from '../../support/rule-trial'

// The corner unit ends at 3 840 mm on a wall of 3 900 mm: the corner is on its right, 60 mm away.
tryRule('wrong-hand', [
  {
    what: 'a left-handed unit in a corner on the right',
    inside: [{ set: 'units.corner-1.hand', to: 'either' }],
    outside: [{ set: 'units.corner-1.hand', to: 'left' }],
    weight: 'stop',
    about: ['corner-1'],
    says: ['on its left', 'on its right, 60 mm away'],
    waysOut: 1,
  },
])
