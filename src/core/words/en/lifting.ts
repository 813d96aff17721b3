/** Words of lifting: what the published guidance says of a lift, and what helps. */

/** Where a weight is recommended for one person: what it holds for, and what not. */
const SCOPE =
  'For one person the weight recommended by the NIOSH lifting equation is used, from the floor to where it goes. It holds for both hands, both feet on a firm floor, no turning, and a lift every five minutes at most. It does not hold on steps, on your knees, with one hand, or while you carry. It says nothing of two people: for two or three the British filter is used.'

export const liftingWords = {
  'lifting.guidance': SCOPE,
  'lifting.guidance.over': `${SCOPE} Over what is recommended for one person, as far as their masses are known: {units}.`,
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
  'lifting.near-recommended':
    'Lifting {unit}, {mass:pm}, comes close to the weight recommended for one person, {filter}. Weigh it before you lift it.',
  'lifting.place-not-known':
    'What is recommended for one person to lift of {unit} is not known: enter its sizes, the height it goes to, and the floor under it.',
  'lifting.over-recommended-lighten-it':
    'Lifting {unit}, {mass}, is over the weight recommended for one person, {filter}. Carry it in parts and put it together where it stands.',
  'lifting.over-recommended-stop':
    'Lifting {unit}, {mass}, is over the weight recommended for one person, {filter}, and nothing entered helps. Do not start this lift: get another person.',
  'lifting.never-alone':
    'Lifting {unit}, {mass}, to its place on the wall is not for one person, and not from steps. Do not start this lift: get another person or a lifter.',
  'lifting.never-alone-stop':
    'Hanging {unit}, {mass}, is not for one person: both hands hold it, and nobody is left to hook it on. Do not start this lift: get another person or a lifter.',
  'lifting.never-alone-lighten-it':
    'Hanging {unit}, {mass}, is not for one person: both hands hold it, and nobody is left to hook it on. Get another person or a lifter, or carry it in parts and put it together where it hangs.',
  'lifting.end-never-alone-stop':
    'Standing {unit} up is not for one person, though one end weighs only {mass}: nobody is left to hold it until it is fixed. Do not start this lift: get another person.',
  'lifting.end-never-alone-lighten-it':
    'Standing {unit} up is not for one person, though one end weighs only {mass}: nobody is left to hold it until it is fixed. Get another person, or carry it in parts and put it together standing, where it belongs.',
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
  'lifting.appliance-weight-not-known':
    'Enter the width, height and depth of {appliance} from its sheet, and where it goes. What is recommended for one person to lift of its {mass} is not known.',
  'lifting.appliance-over-recommended-stop':
    'Lifting {appliance}, {mass}, is over the weight recommended for one person, {filter}. Get another person for it.',
} as const
