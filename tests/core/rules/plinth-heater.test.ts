import { tryRule } from '../../support/rule-trial'

// Underside of base unit 1 -858 mm. Floor at the face of the plinth, 520 mm out, between -1 003 at its right end and -1 002 at
// its left, and 6 mm of finish still to come: 138 mm at the least.
const heater = (heightMin: number | null) =>
  ({
    add: 'appliances',
    item: { id: 'heater-1', kind: 'plinth-heater', fuel: 'electric', over: 'base-1', heightMin, mass: 5 },
  }) as const
const fed = { set: 'walls.a.accessories.socket-1.serves', to: 'heater-1' } as const

tryRule('plinth-heater', [
  {
    what: 'a heater higher than the gap under its unit',
    inside: [heater(130), fed],
    outside: [heater(150), fed],
    weight: 'stop',
    about: ['heater-1', 'base-1'],
    says: ['138 mm', '150 mm', '12 mm is missing'],
  },
  {
    what: 'nothing to feed it',
    inside: [heater(130), fed],
    outside: [heater(130)],
    weight: 'ask',
    about: ['heater-1'],
  },
])
