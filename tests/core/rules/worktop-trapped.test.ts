import { tryRule } from '../../support/rule-trial'

// Worktop a lies from the tall unit to 3 840 mm; at worktop height the wall is 3 850 mm wide at the front.
const width = (depth: 'front' | 'back', value: number) =>
  ({
    add: 'walls.a.widths',
    item: { id: `w-${depth}`, at: 'worktop', depth, width: { value, pm: 1 } },
  }) as const

tryRule('worktop-trapped', [
  {
    what: 'an alcove wider behind than at its mouth',
    given: [width('front', 3850)],
    inside: [width('back', 3851)],
    outside: [width('back', 3862)],
    weight: 'warn',
    about: ['worktop-a', 'a'],
    says: ['3 850 mm', '3 862 mm', '12 mm'],
  },
])
