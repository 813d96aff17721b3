import { tryRule } from '../../support/rule-trial'

// Hand-worked: base unit 1 is 600 wide and 560 deep. A foot at 600 stands right at its side; the tape is good to 2, so that one
// at 602 cannot be told from that, and one at 604 is past it.
const foot = (key: 'x' | 'y', mm: number) =>
  ({ set: `units.base-1.feet.front-right.${key}`, to: mm }) as const

tryRule('foot-outside-unit', [
  {
    what: 'a foot past the right side',
    inside: [foot('x', 600)],
    outside: [foot('x', 950)],
    weight: 'ask',
    about: ['base-1'],
    says: ['950 mm from its left side', '350 mm past a side', '600 mm wide'],
  },
  {
    what: 'a foot past the front',
    inside: [foot('y', 560)],
    outside: [foot('y', 700)],
    weight: 'ask',
    about: ['base-1'],
    says: ['700 mm from its back', '140 mm past its front'],
  },
])
