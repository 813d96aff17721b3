import { tryRule } from '../../support/rule-trial'

/*
 * A door in Dining wall from 550 to 1 376, hinged on the right, opening in. The run on Garden wall, its last space drawn
 * out to 650, ends with its panel 1 890 + 650 + 18 = 2 558 along, 542 before Dining wall, and its worktop is 600 deep. That
 * corner of the worktop is √((1 376 − 600)² + 542²) = 946 from the hinges; Dining wall being 0.2° off square moves it by
 * about 2. A leaf of 930 passes, one of 970 is 24 too wide.
 */
const door = (edits: Readonly<Record<string, unknown>>) =>
  Object.entries(edits).map(([name, to]) => ({ set: `walls.c.openings.door-1.${name}`, to }))
const longer = { set: 'units.dishwasher-space.width', to: 650 } as const
const given = [
  longer,
  ...door({ left: { at: 550 }, right: { at: 1376 }, hinge: 'right', opens: 'in', handle: 60, leaf: 930 }),
]
/*
 * Hinged on its left beside the end of the run, at 660: square, its leaf stands 60 from the worktop, which begins 592 from Dining wall (2
 * nearer to the leaf, as that wall is off square), and its handle, 40 to 150 in from an edge 826 out, points at it.
 */
const beside = door({ left: { at: 660 }, right: { at: 1486 }, hinge: 'left', opens: 'in', leaf: 826 })

tryRule('room-door-meets-unit', [
  {
    what: 'F05: a door that opens in, onto the end of a run',
    given,
    inside: door({ leaf: 930 }),
    outside: door({ leaf: 970 }),
    weight: 'stop',
    about: ['c'],
    says: ['Dining wall', '970 mm'],
  },
  {
    what: 'F05: a door beside the end of a run: it passes, its handle does not',
    given: beside,
    inside: door({ handle: 40 }),
    outside: door({ handle: 90 }),
    weight: 'stop',
    about: ['c'],
  },
  {
    what: 'a door that opens out meets nothing; nobody knows which way this one opens',
    given: [...given, ...door({ leaf: 970 })],
    inside: door({ opens: 'out' }),
    outside: door({ opens: null }),
    weight: 'ask',
    about: ['c'],
  },
])
