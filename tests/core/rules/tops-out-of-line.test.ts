import { tryRule } from '../../support/rule-trial'

// Hand-worked: tall and wall units end at 1112. A wish that wall units end no higher than 1080 leaves them from 1070 (the
// usual gap of 450 over a worktop at −100, and 720) to 1080: in the middle, 1075. The tall unit stays at 1112: 37 higher.
const noHigher = (up: number) =>
  ({ add: 'wishes.heights', item: { id: 'low-tops', of: 'wall-top', max: { up } } }) as const

tryRule('tops-out-of-line', [
  {
    what: 'wall units that end lower than the tall unit beside them',
    inside: [noHigher(1120)],
    outside: [noHigher(1080)],
    weight: 'warn',
    about: ['tall-1', 'wall-1'],
    with: ['preferred-height-given-up'],
    says: ['37 mm', '640 mm'],
  },
])
