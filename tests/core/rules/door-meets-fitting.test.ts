import { tryRule } from '../../support/rule-trial'

/*
 * Wall unit 4, from 2 940 to 3 540, hinged on the right: its pivot is 3 538.5 along and 319 out, its leaf 597 with a handle of 30 reaches
 * √(597² + 30²) = 597.7. A light from 3 100 to 3 200 begins `near` out of Hall partition, seen from the hinges 338.5 to the left: the leaf reaches
 * 319 + √(597.7² − 338.5²) = 319 + 492.6 = 811.6 out there. Its underside is 1 050 above the line, the top of the door 1 112 − 1.5.
 */
const light = (edits: Readonly<Record<string, unknown>>) => ({
  id: 'light-1',
  kind: 'light',
  wall: 'a',
  left: { at: 3100 },
  right: { at: 3200 },
  near: 700,
  out: 900,
  bottom: { up: 1050 },
  top: { up: 1391 },
  ...edits,
})
const set = (name: string, to: unknown) => [{ set: `boxes.light-1.${name}`, to }] as const
const given = [{ add: 'boxes', item: light({ near: 840 }) }] as const

tryRule('door-meets-fitting', [
  {
    what: 'F112: a light within the swing of a wall unit’s door',
    given,
    inside: set('near', 822),
    outside: set('near', 780),
    weight: 'stop',
    about: ['wall-4', 'light-1'],
    says: ['the light fitting on Hall partition', '+1 050 mm'],
  },
  {
    what: 'F112: the same light hung low enough to meet the top of the door',
    given: [...given, ...set('near', 700)],
    inside: set('bottom.up', 1115),
    outside: set('bottom.up', 1100),
    weight: 'stop',
    about: ['wall-4', 'light-1'],
    says: ['11 mm of the door'],
  },
  {
    what: 'its underside has not been read',
    given,
    outside: [...set('near', 700), ...set('bottom.up', null)],
    weight: 'ask',
    about: ['wall-4', 'light-1'],
  },
])
