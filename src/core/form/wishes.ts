import {
  always,
  choice,
  type Field,
  height,
  list,
  number,
  type Option,
  place,
  ref,
  text,
  yesNo,
} from './field'

/** What is wished for, and who does the work. */

export const HEIGHT_WORDS: readonly Option[] = [
  ['worktop-top', 'top of the worktop'],
  ['base-top', 'top of the base units'],
  ['base-underside', 'underside of the base units'],
  ['wall-underside', 'underside of the wall units'],
  ['wall-top', 'top of the wall units'],
  ['tall-underside', 'underside of the tall units'],
  ['tall-top', 'top of the tall units'],
]

export const heightWishes = list('wishes.heights', {
  one: 'wish for a height',
  many: 'Heights you wish for',
  mark: 'wish',
  sheet: { rows: 2, columns: ['of', 'min', 'max'], as: 'half' },
  fields: [
    always('of', 'Height of', HEIGHT_WORDS),
    height('min', 'Not lower than'),
    height('max', 'Not higher than'),
    place('place', 'Measured above the floor at'),
    choice('equals', 'In line with', HEIGHT_WORDS),
  ],
})

const side = (key: 'before' | 'after', words: string): readonly Field[] => [
  text(`${key}.operation`, `${words}: this step`),
  text(`${key}.kind`, `${words}: every step of this kind`),
  ref(`${key}.on`, `${words}: only on`, ['units', 'walls']),
]

export const orderWishes = list('wishes.order', {
  one: 'wish for an order',
  many: 'What you want done before what',
  mark: 'order',
  starts: { before: {}, after: {} },
  fields: [
    ...side('before', 'First'),
    ...side('after', 'Then'),
    number('minLag', 'At least this long between them', 'minutes'),
    number('maxLag', 'At most this long between them', 'minutes'),
    yesNo('hard', 'It must be so'),
  ],
})

export const overrides = list('wishes.overrides', {
  one: 'reason set aside',
  many: 'Preferred orders you set aside',
  mark: 'aside',
  starts: { arc: '' },
  fields: [text('arc', 'Which reason')],
})

export const crew: readonly Field[] = [
  list('crew.people', {
    one: 'person',
    many: 'Who is there',
    mark: 'person',
    sheet: { rows: 2, columns: ['name', 'filter', 'own', 'alwaysThere'], as: 'half' },
    fields: [
      text('name', 'Name'),
      choice(
        'filter',
        'Published lifting figures for',
        [
          ['man', 'men'],
          ['woman', 'women'],
        ],
        'The published tables have two columns and no third; take the lower if in doubt.',
      ),
      number('own', 'Or a lower figure of their own', 'kg'),
      yesNo('alwaysThere', 'There all the time'),
      list('windows', {
        one: 'time',
        many: 'When they are there',
        mark: 'time',
        how: 'Day and hour, such as 2026-12-05 08:00.',
        starts: { from: '', to: '' },
        fields: [text('from', 'From'), text('to', 'To')],
      }),
    ],
  }),
  number('crew.lifter.rated', 'A lifter for wall units: rated load', 'kg'),
  text('crew.hours', 'Working hours'),
  yesNo('crew.extraction', 'Dust extraction at the drill and saw'),
]
