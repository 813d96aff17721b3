import { tryRule } from '../../support/rule-trial'

const fridge = (ventPlanned: number | null) =>
  ({
    add: 'appliances',
    item: {
      id: 'fridge-1',
      kind: 'fridge-freezer',
      fuel: 'electric',
      mass: 20,
      ventArea: 200,
      ventPlanned,
      over: 'tall-1',
    },
  }) as const

tryRule('vent-area', [
  {
    what: 'openings smaller than the sheet asks',
    given: [],
    inside: [fridge(200)],
    outside: [fridge(199)],
    weight: 'stop',
    beside: ['fridge-in-corner'],
    about: ['fridge-1'],
    says: ['200 cm²', '199 cm²'],
  },
  {
    what: 'nobody has said how large they will be',
    inside: [fridge(200)],
    outside: [fridge(null)],
    weight: 'ask',
    beside: ['fridge-in-corner'],
    about: ['fridge-1', 'tall-1'],
  },
])
