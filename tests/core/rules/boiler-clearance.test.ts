import { tryRule } from '../../support/rule-trial'

// Wall unit 4 ends at 3 540 mm; the case of the boiler begins at 3 600: 60 mm. Top of the worktop -100 mm, underside of the
// case 400: 500 mm.
const boilerCase = {
  add: 'boxes',
  item: {
    id: 'case',
    kind: 'boiler',
    wall: 'a',
    left: { at: 3600 },
    right: { at: 3880 },
    near: 0,
    out: 300,
    bottom: { up: 400 },
    top: { up: 1100 },
  },
} as const
const boiler = (clearSide: number | null, clearBelow: number) =>
  ({
    add: 'appliances',
    item: { id: 'boiler-1', kind: 'boiler', fuel: 'electric', case: 'case', clearSide, clearBelow, mass: 30 },
  }) as const

tryRule('boiler-clearance', [
  {
    what: 'a wall unit nearer than the manual allows',
    given: [boilerCase],
    inside: [boiler(50, 450)],
    outside: [boiler(70, 450)],
    weight: 'stop',
    about: ['boiler-1', 'wall-4'],
    says: ['60 mm', '70 mm', '10 mm is missing'],
  },
  {
    what: 'a worktop nearer under it than the manual allows',
    given: [boilerCase],
    inside: [boiler(50, 450)],
    outside: [boiler(50, 520)],
    weight: 'stop',
    about: ['boiler-1'],
    says: ['500 mm', '20 mm is missing'],
  },
  {
    what: 'a boiler close by whose manual nobody has read',
    given: [boilerCase],
    inside: [boiler(50, 450)],
    outside: [boiler(null, 450)],
    weight: 'ask',
    about: ['boiler-1', 'wall-4'],
  },
])
