import { tryRule } from '../../support/rule-trial'

// The partitions are of board and timber: no stone dust, until the worktop is of stone.
const stone = { set: 'worktops.worktop-a.material', to: 'stone' } as const
const boards = { set: 'floor.kind', to: 'concrete' } as const

tryRule('dust', [
  {
    what: 'a stone worktop is to be cut and nobody has said how',
    given: [boards],
    inside: [stone, { set: 'crew.extraction', to: true }],
    outside: [stone],
    weight: 'ask',
    about: ['room'],
  },
  {
    what: 'there is no extraction, and the dust is of stone',
    given: [boards],
    inside: [{ set: 'crew.extraction', to: false }],
    outside: [{ set: 'crew.extraction', to: false }, stone],
    weight: 'ask',
    says: ['no extraction'],
    without: ['lift-over-filter'],
  },
])
