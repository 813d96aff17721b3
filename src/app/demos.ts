import lShape from '../../scenes/l-shape.dryrun.json?raw'
import oneWall from '../../scenes/one-wall.dryrun.json?raw'
import type { DemoKitchen } from '../ui/survey/SurveyPlace'

/** The invented kitchens that come with the app; the first is open at the start. */
export const demos: readonly DemoKitchen[] = [
  { name: 'Mill Lane', text: lShape },
  { name: 'Garden flat', text: oneWall },
]
