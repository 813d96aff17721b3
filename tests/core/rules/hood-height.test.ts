import { tryRule } from '../../support/rule-trial'

// Worktop top -100 from the line. 650 mm above it is +550. From pan supports 40 mm high: +590.
const hood = (up: number) =>
  ({ set: 'appliances.hood-1.underside', to: { up: { value: up, pm: 1 } } }) as const
const counted = [
  { set: 'appliances.hood-1.clearFrom', to: 'worktop' },
  { set: 'appliances.hob-1.clearFrom', to: 'worktop' },
] as const
const pans = [
  { set: 'appliances.hood-1.clearFrom', to: 'worktop' },
  { set: 'appliances.hob-1.clearFrom', to: 'pan-supports' },
  { set: 'appliances.hob-1.panSupports', to: 40 },
] as const

tryRule('hood-height', [
  {
    what: 'lower than both sheets ask above the worktop',
    given: [...counted],
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
    what: 'high enough for one sheet, and the pan supports from which the other counts not known',
    given: [...counted, hood(597)],
    inside: [],
    outside: [
      { set: 'appliances.hob-1.clearFrom', to: 'pan-supports' },
      { set: 'appliances.hob-1.panSupports', to: null },
    ],
    weight: 'ask',
    about: ['hood-1', 'hob-1'],
    says: ['half read', '+550 mm'],
  },
  {
    what: 'too low for one sheet while the other is unread',
    given: [...counted],
    outside: [{ set: 'appliances.hob-1.clearAbove', to: null }, hood(544)],
    weight: 'stop',
    about: ['hood-1', 'hob-1'],
    says: ['6 mm too low'],
  },
  {
    what: 'a sheet that does not say from where it counts',
    given: [...counted, hood(597)],
    inside: [],
    outside: [{ set: 'appliances.hob-1.clearFrom', to: null }],
    weight: 'ask',
    about: ['hood-1'],
  },
  {
    what: 'nobody has read either sheet',
    given: [...counted],
    outside: [
      { set: 'appliances.hob-1.clearAbove', to: null },
      { set: 'appliances.hood-1.clearAbove', to: null },
    ],
    weight: 'ask',
    about: ['hood-1'],
  },
])
