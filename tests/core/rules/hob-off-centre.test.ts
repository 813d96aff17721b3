import { tryRule } from '../../support/rule-trial'

// The gap between wall units 3 and 4 goes from 2 140 to 2 940 mm: its middle is 2 540. The hole is 560 mm wide.
const hole = (at: number) => ({ set: 'worktops.worktop-a.cutouts.hob-hole.left', to: { at } }) as const

tryRule('hob-off-centre', [
  {
    what: 'the hole for the hob beside the middle of the gap for the hood',
    inside: [hole(2263)],
    outside: [hole(2266)],
    weight: 'warn',
    about: ['hob-1', 'wall-3', 'wall-4'],
    says: ['2 546 mm', '2 540 mm', '6 mm'],
  },
])
