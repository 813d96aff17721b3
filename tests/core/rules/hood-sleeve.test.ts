import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'

// Hand-worked: the worktop ends at −100 and the hood hangs 650 over it, at 550. The ceiling over it is at 1392: 842 over its
// underside.
const hung: Edit = { set: 'appliances.hood-1.clearAbove', to: 650 }
const least = (mm: number): Edit => ({ set: 'appliances.hood-1.sleeveMin', to: mm })
const most = (mm: number): Edit => ({ set: 'appliances.hood-1.sleeveMax', to: mm })

tryRule('hood-sleeve', [
  {
    what: 'a sleeve too long for the room over it',
    given: [hung],
    inside: [least(838)],
    outside: [least(850)],
    weight: 'stop',
    about: ['hood-1'],
    says: ['842 mm', '8 mm too long'],
  },
  {
    what: 'a sleeve that reaches the ceiling only from higher up',
    given: [hung],
    inside: [most(846)],
    outside: [most(760)],
    weight: 'warn',
    about: ['hood-1'],
    says: ['82 mm higher'],
  },
  {
    what: 'a sleeve that does not reach the ceiling',
    given: [hung],
    inside: [most(846)],
    outside: [most(700)],
    weight: 'stop',
    about: ['hood-1'],
    says: ['142 mm too short'],
  },
  {
    what: 'one that hangs where it is said to',
    given: [hung, { set: 'appliances.hood-1.underside', to: { up: 600 } }],
    inside: [least(788)],
    outside: [least(800)],
    weight: 'stop',
    about: ['hood-1'],
    says: ['hung 700 mm over the worktop', '8 mm too long'],
  },
])
