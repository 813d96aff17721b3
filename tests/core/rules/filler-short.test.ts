import { tryRule } from '../../support/rule-trial'

// The filler at the left end is 40 mm wide and fills 40 mm at the wall; Side wall meets it at 89.9 degrees. It is 1 970 mm
// high, and the run was measured at worktop height, 758 mm above its foot: 1 212 mm above that. A lean of 20 mm over 2 000
// makes 12.1 mm at the top, less 1 mm that the corner gives.
const lean = (value: number) =>
  ({
    add: 'walls.d.plumb',
    item: { id: 'plumb-x', along: { at: 400, from: 'right' }, over: 2000, lean: value },
  }) as const

tryRule('filler-short', [
  {
    what: 'a filler at a wall that leans away from it',
    inside: [lean(0)],
    outside: [lean(-20)],
    weight: 'stop',
    about: ['filler-left', 'd'],
    says: ['40 mm', '51 mm', '11 mm is missing'],
  },
  {
    what: 'hardly leaning: the readings cannot tell',
    inside: [lean(0)],
    outside: [lean(-3)],
    weight: 'ask',
    about: ['filler-left'],
  },
  {
    // Measured at the floor. At the face the corner leaves 39 mm, and 15 x 1 970 / 2 000 = 14.8 less at the top: 15.8 mm are cut off.
    what: 'more to cut off than was left on for it',
    given: [
      { set: 'finishing.filler-left.scribe', to: 8 },
      { set: 'walls.a.lengthAt', to: 'floor' },
    ],
    inside: [lean(3)],
    outside: [lean(15)],
    weight: 'warn',
    about: ['filler-left'],
    says: ['16 mm', '8 mm'],
  },
])
