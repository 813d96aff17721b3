import { tryRule } from '../../support/rule-trial'

/*
 * Wall unit 1 with a flap: its top is 1 112 above the line. Over the arc of the flap, from the front at 319 out by its own
 * 715, the ceiling is never lower than 1 391 and the readings round it are 1 391 to 1 397: at least 279 over the top. With 5 to spare a rise of 260
 * passes and one of 300 does not. A light 1 300 above the line leaves 188: 170 passes, 200 does not, by 17.
 */
const flap = (edits: Readonly<Record<string, unknown>>) =>
  Object.entries(edits).map(([name, to]) => ({ set: `units.wall-1.doors.door.${name}`, to }))
const given = flap({ hinge: 'top', rise: 160 })
const light = {
  id: 'light-1',
  kind: 'light',
  wall: 'a',
  left: { at: 850 },
  right: { at: 950 },
  near: 420,
  out: 520,
  bottom: { up: 1300 },
  top: { up: 1391 },
}

tryRule('flap-rise', [
  {
    what: 'F99: a flap that rises into the ceiling',
    given,
    inside: flap({ rise: 260 }),
    outside: flap({ rise: 300 }),
    weight: 'stop',
    about: ['wall-1'],
    says: ['the ceiling', '300 mm'],
    waysOut: 1,
  },
  {
    what: 'F99: a flap that rises into a light',
    given: [...given, { add: 'boxes', item: light }],
    inside: flap({ rise: 170 }),
    outside: flap({ rise: 200 }),
    weight: 'stop',
    about: ['wall-1', 'light-1'],
    says: ['the light fitting on Hall partition', '17 mm'],
    waysOut: 1,
  },
  {
    what: 'a light whose underside nobody has read',
    given: [...given, { add: 'boxes', item: { ...light, near: 900, out: 1000 } }],
    outside: [{ set: 'boxes.light-1.bottom.up', to: null }],
    weight: 'ask',
    about: ['wall-1'],
    with: ['door-meets-fitting'],
  },
  {
    what: 'nobody knows how far it rises, and its whole height does not go under the ceiling',
    given,
    outside: flap({ rise: null }),
    weight: 'ask',
    about: ['wall-1'],
  },
])
