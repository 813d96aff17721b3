import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'

const at = (fact: string) => `walls.b.openings.window-1.${fact}`
const board = (left: number, right: number | null): readonly Edit[] => [
  { set: at('boardLeft'), to: { up: left } },
  { set: at('boardRight'), to: right === null ? {} : { up: right } },
]
/** How far the board stands out is not known: the heights are chosen without it. */
const notMeasured: Edit = { set: at('boardProjection'), to: null }

// Hand-worked: the worktop ends at −100. A board whose underside falls to −98 at its right end lets it under; at −102 it is
// 2 too high there, though not at the left end, nor in the middle.
tryRule('window-board', [
  {
    what: 'a board that falls below the top of the worktop at one end',
    given: [notMeasured],
    inside: board(-80, -98),
    outside: board(-80, -102),
    weight: 'stop',
    about: ['b', 'worktop-b'],
    says: ['right end', '−102 mm', '2 mm too high'],
    waysOut: 1,
  },
  {
    what: 'too near for the readings to tell',
    given: [notMeasured],
    inside: board(-80, -98),
    outside: board(-80, -100),
    weight: 'ask',
    about: ['b'],
  },
  {
    what: 'a board near the worktop that was read at one end only',
    given: [{ set: at('bottom'), to: { up: -50 } }],
    inside: board(-50, -50),
    outside: board(-50, null),
    weight: 'ask',
    about: ['b'],
    says: ['right end'],
  },
])
