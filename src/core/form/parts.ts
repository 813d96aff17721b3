import { along, always, choice, choices, length, list, number, order, ref, refs, text, yesNo } from './field'
import { MATERIAL_WORDS } from './on-walls'

/** Rails, panels, fillers, plinths, worktops, and the screws and plugs. */

export const railList = list('rails', {
  one: 'rail',
  many: 'Hanging rails',
  mark: 'rail',
  starts: { units: [] },
  fields: [
    ref('wall', 'On wall', ['walls']),
    refs('units', 'Units that hang on it', ['units']),
    length('thickness', 'Stands out from the wall by'),
    length('overhang', 'May run past its last fixing by'),
    length('maxSpacing', 'Furthest from fixing to fixing, by its maker'),
    length('slots', 'Slot to slot', 'Left open: drilled where wanted.'),
    length('length', 'Length as bought'),
    yesNo('delivered', 'Seen and counted'),
  ],
})

export const finishing = list('finishing', {
  one: 'panel, filler or plinth',
  many: 'Panels, fillers, plinths',
  mark: 'part',
  sheet: { rows: 3, columns: ['kind', 'wall', 'width', 'height'], as: 'half' },
  fields: [
    always('kind', 'What', [
      ['end-panel', 'end panel'],
      ['filler', 'filler'],
      ['plinth', 'plinth'],
      ['cornice', 'cornice'],
      ['pelmet', 'pelmet'],
      ['upstand', 'upstand'],
      ['splashback', 'splashback'],
      ['scribe', 'scribing strip'],
    ]),
    text('name', 'What you call it'),
    ref('wall', 'On wall', ['walls']),
    order('order', 'It stands'),
    refs('of', 'Belongs to', ['units']),
    length('width', 'Width along the wall', 'Of a panel its thickness.'),
    length('height', 'Height'),
    length('depth', 'Depth'),
    length('length', 'Length'),
    length(
      'setBack',
      'Plinth: back from the front of the units',
      'From the front edge of the boxes, without their doors.',
    ),
    length('openingHeight', 'Plinth: height of what is let into it'),
    length('scribe', 'To be cut to the wall, part of its width'),
    yesNo('delivered', 'Seen and counted'),
  ],
})

export const worktops = list('worktops', {
  one: 'worktop',
  many: 'Worktops',
  mark: 'worktop',
  sheet: { rows: 3, columns: ['over', 'thickness', 'depth', 'mass'], as: 'half' },
  fields: [
    text('name', 'What you call it'),
    refs('over', 'Lies on', ['units']),
    length('thickness', 'Thickness'),
    length('depth', 'Depth'),
    choice('material', 'Made of', [
      ['laminate', 'laminate'],
      ['solid-timber', 'solid timber'],
      ['stone', 'stone'],
      ['compact', 'compact laminate'],
      ['solid-surface', 'solid surface'],
      ['steel', 'steel'],
    ]),
    number('mass', 'Weighs', 'kg'),
    length('freeOverhang', 'Reaches past what carries it by'),
    length('freeOverhangMax', 'Its maker lets it reach past by'),
    yesNo('delivered', 'Seen and counted'),
    list('joints', {
      one: 'joint',
      many: 'Joints',
      mark: 'joint',
      fields: [ref('wall', 'At wall', ['walls']), along('along', 'Where')],
    }),
    list('cutouts', {
      one: 'cut-out',
      many: 'Cut-outs',
      mark: 'cut-out',
      fields: [
        ref('for', 'For', ['appliances']),
        ref('wall', 'At wall', ['walls']),
        along('left', 'Left edge'),
        length('width', 'Width along the wall'),
        length('front', 'From the front edge'),
        length('depth', 'From front to back'),
      ],
    }),
  ],
})

export const fixings = list('fixings', {
  one: 'screw or plug',
  many: 'Screws and plugs',
  mark: 'fixing',
  sheet: { rows: 0, hasOwnSheet: true, columns: [] },
  how: 'What is bought or will be, with the figures on its packet or sheet.',
  fields: [
    always('kind', 'What', [
      ['wood-screw', 'wood screw'],
      ['screw-and-plug', 'screw and plug'],
      ['frame-plug', 'frame plug'],
      ['anchor', 'anchor'],
      ['stand-off', 'stand-off fixing'],
      ['bracket-screw', 'bracket screw'],
      ['lag-screw', 'lag screw'],
    ]),
    text('name', 'What you call it'),
    length('diameter', 'Diameter'),
    length('length', 'Length'),
    length('bit', 'Drill bit'),
    length('holeDepth', 'Depth of hole its maker asks for'),
    length('embedment', 'Least length in what holds it'),
    length('thread', 'Length of its thread'),
    length('core', 'Diameter between the threads'),
    length('tip', 'Lag screw: length of its tip'),
    choices('for', 'Bought for', [
      ['rail', 'rails'],
      ['plate', 'plates'],
      ['second-fixing', 'second fixings'],
      ['base-bracket', 'brackets of base units'],
      ['tall-restraint', 'holding tall units'],
      ['back-rail', 'back rails'],
      ['cleat', 'cleats'],
    ]),
    choices('into', 'Made for', MATERIAL_WORDS),
    number('pull', 'Pull its maker recommends', 'N'),
    number('shear', 'Shear its maker recommends', 'N'),
    yesNo('delivered', 'Seen and counted'),
  ],
})
