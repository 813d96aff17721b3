import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'
import { soundKitchen } from '../../support/sound-kitchen'

type Item = Extract<Edit, { readonly item: unknown }>['item']

/** A second tall unit like the first, against a bare wall, and a third at its right. */
function talls(): readonly Edit[] {
  const units = (soundKitchen() as { readonly units: readonly Item[] }).units
  const first = units.find(({ id }) => id === 'tall-1') as Item
  const at = (id: string, order: unknown): Edit => ({
    add: 'units',
    item: { ...first, id, wall: 'd', order },
  })
  return [at('tall-2', { left: { at: 900 } }), at('tall-3', { rightOf: 'tall-2' })]
}

const oven = (id: string, over: string, shelf: number | null, heightMin: number | null = 595): Edit => ({
  add: 'appliances',
  item: { id, kind: 'oven', fuel: 'electric', mass: 15, over, shelf, heightMin },
})

// What a bare wall, and units whose holes are in it, leave to be asked: no trial of this.
const beside = [
  'door-stops-short',
  'few-studs',
  'floor-outside-readings',
  'heavy-lift-late',
  'lift-over-filter',
  'tall-not-restrained',
  'unit-in-something-fixed',
]

// Both talls stand on one underside, so the shelves alone tell: each good to 0.5, the undersides they stand on to as much
// as the line. Shelves at 700 and 701 are in line; at 700 and 760 they are 60 apart, at the top too with ovens alike.
// An oven of 535 on the higher shelf ends at 1 295 like one of 595 on the lower.
tryRule('appliance-in-tall', [
  {
    what: 'an oven higher than the one beside it',
    given: talls(),
    inside: [oven('oven-2', 'tall-2', 700), oven('oven-3', 'tall-3', 701)],
    outside: [oven('oven-2', 'tall-2', 700), oven('oven-3', 'tall-3', 760)],
    weight: 'warn',
    about: ['oven-2', 'oven-3'],
    says: ['60 mm'],
    beside,
  },
  {
    what: 'in line at the top is in line; at neither end is not',
    given: talls(),
    inside: [oven('oven-2', 'tall-2', 700), oven('oven-3', 'tall-3', 760, 535)],
    outside: [oven('oven-2', 'tall-2', 700), oven('oven-3', 'tall-3', 760, 545)],
    weight: 'warn',
    about: ['oven-2', 'oven-3'],
    beside,
  },
  {
    what: 'nobody has measured one of the shelves',
    given: talls(),
    inside: [oven('oven-2', 'tall-2', 700), oven('oven-3', 'tall-3', 700)],
    outside: [oven('oven-2', 'tall-2', 700), oven('oven-3', 'tall-3', null)],
    weight: 'ask',
    about: ['oven-2', 'oven-3'],
    beside,
  },
  {
    // Its housing is 1 970: 1 370 and 595 are 1 965, 1 380 and 595 are 5 more than there is.
    what: 'a shelf so high that the oven does not go in over it',
    inside: [oven('oven-1', 'tall-1', 1370)],
    outside: [oven('oven-1', 'tall-1', 1380)],
    weight: 'stop',
    about: ['oven-1', 'tall-1'],
    says: ['1 380 mm', '5 mm is missing'],
  },
])
