import { tryRule } from '../../support/rule-trial'

// Hand-worked: the run on Hall partition ends with the corner unit at 3 840 mm (40 + 600 + 600 + 900 + 800 + 900).
const width = (value: number) =>
  ({
    add: 'walls.a.widths',
    item: { id: 'w-front', at: 'worktop', depth: 'front', width: { value, pm: 1 } },
  }) as const

tryRule('run-too-long', [
  {
    what: 'an alcove narrower at the front than the wall is long',
    inside: [width(3840)],
    outside: [width(3820)],
    weight: 'stop',
    about: ['a', 'corner-1'],
    says: ['3 840 mm', '3 820 mm', '20 mm'],
  },
  {
    what: 'too near for the readings to tell',
    inside: [width(3840)],
    outside: [width(3839.5)],
    weight: 'ask',
    about: ['a'],
  },
])
