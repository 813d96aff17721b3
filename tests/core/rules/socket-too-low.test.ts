import { tryRule } from '../../support/rule-trial'

// Hand-worked: the worktop ends at −100. A plate 86 high reaches 43 below its centre: at −50 it begins at −93, over the
// worktop; at −60 at −103, 3 behind it. Sockets 80 up begin at +37: an upstand of 140 reaches +40.
const socket = (up: number) => ({ set: 'walls.b.accessories.socket-3.height', to: { up } }) as const
const upstand = (height: number | null) =>
  ({
    add: 'finishing',
    item: { id: 'upstand-b', kind: 'upstand', wall: 'b', of: ['base-4'], height, width: 20 },
  }) as const

tryRule('socket-too-low', [
  {
    what: 'a socket whose plate begins behind the worktop',
    inside: [socket(-50)],
    outside: [socket(-60)],
    weight: 'stop',
    about: ['b', 'worktop-b'],
    says: ['850 mm', '3 mm'],
    waysOut: 1,
  },
  {
    what: 'too near to the worktop for the readings to tell',
    inside: [socket(-50)],
    outside: [socket(-57)],
    weight: 'ask',
    about: ['b'],
  },
  {
    what: 'an upstand that comes up over the plate',
    inside: [upstand(130)],
    outside: [upstand(140)],
    weight: 'ask',
    about: ['b'],
    says: ['3 mm', 'upstand'],
    waysOut: 2,
  },
  {
    what: 'an upstand of which nobody has said how high it is',
    inside: [upstand(130)],
    outside: [upstand(null)],
    weight: 'ask',
    about: ['b'],
    says: ['137 mm'],
  },
])
