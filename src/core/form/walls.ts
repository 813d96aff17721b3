import { choice, type Field, length, list, more, type Option, yesNo } from './field'
import {
  accessories,
  layers,
  layersToCome,
  lintels,
  nameOfOwn,
  noggings,
  openings,
  plumb,
  services,
  straightness,
  studs,
  studTimber,
  widths,
} from './on-walls'

/** What is asked of each wall, left to right as one stands inside. */

const CONSTRUCTION_WORDS: readonly Option[] = [
  ['masonry', 'plastered brick or block'],
  ['aircrete', 'light block'],
  ['old-brick', 'old soft brick'],
  ['dot-and-dab', 'plasterboard on dabs, over masonry'],
  ['timber-stud', 'plasterboard on timber studs'],
  ['metal-stud', 'plasterboard on metal studs'],
  ['lath-and-plaster', 'lath and plaster'],
  ['concrete', 'concrete'],
  ['insulated-lining', 'insulated lining over masonry'],
  ['over-opening', 'a lintel or steel over an opening'],
  ['chimney-breast', 'chimney breast'],
]

const wallFields: readonly Field[] = [
  nameOfOwn,
  length('length', 'Length', 'From corner to corner, or to where it ends: a door frame, an open end.'),
  choice(
    'lengthAt',
    'Taken at the height of',
    [
      ['floor', 'the floor'],
      ['worktop', 'the worktop'],
      ['wall-unit', 'the wall units'],
    ],
    'Take it at all three, and give the smallest.',
  ),
  choice('lengthTo', 'To', [
    ['bare', 'the bare walls beside it'],
    ['finished', 'their finished faces'],
  ]),
  length(
    'cornerRight.thisLeg',
    'Corner at its right end: mark on this wall',
    'Mark 900 mm along this wall and 1200 mm along the next and measure across: 1500 is square.',
  ),
  length('cornerRight.nextLeg', 'Mark on the next wall'),
  length('cornerRight.across', 'Straight across between the marks'),
  { key: 'cornerRight.angle', label: 'Or its angle', kind: 'number', unit: 'degrees' },
  choice(
    'knock',
    'What knocking says',
    [
      ['solid', 'solid'],
      ['hollow', 'hollow'],
      ['mixed', 'solid here, hollow there'],
      ['blown', 'plaster loose'],
    ],
    'Knock at a dozen places up and down the wall.',
  ),
  choice(
    'construction',
    'What it is made of',
    CONSTRUCTION_WORDS,
    'Told without drilling: by knocking, at a doorway, at a socket proved dead, from the age of the house. Leave it open if you cannot tell.',
  ),
  choice('behind', 'Behind it is', [
    ['outside', 'outside'],
    ['room', 'another room'],
    ['neighbour', 'a neighbour'],
    ['void', 'an empty space'],
  ]),
  length('thickness', 'Thickness, face to face', 'Measured at a doorway.'),
  yesNo('otherFaceChecked', 'Somebody has looked at its other side'),
  length(
    'otherFaceShift',
    'Its other side begins beyond the right end by',
    'The left end of the other side, as you stand there, against the right end of this one: + is further.',
  ),
  choice('traced', 'A detector has been over', [
    ['whole', 'all of it'],
    ['part', 'part of it'],
    ['not-yet', 'none of it yet'],
  ]),
  length('tracedDepth', 'The detector looks how deep', 'By its maker, in such a wall.'),
  yesNo('provedDead', 'Its circuits are proved dead, by someone competent'),
  openings,
  accessories,
  studs,
  layers,
  ...more(layersToCome, noggings, services, lintels, widths, plumb, straightness, ...studTimber),
]

export const walls = list('walls', {
  one: 'wall',
  many: 'Walls',
  mark: 'wall',
  sheet: {
    rows: 4,
    as: 'across',
    columns: [
      'name',
      'length',
      'lengthAt',
      'cornerRight.thisLeg',
      'cornerRight.nextLeg',
      'cornerRight.across',
      'knock',
      'construction',
      'behind',
      'thickness',
      'otherFaceChecked',
      'traced',
      'tracedDepth',
      'provedDead',
    ],
  },
  how: 'One after another to the right, as you stand inside and turn clockwise.',
  fields: wallFields,
})
