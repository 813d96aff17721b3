import { tryRule } from '../../support/rule-trial'

/*
 * The window on Garden wall made to open in: its left jamb, with the hinges, 1 040 along. The sink is cut in from 1 240, 500 wide,
 * so the tap stands 1 490 along, 450 from the hinges, and 60 out: √(450² + 60²) = 454, less half a tap 25: a sash of 429 reaches
 * it. The worktop ends 100 below the line, the sash 80 above it: with 5 to spare a tap of 175 passes below.
 */
const window = (edits: Readonly<Record<string, unknown>>) =>
  Object.entries(edits).map(([name, to]) => ({ set: `walls.b.openings.window-1.${name}`, to }))
const tap = (edits: Readonly<Record<string, unknown>>) =>
  Object.entries(edits).map(([name, to]) => ({ set: `appliances.sink-1.${name}`, to }))
const given = [
  ...window({ opens: 'in', sashBottom: { up: 80 } }),
  ...tap({ tapHeight: 160, tapFromWall: 60 }),
]

tryRule('sash-meets-tap', [
  {
    what: 'F96: a tap too high to pass under the sash',
    given,
    inside: tap({ tapHeight: 170 }),
    outside: tap({ tapHeight: 190 }),
    weight: 'stop',
    about: ['base-5', 'b'],
    says: ['+90 mm', '+80 mm'],
    waysOut: 1,
  },
  {
    what: 'a sash too wide to pass beside the tap',
    given: [...given, ...window({ leaf: 415 }), ...tap({ tapHeight: 300 })],
    inside: window({ leaf: 415 }),
    outside: window({ leaf: 445 }),
    weight: 'stop',
    about: ['base-5'],
  },
  {
    what: 'a sash hung at its top swings its lower edge over the tap: 1 020 high, the tap √(35² + 900²) = 901 from its hinges',
    given,
    inside: window({ hinge: 'top' }),
    outside: [...window({ hinge: 'top' }), ...tap({ tapHeight: 300 })],
    weight: 'stop',
    about: ['base-5'],
  },
  {
    what: 'a window that opens in over a sink whose tap nobody has measured',
    given,
    outside: tap({ tapHeight: null }),
    weight: 'ask',
    about: ['base-5'],
  },
])
