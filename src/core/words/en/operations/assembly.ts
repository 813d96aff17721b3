/** Words of the work: assembly. */
export const assemblyWords = {
  'operation.assemble.title': 'Assemble {unit}',
  'operation.assemble.not-said': 'Nobody has said how {unit} came. If it came built, only check it.',
  'operation.assemble.flat-floor': 'Put {unit} together on a clean, flat floor near its place.',
  'operation.assemble.lying': 'Put {unit} together lying on its back, near where it will be stood up.',
  'operation.assemble.square':
    'Square it before the back is fixed: both diagonals {diagonal}, and equal within 2 mm.',
  'operation.assemble.square.unknown':
    'Square it before the back is fixed: both diagonals equal within 2 mm.',
  'operation.assemble.stripped': 'Leave doors, drawers and shelves off: so it weighs {mass}.',
  'operation.assemble.stripped.unknown':
    'Leave doors, drawers and shelves off. Weigh it: nobody knows its mass yet.',
  'operation.assemble.not-too-tight': 'Do not over-tighten: chipboard bursts.',

  'operation.set-legs.title': 'Fit and set the legs of {unit}',
  'operation.set-legs.fit': 'Turn {unit} upside down on a blanket. Fit the legs ({count}).',
  'operation.set-legs.fit-lying': 'Leave {unit} lying. Fit the legs ({count}).',
  'operation.set-legs.label':
    'Label each leg. Left and right mean as the unit will stand, seen from the front. Upside down they are swapped: stand at its front, and its left legs are on your right.',
  'operation.set-legs.label-lying':
    'Label each leg. Left and right mean as the unit will stand, seen from the front.',
  'operation.set-legs.wind-in': 'Wind them right in: the unit is stood up on blocks, not on its legs.',
  'operation.set-legs.wind.corners':
    'Wind them to: back left {backLeft}, back right {backRight}, front left {frontLeft}, front right {frontRight}. Measure from the end of the foot to the underside of the unit.',
  'operation.set-legs.wind.corners.unknown':
    'How far every leg winds out is not known yet. Read the floor where each foot will stand.',
  'operation.set-legs.wind.each':
    'Wind each leg to its figure here. Measure from the end of the foot to the underside of the unit.',
  'operation.set-legs.later.corners':
    'When it stands they will come to: back left {backLeft}, back right {backRight}, front left {frontLeft}, front right {frontRight}.',
  'operation.set-legs.later.corners.unknown':
    'How far every leg winds out is not known yet. Read the floor where each foot will stand.',
  'operation.set-legs.later.each': 'When it stands each leg will come to its figure here.',
  'operation.set-legs.out-lifts':
    'Out makes a leg longer and lifts the unit; in lets it down. Try one turn and see which way is out: makers differ.',
  'operation.set-legs.out-of-reach': 'The {foot} leg does not reach its figure. Stop and settle that first.',

  'operation.cut-outs.before':
    'First cut the holes in its back ({count}) for: {what}. Measure from its left side as seen from the front, and up from its underside.',

  'operation.cut-outs.room':
    'Cut each {room} larger all round than what goes through it, as its figures here are: common practice, no source.',
  'operation.cut-outs.measure':
    'How large it is nobody has entered: {what}. Measure that first, and enter it.',
  'operation.cut-outs.waste':
    'Where the waste of {sink} goes out of {unit}, and how thick its pipe is, nobody has entered. Find both before the unit is pushed home, and cut its hole {room} larger all round than the pipe.',

  'operation.fit-hangers.title': 'Fit the hangers of {unit}',
  'operation.fit-hangers.corners':
    'Fit one hanger in each top corner, its centre {hangerIn} in from the side of the unit.',
  'operation.fit-hangers.corners.unknown':
    'Fit one hanger in each top corner, as far in from the side as its maker says. Write that figure down.',
  'operation.fit-hangers.mid-travel': 'Set both screws of each hanger to mid travel.',
  'operation.fit-hangers.height-screw.not-said':
    'Turn each screw a little and see which one moves the hook up: nobody has said.',
  'operation.fit-hangers.height-screw.upper': 'The upper screw sets the height, the other draws the unit in.',
  'operation.fit-hangers.height-screw.lower': 'The lower screw sets the height, the other draws the unit in.',
  'operation.fit-hangers.height-screw.front': 'The front screw sets the height, the other draws the unit in.',
  'operation.fit-hangers.height-screw.inner': 'The inner screw sets the height, the other draws the unit in.',
}
