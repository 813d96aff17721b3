import { tryRule } from '../../support/rule-trial'

// Middle of the sink: 1 240 + 250 = 1 490 mm. Top of the worktop -100 mm, trap 400 below it: -500. The waste is at 2 490 mm:
// 1 000 mm away, so the pipe falls 18 mm.
const waste = (...points: readonly (readonly [at: number, down: number])[]) =>
  ({
    add: 'walls.b.services',
    item: {
      id: 'waste-x',
      kind: 'waste',
      points: points.map(([at, down], i) => ({ id: `p${i}`, along: { at }, height: { down } })),
      width: 40,
      depth: 20,
      traced: 'seen',
    },
  }) as const
const trap = { set: 'appliances.sink-1.outlet', to: { value: 400, pm: 0 } } as const

tryRule('waste-fall', [
  {
    what: 'too little fall from the trap to the waste',
    given: [trap],
    inside: [waste([2490, 525])],
    outside: [waste([2490, 510])],
    weight: 'stop',
    about: ['sink-1', 'base-5'],
    says: ['10 mm over 1 000 mm', '18 mm', '8 mm is missing'],
  },
  {
    what: 'a waste higher than the trap',
    given: [trap],
    inside: [waste([2490, 525])],
    outside: [waste([2490, 480])],
    weight: 'stop',
    about: ['sink-1'],
    says: ['climbs 20 mm'],
  },
  {
    what: 'a waste pipe that falls the wrong way by itself',
    given: [trap],
    inside: [waste([2490, 525], [2990, 540])],
    outside: [waste([2490, 525], [2990, 515])],
    weight: 'stop',
    about: ['sink-1'],
    says: ['climbs 10 mm over 500 mm', '9 mm'],
  },
  {
    what: 'nobody has read how deep the trap hangs',
    inside: [],
    outside: [waste([2490, 525])],
    weight: 'ask',
    about: ['sink-1'],
  },
])
