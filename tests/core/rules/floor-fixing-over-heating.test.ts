import { tryRule } from '../../support/rule-trial'

const cleat = { set: 'units.base-4.stands', to: 'floor-cleat' } as const

tryRule('floor-fixing-over-heating', [
  {
    what: 'a unit on a floor cleat over heating of known depth',
    inside: [
      { set: 'floor.heating', to: true },
      { set: 'floor.heatingDepth', to: 45 },
    ],
    outside: [cleat, { set: 'floor.heating', to: true }, { set: 'floor.heatingDepth', to: 45 }],
    weight: 'ask',
    about: ['base-4'],
    says: ['45 mm'],
  },
  {
    what: 'nobody has said whether there is any',
    given: [],
    inside: [{ set: 'floor.heating', to: null }],
    outside: [{ set: 'floor.heating', to: null }, cleat],
    weight: 'ask',
    about: ['base-4'],
    says: ['Nobody has said'],
  },
])
