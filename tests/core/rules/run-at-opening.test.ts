import { tryRule } from '../../support/rule-trial'

// The end panel on Garden wall ends at 2 508 mm. A door further along it, with trim of 60 mm round it.
const door = (left: number, architrave: number | null) =>
  ({
    add: 'walls.b.openings',
    item: {
      id: 'door-x',
      kind: 'door',
      left: { at: left },
      right: { at: 3080 },
      bottom: { down: 1010 },
      top: { up: 1000 },
      architrave,
      hinge: 'right',
      opens: 'out',
      leaf: 450,
      handle: 0,
    },
  }) as const

tryRule('run-at-opening', [
  {
    what: 'the last panel of a run on the trim of a door',
    inside: [door(2575, 60)],
    outside: [door(2560, 60)],
    weight: 'stop',
    about: ['end-panel-1'],
    says: ['2 508 mm', '2 500 mm', '8 mm'],
  },
  {
    what: 'the run stands in the doorway itself',
    inside: [door(2640, null)],
    outside: [door(2480, null)],
    weight: 'stop',
    beside: ['passage'],
    about: ['end-panel-1'],
    says: ['2 480 mm', '28 mm'],
  },
  {
    what: 'a door near the end of the run whose trim nobody has measured',
    inside: [door(2640, null)],
    outside: [door(2600, null)],
    weight: 'ask',
    beside: ['passage'],
    about: ['end-panel-1'],
  },
])
