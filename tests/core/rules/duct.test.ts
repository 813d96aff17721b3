import { tryRule } from '../../support/rule-trial'

const allowed = [
  { set: 'appliances.hood-1.ductLengthMax', to: { value: 5000, pm: 0 } },
  { set: 'appliances.hood-1.ductBendsMax', to: 2 },
] as const

tryRule('duct', [
  {
    what: 'longer than its sheet allows',
    given: [...allowed],
    inside: [{ set: 'appliances.hood-1.ductLength', to: 4990 }],
    outside: [{ set: 'appliances.hood-1.ductLength', to: 5020 }],
    weight: 'warn',
    about: ['hood-1'],
    says: ['20 mm too long'],
  },
  {
    what: 'a bend more than its sheet allows',
    given: [...allowed],
    inside: [{ set: 'appliances.hood-1.ductBends', to: 2 }],
    outside: [{ set: 'appliances.hood-1.ductBends', to: 3 }],
    weight: 'warn',
    about: ['hood-1'],
    says: ['has 3 bends'],
  },
])
