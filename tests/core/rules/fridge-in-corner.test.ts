import { tryRule } from '../../support/rule-trial'

/*
 * A fridge-freezer in tall unit 1, 40 from Side wall, the corner made square; its doors are 597 wide with handles of 30
 * that end 577 from the hinges. Opened by a they keep 40 + 577·cos a − 30·sin a off the wall: 10 at 90°, at 95°
 * 40 − 50.3 − 29.9 = −40.2.
 */
const cold = {
  id: 'fridge-1',
  kind: 'fridge-freezer',
  fuel: 'electric',
  over: 'tall-1',
  hinge: 'left',
  doorNeeds: 90,
  mass: 40,
}
const given = [
  { set: 'walls.d.cornerRight', to: { angle: { value: 90, pm: 0 } } },
  { add: 'appliances', item: cold },
] as const
const sheet = (name: string, to: unknown) => [{ set: `appliances.fridge-1.${name}`, to }] as const

tryRule('fridge-in-corner', [
  {
    what: 'F103: a fridge-freezer hinged towards a wall that stops its door',
    given,
    inside: sheet('doorNeeds', 90),
    outside: sheet('doorNeeds', 95),
    weight: 'stop',
    about: ['tall-1', 'd'],
    says: ['95°', '40 mm more room', 'Side wall'],
    waysOut: 1,
  },
  {
    what: 'its sheet was not read',
    given,
    outside: sheet('doorNeeds', null),
    weight: 'ask',
    about: ['tall-1'],
  },
  {
    what: 'hung on the other side it passes the wall, and its housing must open as far as it wants',
    given: [...given, ...sheet('hinge', 'right')],
    inside: sheet('doorNeeds', 110),
    outside: sheet('doorNeeds', 115),
    weight: 'stop',
    about: ['tall-1'],
    says: ['110°', '115°'],
    waysOut: 1,
  },
])
