import { tryRule } from '../../support/rule-trial'

const plumb = (wall: string, at: number, lean: number) =>
  ({ add: `walls.${wall}.plumb`, item: { id: 'plumb-x', along: { at }, over: 2000, lean } }) as const

tryRule('panel-short', [
  {
    // End panel 870 mm high and 600 deep beside a space 580 deep: 20 mm to cut away. 40 x 870 / 2 000 = 17.4; 55 makes 23.9.
    what: 'a wall that leans by more than the panel can be cut',
    inside: [plumb('b', 2500, 40)],
    outside: [plumb('b', 2500, 55)],
    weight: 'stop',
    about: ['end-panel-1', 'b'],
    says: ['600 mm', '604 mm'],
    waysOut: 1,
  },
  {
    // Tall unit 1 970 mm high: 10 x 1 970 / 2 000 = 9.9 mm.
    what: 'a tall unit without a panel against a leaning wall',
    inside: [plumb('a', 300, 3)],
    outside: [plumb('a', 300, -10)],
    weight: 'warn',
    about: ['tall-1'],
    says: ['10 mm'],
  },
])
