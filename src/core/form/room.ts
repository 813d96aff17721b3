import {
  along,
  always,
  choice,
  type Field,
  height,
  length,
  list,
  more,
  number,
  place,
  ref,
  spanning,
  text,
  yesNo,
} from './field'

/** The house, the line, the floor, the ceiling, and what is fixed in the room. */

export const house: readonly Field[] = [
  text('name', 'Name of this kitchen'),
  choice(
    'region',
    'Country',
    [
      ['uk', 'United Kingdom'],
      ['north-america', 'North America'],
      ['continental', 'Continental Europe'],
    ],
    'It says which rules for cables, lifting and trades are read. Never guessed.',
  ),
  always('display', 'Lengths are shown in', [
    ['mm', 'millimetres'],
    ['inch', 'inches'],
  ]),
  number('survey.houseBuilt', 'Year the house was built', ''),
  yesNo('survey.gas', 'Gas in the house'),
  yesNo('survey.ceilingHeatingCables', 'Heating cables in the ceiling'),
  text('survey.date', 'Day of the survey'),
  text('survey.by', 'Measured by'),
  length('survey.tapePrecision', 'Your tape is true to ±', 'Left open, the usual ± is taken and said.'),
  length('survey.levelPrecision', 'A reading off your line is true to ±'),
  ...more(yesNo('demo', 'An invented kitchen, for practice')),
]

export const lines = list('lines', {
  one: 'line',
  many: 'Level lines',
  mark: 'line',
  sheet: { rows: 1, columns: ['offset', 'closing', 'reversal'] },
  how: 'The first is the line of the room, at about 1 m. Further ones only where the first could not be carried.',
  fields: [
    length(
      'offset',
      'Height above the first line',
      'Leave it open for the first line: it is 0. For a further one it comes of the marks below.',
    ),
    list('carried', {
      one: 'mark',
      many: 'Marks read from two lines',
      mark: 'mark',
      how: 'Read one mark from a line before it, then from this one. A second mark shows by how much you misread.',
      fields: [
        ref('line', 'The line before it', ['lines']),
        length('there.down', 'Mark below that line'),
        length('there.up', 'Or above that line', 'The tape stands on the line and reads upwards.'),
        length('here.down', 'Mark below this line'),
        length('here.up', 'Or above this line', 'The tape stands on the line and reads upwards.'),
      ],
    }),
    length(
      'closing',
      'Missed its own start by',
      'Carried all the way round the room: how far from its own beginning it ended.',
    ),
    length('reversal', 'Error of the laser over 5 m', 'By the test between two walls in its booklet.'),
  ],
})

export const floor: readonly Field[] = [
  choice('floor.kind', 'The floor is', [
    ['concrete', 'concrete'],
    ['screed', 'screed'],
    ['suspended-timber', 'timber on joists'],
    ['boards', 'floorboards'],
    ['not-known', 'not known'],
  ]),
  yesNo('floor.changed', 'A new floor or levelling was laid after these readings'),
  yesNo('floor.heating', 'Heating in the floor'),
  length('floor.heatingDepth', 'How deep it lies'),
  length(
    'floor.worstDrop',
    'From its highest to its lowest place, as first looked at',
    'Only until there are floor readings.',
  ),
  length('floor.finishToCome', 'Floor finish still to be laid, thickness'),
  choice('floor.finishWhere', 'It will be laid', [
    ['everywhere', 'everywhere, under the units too'],
    ['bays-and-front', 'in front and into the appliance spaces'],
    ['up-to-plinth', 'up to the plinth'],
    ['none', 'not at all'],
  ]),
  list('floor.readings', {
    one: 'floor reading',
    many: 'Floor readings',
    mark: 'floor',
    sheet: { rows: 5, columns: ['at', 'drop'], as: 'grid' },
    how: 'Down from the line to the floor: the bigger the drop, the lower the floor. At every corner, and along each run at the wall and 600 mm out.',
    copied: ['at.wall', 'at.out', 'line'],
    fields: [
      place('at', 'Where'),
      length('drop', 'Down from the line'),
      ref('line', 'Which line', ['lines']),
    ],
  }),
]

export const ceiling = list('ceiling', {
  one: 'ceiling reading',
  many: 'Ceiling readings',
  mark: 'ceiling',
  sheet: { rows: 4, columns: ['at', 'height'] },
  how: 'Over every tall unit, and over the floor where it will be stood up.',
  copied: ['at.wall', 'at.out'],
  fields: [place('at', 'Where'), height('height', 'How high')],
})

export const closed = yesNo('closed', 'The walls go all the way round the room')

export const boxes = list('boxes', {
  one: 'fixed thing',
  many: 'Boxings, beams, pipes, radiators, trim',
  mark: 'boxing',
  sheet: { rows: 4, columns: ['kind', 'wall', 'left', 'right', 'out', 'bottom', 'top'] },
  how: 'Anything fixed that stands out from a wall or hangs from the ceiling.',
  fields: [
    always('kind', 'What', [
      ['boxing', 'boxing'],
      ['beam', 'beam'],
      ['chimney', 'chimney breast'],
      ['radiator', 'radiator'],
      ['step', 'step'],
      ['skirting', 'skirting'],
      ['coving', 'coving'],
      ['picture-rail', 'picture rail'],
      ['pipe', 'pipe'],
      ['light', 'light'],
      ['boiler', 'boiler'],
      ['other', 'something else'],
    ]),
    ref('wall', 'On wall', ['walls']),
    spanning(along('left', 'Left side'), {
      to: 'right',
      label: 'Width',
      how: 'Of an upright pipe its diameter. Type it or the right side: the one gives the other.',
      middle: {
        of: ['pipe'],
        label: 'Its middle, along the wall',
        how: 'Of an upright pipe: with its diameter as the width it gives both sides.',
        across: 'Width, or diameter',
      },
    }),
    along('right', 'Right side'),
    length('near', 'Begins how far out from the wall', '0 where it touches the wall.'),
    length(
      'out',
      'Reaches how far out',
      'From the wall to its front. Of a pipe: the gap behind it and its diameter together.',
    ),
    spanning(height('bottom', 'Underside'), {
      to: 'top',
      label: 'Height',
      how: 'Of a level pipe its diameter. Type it or the top: the one gives the other.',
      middle: {
        of: ['pipe'],
        label: 'Its middle, up the wall',
        how: 'Of a level pipe: with its diameter as the height it gives underside and top.',
        across: 'Height, or diameter',
      },
    }),
    height('top', 'Top'),
  ],
})

export const access = list('access', {
  one: 'thing to reach',
  many: 'Stopcocks, valves, meters: to be reached for ever',
  mark: 'reach',
  sheet: { rows: 3, columns: ['kind', 'wall', 'along', 'height'], as: 'half' },
  fields: [
    always('kind', 'What', [
      ['stopcock', 'stopcock'],
      ['gas-tap', 'gas tap'],
      ['valve', 'valve'],
      ['rodding-eye', 'rodding eye'],
      ['meter', 'meter'],
      ['consumer-unit', 'consumer unit'],
      ['other', 'something else'],
    ]),
    ref('wall', 'On wall', ['walls']),
    along('along', 'Middle'),
    height('height', 'Height of its middle'),
    length('out', 'Out from the wall'),
    length('door', 'Width of its own door or flap'),
    yesNo('panel', 'There will be a loose panel or a cut-out to reach it'),
  ],
})

export const wayIn = list('route', {
  one: 'place on the way in',
  many: 'The way in from the street',
  mark: 'way',
  sheet: { rows: 3, columns: ['kind', 'width', 'width2', 'height'], as: 'half' },
  how: 'In the order one comes to them: doors, corners, stairs.',
  fields: [
    always('kind', 'What', [
      ['door', 'door'],
      ['corner', 'corner of a passage'],
      ['stairs', 'stairs'],
      ['lift-car', 'lift'],
    ]),
    length('width', 'Width'),
    length('width2', 'Width past the corner, or depth of the lift'),
    length('height', 'Height'),
    length('ceiling', 'Ceiling there'),
  ],
})

export const staging = place(
  'staging',
  'Where units are set down first',
  'Left open, a free piece of floor is chosen.',
)
