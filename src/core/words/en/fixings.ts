/** What screws are for, as it is said. */
const SCREWS_FOR = {
  rail: 'the rail',
  plate: 'the wall plates',
  'second-fixing': 'the second fixings',
  'base-bracket': 'the base brackets',
  'tall-restraint': 'the brackets that hold the tall units back',
  'back-rail': 'the back rails of the units',
  cleat: 'the cleat',
} as const

/** What may be wrong with screws, said of whatever they are for. */
const SCREW_TROUBLES = {
  'too-short': (what: string) =>
    `The screws for ${what} on {wall} are too short: they need {needed}, they are {length}.`,
  'maybe-short': (what: string) =>
    `The screws for ${what} on {wall} are only just long enough: they need {needed:pm}, they are {length:pm}. Measure the layers again. The next length makes the holes deeper: past 50 mm a cable may run anywhere, so trace to that depth first.`,
  'out-of-back': (what: string) =>
    `The holes for ${what} on {wall} come out at the back or nearly so: {left} of the wall is left behind them.`,
  'none-entered': (what: string) =>
    `No screw or plug has been entered for ${what} into {into} on {wall}. How deep the holes go cannot be said.`,
  'no-stand-off': (what: string) =>
    `On {wall} the screws for ${what} must bridge the gap behind the board. Only a stand-off fixing does that; none has been entered.`,
  'base-not-known': (what: string) =>
    `What is behind the face of {wall} has not been entered, and ${what} must hold in it. Add its layers, from the face inwards.`,
  'hold-not-known': (what: string) =>
    `How deep the screws for ${what} on {wall} must hold in {into} has not been entered. Until it is, nobody can tell whether {length} is long enough.`,
} as const

const screwWords: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(SCREW_TROUBLES).flatMap(([trouble, sentence]) =>
    Object.entries(SCREWS_FOR).map(([purpose, what]) => [`fixings.${trouble}.${purpose}`, sentence(what)]),
  ),
)

/** Words of fixings: rails, plates, second fixings, brackets, screws, and what they are asked to hold. */
export const fixingsWords = {
  ...screwWords,
  'fixings.wall-not-known':
    'Trace {wall}, knock on it, look where an edge of it shows, and enter what it is made of. Do not drill to find out.',
  'fixings.knock-blown':
    'Test what is behind the plaster on {wall} before anything hangs there. It is blown.',
  'fixings.knock-solid': 'Find out what {wall} is made of. It sounds solid, but is entered as a stud wall.',
  'fixings.knock-hollow': 'Find out what {wall} is made of. It sounds hollow, but is entered as masonry.',
  'fixings.flue-behind':
    '{wall} is a chimney breast. Use short fixings only: a long one goes through the flue or its liner.',
  'fixings.over-hollow':
    'Behind {unit} {wall} is hollow by {hollow}, {along} along it. Packed out by that, the screw has to be {needed}; it is {length}, {short} too short.',
  'fixings.over-hollow-near':
    'Behind {unit} {wall} is hollow by {hollow:pm}, {along} along it. Packed out by that, the screw has to be {needed:pm}; it is {length:pm}. Readings this near cannot tell: lay the straightedge again.',
  'fixings.longer-through-packing':
    'Buy the next length that is enough for the holes there. It makes no hole deeper, because the packing takes the rest.',
  'fixings.stud-not-confirmed':
    'The stud at {at} in {wall} is only supposed: one beep is not a stud. Find both its edges, or its screws.',
  'fixings.stud-not-confirmed.no-place':
    'A stud in {wall} is only supposed, and its place is not known: one beep is not a stud. Find both its edges, or its screws.',
  'fixings.stud-not-measured':
    'The stud at {at} in {wall} has no width yet. Nothing is planned into it until it has.',
  'fixings.stud-not-measured.no-place':
    'A stud in {wall} has no centre yet. Nothing is planned into it until it has.',
  'fixings.stud-too-narrow':
    'The stud at {at} in {wall} is too narrow: a screw would come nearer than 12 mm to its edge.',
  'fixings.stud-too-narrow.no-place':
    'A stud in {wall} is too narrow: a screw would come nearer than 12 mm to its edge.',
  'fixings.find-the-studs':
    'Run the detector over {wall} both ways, mark both edges of each stud, and measure to the middle.',
  'fixings.let-timber-in':
    'Let timber or board into {wall} behind the unit before it is closed, and enter where it lies.',
  'fixings.second-fixing-needs-timber':
    '{unit} on {wall} needs two second fixings at {height:signed}; there is timber for {count} of them. Plasterboard does not carry it. Do not let go of it until there is timber behind it.',
  'fixings.second-fixing-needs-timber.unproved':
    '{unit} on {wall} needs two second fixings at {height:signed}; there is timber for {count} of them. The stud at {at} is only supposed: prove it, and it may hold one. Do not let go of it until there is timber behind it.',
  'fixings.bracket-needs-timber': 'No stud lies behind {unit} on {wall} for its bracket.',
  'fixings.bracket-needs-timber.unproved':
    'No proved stud lies behind {unit} on {wall} for its bracket. The one at {at} is only supposed: prove it, and a bracket may go there.',
  'fixings.rail-screw-needs-timber': 'No stud lies behind {unit} on {wall} for the screw through its rail.',
  'fixings.rail-screw-needs-timber.unproved':
    'No proved stud lies behind {unit} on {wall} for the screw through its rail. The one at {at} is only supposed: prove it, and a screw may go there.',
  'fixings.tall-not-restrained':
    '{unit} cannot be held back at its top on {wall}. Unheld, it tips when a door or an oven is opened.',
  'fixings.tall-not-restrained.unproved':
    '{unit} cannot be held back at its top on {wall} yet. The stud at {at} is only supposed: prove it first. Unheld, the unit tips when a door or an oven is opened.',
  'fixings.back-rail-needs-timber.unproved':
    '{unit} hangs by screws through its back rail, and {wall} does not give it two to hold in. The stud at {at} is only supposed: prove it, and it may hold one.',
  'fixings.back-rail-needs-timber':
    '{unit} hangs by screws through its back rail, and {wall} does not give it two to hold in.',
  'fixings.cleat-needs-timber':
    '{unit} hangs over a cleat, and {wall} does not give the cleat two places to hold in.',
  'fixings.rail-edges-differ':
    'The units on one rail want its edge at heights that differ by {by} mm: {units}. One rail has one edge.',
  'fixings.rail-too-few':
    'The rail for {units} on {wall} has {count} fixings that may be drilled. It needs two at least.',
  'fixings.rail-spacing': 'Two fixings of the rail for {units} are {gap} apart; its maker allows {most}.',
  'fixings.rail-overhang':
    'The rail for {units} runs {over} past its last fixing; its maker allows {most}. Cut it, or find another fixing.',
  'fixings.rail-not-listed': '{unit} is to hang on a rail, but no rail lists it.',
  'fixings.stands-not-said':
    'Nobody has said what {unit} hangs on: plates, a rail, a cleat, or screws through its back rail.',
  'fixings.hardware-not-known': 'The holes that {unit} hangs by have no place yet.',
  'fixings.hardware-open.plateBelowTop': 'How far its hook-on edge lies below its top is not known.',
  'fixings.hardware-open.plateHoleBelow': 'How far the fixing hole lies below the hook-on edge is not known.',
  'fixings.hardware-open.hangerIn': 'How far in from the side of the unit its hanger sits is not known.',
  'fixings.read-the-sheet': "Read the maker's sheet, or hold the hardware against the unit and measure it.",
  'fixings.maker-or-pull-test':
    "Ask the fixing's maker for the figure in this material. Where nobody can say, have a pull test made on this wall.",
  'fixings.capacity-exceeded':
    'One fixing of {unit} is asked for {pull} pull and {shear} shear. That exceeds the figures you entered.',
  'fixings.hanger-exceeded': '{unit}, full, exceeds the figure you entered for one hanger.',
  'fixings.capacity-marginal':
    'One fixing of {unit} is asked for {pull:pm} pull and {shear:pm} shear. That is too near the figures you entered to say: weigh the unit, or take a stronger fixing.',
  'fixings.no-figure-entered':
    'Whether the fixings of {unit} are asked for too much is not known: pull {pull}, shear {shear} on one of them, and a figure is missing.',
} as const
