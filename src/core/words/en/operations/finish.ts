/** Words of the work: connecting and finishing. */
export const finishWords = {
  'operation.connect.title': 'Set in and connect {appliance}',
  'operation.connect.into': 'Set {appliance} into {bay}, with the clearances of its own sheet.',
  'operation.connect.set': 'Set {appliance} in its place, with the clearances of its own sheet.',
  'operation.connect.fuel-not-said':
    'Nobody has said what {appliance} runs on. If it is gas, leave it to the gas engineer.',
  'operation.connect.by.gas-engineer':
    'A registered gas engineer connects and tests {appliance}. Nobody else does.',
  'operation.connect.by.electrician': 'A competent electrician connects and tests {appliance}.',
  'operation.connect.by.plumber': 'A plumber, or someone who can do it right, connects {appliance}.',
  'operation.connect.by.anyone': 'Plug {appliance} in as its sheet says.',
  'operation.connect.vents': 'Keep the vents at plinth and top open, as its sheet asks.',
  'operation.connect.test': 'Try it before doors and plinth cover it.',
  'operation.connect.floor-first':
    'The floor finish, {finish}, is laid into the space before anything is walked in.',
  'operation.connect.floor-first.unknown':
    'The floor finish is laid into the space before anything is walked in. How thick it is nobody has said.',
  'operation.connect.test-later': 'Everything is still off: it is tried when the supply is on again.',
  'operation.connect.test-water': 'Fill it, pull the plug, and feel every joint with dry tissue.',

  'operation.hang-fronts.title': 'Hang the fronts of {unit}',
  'operation.hang-fronts.title.drawers': 'Fit the drawers of {unit} and their fronts',
  'operation.hang-fronts.title.both': 'Fit the drawers and hang the doors of {unit}',
  'operation.hang-fronts.doors': 'Hang the doors ({count}).',
  'operation.hang-fronts.drawers': 'Fit the drawers ({count}) and their fronts.',
  'operation.hang-fronts.runners':
    'Push each drawer in until it catches on both its runners, and draw it out and in again.',
  'operation.hang-fronts.gaps': 'Set the gaps to {gap}, alike all along.',
  'operation.hang-fronts.handles': 'Drill for handles with a jig, and a backing block behind.',
  'operation.hang-fronts.flap': 'Hold flaps while their springs are set.',

  'operation.plinth.title': 'Fit {part}',
  'operation.plinth.under': 'It runs under {units}.',
  'operation.plinth.floor-first':
    'Floor finish first: {finish} is still to come. Cut the plinth to the finished floor.',
  'operation.plinth.floor-first.unknown':
    'Find out first whether a floor finish is still to come, and how thick. The plinth is cut to the finished floor.',
  'operation.plinth.floor-there': 'No floor finish is to come. Cut the plinth to the floor as it is.',
  'operation.plinth.cut':
    'Cut it to {left} at its left end and {right} at its right end, on the finished floor.',
  'operation.plinth.cut.unknown':
    'How high it must be at its ends is not known yet. Measure from the underside of the units to the finished floor.',
  'operation.plinth.height': 'The board is {height} high; cut it down where the floor rises.',
  'operation.plinth.height.unknown': 'Measure the board, and cut it down where the floor rises.',
  'operation.plinth.rip': 'Scribe its lower edge to the floor between the ends: gap 2 mm at most.',
  'operation.plinth.clip': 'Clip it to the legs so that it comes off again.',

  'operation.finish.title.cornice': 'Fit {part}',
  'operation.finish.title.pelmet': 'Fit {part}',
  'operation.finish.title.upstand': 'Fit {part}',
  'operation.finish.title.splashback': 'Fit {part}',
  'operation.finish.at': 'It belongs to {units}.',
  'operation.finish.cornice': 'Measure it in place and check the room up to the ceiling at both ends.',
  'operation.finish.pelmet': 'Measure it in place and line it up with the doors.',
  'operation.finish.upstand': 'Bed it on the worktop, against the wall.',
  'operation.finish.splashback': 'Measure it with the worktop in place; behind a hob it must be heat-rated.',
  'operation.finish.mitre': 'Cut the mitres on offcuts first, then screw from inside.',
  'operation.finish.seal': 'Seal it to the worktop when both are dry and clean.',

  'operation.snag.title': 'Snag and hand over',
  'operation.snag.walk': 'Walk round every unit ({count}): doors, drawers, gaps, handles.',
  'operation.snag.seal': 'Seal what is to be sealed, and keep it dry for a day.',
  'operation.snag.map': 'Hand over the wall drawings with every hole on them ({holes}).',
  'operation.snag.hand-over':
    'Hand over sheets, spare parts, and where water, gas and electricity are shut off.',
}
