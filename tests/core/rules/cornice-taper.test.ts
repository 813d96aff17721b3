import { tryRule } from '../../support/rule-trial'

// Hand-worked: the units end at 1112; the ceiling over wall unit 3 is at 1392.8 at its front right, about 1392 at the wall:
// some 280 over it.
const cornice = (height: number) =>
  ({
    add: 'finishing',
    item: {
      id: 'cornice-1',
      kind: 'cornice',
      wall: 'a',
      of: ['tall-1', 'wall-1', 'wall-2', 'wall-3', 'wall-4'],
      height,
    },
  }) as const
// At 1280 the third reading is 113 lower than the second, 1600 before it: wall unit 4, which ends 60 before the reading,
// has some 172 over it, and over the tall unit there are 281.
const low = (up: number) => ({ set: 'ceiling.ceiling-3.height', to: { up } }) as const

tryRule('cornice-taper', [
  {
    what: 'a cornice higher than the gap under the ceiling',
    inside: [cornice(270)],
    outside: [cornice(290)],
    weight: 'stop',
    about: ['cornice-1'],
    says: ['290 mm'],
  },
  {
    what: 'a ceiling that closes on the cornice at one end',
    given: [cornice(120)],
    inside: [low(1391)],
    outside: [low(1280)],
    weight: 'warn',
    about: ['cornice-1', 'wall-4', 'tall-1'],
    says: ['172 mm', '281 mm'],
  },
])
