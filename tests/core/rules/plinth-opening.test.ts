import { tryRule } from '../../support/rule-trial'

// Hand-worked: the floor at the face of the plinth (520 out), at the left end of base unit 1 (640 along), lies between
// readings of −1001, −1001 and −1003: −1001.6. Underside −858, a finish of 6 to come: 858 down to 1001.6 less 6 is 137.6.
const opening = (height: number) => ({ set: 'finishing.plinth-a.openingHeight', to: height }) as const

tryRule('plinth-opening', [
  {
    what: 'a vent higher than the plinth where the floor is highest',
    inside: [opening(134)],
    outside: [opening(145)],
    weight: 'stop',
    about: ['plinth-a', 'base-1'],
    says: ['138 mm', '145 mm', '7 mm', 'left end of base unit 1'],
  },
  {
    what: 'too near for the readings to tell',
    inside: [opening(134)],
    outside: [opening(138)],
    weight: 'ask',
    about: ['plinth-a'],
  },
])
