import {
  along,
  always,
  choice,
  height,
  length,
  list,
  number,
  type Option,
  ref,
  spanning,
  type Things,
  text,
  yesNo,
} from './field'

/** What is on a wall, in it and behind it. Everything is measured as one stands inside and looks at it. */

const FACES: readonly Option[] = [
  ['room', 'this side'],
  ['other', 'the other side'],
]

export const MATERIAL_WORDS: readonly Option[] = [
  ['tile', 'tile'],
  ['adhesive', 'tile adhesive'],
  ['plaster-skim', 'skim of plaster'],
  ['plaster', 'plaster'],
  ['lime-plaster', 'lime plaster'],
  ['plasterboard', 'plasterboard'],
  ['void', 'empty space'],
  ['dabs', 'dabs of adhesive'],
  ['timber-stud', 'timber studs'],
  ['metal-stud', 'metal studs'],
  ['brick', 'brick'],
  ['dense-block', 'dense block'],
  ['aircrete', 'light block'],
  ['old-brick', 'old soft brick'],
  ['concrete', 'concrete'],
  ['insulation', 'insulation'],
  ['lath', 'laths'],
  ['plywood', 'plywood'],
  ['osb', 'strand board'],
  ['timber-batten', 'timber battens'],
  ['stone', 'stone'],
  ['steel', 'steel'],
]

const layer: Things = {
  one: 'layer',
  many: 'Layers',
  mark: 'layer',
  how: 'From the face you see inwards. Seen at a socket with its circuit proved dead, at a doorway, in the loft; never by drilling.',
  fields: [choice('material', 'Made of', MATERIAL_WORDS), length('thickness', 'Thickness')],
}

export const layers = list('layers', {
  ...layer,
  sheet: { rows: 8, columns: ['material', 'thickness'], as: 'half' },
})
export const layersToCome = list('layersToCome', {
  ...layer,
  one: 'layer to come',
  many: 'Finishes still to be put on',
  mark: 'to-come',
  how: 'Tiles or board that will be on the wall before the units are fixed.',
})

export const studs = list('studs', {
  one: 'stud',
  many: 'Studs found',
  mark: 'stud',
  sheet: { rows: 8, columns: ['centre', 'width', 'confirmed'], as: 'half' },
  how: 'Both edges with a detector, or a row of fixings with a magnet. One beep is not a stud.',
  copied: ['width', 'material', 'confirmed'],
  fields: [
    along('centre', 'Its middle'),
    length('width', 'Width'),
    choice('material', 'Material', [
      ['timber', 'timber'],
      ['steel', 'steel'],
    ]),
    choice('confirmed', 'How it was found', [
      ['both-edges', 'both edges'],
      ['one-beep', 'one beep'],
      ['fixings-seen', 'fixings seen'],
      ['seen-open', 'seen with the wall open'],
      ['not-found', 'looked for, not found'],
    ]),
  ],
})

export const noggings = list('noggings', {
  one: 'nogging or board',
  many: 'Noggings and boards let in',
  mark: 'nogging',
  fields: [
    always('kind', 'What', [
      ['nogging', 'nogging between studs'],
      ['pattress', 'board over the studs'],
    ]),
    spanning(along('from', 'Left end'), {
      to: 'to',
      label: 'Length',
      how: 'From end to end. Type it or the right end: the one gives the other.',
    }),
    along('to', 'Right end'),
    height('centre', 'Its middle'),
    length('depth', 'How tall'),
    length('thickness', 'How thick'),
  ],
})

export const widths = list('widths', {
  one: 'width',
  many: 'Widths between the side walls',
  mark: 'width',
  how: 'Where units stand between two walls: at floor, worktop and wall-unit height, at the back, the middle and the front. The smallest counts.',
  fields: [
    choice('at', 'At the height of', [
      ['floor', 'the floor'],
      ['worktop', 'the worktop'],
      ['wall-unit', 'the wall units'],
    ]),
    choice('depth', 'How far out', [
      ['back', 'at the back'],
      ['middle', 'half way'],
      ['front', 'at the front'],
    ]),
    length('width', 'Width'),
  ],
})

export const plumb = list('plumb', {
  one: 'plumb reading',
  many: 'Plumb',
  mark: 'plumb',
  how: 'A long level held upright, or a plumb line. Top out into the room is +.',
  fields: [along('along', 'Where'), length('over', 'Over a height of'), length('lean', 'Leans by')],
})

export const straightness = list('straightness', {
  one: 'straightness reading',
  many: 'Straightness',
  mark: 'straight',
  how: 'A straightedge along the wall. A hollow is +, a belly is −.',
  fields: [
    height('height', 'At what height'),
    along('along', 'Where'),
    length('bow', 'Hollow or belly'),
    length('over', 'Length of the straightedge', 'Between the two points it lay on.'),
  ],
})

export const accessories = list('accessories', {
  one: 'socket, switch or outlet',
  many: 'Sockets, switches and outlets, on both sides of the wall',
  mark: 'outlet',
  sheet: { rows: 7, columns: ['kind', 'face', 'along', 'height', 'width', 'tall', 'live', 'serves'] },
  how: 'Middle of the plate. Go round to the other side and measure there as you stand there: it is turned about for you.',
  copied: ['width', 'tall'],
  fields: [
    always('kind', 'What', [
      ['socket', 'socket'],
      ['switch', 'switch'],
      ['spur', 'fused connection'],
      ['cooker-outlet', 'cooker outlet'],
      ['isolator', 'isolating switch'],
      ['light', 'wall light'],
      ['aerial', 'aerial socket'],
      ['data', 'data socket'],
      ['consumer-unit', 'consumer unit'],
      ['other', 'something else'],
    ]),
    always('face', 'On', FACES),
    along('along', 'Middle'),
    height('height', 'Height of its middle'),
    length('width', 'Width of its plate'),
    length('tall', 'Height of its plate'),
    yesNo('live', 'Live'),
    ref('serves', 'Feeds or switches', ['appliances']),
    yesNo('cutOut', 'The back of the unit will be cut round it'),
    length('standsProud', 'Stands out from the wall by', 'With its plug in.'),
  ],
})

const SERVICES: readonly Option[] = [
  ['cable', 'cable'],
  ['water-cold', 'cold water'],
  ['water-hot', 'hot water'],
  ['heating', 'heating pipe'],
  ['gas', 'gas'],
  ['waste', 'waste'],
  ['duct', 'duct'],
  ['not-known', 'not known'],
]

export const services = list('services', {
  one: 'pipe or cable',
  many: 'Pipes and cables in the wall',
  mark: 'service',
  starts: { points: [] },
  how: 'Only what was seen, found with a detector, or stands on a drawing; say which.',
  fields: [
    always('kind', 'What', SERVICES),
    always('face', 'Measured on', FACES),
    list('points', {
      one: 'point',
      many: 'Its way, point by point',
      mark: 'point',
      fields: [along('along', 'Where'), height('height', 'How high')],
    }),
    length('width', 'How wide'),
    length('depth', 'How deep behind the face'),
    choice('traced', 'How it is known', [
      ['seen', 'seen'],
      ['detector', 'found with a detector'],
      ['drawing', 'from a drawing'],
      ['guessed', 'guessed'],
    ]),
  ],
})

export const lintels = list('lintels', {
  one: 'lintel or steel',
  many: 'Lintels and steels',
  mark: 'lintel',
  fields: [
    choice('kind', 'Made of', [
      ['timber', 'timber'],
      ['concrete', 'concrete'],
      ['prestressed', 'pre-stressed concrete'],
      ['steel', 'steel'],
    ]),
    spanning(along('left', 'Left end'), {
      to: 'right',
      label: 'Length',
      how: 'From end to end. Type it or the right end: the one gives the other.',
    }),
    along('right', 'Right end'),
    spanning(height('bottom', 'Underside'), {
      to: 'top',
      label: 'Height',
      how: 'From its underside up. Type it or the top: the one gives the other.',
    }),
    height('top', 'Top'),
  ],
})

export const openings = list('openings', {
  one: 'door or window',
  many: 'Doors and windows',
  mark: 'opening',
  sheet: {
    rows: 4,
    columns: ['kind', 'left', 'right', 'bottom', 'top', 'architrave', 'hinge', 'opens', 'leaf'],
  },
  fields: [
    always('kind', 'What', [
      ['door', 'door'],
      ['window', 'window'],
      ['arch', 'opening without a door'],
      ['hatch', 'hatch'],
    ]),
    spanning(along('left', 'Left edge'), {
      to: 'right',
      label: 'Width',
      how: 'From edge to edge. Type it or the right edge: the one gives the other.',
    }),
    along('right', 'Right edge'),
    spanning(height('bottom', 'Threshold or sill'), {
      to: 'top',
      label: 'Height',
      how: 'From the threshold or sill up. Type it or the top: the one gives the other.',
    }),
    height('top', 'Top'),
    length('architrave', 'Width of the trim round it'),
    choice('hinge', 'Hinged at', [
      ['left', 'the left'],
      ['right', 'the right'],
      ['top', 'the top'],
      ['bottom', 'the bottom'],
      ['slides', 'slides'],
    ]),
    choice('opens', 'Opens', [
      ['in', 'into this room'],
      ['out', 'away from it'],
      ['neither', 'not at all'],
    ]),
    length('leaf', 'Width of its leaf'),
    length('handle', 'Its handle stands out by'),
    length('boardProjection', 'Window board: out from the wall'),
    height('boardLeft', 'Window board: underside at its left end'),
    height('boardRight', 'Window board: underside at its right end'),
    height('sashBottom', 'Underside of the part that opens'),
  ],
})

export const studTimber: readonly ReturnType<typeof choice>[] = [
  choice('studTimber.grade', 'Strength class stamped on the studs', [
    ['C16', 'C16'],
    ['C24', 'C24'],
    ['other', 'another'],
  ]),
  number('studTimber.density', 'Characteristic density of that class', 'kg/m³'),
  number('studTimber.specificGravity', 'Specific gravity of the species', ''),
]

export const nameOfOwn = text('name', 'What you call it')
