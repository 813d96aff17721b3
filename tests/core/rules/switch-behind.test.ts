import { tryRule } from '../../support/rule-trial'

const plate = (wall: string, along: object, up: number) =>
  ({
    add: `walls.${wall}.accessories`,
    item: { id: 'switch-x', kind: 'switch', along, height: { up }, width: 86, tall: 86, live: true },
  }) as const

tryRule('switch-behind', [
  {
    // The tall unit is 560 mm deep and stands 40 mm from Side wall. Half a plate is 43 mm.
    what: 'a switch on the wall at the end of the run, behind the tall unit',
    inside: [plate('d', { at: 610, from: 'right' }, 100)],
    outside: [plate('d', { at: 500, from: 'right' }, 100)],
    weight: 'stop',
    about: ['tall-1', 'switch-x'],
    says: ['2 613 mm'],
  },
  {
    // Wall unit 3 ends at 2 140 mm: 2 200 - 43 - 2 140 = 17 mm.
    what: 'a switch too close beside a wall unit for a screwdriver',
    inside: [plate('a', { at: 2230 }, 600)],
    outside: [plate('a', { at: 2200 }, 600)],
    weight: 'warn',
    about: ['wall-3'],
    says: ['17 mm', '25 mm'],
  },
])
