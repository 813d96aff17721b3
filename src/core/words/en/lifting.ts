/** Words of lifting: what the published filter says of a lift, and what helps. */
export const liftingWords = {
  'lifting.mass-not-known':
    'What {unit} weighs is not known. Weigh it, or enter its sizes, before it is lifted.',
  'lifting.crew-not-known': 'Nobody has said who lifts {unit}.',
  'lifting.near-filter':
    'Lifting {unit}, {mass:pm}, comes close to the published figure for this crew, {filter}. Weigh it before you lift it.',
  'lifting.over-filter-lifter':
    'Lifting {unit}, {mass}, is over the published figure for this crew, {filter}. Use the lifter, which is rated for it.',
  'lifting.over-filter-batten-or-prop':
    'Lifting {unit}, {mass}, is over the published figure for this crew, {filter}, at the worst height of the hands. Take the weight on a batten, prop or blocks while hands are moved.',
  'lifting.over-filter-lighten-it':
    'Lifting {unit}, {mass}, is over the published figure for this crew, {filter}. Carry it in parts and put it together where it stands.',
  'lifting.over-filter-stop':
    'Lifting {unit}, {mass}, is over the published figure for this crew, {filter}, and nothing entered helps. Do not start this lift: get another person or a lifter.',
} as const
