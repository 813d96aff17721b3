import { tryRule } from '../../support/rule-trial'

// Worktop a lies on base units 1, 2, 3 and the corner unit: 16 feet. 120 kg of stone: 7.5 kg a foot.
const stone = [
  { set: 'worktops.worktop-a.material', to: 'stone' },
  { set: 'worktops.worktop-a.mass', to: 120 },
  { set: 'crew.extraction', to: true },
  { set: 'crew.people', to: ['one', 'two', 'three', 'four'].map((id) => ({ id, filter: 'man' })) },
] as const

tryRule('load-on-boards', [
  {
    what: 'stone on a boarded floor, and not on concrete',
    given: [],
    inside: [{ set: 'floor.kind', to: 'concrete' }],
    outside: [...stone],
    weight: 'ask',
    about: ['worktop-a'],
    says: ['120 kg', '16 feet', '7.5 kg'],
    without: ['lift-over-filter'],
  },
])
