import { tryRule } from '../../support/rule-trial'

const reach = (mm: number) => ({ set: 'worktops.worktop-b.freeOverhang', to: { value: mm, pm: 1 } }) as const
const allowed = { set: 'worktops.worktop-b.freeOverhangMax', to: { value: 300, pm: 0 } } as const

tryRule('overhang', [
  {
    what: 'two millimetres past what its maker allows',
    given: [allowed],
    inside: [reach(298.5)],
    outside: [reach(302)],
    weight: 'stop',
    about: ['worktop-b'],
    says: ['302 mm', '300 mm', '2 mm'],
  },
  {
    what: 'too near to tell',
    given: [allowed],
    inside: [reach(298.5)],
    outside: [reach(299.5)],
    weight: 'ask',
    about: ['worktop-b'],
  },
  {
    what: 'nobody has asked the maker',
    inside: [reach(0)],
    outside: [reach(150)],
    weight: 'ask',
    about: ['worktop-b'],
  },
])
