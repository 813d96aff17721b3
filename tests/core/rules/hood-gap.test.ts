import { tryRule } from '../../support/rule-trial'

// Hand-worked: the hob's cut-out is 560 wide from 2260 on: its middle is at 2540, between wall unit 3, which ends at 2140,
// and wall unit 4, which begins at 2940. There are 800.
const hood = (width: number) => ({ set: 'appliances.hood-1.widthNeeded', to: width }) as const

tryRule('hood-gap', [
  {
    what: 'a hood wider than the gap less 1 of play',
    inside: [hood(796)],
    outside: [hood(805)],
    weight: 'stop',
    about: ['hood-1', 'wall-3', 'wall-4'],
    says: ['800 mm', '805 mm', '6 mm too wide'],
  },
  {
    what: 'a hood sold as wide as the gap',
    inside: [hood(790)],
    outside: [hood(800)],
    weight: 'ask',
    about: ['hood-1'],
  },
])
