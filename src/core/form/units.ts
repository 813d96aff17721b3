import {
  always,
  choice,
  type Field,
  length,
  list,
  more,
  number,
  type Option,
  only,
  order,
  ref,
  text,
  yesNo,
} from './field'

/** What was delivered, unit by unit, in order along each wall. Figures of a unit are those of its own sheet. */

const SIDES: readonly Option[] = [
  ['left', 'the left'],
  ['right', 'the right'],
  ['top', 'the top'],
  ['bottom', 'the bottom'],
]

const SCREWS: readonly Option[] = [
  ['upper', 'the upper one'],
  ['lower', 'the lower one'],
  ['front', 'the front one'],
  ['inner', 'the inner one'],
]

const feet = list('feet', {
  one: 'foot',
  many: 'Feet',
  mark: 'foot',
  how: 'The middle of each foot, from the left side and from the back of the unit.',
  fields: [length('x', 'From the left side'), length('y', 'From the back')],
})

const doors = list('doors', {
  one: 'door',
  many: 'Doors',
  mark: 'door',
  copied: ['hinge', 'width', 'height', 'thickness', 'opens', 'handle'],
  fields: [
    choice('hinge', 'Hinged at', SIDES),
    length('width', 'Width'),
    length('height', 'Height'),
    length('thickness', 'Thickness'),
    number('mass', 'Weighs', 'kg'),
    number('opens', 'Opens to', 'degrees'),
    length('handle', 'Handle stands out by'),
    length('rise', 'Flap: rises above the unit by'),
  ],
})

const drawers = list('drawers', {
  one: 'drawer',
  many: 'Drawers',
  mark: 'drawer',
  copied: ['travel', 'handle'],
  fields: [
    length('height', 'Height of its front'),
    length('travel', 'Comes out by'),
    number('mass', 'Weighs, front and all', 'kg'),
    length('handle', 'Handle stands out by'),
    length('boxTop', 'Top of its box below the top of the unit'),
    yesNo('inner', 'Behind a door'),
  ],
})

const legs: readonly Field[] = [
  length('legs.min', 'Legs: shortest'),
  length('legs.max', 'Legs: longest'),
  length('legs.delivered', 'Legs: as they came'),
  { ...number('legs.perTurn', 'Legs: one turn moves', 'mm'), how: 'Turn one ten times and measure.' },
  yesNo('legs.maySwing', 'Its maker lets it be stood up on its legs'),
]

const hanging: readonly Field[] = [
  length(
    'hanging.plateBelowTop',
    'Hook-on edge below the top of the unit',
    'Height screw in the middle of its travel.',
  ),
  length('hanging.plateHoleBelow', 'Fixing hole below that edge', 'Above it: −.'),
  number('hanging.plateHoles', 'Fixing holes in a plate', ''),
  length('hanging.plateHolePitch', 'From hole to hole'),
  length('hanging.hangerIn', 'Hanger in from the side of the unit'),
  length('hanging.hookLift', 'Lifted by how much to hook on'),
  length('hanging.up', 'Height screw: up from the middle'),
  length('hanging.down', 'Height screw: down from the middle'),
  choice('hanging.heightScrew.place', 'Height screw: which of the two', SCREWS),
  {
    ...number('hanging.heightScrew.perTurn', 'Height screw: one turn moves', 'mm'),
    how: 'Try it before it hangs: ten turns, and measure.',
  },
  choice('hanging.heightScrew.clockwise', 'Height screw: clockwise', [
    ['raises', 'raises the unit'],
    ['lowers', 'lowers it'],
  ]),
  choice('hanging.drawInScrew.place', 'Draw-in screw: which of the two', SCREWS),
  number('hanging.drawInScrew.perTurn', 'Draw-in screw: one turn moves', 'mm'),
  yesNo('hanging.antiLift', 'Can be locked against lifting off'),
  number('hanging.ratedPerHanger', 'Load the maker states for one hanger', 'kg'),
]

const rails: readonly Field[] = [
  length('backRail.fromTop', 'Back rail, near the top: below the top of the unit'),
  length('backRail.height', 'Back rail: height'),
  length('backRail.thickness', 'Back rail: thickness'),
  length('bottomRail.fromBottom', 'Lower rail, near the bottom: above the underside'),
  length('bottomRail.height', 'Lower rail: height'),
  length('bottomRail.thickness', 'Lower rail: thickness'),
]

const fields: readonly Field[] = [
  always('kind', 'What', [
    ['base', 'base unit'],
    ['wall', 'wall unit'],
    ['tall', 'tall unit'],
    ['corner-base', 'corner base unit'],
    ['corner-wall', 'corner wall unit'],
    ['open-end', 'open end unit'],
    ['bridging', 'bridging unit'],
    ['island', 'island unit'],
    ['appliance-space', 'space for an appliance'],
  ]),
  text('name', 'What you call it'),
  ref('wall', 'Back to wall', ['walls']),
  order('order', 'It stands'),
  length('width', 'Width'),
  length('height', 'Height', 'The box alone: without legs or worktop.'),
  length('depth', 'Depth', 'The box alone: without its fronts. Of a space: as deep as the units beside it.'),
  choice('stands', 'Stands or hangs', [
    ['legs', 'on legs'],
    ['plates', 'on wall plates'],
    ['rail', 'on a rail'],
    ['back-rail-screws', 'screwed through its back rail'],
    ['cleat', 'on a cleat'],
    ['shims', 'on shims'],
    ['plinth-frame', 'on a plinth frame'],
    ['floor-cleat', 'on floor cleats'],
    ['nothing', 'on nothing: it is a space'],
  ]),
  length('board', 'Thickness of its panels'),
  length('back', 'Thickness of its back'),
  length('void', 'Space behind its back'),
  length('front', 'Thickness of its fronts'),
  number('shelves', 'Loose shelves', ''),
  number('massEmpty', 'Weighs, whole', 'kg'),
  number('massStripped', 'Weighs without doors, drawers and shelves', 'kg'),
  number('contents', 'What will stand in it', 'kg'),
  choice('assembled', 'Came', [
    ['flat-packed', 'flat, to be put together'],
    ['built', 'built'],
  ]),
  choice('hand', 'Corner, or hinges, on', [
    ['left', 'the left'],
    ['right', 'the right'],
    ['either', 'either side'],
  ]),
  yesNo('delivered', 'Seen and counted'),
  ref('applianceBay', 'Appliance that goes in it', ['appliances']),
  ...only('stands', ['', 'legs'], ...legs),
  ...only('stands', ['', 'legs', 'shims', 'plinth-frame', 'floor-cleat'], feet),
  ...only('stands', ['', 'plates', 'rail', 'back-rail-screws', 'cleat'], ...hanging),
  doors,
  drawers,
  ...rails,
  ...more(
    length('standOff', 'Back of the unit out from the wall'),
    length('returnLeft', 'Corner unit: its arm on the left, length'),
    length('returnRight', 'Corner unit: its arm on the right, length'),
    length('returnDepth', 'Corner unit: depth of that arm'),
  ),
]

export const units = list('units', {
  one: 'unit',
  many: 'Units',
  mark: 'unit',
  sheet: {
    rows: 12,
    hasOwnSheet: true,
    columns: ['kind', 'wall', 'order', 'width', 'height', 'depth', 'stands', 'hand', 'delivered'],
  },
  how: 'In order along each wall, from the left. A further one takes over the figures of the one before it; its feet once its width is in, by “Fill what is open”.',
  copied: [
    'kind',
    'wall',
    'height',
    'depth',
    'stands',
    'board',
    'back',
    'void',
    'front',
    'legs',
    'feet',
    'hanging',
    'backRail',
    'bottomRail',
    'assembled',
  ],
  fields,
})
