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
  'operation.set-legs.fit': 'Fit the legs ({count}) and label each with its place.',
  'operation.set-legs.wind-in': 'Wind them right in: the unit is stood up on blocks, not on its legs.',
  'operation.set-legs.wind': 'Wind leg {foot} to {extension}, floor to underside.',
  'operation.set-legs.wind.unknown': 'Leg {foot}: how far is not known yet. Read the floor at this foot.',
  'operation.set-legs.later': 'When it stands, leg {foot} will come to {extension}.',
  'operation.set-legs.later.unknown':
    'How far leg {foot} winds out is not known yet. Read the floor at this foot.',
  'operation.set-legs.out-of-reach': 'Leg {foot} does not reach this figure. Stop and settle that first.',

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
