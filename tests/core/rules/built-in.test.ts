import { tryRule } from '../../support/rule-trial'

// Base unit 4 stands from 640 to 1 090 mm on Garden wall, from -858 to -138. A hand wants 50 mm beside it.
const stopcock = (at: number) =>
  ({
    add: 'access',
    item: { id: 'stop', kind: 'stopcock', wall: 'b', along: { at }, height: { down: 700 }, out: 60 },
  }) as const

tryRule('built-in', [
  {
    what: 'a stopcock behind the left side of the run, and one a hand can pass',
    inside: [stopcock(585)],
    outside: [stopcock(595)],
    weight: 'stop',
    about: ['base-4'],
    says: ['The stopcock on Garden wall', '595 mm'],
    waysOut: 1,
  },
  {
    what: 'a stopcock nobody has measured',
    outside: [
      {
        add: 'access',
        item: { id: 'stop', kind: 'stopcock', wall: 'b', along: {}, height: { down: 700 }, out: 60 },
      },
    ],
    weight: 'ask',
    about: ['b'],
    says: ['nobody has measured where it is'],
  },
])
