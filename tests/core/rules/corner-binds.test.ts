import { tryRule } from '../../support/rule-trial'

/*
 * The corner of Hall partition and Garden wall, made square and exact. The drawers of base unit 4 have their near edge
 * 640 from the corner; the fronts of Hall partition stand 560 + 19 = 579 out. Gap to the faces 61, to a handle
 * 61 − handle. 5 is wanted past it, so a handle may stand out 56. Precision: 640 ± 1 as read; what the sheets of the other
 * run print of its depth, fronts and handles, ± 0.5 each, is what the 5 mm are for.
 */
const handle = (to: number) => [{ set: 'units.corner-1.doors.door.handle', to }] as const
const square = [
  { set: 'walls.a.length', to: { value: 3900, pm: 0 } },
  { set: 'walls.a.cornerRight', to: { angle: { value: 90, pm: 0 } } },
] as const

/* A dishwasher in the place of base unit 4, its open door 600 past its front, which is 560 out. The same near edge. */
const dishwasher = [
  ...square,
  ...['top', 'middle', 'bottom'].map(
    (which) => ({ remove: `units.base-4.drawers.drawer-${which}` }) as const,
  ),
  { set: 'appliances.dishwasher-1.over', to: 'base-4' },
  { set: 'units.dishwasher-space.applianceBay', to: null },
  { set: 'appliances.dishwasher-1.doorOut', to: 600 },
] as const

tryRule('corner-binds', [
  {
    what: 'F43: a drawer beside the corner against the handle round it',
    given: square,
    inside: handle(55),
    outside: handle(58),
    weight: 'stop',
    about: ['base-4'],
    says: ['by 3 mm only', '640 mm', '637 mm', '5 mm', '2 mm is missing'],
    waysOut: 2,
  },
  {
    what: 'a drawer that meets the handle',
    given: square,
    inside: handle(55),
    outside: handle(62),
    weight: 'stop',
    about: ['base-4'],
    says: ['does not come out past', '6 mm more'],
  },
  {
    what: 'too near for the readings to tell',
    given: square,
    inside: handle(55),
    outside: handle(57),
    weight: 'ask',
    about: ['base-4'],
  },
  {
    what: 'a handle nobody has measured, where one of 60 would be in the way',
    given: square,
    outside: [{ set: 'units.corner-1.doors.door.handle', to: null }],
    weight: 'ask',
    about: ['corner-1'],
  },
  {
    what: 'F61: the door of a dishwasher beside the corner',
    given: dishwasher,
    inside: handle(55),
    outside: handle(60),
    weight: 'stop',
    about: ['base-4'],
    says: ['The door of'],
  },
  {
    what: 'F61: a dishwasher beside the corner whose sheet was not read',
    given: dishwasher,
    outside: [{ set: 'appliances.dishwasher-1.doorOut', to: null }],
    weight: 'ask',
    about: ['base-4'],
  },
])
