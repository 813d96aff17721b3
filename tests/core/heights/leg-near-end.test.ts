import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'

// Worktop wished at 905 over the floor and nowhere else: base units from −858. The floor under the front right foot of
// base-5 is at −1010.66, so that 152.66 stand under it, known to 1.01; the leg's own length is known to 0.5.
const wishedAt = (limit: 'min' | 'max'): Edit => ({
  set: `wishes.heights.worktop-height.${limit}.aboveFloor`,
  to: 905,
})
const longest = (mm: number): Edit => ({ set: 'units.base-5.legs.max', to: mm })

tryRule('leg-near-end', [
  {
    // 152.66 + 1.01 + 0.5 = 154.17.
    what: 'a leg that reaches by less than the floor under it is known to',
    given: [wishedAt('min'), wishedAt('max')],
    inside: [longest(154.2)],
    outside: [longest(154.1)],
    weight: 'ask',
    about: ['base-5', 'base-5.front-right'],
    says: ['front right leg', 'cannot tell whether it reaches'],
  },
  {
    // The floor is highest under the back left foot of tall-1, at −1000.12: 142.12 − 1.01 − 0.5 = 140.61.
    what: 'a leg wound right in whose floor may be a little higher',
    given: [wishedAt('min'), wishedAt('max')],
    inside: [{ set: 'units.tall-1.legs.min', to: 140.6 }],
    outside: [{ set: 'units.tall-1.legs.min', to: 140.7 }],
    weight: 'ask',
    about: ['tall-1', 'tall-1.back-left'],
    says: ['back left leg', 'cannot tell whether it goes in'],
  },
])
