import { tryRule } from '../../support/rule-trial'

/**
 * Studs graded C24, and a rail screw that the formula covers: 6 mm thick, its core 4 mm, no maker’s figure for it. With
 * 47.5 mm of thread it gives 4 467 N, and it takes 3.4 t to ask for that.
 */
const given = [
  { set: 'walls.a.studTimber', to: { grade: 'C24' } },
  { set: 'fixings.rail-screw.diameter', to: 6 },
  { set: 'fixings.rail-screw.length', to: { value: 80, pm: 0 } },
  { set: 'fixings.rail-screw.thread', to: { value: 80, pm: 0 } },
  { set: 'fixings.rail-screw.core', to: 4 },
  { set: 'fixings.rail-screw.pull', to: null },
  { set: 'units.wall-4.hanging.ratedPerHanger', to: null },
] as const

const contents = (kg: number) => [{ set: 'units.wall-4.contents', to: kg }] as const

tryRule('published-pull', [
  {
    what: 'a unit so heavy that it asks more of a screw than the formula gives',
    given,
    inside: contents(3250),
    outside: contents(3450),
    // The pull nobody entered is asked for on either side.
    beside: ['no-figure-entered'],
    weight: 'stop',
    about: ['wall-4'],
    says: ['exceeds the published figure'],
  },
  {
    what: 'a density that may be the mean of C24',
    given: [{ set: 'walls.a.studTimber', to: {} }],
    inside: [{ set: 'walls.a.studTimber', to: { density: 350 } }],
    outside: [{ set: 'walls.a.studTimber', to: { density: 351 } }],
    weight: 'ask',
    about: ['a'],
    says: ['351 kg/m³', 'characteristic'],
  },
])
