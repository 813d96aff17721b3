import { tryRule } from '../../support/rule-trial'

// Hand-worked: wall unit 1 hangs at 392, the worktop ends at −100: a gap of 492. With 2 for the joint 490 goes in.
const splashback = (height: number, of = ['base-1']) =>
  ({ add: 'finishing', item: { id: 'splash', kind: 'splashback', wall: 'a', of, height } }) as const

tryRule('splashback-gap', [
  {
    what: 'a splashback higher than the gap less its joint',
    inside: [splashback({ value: 490, pm: 0 } as never)],
    outside: [splashback({ value: 491, pm: 0 } as never)],
    weight: 'stop',
    about: ['splash', 'wall-1'],
    says: ['491 mm', '492 mm', '1 mm too high'],
    waysOut: 1,
  },
  {
    what: 'a splashback that leaves a gap to be seen',
    inside: [splashback(488)],
    outside: [splashback(480)],
    weight: 'warn',
    about: ['splash'],
    says: ['12 mm'],
  },
  {
    what: 'one under no unit ends free, and is judged only where one hangs',
    inside: [splashback(900, ['base-3'])],
    outside: [splashback(900, ['base-3', 'corner-1'])],
    weight: 'stop',
    about: ['splash', 'wall-4'],
  },
])
