/** Words of lifting: what the published filter says of a lift, and what helps. */
export const liftingWords = {
  'lifting.mass-not-known':
    'Weigh {unit}, or enter its sizes, before it is lifted. What it weighs is not known.',
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
  'lifting.end-near-filter':
    'One end of {unit} weighs {mass:pm} when you begin to stand it up. That comes close to the published figure for this crew, {filter}. Weigh it before you lift it.',
  'lifting.end-over-filter-batten-or-prop':
    'One end of {unit} weighs {mass} when you begin to stand it up. That is over the published figure for this crew with the hands at the floor, {filter}. Lay its head on blocks first, so that the hands begin above the middle of your shins.',
  'lifting.end-over-filter-lighten-it':
    'One end of {unit} weighs {mass} when you begin to stand it up. That is over the published figure for this crew, {filter}. Carry it in parts and put it together standing, where it belongs.',
  'lifting.end-over-filter-stop':
    'One end of {unit} weighs {mass} when you begin to stand it up. That is over the published figure for this crew, {filter}, and nothing entered helps. Do not start this lift: get another person.',
  'lifting.worktop-mass-not-known':
    'Weigh one end of {worktop} and double it, or enter its thickness, depth and material, before it is lifted. What it weighs is not known.',
  'lifting.worktop-crew-not-known': 'Nobody has said who lifts {worktop}.',
  'lifting.worktop-over-filter-end-by-end':
    'Lifting {worktop}, {mass}, is over the published figure for this crew, {filter}. Do not carry it whole: rest one end on the bases, then lift the other end, {end}, and slide it on. Or get another person.',
  'lifting.worktop-over-filter-stop':
    'Lifting {worktop}, {mass}, is over the published figure for this crew, {filter}, and so is one end of it, {end}. Do not start this lift: get more people, or have it cut at a joint.',
  'lifting.appliance-over-filter-prop':
    'Lifting {appliance}, {mass}, is over the published figure for this crew, {filter}, at the worst height of the hands. Take the weight on a prop or a bench while hands are moved.',
  'lifting.appliance-over-filter-stop':
    'Lifting {appliance}, {mass}, is over the published figure for this crew, {filter}. Get another person for it.',
} as const
