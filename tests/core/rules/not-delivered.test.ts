import { tryRule } from '../../support/rule-trial'

tryRule('not-delivered', [
  {
    what: 'the corner unit has not come',
    inside: [{ set: 'units.corner-1.delivered', to: null }],
    outside: [{ set: 'units.corner-1.delivered', to: false }],
    weight: 'ask',
    about: ['corner-1'],
    says: ['Corner base unit 1', 'Hall partition', 'steps come before the first that needs it'],
  },
  {
    what: 'a worktop has not come: all that is before it can go on',
    inside: [{ set: 'worktops.worktop-a.delivered', to: true }],
    outside: [{ set: 'worktops.worktop-a.delivered', to: false }],
    weight: 'ask',
    about: ['worktop-a'],
    says: ['Worktop 1', 'steps come before the first that needs it: Fit worktop 1.'],
  },
  {
    what: 'screws that are not there: no step is named that needs them',
    inside: [{ set: 'fixings.rail-screw.delivered', to: null }],
    outside: [{ set: 'fixings.rail-screw.delivered', to: false }],
    weight: 'ask',
    about: ['rail-screw'],
    says: ['was looked for and has not come.'],
  },
])
