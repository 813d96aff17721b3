import type { Edit } from '../../../src/core/plan/types'
import { tryRule } from '../../support/rule-trial'

// Hand-worked: at the face of the plinth (540 out) the floor under the dishwasher falls from about −1011 at its left end to
// −1012.3 at its right; with 6 of finish, and undersides at −858, the plinth is from 147 to 148 high.
const sheet = (fact: string, mm: number): Edit => ({ set: `appliances.dishwasher-1.${fact}`, to: mm })
const door: Edit = {
  add: 'units.dishwasher-space.doors',
  item: { id: 'door', hinge: 'bottom', width: 597, height: 715, thickness: 18, mass: 5 },
}

tryRule('furniture-door', [
  {
    what: 'a plinth lower than the sheet asks',
    inside: [sheet('plinthMin', 143)],
    outside: [sheet('plinthMin', 152)],
    weight: 'stop',
    about: ['dishwasher-space', 'dishwasher-1'],
    says: ['152 mm', 'the tub shows'],
  },
  {
    what: 'a plinth higher than the sheet allows',
    inside: [sheet('plinthMax', 152)],
    outside: [sheet('plinthMax', 140)],
    weight: 'stop',
    about: ['dishwasher-1'],
    says: ['140 mm', '8 mm too high'],
  },
  {
    what: 'a plinth too near the limit for the readings to tell',
    inside: [sheet('plinthMax', 152)],
    outside: [sheet('plinthMax', 148)],
    weight: 'ask',
    about: ['dishwasher-1'],
  },
  {
    what: 'a furniture door lower than the sheet asks',
    given: [door],
    inside: [sheet('frontMin', 710)],
    outside: [sheet('frontMin', 720)],
    weight: 'stop',
    about: ['dishwasher-1'],
    says: ['715 mm', '5 mm too short'],
  },
  {
    what: 'a furniture door and no sheet',
    inside: [door, sheet('frontMin', 710)],
    outside: [door],
    weight: 'ask',
    about: ['dishwasher-1'],
  },
])
