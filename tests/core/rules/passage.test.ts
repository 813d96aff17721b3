import { tryRule } from '../../support/rule-trial'

/*
 * The door in Dining wall, opening out, from `left` to `left` + 826. The run on Garden wall ends 592 before Dining wall, its worktop
 * 600 deep: seen from the door it stands 592 ahead, over the first 600 from the corner (2 less, as Dining wall is 0.2° off square). A door
 * from 500 on has 500 + 826 − 600 = 726 left straight ahead, one from 550 on 776, and 750 is wanted. Precision about ± 10.
 */
const door = (edits: Readonly<Record<string, unknown>>) =>
  Object.entries(edits).map(([name, to]) => ({ set: `walls.c.openings.door-1.${name}`, to }))
const from = (left: number) => door({ left: { at: left }, right: { at: left + 826 } })

tryRule('passage', [
  {
    what: 'F110: the end of a run in the way through a door',
    given: from(600),
    inside: from(550),
    outside: from(500),
    weight: 'stop',
    about: ['c'],
    says: ['Dining wall', '750 mm'],
  },
  {
    // Past 590: 236 + 40 + handle. From 560 on 786 is left; with the leaf of 40 and a handle of 60 that is 686, with one of 180 566.
    what: 'F110: the leaf of the door itself, standing open beside the end of a run',
    given: [...from(560), ...door({ opens: 'in', hinge: 'right', leaf: 500, handle: 60 })],
    inside: door({ handle: 60 }),
    outside: door({ handle: 180 }),
    weight: 'stop',
    about: ['c'],
    says: ['600 mm'],
  },
  {
    // The open door of the dishwasher covers 580 to 1 180 of Dining wall. A door from 640 on has 286 left straight ahead of it.
    // The space, 650 wide, ends 1 890 + 650 = 2 540 along: 560 before Dining wall, less 1 180 · sin 0.2° = 4. That is the way sideways
    // before the open door, and 600 is wanted.
    what: 'F110: the open door of the dishwasher before a door',
    given: [...from(700), { set: 'appliances.dishwasher-1.doorOut', to: 600 }],
    inside: from(1000),
    outside: [...from(640), { set: 'units.dishwasher-space.width', to: 650 }],
    weight: 'warn',
    about: ['c', 'dishwasher-space'],
    says: ['556 mm', '600 mm'],
  },
])
