import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'

const at = (fact: string) => `walls.b.openings.window-1.${fact}`
const opens = (to: 'in' | 'out' | null): Edit => ({ set: at('opens'), to })
const sash = (up: number): Edit => ({ set: at('sashBottom'), to: { up } })

// Hand-worked: the worktop ends at −100; with 5 to spare a sash ends at −95 or higher.
tryRule('sash-over-worktop', [
  {
    what: 'a sash that opens in with too little under it',
    given: [opens('in')],
    inside: [sash(-93)],
    outside: [sash(-97)],
    weight: 'stop',
    beside: ['sash-meets-tap'],
    about: ['b', 'worktop-b'],
    says: ['−97 mm', '2 mm too little'],
    waysOut: 1,
  },
  {
    what: 'too near for the readings to tell',
    given: [opens('in')],
    inside: [sash(-93)],
    outside: [sash(-95)],
    weight: 'ask',
    beside: ['sash-meets-tap'],
    about: ['b'],
  },
  {
    what: 'a low sash of which nobody knows which way it opens',
    inside: [opens('out'), sash(-100)],
    outside: [opens(null), sash(-100)],
    weight: 'ask',
    beside: ['sash-meets-tap'],
    about: ['b'],
  },
  {
    what: 'a low window that opens in, its sash not read',
    given: [{ set: at('bottom'), to: { up: -50 } }],
    inside: [opens('out')],
    outside: [opens('in')],
    weight: 'ask',
    beside: ['sash-meets-tap'],
    about: ['b'],
  },
])
