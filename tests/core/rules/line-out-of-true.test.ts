import { tryRule } from '../../support/rule-trial'

// Hand-worked: the longest way across the room is its diagonal, 5 m: an error over 5 m is that much across it. 2 is the most,
// and a reading is good to 1.
const reversal = (mm: number) => ({ set: 'lines.line.reversal', to: mm }) as const
const closing = (mm: number) => ({ set: 'lines.line.closing', to: mm }) as const

// A second line by two marks: by the first it lies 150 above the line, by the second 150 and the miss. 2 is the most.
const secondLine = (miss: number) =>
  ({
    set: 'lines',
    to: [
      { id: 'line', offset: 0, closing: 0, reversal: 0.5 },
      {
        id: 'second',
        carried: [
          { id: 'board', line: 'line', there: { up: 1100 }, here: { up: 950 } },
          { id: 'nail', line: 'line', there: { down: 200 }, here: { down: 350 + miss } },
        ],
      },
    ],
  }) as const

tryRule('line-out-of-true', [
  {
    what: 'two marks that put a line apart',
    inside: [secondLine(2)],
    outside: [secondLine(3)],
    weight: 'stop',
    about: ['second'],
    says: ['put it 3 mm apart', 'more than 2 mm'],
  },
  {
    what: 'a laser out by too much across the room',
    inside: [reversal(-0.9)],
    outside: [reversal(-4)],
    weight: 'stop',
    about: ['line'],
    says: ['out by 4 mm', '4 999 mm'],
  },
  {
    what: 'a laser that may be out by too much',
    inside: [reversal(0.9)],
    outside: [reversal(2)],
    weight: 'ask',
    about: ['line'],
  },
  {
    what: 'a line that misses its own start',
    inside: [closing(1)],
    outside: [closing(-4)],
    weight: 'stop',
    about: ['line'],
    says: ['misses its own start by 4 mm'],
  },
  {
    what: 'a line that may miss its own start by too much',
    inside: [closing(1)],
    outside: [closing(2)],
    weight: 'ask',
    about: ['line'],
  },
])
