import type { DemoKitchen } from '../ui/survey/SurveyPlace'

/** The invented kitchens that come with the app, each loaded when it is asked for; the first is open at the start. */
export const demos: readonly DemoKitchen[] = [
  {
    name: 'Mill Lane',
    about: 'an L of timber-stud walls with a tall unit, wall units on a rail and a dishwasher',
    text: () => import('../../scenes/l-shape.dryrun.json?raw').then((m) => m.default),
  },
  {
    name: 'Garden flat',
    about: 'one masonry wall between two returns, wall units on plates',
    text: () => import('../../scenes/one-wall.dryrun.json?raw').then((m) => m.default),
  },
  {
    name: 'Long galley',
    about:
      'two runs face to face in a narrow room, one on masonry, one on board stuck to it, with a tall fridge',
    text: () => import('../../scenes/galley.dryrun.json?raw').then((m) => m.default),
  },
  {
    name: 'Maple Street',
    about: 'North American: boxes on shims, screwed through their rails into studs, sizes in inches',
    text: () => import('../../scenes/north-american.dryrun.json?raw').then((m) => m.default),
  },
  {
    name: 'Everybody’s wishes',
    about: 'wishes that cannot all be kept, so that there is no order',
    text: () => import('../../scenes/no-order.dryrun.json?raw').then((m) => m.default),
  },
]
