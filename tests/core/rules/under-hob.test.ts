import { tryRule } from '../../support/rule-trial'

// Worktop 38 mm. A hob 80 mm deep reaches 42 mm into the carcass; the drawer's box begins 40 mm down.
const deep = (mm: number | null) =>
  ({ set: 'appliances.hob-1.below', to: mm === null ? null : { value: mm, pm: 0 } }) as const
const box = { set: 'units.base-3.drawers.drawer-top.boxTop', to: { value: 40, pm: 0 } } as const

tryRule('under-hob', [
  {
    what: 'a hob deeper than the drawer under it leaves room for',
    given: [box],
    inside: [deep(76)],
    outside: [deep(82)],
    weight: 'stop',
    about: ['hob-1', 'base-3'],
    says: ['reaches 44 mm into base unit 3', '4 mm is missing'],
  },
  {
    what: 'nobody has read how deep it is',
    outside: [deep(null)],
    weight: 'ask',
    about: ['base-3'],
  },
])
