import { tryRule } from '../../support/rule-trial'

// Both worktops come after everything that stands: many hours in. From 25 kg the rule minds what o'clock it is.
tryRule('heavy-lift-late', [
  {
    what: 'a worktop of 25 kg at the end of a day, and not one of 24',
    given: [{ set: 'worktops.worktop-b.mass', to: 24 }],
    outside: [{ set: 'worktops.worktop-b.mass', to: 25 }],
    weight: 'warn',
    about: ['worktop-b'],
    says: ['25 kg'],
  },
])
