import { tryRule } from '../../support/rule-trial'

// Worktop top -100 from the line. 650 mm above it is +550. From pan supports 40 mm high: +590.
const hood = (up: number) =>
  ({ set: 'appliances.hood-1.underside', to: { up: { value: up, pm: 1 } } }) as const
const pans = [
  { set: 'appliances.hob-1.clearFrom', to: 'pan-supports' },
  { set: 'appliances.hob-1.panSupports', to: 40 },
] as const

tryRule('hood-height', [
  {
    what: 'lower than both sheets ask above the worktop',
    inside: [hood(556)],
    outside: [hood(544)],
    weight: 'stop',
    about: ['hood-1', 'hob-1'],
    says: ['+550 mm', '6 mm too low'],
  },
  {
    what: 'high enough over the worktop, not over the pan supports from which the hob counts',
    given: [...pans],
    inside: [hood(597)],
    outside: [hood(580)],
    weight: 'stop',
    about: ['hood-1'],
    says: ['+590 mm', '10 mm too low'],
  },
  {
    what: 'nobody has read either sheet',
    outside: [
      { set: 'appliances.hob-1.clearAbove', to: null },
      { set: 'appliances.hood-1.clearAbove', to: null },
    ],
    weight: 'ask',
    about: ['hood-1'],
  },
])
