import { tryRule } from '../../support/rule-trial'

tryRule('floor-changed', [
  {
    what: 'levelling compound was poured after the drops were read',
    inside: [{ set: 'floor.changed', to: false }],
    outside: [{ set: 'floor.changed', to: true }],
    weight: 'stop',
  },
])
