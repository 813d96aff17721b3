import { tryRule } from '../../support/rule-trial'

const bow = (at: number, height: object, value: number) =>
  ({
    add: 'walls.a.straightness',
    item: { id: 'bow-x', along: { at }, height, bow: { value, pm: 1 } },
  }) as const

tryRule('wall-bellies', [
  {
    // Wall unit 4 has 16 mm of space behind its back.
    what: 'a belly deeper than the space behind the back of a wall unit',
    inside: [bow(3200, { up: 700 }, -2)],
    outside: [bow(3200, { up: 700 }, -20)],
    weight: 'stop',
    about: ['wall-4'],
    says: ['20 mm', '16 mm', '4 mm'],
  },
  {
    what: 'a hollow behind base units that wants packing',
    inside: [bow(900, { down: 400 }, 2)],
    outside: [bow(900, { down: 400 }, 6)],
    weight: 'warn',
    about: ['a', 'base-1'],
    says: ['6 mm', '900 mm'],
  },
])
